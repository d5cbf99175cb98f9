// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/text_table.h"
#include "ui/words/words.h"

#include <QStringList>

namespace hearth::ui::words {

namespace {

using rulebook::Comparison;
using rulebook::Edition;
using rulebook::Provenance;
using rulebook::Rule;

/// The one source that is no proper name (makersEntry() gives it).
constexpr const char* kMakersInstructions = QT_TRANSLATE_NOOP("Words", "Maker's instructions");

// Proper names: the same in every language.
constexpr std::array kEditions{
    Text<Edition>{Edition::General, ""},
    Text<Edition>{Edition::Up1bEd3, "IGEM/UP/1B Edition 3"},
    Text<Edition>{Edition::Up1bEd4, "IGEM/UP/1B Edition 4"},
};

using ProvenanceText = Text<Provenance>;
constexpr std::array kProvenances{
    ProvenanceText{Provenance::Published, QT_TRANSLATE_NOOP("Words", "published")},
    ProvenanceText{Provenance::Secondary, QT_TRANSLATE_NOOP("Words", "read second-hand")},
    ProvenanceText{Provenance::Memory, QT_TRANSLATE_NOOP("Words", "from memory")},
    ProvenanceText{Provenance::CommonPractice, QT_TRANSLATE_NOOP("Words", "common practice")},
    ProvenanceText{Provenance::Firm, QT_TRANSLATE_NOOP("Words", "confirmed by the firm")},
    ProvenanceText{Provenance::Maker, QT_TRANSLATE_NOOP("Words", "the maker's figure")},
};
constexpr std::array kMeanings{
    ProvenanceText{Provenance::Published,
                   QT_TRANSLATE_NOOP("Words",
                                     "Read in the law, in the standard's or its publisher's own words, or in "
                                     "a regulator's, register's "
                                     "or certification body's text. It decides.")},
    ProvenanceText{
        Provenance::Secondary,
        QT_TRANSLATE_NOOP(
            "Words",
            "Read in training notes or the trade press. Beyond it a test fails; within it, look again until "
            "the firm has confirmed it from its own copy.")},
    ProvenanceText{
        Provenance::Memory,
        QT_TRANSLATE_NOOP(
            "Words",
            "Recalled from the named standard, not read. Beyond it a test fails; within it, look again until "
            "the firm has confirmed it from its own copy. Nothing passes on memory alone.")},
    ProvenanceText{
        Provenance::CommonPractice,
        QT_TRANSLATE_NOOP(
            "Words",
            "A habit of the trade, with no source. It advises; it neither passes nor fails anything alone.")},
    ProvenanceText{Provenance::Firm, QT_TRANSLATE_NOOP("Words",
                                                       "Entered or confirmed by the firm from its own copy, "
                                                       "with name and date. It decides, and replaces "
                                                       "the value that came with the program.")},
    ProvenanceText{Provenance::Maker, QT_TRANSLATE_NOOP("Words",
                                                        "From the appliance maker's instructions, kept with "
                                                        "the appliance. It decides before all others.")},
};

using ComparisonText = Text<Comparison>;
constexpr std::array kComparisons{
    ComparisonText{Comparison::AtMost, QT_TRANSLATE_NOOP("Words", "at most")},
    ComparisonText{Comparison::Below, QT_TRANSLATE_NOOP("Words", "below")},
    ComparisonText{Comparison::AtLeast, QT_TRANSLATE_NOOP("Words", "at least")},
    ComparisonText{Comparison::Within, QT_TRANSLATE_NOOP("Words", "within")},
    ComparisonText{Comparison::Equals, QT_TRANSLATE_NOOP("Words", "exactly")},
    ComparisonText{Comparison::AsGiven, QT_TRANSLATE_NOOP("Words", "as given")},
};
constexpr std::array kCompared{
    ComparisonText{Comparison::AtMost, QT_TRANSLATE_NOOP("Words", "at most %1")},
    ComparisonText{Comparison::Below, QT_TRANSLATE_NOOP("Words", "below %1")},
    ComparisonText{Comparison::AtLeast, QT_TRANSLATE_NOOP("Words", "at least %1")},
    ComparisonText{Comparison::Within, QT_TRANSLATE_NOOP("Words", "within %1")},
    ComparisonText{Comparison::Equals, QT_TRANSLATE_NOOP("Words", "exactly %1")},
    ComparisonText{Comparison::AsGiven, QT_TRANSLATE_NOOP("Words", "%1")},
};

QString rangeText(const Words& words, const rulebook::Range& range) {
    return words.say(
        QT_TRANSLATE_NOOP("Words", "%1 to %2"),
        {words.figure({range.least, quantity::UnitCode::None}), words.figure({range.most, range.unit})});
}

QString bandsText(const Words& words, const std::vector<rulebook::Band>& bands) {
    QStringList lines;
    for (const auto& band : bands) {
        lines << words.say(QT_TRANSLATE_NOOP("Words", "up to %1: %2"),
                           {words.figure({band.upTo, quantity::UnitCode::CubicMetre}),
                            words.figure({band.allowed, quantity::UnitCode::Millibar})});
    }
    return lines.join(QStringLiteral("; "));
}

/// A word of comparison with its figure; "as given" is the figure alone.
QString compared(const Words& words, Comparison comparison, const quantity::Figure& figure) {
    return words.say(textOf(kCompared, comparison), {words.figure(figure)});
}

/// Who stands for an entry: "published", or "confirmed by J. Example, 3 Oct 2026".
QString warrant(const Words& words, const rulebook::Entry& entry) {
    if (entry.provenance != Provenance::Firm || entry.confirmedBy.empty()) {
        return words.provenance(entry.provenance);
    }
    if (!entry.confirmedOn) {
        return words.say(QT_TRANSLATE_NOOP("Words", "confirmed by %1"), {qstring(entry.confirmedBy)});
    }
    return words.say(QT_TRANSLATE_NOOP("Words", "confirmed by %1, %2"),
                     {qstring(entry.confirmedBy), words.shortDate(*entry.confirmedOn)});
}

}  // namespace

QString Words::edition(Edition edition) const {
    return edition == Edition::General ? say(QT_TRANSLATE_NOOP("Words", "any edition"))
                                       : QString::fromUtf8(textOf(kEditions, edition));
}

QString Words::provenance(Provenance provenance) const {
    return say(textOf(kProvenances, provenance));
}
QString Words::provenanceMeaning(Provenance provenance) const {
    return say(textOf(kMeanings, provenance));
}
QString Words::comparison(Comparison comparison) const {
    return say(textOf(kComparisons, comparison));
}

QString Words::ruleValue(const rulebook::Entry& entry) const {
    if (const auto* figure = std::get_if<quantity::Figure>(&entry.value)) {
        return compared(*this, entry.comparison, *figure);
    }
    if (const auto* range = std::get_if<rulebook::Range>(&entry.value)) {
        return rangeText(*this, *range);
    }
    if (const auto* bands = std::get_if<std::vector<rulebook::Band>>(&entry.value)) {
        return bandsText(*this, *bands);
    }
    return say(QT_TRANSLATE_NOOP("Words", "not entered"));
}

QString Words::source(const rulebook::Entry& entry) const {
    QString name = entry.standard == kMakersInstructions ? say(kMakersInstructions) : qstring(entry.standard);
    if (!entry.clause.empty()) {
        name += (name.isEmpty() ? QString() : QStringLiteral(", ")) + qstring(entry.clause);
    }
    const QString known =
        entry.isKnown() ? warrant(*this, entry) : say(QT_TRANSLATE_NOOP("Words", "not entered"));
    return name.isEmpty() ? known : name + QStringLiteral(" · ") + known;
}

QString Words::measuredAgainst(const rulebook::Finding& finding) const {
    if (!finding.measured) {
        return {};
    }
    const QString measured = figure(*finding.measured);
    const auto range = finding.limits.empty() ? std::nullopt : rulebook::rangeOf(finding.limits.front());
    if (range && finding.comparison == Comparison::Within) {
        return say(QT_TRANSLATE_NOOP("Words", "%1 (band: %2)"), {measured, rangeText(*this, *range)});
    }
    if (!finding.limit) {
        return measured;
    }
    return say(QT_TRANSLATE_NOOP("Words", "%1 (limit: %2)"),
               {measured, compared(*this, finding.comparison, *finding.limit)});
}

}  // namespace hearth::ui::words

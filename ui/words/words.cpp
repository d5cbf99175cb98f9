// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/words.h"

#include "core/record/language.h"
#include "resources/resources.h"
#include "ui/words/pseudo_translator.h"
#include "ui/words/text_table.h"

#include <QTranslator>

namespace hearth::ui::words {

namespace {

using rulebook::Gas;
using rulebook::Outcome;

constexpr const char* kContext = "Words";
const QString kPseudoLanguage = QStringLiteral("en_XA");

std::unique_ptr<QTranslator> englishCatalogue() {
    hearth::initResources();
    auto translator = std::make_unique<QTranslator>();
    (void)translator->load(QStringLiteral(":/i18n/hearthledger_en.qm"));
    return translator;
}

/// Nothing for a language that we do not have, and for English, which is beneath every other.
std::unique_ptr<QTranslator> catalogueOf(const QString& language) {
    const auto own = QString::fromStdString(std::string(record::mainLanguage(language.toStdString())));
    if (own == u"en") {
        return nullptr;
    }
    auto translator = std::make_unique<QTranslator>();
    return translator->load(QStringLiteral(":/i18n/hearthledger_%1.qm").arg(own)) ? std::move(translator)
                                                                                  : nullptr;
}

constexpr std::array kMonths{
    QT_TRANSLATE_NOOP("Words", "%1 January %2"),   QT_TRANSLATE_NOOP("Words", "%1 February %2"),
    QT_TRANSLATE_NOOP("Words", "%1 March %2"),     QT_TRANSLATE_NOOP("Words", "%1 April %2"),
    QT_TRANSLATE_NOOP("Words", "%1 May %2"),       QT_TRANSLATE_NOOP("Words", "%1 June %2"),
    QT_TRANSLATE_NOOP("Words", "%1 July %2"),      QT_TRANSLATE_NOOP("Words", "%1 August %2"),
    QT_TRANSLATE_NOOP("Words", "%1 September %2"), QT_TRANSLATE_NOOP("Words", "%1 October %2"),
    QT_TRANSLATE_NOOP("Words", "%1 November %2"),  QT_TRANSLATE_NOOP("Words", "%1 December %2"),
};
constexpr std::array kShortMonths{
    QT_TRANSLATE_NOOP("Words", "%1 Jan %2"), QT_TRANSLATE_NOOP("Words", "%1 Feb %2"),
    QT_TRANSLATE_NOOP("Words", "%1 Mar %2"), QT_TRANSLATE_NOOP("Words", "%1 Apr %2"),
    QT_TRANSLATE_NOOP("Words", "%1 May %2"), QT_TRANSLATE_NOOP("Words", "%1 Jun %2"),
    QT_TRANSLATE_NOOP("Words", "%1 Jul %2"), QT_TRANSLATE_NOOP("Words", "%1 Aug %2"),
    QT_TRANSLATE_NOOP("Words", "%1 Sep %2"), QT_TRANSLATE_NOOP("Words", "%1 Oct %2"),
    QT_TRANSLATE_NOOP("Words", "%1 Nov %2"), QT_TRANSLATE_NOOP("Words", "%1 Dec %2"),
};

constexpr std::array kOutcomes{
    Text<Outcome>{Outcome::Pass, QT_TRANSLATE_NOOP("Words", "pass")},
    Text<Outcome>{Outcome::Fail, QT_TRANSLATE_NOOP("Words", "fail")},
    Text<Outcome>{Outcome::LookAgain, QT_TRANSLATE_NOOP("Words", "look again")},
    Text<Outcome>{Outcome::NoVerdict, QT_TRANSLATE_NOOP("Words", "no verdict")},
};
constexpr std::array kGases{
    Text<Gas>{Gas::NaturalGas, QT_TRANSLATE_NOOP("Words", "Natural gas")},
    Text<Gas>{Gas::Propane, QT_TRANSLATE_NOOP("Words", "Propane (LPG)")},
    Text<Gas>{Gas::Butane, QT_TRANSLATE_NOOP("Words", "Butane (LPG)")},
    Text<Gas>{Gas::LpgAir, QT_TRANSLATE_NOOP("Words", "LPG/air mixture")},
};

/// Replaces %1 … %9 in one pass, so that what an argument holds is never taken for a placeholder.
QString filled(const QString& pattern, const QStringList& arguments) {
    QString text;
    text.reserve(pattern.size() + 32);
    for (qsizetype at = 0; at < pattern.size(); ++at) {
        const bool placeholder = pattern[at] == u'%' && at + 1 < pattern.size() && pattern[at + 1].isDigit();
        const int index = placeholder ? pattern[at + 1].digitValue() : 0;
        if (index >= 1 && index <= arguments.size()) {
            text += arguments[index - 1];
            ++at;
        } else {
            text += pattern[at];
        }
    }
    return text;
}

template <std::size_t N>
QString dated(const Words& words, const std::array<const char*, N>& months, calendar::Date date) {
    const auto month = static_cast<unsigned>(date.month());
    if (!date.ok()) {
        return QString();
    }
    return words.say(months.at(month - 1), {QString::number(static_cast<unsigned>(date.day())),
                                            QString::number(static_cast<int>(date.year()))});
}

}  // namespace

Words::Words(const QString& language) : m_language(language), m_english(englishCatalogue()) {
    if (language == kPseudoLanguage) {
        m_translator = std::make_unique<PseudoTranslator>(m_english.get());
    } else {
        m_translator = catalogueOf(language);
    }
    // Unicode CLDR: Polish parts decimals with a comma, English and Welsh with a point.
    if (language == u"pl") {
        m_mark = quantity::DecimalMark::Comma;
    }
}

Words Words::beside(const QString& language) {
    Words words(language);
    words.m_mark = quantity::DecimalMark::Point;
    return words;
}

Words::Words(Words&&) noexcept = default;
Words& Words::operator=(Words&&) noexcept = default;
Words::~Words() = default;

QString Words::language() const {
    return m_language;
}

QString Words::translated(const char* source, int count) const {
    QString text =
        m_translator != nullptr ? m_translator->translate(kContext, source, nullptr, count) : QString();
    if (text.isEmpty()) {
        text = m_english->translate(kContext, source, nullptr, count);
    }
    return text.isEmpty() ? QString::fromUtf8(source) : text;
}

QString Words::say(const char* source, const QStringList& arguments) const {
    return filled(translated(source, -1), arguments);
}

QString Words::sayCount(const char* source, int count, const QStringList& arguments) const {
    QString text = translated(source, count);
    text.replace(QStringLiteral("%n"), QString::number(count));
    return filled(text, arguments);
}

QString Words::date(calendar::Date date) const {
    return dated(*this, kMonths, date);
}
QString Words::shortDate(calendar::Date date) const {
    return dated(*this, kShortMonths, date);
}
QString Words::outcome(Outcome outcome) const {
    return say(textOf(kOutcomes, outcome));
}
QString Words::gas(Gas gas) const {
    return say(textOf(kGases, gas));
}

QString Words::figure(const quantity::Figure& figure) const {
    return qstring(quantity::show(figure, m_mark));
}

QString Words::unit(quantity::UnitCode unit) const {
    const auto symbol = quantity::unitSymbol(unit);
    return QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size()));
}

}  // namespace hearth::ui::words

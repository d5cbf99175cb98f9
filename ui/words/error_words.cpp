// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/kind.h"
#include "ui/words/error_texts.h"
#include "ui/words/text_table.h"
#include "ui/words/words.h"

#include <QStringList>

namespace hearth::ui::words {

namespace {

/// A word within a sentence for a code that an error brings along.
struct DetailText {
    std::string_view code;
    const char* english;
};
// What RuleBook::lay finds wrong with a value (rulebook/firm_value.h, slipText).
constexpr std::array kFaults{
    DetailText{"missing", QT_TRANSLATE_NOOP("Words", "there is no value")},
    DetailText{"shape", QT_TRANSLATE_NOOP("Words", "this rule needs another kind of value")},
    DetailText{"unit", QT_TRANSLATE_NOOP("Words", "the unit does not fit this rule")},
    DetailText{"not_positive", QT_TRANSLATE_NOOP("Words", "it must be greater than nought")},
    DetailText{"range_reversed", QT_TRANSLATE_NOOP("Words", "the least is greater than the most")},
    DetailText{"no_bands", QT_TRANSLATE_NOOP("Words", "there is no band yet")},
    DetailText{"volume_not_rising", QT_TRANSLATE_NOOP("Words", "volumes must rise from band to band")},
    DetailText{"drop_not_shrinking",
               QT_TRANSLATE_NOOP("Words", "a larger volume can't be allowed a larger fall")},
    DetailText{
        "leak_rate_out_of_order",
        QT_TRANSLATE_NOOP("Words", "volume times fall is far from the other bands': read the line again")},
};
constexpr std::array kParts{
    DetailText{"snapshot", QT_TRANSLATE_NOOP("Words", "its contents")},
    DetailText{"pdf", QT_TRANSLATE_NOOP("Words", "its PDF")},
    DetailText{"erasure", QT_TRANSLATE_NOOP("Words", "what is left of it since it was erased")},
};
constexpr std::array kThings{
    DetailText{"premises", QT_TRANSLATE_NOOP("Words", "premises")},
    DetailText{"party", QT_TRANSLATE_NOOP("Words", "person or organisation")},
    DetailText{"installation", QT_TRANSLATE_NOOP("Words", "installation")},
    DetailText{"visit", QT_TRANSLATE_NOOP("Words", "visit")},
    DetailText{"test", QT_TRANSLATE_NOOP("Words", "test")},
    DetailText{"entry", QT_TRANSLATE_NOOP("Words", "entry")},
    DetailText{"engineer", QT_TRANSLATE_NOOP("Words", "engineer")},
    DetailText{"instrument", QT_TRANSLATE_NOOP("Words", "instrument")},
    DetailText{"record", QT_TRANSLATE_NOOP("Words", "record")},
};

template <std::size_t N>
QString detail(const Words& words, const std::array<DetailText, N>& table, std::string_view code) {
    for (const auto& text : table) {
        if (text.code == code) {
            return words.say(text.english);
        }
    }
    return qstring(std::string(code));
}

/// The label of an item's or a field's code; the code itself when it is of neither.
QString labelOf(const Words& words, const std::string& code) {
    if (const auto item = reg::itemFromCode(code)) {
        return words.item(*item);
    }
    for (int i = 0; i <= static_cast<int>(record::Field::VisitDate); ++i) {
        const auto field = static_cast<record::Field>(i);
        if (record::fieldCode(field) == code) {
            return words.field(field);
        }
    }
    return qstring(code);
}

QString ruleOf(const Words& words, const std::string& code) {
    const auto rule = rulebook::ruleFromText(code);
    return rule ? words.rule(*rule) : qstring(code);
}

QStringList missingLabels(const Words& words, const Error& error) {
    QStringList labels;
    for (const auto& code : error.details) {
        labels << labelOf(words, code);
    }
    return {labels.join(QStringLiteral("; "))};
}

/// Days as they are read.
void putDays(const Words& words, QStringList& details) {
    for (auto& text : details) {
        if (const auto day = calendar::fromIso(text.toStdString())) {
            text = words.shortDate(*day);
        }
    }
}

QStringList detailsOf(const Words& words, const Error& error) {
    if (error.code == ErrorCode::RecordIncomplete) {
        return missingLabels(words, error);
    }
    QStringList details;
    for (const auto& text : error.details) {
        details << qstring(text);
    }
    // A sentence is never shown with a hole in it.
    while (details.size() < 3) {
        details << words.say(QT_TRANSLATE_NOOP("Words", "unknown"));
    }
    if (error.details.empty()) {
        return details;
    }
    if (error.code == ErrorCode::RuleUnknown || error.code == ErrorCode::RuleValueUnusable) {
        details[0] = ruleOf(words, error.details[0]);
    } else if (error.code == ErrorCode::NotFound) {
        details[0] = detail(words, kThings, error.details[0]);
    }
    if (error.details.size() > 1 && error.code == ErrorCode::RuleValueUnusable) {
        details[1] = words.valueFault(error.details[1]);
    } else if (error.details.size() > 1 && error.code == ErrorCode::RecordAltered) {
        details[1] = detail(words, kParts, error.details[1]);
    } else if (error.code == ErrorCode::RecordErased || error.code == ErrorCode::KeepingNotOver) {
        putDays(words, details);
    }
    return details;
}

}  // namespace

QString Words::error(const Error& error) const {
    const char* text = errorText(error.code);
    return text != nullptr ? say(text, detailsOf(*this, error)) : qstring(std::string(codeText(error.code)));
}

QString Words::valueFault(std::string_view code) const {
    return detail(*this, kFaults, code);
}

QString Words::bandDoubt(const rulebook::BandDoubt& doubt) const {
    const QString what = valueFault(rulebook::slipText(doubt.slip));
    return doubt.slip == rulebook::BandSlip::NoBands
               ? what
               : say(QT_TRANSLATE_NOOP("Words", "Band %1: %2"), {QString::number(doubt.band + 1), what});
}

}  // namespace hearth::ui::words

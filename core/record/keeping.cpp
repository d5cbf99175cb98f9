// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/keeping.h"

namespace hearth::record {
namespace {
constexpr int kSixYearsInMonths = 72;
constexpr std::string_view kSixYearsCode = "six_years";
}  // namespace

std::string_view keepRuleCode(KeepRule rule) {
    switch (rule) {
        case KeepRule::SixYears:
            break;
    }
    return kSixYearsCode;
}

std::optional<KeepRule> keepRuleFromCode(std::string_view code) {
    return code == kSixYearsCode ? std::optional(KeepRule::SixYears) : std::nullopt;
}

KeepRule keepRuleOf(RecordKind kind) {
    switch (kind) {
        case RecordKind::TightnessAndPurge:
            break;
    }
    return KeepRule::SixYears;
}

calendar::Date keepUntil(RecordKind kind, calendar::Date issued) {
    switch (kind) {
        case RecordKind::TightnessAndPurge:
            break;
    }
    return calendar::addMonths(issued, kSixYearsInMonths);
}

calendar::Date keepLetterUntil(calendar::Date sent) {
    return calendar::addMonths(sent, kSixYearsInMonths);
}

}  // namespace hearth::record

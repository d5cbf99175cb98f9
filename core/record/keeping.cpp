// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/keeping.h"

namespace hearth::record {
namespace {
constexpr int kSixYearsInMonths = 72;
constexpr int kFifteenYearsInMonths = 180;
}  // namespace

std::string_view keepRuleCode(KeepRule rule) {
    return rule == KeepRule::SixYears ? "six_years" : "fifteen_years";
}

std::optional<KeepRule> keepRuleFromCode(std::string_view code) {
    for (const auto rule : {KeepRule::SixYears, KeepRule::FifteenYears}) {
        if (keepRuleCode(rule) == code) {
            return rule;
        }
    }
    return std::nullopt;
}

KeepRule keepRuleOf(RecordKind kind) {
    switch (kind) {
        case RecordKind::Commissioning:
        case RecordKind::LargerPipework:
        case RecordKind::RoomInvestigation:
        case RecordKind::BuildingNotice:
        case RecordKind::CalibrationLog:
            return KeepRule::FifteenYears;
        case RecordKind::TightnessAndPurge:
        case RecordKind::LandlordSafety:
        case RecordKind::OwnerSafety:
        case RecordKind::Service:
        case RecordKind::WarningNotice:
        case RecordKind::ReportableEntry:
        case RecordKind::ReminderLetter:
        case RecordKind::NoAccessLetter:
        case RecordKind::CoveringLetter:
            break;
    }
    return KeepRule::SixYears;
}

calendar::Date keepUntil(RecordKind kind, calendar::Date issued) {
    return calendar::addMonths(
        issued, keepRuleOf(kind) == KeepRule::FifteenYears ? kFifteenYearsInMonths : kSixYearsInMonths);
}

calendar::Date keepLetterUntil(calendar::Date sent) {
    return calendar::addMonths(sent, kSixYearsInMonths);
}

}  // namespace hearth::record

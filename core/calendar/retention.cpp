// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/retention.h"

#include <algorithm>

namespace hearth::calendar {

namespace {

/// The first check day after `day`: a second one on the same day is no further check.
std::optional<Date> nextCheck(std::span<const Date> checks, Date day) {
    std::optional<Date> next;
    for (const auto check : checks) {
        if (check > day && (!next || check < *next)) {
            next = check;
        }
    }
    return next;
}

Date lastCheck(std::span<const Date> checks, Date least) {
    Date last = least;
    for (const auto check : checks) {
        last = std::max(last, check);
    }
    return last;
}

}  // namespace

Keep keepRecord(Date check, std::span<const Date> checks, std::optional<Date> removed, CheckLaw law) {
    const auto years = addMonths(check, kRecordMonths);
    if (law == CheckLaw::NorthernIreland) {
        return {years, KeepReason::TwoYears};
    }
    if (removed) {
        return {addMonths(lastCheck(checks, check), kRecordMonths), KeepReason::ItemRemoved};
    }
    const auto first = nextCheck(checks, check);
    const auto second = first ? nextCheck(checks, *first) : std::nullopt;
    if (!second) {
        return {std::nullopt, KeepReason::AwaitsFurtherChecks};
    }
    return *second >= years ? Keep{*second, KeepReason::FurtherChecks} : Keep{years, KeepReason::TwoYears};
}

Date tenantCopyBy(Date actualCheck) {
    return addDays(actualCheck, kTenantCopyDays);
}

Date recordCurrentUntil(Date actualCheck) {
    return addMonths(actualCheck, kCheckMonths);
}

std::optional<CopyWay> copyWay(const Occupation& occupation) {
    if (occupation.days && *occupation.days <= kTenantCopyDays) {
        return CopyWay::MayDisplay;
    }
    if (occupation.applianceInRooms == false) {
        return CopyWay::MayDisplayWithStatement;
    }
    if (!occupation.newTenant) {
        return std::nullopt;
    }
    return *occupation.newTenant ? CopyWay::BeforeMovingIn : CopyWay::WithinDays;
}

std::optional<Date> copyBy(CopyWay way, Date actualCheck, std::optional<Date> movesIn) {
    switch (way) {
        case CopyWay::WithinDays:
            return tenantCopyBy(actualCheck);
        case CopyWay::BeforeMovingIn:
            return movesIn;
        case CopyWay::MayDisplay:
        case CopyWay::MayDisplayWithStatement:
            break;
    }
    return std::nullopt;
}

}  // namespace hearth::calendar

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/due_state.h"
#include "core/register/checks_kept.h"
#include "core/store/connection.h"

#include <optional>
#include <string>
#include <vector>

/// What the next deadline of premises comes from, and what comes of it. Everything throws Failure.
namespace hearth::store {

struct ApplianceFacts {
    UuidBytes id{};
    bool isTenants = false;
    std::optional<calendar::Date> installed;
    std::optional<calendar::Date> extendedTo;
};
struct CheckFacts {
    calendar::Date date{};
    std::optional<UuidBytes> appliance;         // none: all that stood there
    std::optional<calendar::Date> countedFrom;  // as the engineer knew it at that check
    bool isRecord = false;                      // of a record of ours
    bool isLandlords = true;                    // it counts for regulation 36
};
struct BookingFacts {
    UuidBytes id{};
    calendar::Date date{};
    std::optional<UuidBytes> engineer;
};

struct DueFacts {
    UuidBytes premises{};
    reg::Address address;
    reg::Country country = reg::Country::England;
    calendar::CheckDuty said = calendar::CheckDuty::NotKnown;
    int months = 0;
    std::optional<calendar::Date> leaseBegins;
    bool isOwners = false;  // somebody lives in a home of their own there
    std::optional<UuidBytes> landlord;
    std::string landlordName;
    std::optional<UuidBytes> agent;
    int applianceRows = 0;  // with the tenant's own
    std::vector<ApplianceFacts> appliances;
    std::vector<CheckFacts> checks;
    std::vector<BookingFacts> bookings;  // those that stand
};

/// The duty as it was said, else as the roles tell.
[[nodiscard]] calendar::CheckDuty dutyOf(const DueFacts& facts);

/// One appliance, or the premises as a whole where none is known.
struct ItemFacts {
    std::optional<UuidBytes> appliance;
    bool reached = true;
    calendar::CheckedItem history;
    std::optional<calendar::Deadline> deadline;
};
/// `ownMonths`: the firm's usual interval.
[[nodiscard]] std::vector<ItemFacts> itemsOf(const DueFacts& facts, int ownMonths);
/// The deadline of one item after what `history` says.
[[nodiscard]] std::optional<calendar::Deadline> deadlineOfItem(calendar::CheckDuty duty,
                                                               const calendar::CheckedItem& history,
                                                               int months);
/// The interval in force at premises.
[[nodiscard]] int monthsOf(const DueFacts& facts, int ownMonths);

/// The row of `due_premises`, but for its key in the order of its columns.
[[nodiscard]] Cells dueCells(const DueFacts& facts, int ownMonths);

/// Of one premises; nothing for one that is gone or lies in the bin.
[[nodiscard]] std::optional<DueFacts> readDueFacts(const Connection& db, const UuidBytes& premises);
/// By key: of all where `premises` is empty, else of those that it, a SELECT of keys, gives.
[[nodiscard]] std::vector<DueFacts> readDueFactsAmong(const Connection& db, std::string_view premises);

/// The firm's usual interval in months.
[[nodiscard]] int readOwnInterval(const Connection& db);
inline constexpr std::string_view kOwnIntervalSetting = "due.months";
inline constexpr std::string_view kCadenceSetting = "due.cadence";
inline constexpr std::string_view kHolidaysSetting = "due.bank_holidays";

/// Days since 1970, as `due_premises` holds them, and back.
[[nodiscard]] std::int64_t dueDay(calendar::Date date);
[[nodiscard]] calendar::Date dateOfDueDay(std::int64_t day);

}  // namespace hearth::store

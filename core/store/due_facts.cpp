// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/due_facts.h"

#include "core/record/check_dates.h"
#include "core/register/forms.h"
#include "core/store/kept_repository.h"

#include <algorithm>
#include <charconv>

namespace hearth::store {
namespace {

using calendar::CheckDuty;
using calendar::Date;

constexpr int kUsualOwnMonths = 12;  // common practice, no source
constexpr char kPlaceMark = '\x1f';

Cell dayOrNull(const std::optional<Date>& date) {
    return date ? Cell(dueDay(*date)) : Cell();
}
Cell keyOrNull(const std::optional<UuidBytes>& key) {
    return key ? Cell(*key) : Cell();
}

bool isFor(const CheckFacts& check, const ItemFacts& item, CheckDuty duty) {
    if (check.appliance && check.appliance != item.appliance) {
        return false;
    }
    return check.isLandlords || duty == CheckDuty::OwnInterval;
}

/// What was counted from at the first check that is known, where nothing earlier is known by itself.
std::optional<Date> beforeFirst(const std::vector<const CheckFacts*>& checks) {
    const auto first = std::min_element(checks.begin(), checks.end(),
                                        [](const auto* a, const auto* b) { return a->date < b->date; });
    const bool tells =
        first != checks.end() && (*first)->countedFrom && *(*first)->countedFrom < (*first)->date;
    return tells ? (*first)->countedFrom : std::nullopt;
}

void addChecks(ItemFacts& item, const DueFacts& facts, CheckDuty duty) {
    std::vector<const CheckFacts*> known;
    for (const auto& check : facts.checks) {
        if (isFor(check, item, duty)) {
            known.push_back(&check);
        }
    }
    if (const auto before = beforeFirst(known)) {
        item.history.checks.push_back(*before);
    }
    for (const auto* check : known) {
        item.history.checks.push_back(check->date);
    }
    std::sort(item.history.checks.begin(), item.history.checks.end());
    auto& dates = item.history.checks;
    dates.erase(std::unique(dates.begin(), dates.end()),
                dates.end());  // two records of one day are one check
}

/// Whoever books anew after a booking's day knows that nothing came of it, though nobody said so.
bool isOvertaken(const BookingFacts& booking, const DueFacts& facts) {
    return std::any_of(facts.bookings.begin(), facts.bookings.end(), [&](const BookingFacts& other) {
        const auto madeAt = uuid7Milliseconds(other.id);
        return madeAt && other.id > booking.id &&
               std::chrono::sys_days(booking.date) + std::chrono::days(1) <=
                   std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(*madeAt));
    });
}

/// The booking that settles the deadline, else the last of them.
const BookingFacts* bookingThatCounts(const DueFacts& facts, const std::optional<calendar::Deadline>& due) {
    const BookingFacts* counts = nullptr;
    const auto settles = [&](const BookingFacts& booking) { return due && booking.date <= due->date; };
    for (const auto& booking : facts.bookings) {
        if (isOvertaken(booking, facts)) {
            continue;
        }
        const bool better =
            counts == nullptr || (settles(booking) ? !settles(*counts) || booking.date > counts->date
                                                   : !settles(*counts) && booking.date > counts->date);
        if (better) {
            counts = &booking;
        }
    }
    return counts;
}

std::string placeKey(const reg::Address& address) {
    return address.town + kPlaceMark + address.line1 + kPlaceMark + address.line2;
}

}  // namespace

std::int64_t dueDay(Date date) {
    return std::chrono::sys_days(date).time_since_epoch().count();
}
Date dateOfDueDay(std::int64_t day) {
    return std::chrono::sys_days(std::chrono::days(day));
}

int readOwnInterval(const Connection& db) {
    const auto text = readSetting(db, std::string(kOwnIntervalSetting));
    int months = kUsualOwnMonths;
    std::from_chars(text.data(), text.data() + text.size(), months);
    return months;
}

CheckDuty dutyOf(const DueFacts& facts) {
    const bool nothingReached =
        facts.applianceRows > 0 && std::all_of(facts.appliances.begin(), facts.appliances.end(),
                                               [](const ApplianceFacts& one) { return one.isTenants; });
    if (facts.said == CheckDuty::None || nothingReached) {
        return CheckDuty::None;
    }
    if (facts.said != CheckDuty::NotKnown) {
        return facts.said;
    }
    if (facts.landlord || facts.agent) {
        return CheckDuty::Let;
    }
    return facts.isOwners ? CheckDuty::None : CheckDuty::NotKnown;
}

int monthsOf(const DueFacts& facts, int ownMonths) {
    return facts.months > 0 ? facts.months : ownMonths;
}

std::optional<calendar::Deadline> deadlineOfItem(CheckDuty duty, const calendar::CheckedItem& history,
                                                 int months) {
    // Where nobody said whether it is let, an installation alone makes no deadline: most are people's own
    // homes.
    if (duty == CheckDuty::None || (duty == CheckDuty::NotKnown && history.checks.empty())) {
        return std::nullopt;
    }
    if (duty != CheckDuty::OwnInterval) {  // where no duty was said, the strictest
        return calendar::deadlineOf(history);
    }
    auto from = history.checks;
    if (from.empty() && history.installed) {
        from.push_back(*history.installed);
    }
    return calendar::ownDeadline(from, months);
}

std::vector<ItemFacts> itemsOf(const DueFacts& facts, int ownMonths) {
    const auto duty = dutyOf(facts);
    const auto law = record::checkLawOf(facts.country);
    std::vector<ItemFacts> items;
    for (const auto& appliance : facts.appliances) {
        ItemFacts item{appliance.id, !appliance.isTenants, {}, {}};
        item.history.installed = appliance.installed;
        item.history.extendedTo = appliance.extendedTo;
        items.push_back(std::move(item));
    }
    if (facts.applianceRows == 0) {
        items.emplace_back();
    }
    for (auto& item : items) {
        item.history.law = law;
        item.history.leaseBegins = facts.leaseBegins;
        addChecks(item, facts, duty);
        if (item.reached) {
            item.deadline = deadlineOfItem(duty, item.history, monthsOf(facts, ownMonths));
        }
    }
    return items;
}

Cells dueCells(const DueFacts& facts, int ownMonths) {
    const auto duty = dutyOf(facts);
    const auto postcode = reg::postcodeIn(facts.address.postcode).value_or(facts.address.postcode);
    const std::string outward = postcode.substr(0, postcode.find(' '));
    std::optional<calendar::Deadline> due;
    std::optional<UuidBytes> first;
    std::optional<Date> opens;
    std::optional<Date> last;
    std::int64_t reached = 0;
    std::int64_t unknown = 0;
    for (const auto& check : facts.checks) {
        last = std::max(last.value_or(check.date), check.date);
    }
    if (duty != CheckDuty::None) {
        for (const auto& item : itemsOf(facts, ownMonths)) {
            reached += item.reached ? 1 : 0;
            unknown += item.reached && !item.deadline ? 1 : 0;
            if (item.deadline && (!due || item.deadline->date < due->date)) {
                due = item.deadline;
                first = item.appliance;
            }
        }
    }
    if (due) {
        opens = calendar::opensOn(due->date, duty, record::checkLawOf(facts.country));
    }
    const BookingFacts* booking = bookingThatCounts(facts, due);
    return {static_cast<std::int64_t>(duty),
            due ? Cell(dueDay(due->date)) : Cell(),
            due ? dayOrNull(due->latest) : Cell(),
            due ? static_cast<std::int64_t>(due->reason) : std::int64_t{0},
            due ? Cell(dueDay(due->base)) : Cell(),
            dayOrNull(opens),
            keyOrNull(first),
            reached,
            unknown,
            dayOrNull(last),
            booking != nullptr ? Cell(booking->id) : Cell(),
            booking != nullptr ? Cell(dueDay(booking->date)) : Cell(),
            booking != nullptr ? keyOrNull(booking->engineer) : Cell(),
            keyOrNull(facts.landlord),
            facts.landlordName,
            keyOrNull(facts.agent),
            outward,
            placeKey(facts.address),
            postcode};
}

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/bank_holidays.h"
#include "core/record/nation.h"
#include "core/store/doings_repository.h"
#include "core/store/due_facts.h"
#include "core/store/due_list.h"
#include "core/store/due_repository.h"
#include "core/store/kept_repository.h"
#include "core/store/tables.h"

#include <algorithm>

/// What stands against a booking, and the order of a day's round.
namespace hearth::store {
namespace {

using calendar::Date;
using reg::Booking;
using reg::BookingState;

bool stands(const Booking& booking) {
    return booking.state == BookingState::Booked || booking.state == BookingState::Proposed;
}

bool sharesTime(const Booking& a, const Booking& b) {
    const auto end = [](const Booking& booking) {
        return booking.until.empty() ? booking.from : booking.until;
    };
    const bool sameStart = a.from == b.from;
    return sameStart || (a.from < end(b) && b.from < end(a));
}

std::string whereOf(const Connection& db, const Booking& booking) {
    return db.text("SELECT line1 || ', ' || town FROM premises WHERE id = ?", {booking.premises.bytes});
}

void addOthers(const Connection& db, const Booking& booking, Date today, std::vector<Clash>& clashes) {
    if (booking.engineer) {
        for (const auto& other : readBookings(db, booking.date, booking.date)) {
            if (other.id == booking.id || other.engineer != booking.engineer || !stands(other)) {
                continue;
            }
            const bool timed = !booking.from.empty() && !other.from.empty();
            if (!timed || sharesTime(booking, other)) {
                clashes.push_back(
                    {timed ? ClashKind::Overlaps : ClashKind::SameDay, other, whereOf(db, other)});
            }
        }
    }
    for (const auto& other : readBookings(db, booking.premises)) {
        if (other.id != booking.id && stands(other) && other.date >= today) {
            clashes.push_back({ClashKind::BookedAlready, other, calendar::isoText(other.date)});
        }
    }
}

void addDayOf(const Connection& db, const Booking& booking, std::vector<Clash>& clashes) {
    const auto holidays = readBankHolidays(db);
    const auto nation = record::nationOf(valueWithId<reg::Premises>(db, booking.premises.bytes).country);
    const auto weekday = std::chrono::weekday(std::chrono::sys_days(booking.date));
    if (weekday == std::chrono::Saturday || weekday == std::chrono::Sunday) {
        clashes.push_back({ClashKind::Weekend, {}, {}});
    }
    if (const auto name = calendar::bankHolidayOn(holidays, booking.date, nation)) {
        clashes.push_back({ClashKind::BankHoliday, {}, std::string(*name)});
    } else if (calendar::isBeyond(holidays, booking.date)) {
        clashes.push_back({ClashKind::HolidaysUnknown, {}, std::to_string(holidays.lastYear)});
    }
}

void addDeadlineOf(const Connection& db, const Booking& booking, Date today, std::vector<Clash>& clashes) {
    const auto lines = readDueLines(db, {booking.premises}, today);
    if (lines.empty() || !lines.front().deadline) {
        return;
    }
    const auto& line = lines.front();
    const std::string deadline = calendar::isoText(*line.deadline);
    if (booking.date > *line.deadline) {
        clashes.push_back({ClashKind::AfterDeadline, {}, deadline});
        return;
    }
    for (const auto& what : readIfChecked(db, {booking.premises}, booking.date)) {
        if (what.timing == calendar::CheckTiming::BeforeWindow) {
            clashes.push_back({ClashKind::BeforeWindow, {}, deadline});
        } else if (what.timing == calendar::CheckTiming::Boundary) {
            clashes.push_back({ClashKind::Boundary, {}, deadline});
        }
    }
}

std::size_t sharedBeginning(const std::string& a, const std::string& b) {
    const auto [end, other] = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
    return static_cast<std::size_t>(end - a.begin());
}

/// Behind the last stop of the area that is most alike.
void putByArea(std::vector<DayStop>& round, DayStop stop) {
    std::size_t best = 0;
    std::size_t place = round.size();
    for (std::size_t i = 0; i < round.size(); ++i) {
        const auto alike = sharedBeginning(round[i].line.address.postcode, stop.line.address.postcode);
        if (alike > 0 && alike >= best) {
            best = alike;
            place = i + 1;
        }
    }
    round.insert(round.begin() + static_cast<std::ptrdiff_t>(place), std::move(stop));
}

}  // namespace

calendar::BankHolidays readBankHolidays(const Connection& db) {
    const auto& ours = calendar::shippedBankHolidays();
    const auto kept = readSetting(db, std::string(kHolidaysSetting));
    if (kept.empty()) {
        return ours;
    }
    auto firms = calendar::bankHolidaysFrom(kept);
    if (!firms) {
        throw Failure(ErrorCode::StoreDamaged, {db.path(), std::string(kHolidaysSetting)});
    }
    return calendar::joinedHolidays(std::move(*firms), ours);
}

void saveBankHolidays(Session& session, const std::optional<calendar::BankHolidays>& table) {
    saveSetting(session, std::string(kHolidaysSetting), table ? calendar::bankHolidaysText(*table) : "");
}

std::vector<Clash> findClashes(const Connection& db, const Booking& booking, Date today) {
    std::vector<Clash> clashes;
    if (!booking.from.empty() && !booking.until.empty() && booking.until <= booking.from) {
        clashes.push_back({ClashKind::TimesCrossed, {}, {}});
    }
    addOthers(db, booking, today, clashes);
    addDayOf(db, booking, clashes);
    addDeadlineOf(db, booking, today, clashes);
    return clashes;
}

std::vector<DayStop> readDayRound(const Connection& db, std::optional<reg::EngineerId> engineer, Date day) {
    std::vector<DayStop> round;
    std::vector<DayStop> untimed;
    for (const auto& booking : readBookings(db, day, day)) {
        const auto lines = readDueLines(db, {booking.premises}, day);
        if (booking.state == BookingState::Booked && booking.engineer == engineer && !lines.empty()) {
            (booking.from.empty() ? untimed : round).push_back({booking, lines.front()});
        }
    }
    std::stable_sort(untimed.begin(), untimed.end(), [](const DayStop& a, const DayStop& b) {
        return a.line.address.postcode < b.line.address.postcode;
    });
    for (auto& stop : untimed) {
        putByArea(round, std::move(stop));
    }
    return round;
}

}  // namespace hearth::store

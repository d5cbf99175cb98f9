// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/bank_holidays.h"
#include "core/record/check_dates.h"
#include "core/store/due_lines.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::store {

/// Which safety checks are due, and what is done about them. The next deadline of each premises is derived
/// in the transaction that changes what it comes from, so that lists are quick; states follow from `today`,
/// which the caller gives. Whatever lies in the bin is left out. Writing members give StoreReadOnly or
/// StoreLocked on a store that is read only, and InBin for what lies in the bin; each is one step of undo.
class Due {
  public:
    virtual ~Due() = default;

    // the list
    /// How many premises stand where, by all of the filter but its states.
    [[nodiscard]] virtual Result<DueCounts> dueCounts(const DueFilter& filter,
                                                      calendar::Date today) const = 0;
    /// `first` counts from 0. `counts`: what dueCounts() found for this filter, where it was asked: lines far
    /// down are then found without counting again, and from whichever end is nearer.
    [[nodiscard]] virtual Result<std::vector<DueLine>> duePage(
        const DueFilter& filter, DueSort sort, calendar::Date today, int first, int count,
        const std::optional<DueCounts>& counts = {}) const = 0;
    [[nodiscard]] virtual Result<std::vector<DueChoice>> dueChoices(DueBy by, calendar::Date today) const = 0;
    /// What turned overdue after `since`, up to yesterday: for the reminder on start.
    [[nodiscard]] virtual Result<std::vector<DueLine>> overdueSince(calendar::Date since,
                                                                    calendar::Date today) const = 0;

    // one premises
    /// Errors: NotFound.
    [[nodiscard]] virtual Result<DueFile> dueFile(reg::PremisesId id, calendar::Date today) const = 0;
    /// Everything that happened there and is to happen, oldest first. Errors: NotFound.
    [[nodiscard]] virtual Result<std::vector<StoryEvent>> storyOf(reg::PremisesId id,
                                                                  calendar::Date today) const = 0;
    /// What checks of all that stands there, on that day, would make of the deadlines.
    [[nodiscard]] virtual Result<std::vector<DueIfChecked>> dueIfChecked(
        const std::vector<reg::PremisesId>& premises, calendar::Date day) const = 0;
    /// The number of the newest record that counts as a check, for each of these in their order; empty where
    /// there is none of ours.
    [[nodiscard]] virtual Result<std::vector<std::string>> newestRecords(
        const std::vector<reg::PremisesId>& premises) const = 0;

    // what is known of checks
    /// Of the appliances at a visit, up to its day and without what its own records say: what a record of it
    /// goes by. Appliances of which no check is known are left out. Errors: NotFound.
    [[nodiscard]] virtual Result<std::vector<record::CheckHistory>> checksBefore(
        reg::VisitId visit) const = 0;
    /// One for each premises: saving another replaces it.
    [[nodiscard]] virtual Result<void> save(const reg::CheckPlan& plan) = 0;
    [[nodiscard]] virtual Result<std::vector<reg::EarlierCheck>> earlierChecks(reg::PremisesId id) const = 0;
    [[nodiscard]] virtual Result<void> save(const reg::EarlierCheck& check) = 0;
    /// The same with the record as it was handed over, in one step. Errors: as Attachments::attach().
    [[nodiscard]] virtual Result<void> save(const reg::EarlierCheck& check, const NewAttachment& scan) = 0;
    [[nodiscard]] virtual Result<void> removeEarlierCheck(reg::EarlierCheckId id) = 0;
    /// The once-only extension of a new appliance; saving another replaces it.
    [[nodiscard]] virtual Result<void> save(const reg::CheckExtension& extension) = 0;

    // actions
    /// What stands against a booking; none refuses it. `booking` may be one that is there (moved).
    [[nodiscard]] virtual Result<std::vector<Clash>> clashesOf(const reg::Booking& booking,
                                                               calendar::Date today) const = 0;
    /// Several at once are one step of undo. An id is made where there is none; the state is Booked, the
    /// sequence counts up for those that are there.
    [[nodiscard]] virtual Result<std::vector<reg::BookingId>> book(
        const std::vector<reg::Booking>& bookings) = 0;
    /// Its sequence counts up, so that calendars follow. Errors: NotFound.
    [[nodiscard]] virtual Result<void> moveBooking(reg::BookingId id, calendar::Date date,
                                                   const std::string& from, const std::string& until,
                                                   std::optional<reg::EngineerId> engineer) = 0;
    /// Errors: NotFound.
    [[nodiscard]] virtual Result<void> cancelBooking(reg::BookingId id, const std::string& why) = 0;
    /// Kept as a letter of the kind "call" by telephone. Errors: NotFound.
    [[nodiscard]] virtual Result<reg::LetterId> logCall(const Call& call) = 0;
    /// Keeps what was sent, word for word, as one step.
    [[nodiscard]] virtual Result<std::vector<reg::LetterId>> keepSent(
        const std::vector<SentLetter>& letters) = 0;
    /// Keeps the attempt with its photograph, and ends the booking that it was made for. Errors: as
    /// Attachments::attach(); NotFound.
    [[nodiscard]] virtual Result<reg::AccessAttemptId> logNoAccess(const NoAccess& what) = 0;
    /// Premises like that one, with installations, pipes and appliances, duty and interval, landlord and
    /// agent, without serial numbers, meter points, readings, tenants and history. One step of undo. Errors:
    /// NotFound.
    [[nodiscard]] virtual Result<std::vector<reg::PremisesId>> copyPremises(
        reg::PremisesId id, const std::vector<AlikePremises>& alike) = 0;

    /// Bank holidays in force, for bookings: what the firm took in, and ours beyond its last year.
    [[nodiscard]] virtual Result<calendar::BankHolidays> bankHolidays() const = 0;
    /// Takes the place of what was taken in before; nothing: ours again. A line of the change log, and no
    /// step of undo: another file takes its place.
    [[nodiscard]] virtual Result<void> saveBankHolidays(
        const std::optional<calendar::BankHolidays>& table) = 0;

    // reminders
    /// Weeks before the deadline; the usual ones where the firm said none.
    [[nodiscard]] virtual Result<calendar::Cadence> cadence() const = 0;
    [[nodiscard]] virtual Result<void> saveCadence(const calendar::Cadence& cadence) = 0;
    /// Months of the firm's own interval; 12 where it said none (common practice, no source).
    [[nodiscard]] virtual Result<int> ownInterval() const = 0;
    /// Errors: OutOfRange for other than 1 to 120. All deadlines are worked out anew.
    [[nodiscard]] virtual Result<void> saveOwnInterval(int months) = 0;
    /// Those that fall due by the cadence today, in address order of whom they go to, also those that nobody
    /// can or may be sent, with why, and those with whom a day was agreed: Reminder::booking.
    [[nodiscard]] virtual Result<std::vector<Reminder>> remindersDue(const DueFilter& filter,
                                                                     calendar::Date today) const = 0;
    /// The same for premises that were chosen, whatever the cadence says.
    [[nodiscard]] virtual Result<std::vector<Reminder>> remindersFor(
        const std::vector<reg::PremisesId>& premises, calendar::Date today) const = 0;

    // a day, and the whole
    /// An engineer's bookings of a day: those with times in their order, the others where their postcode
    /// lies nearest in the list of areas. None: those without an engineer.
    [[nodiscard]] virtual Result<std::vector<DayStop>> dayRound(std::optional<reg::EngineerId> engineer,
                                                                calendar::Date day) const = 0;
    [[nodiscard]] virtual Result<DueOverview> dueOverview(calendar::Date today) const = 0;

    // soundness
    /// How many premises stand in the list otherwise than they should; 0 for a sound one. Reads everything.
    [[nodiscard]] virtual Result<int> staleInDue() const = 0;
    /// Works out every deadline anew.
    [[nodiscard]] virtual Result<void> mendDue() = 0;
};

}  // namespace hearth::store

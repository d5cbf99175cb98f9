// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/bank_holidays.h"
#include "core/store/due_lines.h"
#include "core/store/session.h"

#include <string>
#include <vector>

/// One premises with its checks, and what is done about them. Everything throws Failure. See Due.
namespace hearth::store {

/// Of the appliances at a visit, without what its own records say.
[[nodiscard]] std::vector<record::CheckHistory> readChecksBefore(const Connection& db, reg::VisitId visit);
[[nodiscard]] DueFile readDueFile(const Connection& db, reg::PremisesId id, calendar::Date today);
[[nodiscard]] std::vector<StoryEvent> readStory(const Connection& db, reg::PremisesId id,
                                                calendar::Date today);
[[nodiscard]] std::vector<DueIfChecked> readIfChecked(const Connection& db,
                                                      const std::vector<reg::PremisesId>& premises,
                                                      calendar::Date day);
[[nodiscard]] std::vector<std::string> readNewestRecords(const Connection& db,
                                                         const std::vector<reg::PremisesId>& premises);

void savePlan(Session& session, const reg::CheckPlan& plan);
[[nodiscard]] std::vector<reg::EarlierCheck> readEarlierChecks(const Connection& db, reg::PremisesId id);
void saveEarlierCheck(Session& session, const reg::EarlierCheck& check, const NewAttachment* scan);
void removeEarlierCheck(Session& session, reg::EarlierCheckId id);
void saveExtension(Session& session, const reg::CheckExtension& extension);

[[nodiscard]] std::vector<Clash> findClashes(const Connection& db, const reg::Booking& booking,
                                             calendar::Date today);
[[nodiscard]] std::vector<reg::BookingId> keepBookings(Session& session,
                                                       const std::vector<reg::Booking>& bookings);
void moveBooking(Session& session, reg::BookingId id, calendar::Date date, const std::string& from,
                 const std::string& until, std::optional<reg::EngineerId> engineer);
void cancelBooking(Session& session, reg::BookingId id, const std::string& why);
[[nodiscard]] reg::LetterId keepCall(Session& session, const Call& call);
[[nodiscard]] std::vector<reg::LetterId> keepLetters(Session& session,
                                                     const std::vector<SentLetter>& letters);
[[nodiscard]] reg::AccessAttemptId keepNoAccess(Session& session, const NoAccess& what);
[[nodiscard]] std::vector<reg::PremisesId> copyPremises(Session& session, reg::PremisesId id,
                                                        const std::vector<AlikePremises>& alike);

[[nodiscard]] calendar::BankHolidays readBankHolidays(const Connection& db);
void saveBankHolidays(Session& session, const std::optional<calendar::BankHolidays>& table);

[[nodiscard]] calendar::Cadence readCadence(const Connection& db);
void saveCadence(Session& session, const calendar::Cadence& cadence);
void saveOwnInterval(Session& session, int months);
[[nodiscard]] std::vector<Reminder> readRemindersDue(const Connection& db, const DueFilter& filter,
                                                     calendar::Date today);
[[nodiscard]] std::vector<Reminder> readRemindersFor(const Connection& db,
                                                     const std::vector<reg::PremisesId>& premises,
                                                     calendar::Date today);

[[nodiscard]] std::vector<DayStop> readDayRound(const Connection& db, std::optional<reg::EngineerId> engineer,
                                                calendar::Date day);
[[nodiscard]] DueOverview readOverview(const Connection& db, calendar::Date today);

}  // namespace hearth::store

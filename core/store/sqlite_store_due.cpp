// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/due_facts.h"
#include "core/store/due_index.h"
#include "core/store/due_list.h"
#include "core/store/due_repository.h"
#include "core/store/edit.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

using calendar::Date;

Result<DueCounts> SqliteStore::dueCounts(const DueFilter& filter, Date today) const {
    return guarded([&] { return countDue(m_db, filter, today); });
}
Result<std::vector<DueLine>> SqliteStore::duePage(const DueFilter& filter, DueSort sort, Date today,
                                                  int first, int count,
                                                  const std::optional<DueCounts>& counts) const {
    return guarded([&] {
        const ReadScope scope(m_db);  // its parts must be of one state
        return readDuePage(m_db, {filter, sort, today, counts}, first, count);
    });
}
Result<std::vector<DueChoice>> SqliteStore::dueChoices(DueBy by, Date today) const {
    return guarded([&] { return readDueChoices(m_db, by, today); });
}
Result<std::vector<DueLine>> SqliteStore::overdueSince(Date since, Date today) const {
    return guarded([&] { return readOverdueSince(m_db, since, today); });
}

Result<DueFile> SqliteStore::dueFile(reg::PremisesId id, Date today) const {
    return guarded([&] { return readDueFile(m_db, id, today); });
}
Result<std::vector<StoryEvent>> SqliteStore::storyOf(reg::PremisesId id, Date today) const {
    return guarded([&] { return readStory(m_db, id, today); });
}
Result<std::vector<std::string>> SqliteStore::newestRecords(
    const std::vector<reg::PremisesId>& premises) const {
    return guarded([&] { return readNewestRecords(m_db, premises); });
}
Result<std::vector<DueIfChecked>> SqliteStore::dueIfChecked(const std::vector<reg::PremisesId>& premises,
                                                            Date day) const {
    return guarded([&] { return readIfChecked(m_db, premises, day); });
}

Result<std::vector<record::CheckHistory>> SqliteStore::checksBefore(reg::VisitId visit) const {
    return guarded([&] {
        const ReadScope scope(m_db);
        return readChecksBefore(m_db, visit);
    });
}

Result<void> SqliteStore::save(const reg::CheckPlan& plan) {
    return changing([&] { savePlan(m_session, plan); });
}
Result<std::vector<reg::EarlierCheck>> SqliteStore::earlierChecks(reg::PremisesId id) const {
    return guarded([&] { return readEarlierChecks(m_db, id); });
}
Result<void> SqliteStore::save(const reg::EarlierCheck& check) {
    return changing([&] { saveEarlierCheck(m_session, check, nullptr); });
}
Result<void> SqliteStore::save(const reg::EarlierCheck& check, const NewAttachment& scan) {
    return changing([&] { saveEarlierCheck(m_session, check, &scan); });
}
Result<void> SqliteStore::removeEarlierCheck(reg::EarlierCheckId id) {
    return changing([&] { store::removeEarlierCheck(m_session, id); });
}
Result<void> SqliteStore::save(const reg::CheckExtension& extension) {
    return changing([&] { saveExtension(m_session, extension); });
}

Result<std::vector<Clash>> SqliteStore::clashesOf(const reg::Booking& booking, Date today) const {
    return guarded([&] { return findClashes(m_db, booking, today); });
}
Result<std::vector<reg::BookingId>> SqliteStore::book(const std::vector<reg::Booking>& bookings) {
    return changing([&] { return keepBookings(m_session, bookings); });
}
Result<void> SqliteStore::moveBooking(reg::BookingId id, Date date, const std::string& from,
                                      const std::string& until, std::optional<reg::EngineerId> engineer) {
    return changing([&] { store::moveBooking(m_session, id, date, from, until, engineer); });
}
Result<void> SqliteStore::cancelBooking(reg::BookingId id, const std::string& why) {
    return changing([&] { store::cancelBooking(m_session, id, why); });
}
Result<reg::LetterId> SqliteStore::logCall(const Call& call) {
    return changing([&] { return keepCall(m_session, call); });
}
Result<std::vector<reg::LetterId>> SqliteStore::keepSent(const std::vector<SentLetter>& letters) {
    return changing([&] { return keepLetters(m_session, letters); });
}
Result<reg::AccessAttemptId> SqliteStore::logNoAccess(const NoAccess& what) {
    return changing([&] { return keepNoAccess(m_session, what); });
}
Result<std::vector<reg::PremisesId>> SqliteStore::copyPremises(reg::PremisesId id,
                                                               const std::vector<AlikePremises>& alike) {
    return changing([&] { return store::copyPremises(m_session, id, alike); });
}

Result<calendar::BankHolidays> SqliteStore::bankHolidays() const {
    return guarded([&] { return readBankHolidays(m_db); });
}
Result<void> SqliteStore::saveBankHolidays(const std::optional<calendar::BankHolidays>& table) {
    return changing([&] { store::saveBankHolidays(m_session, table); });
}
Result<calendar::Cadence> SqliteStore::cadence() const {
    return guarded([&] { return readCadence(m_db); });
}
Result<void> SqliteStore::saveCadence(const calendar::Cadence& cadence) {
    return changing([&] { store::saveCadence(m_session, cadence); });
}
Result<int> SqliteStore::ownInterval() const {
    return guarded([&] { return readOwnInterval(m_db); });
}
Result<void> SqliteStore::saveOwnInterval(int months) {
    return changing([&] { store::saveOwnInterval(m_session, months); });
}
Result<std::vector<Reminder>> SqliteStore::remindersDue(const DueFilter& filter, Date today) const {
    return guarded([&] { return readRemindersDue(m_db, filter, today); });
}
Result<std::vector<Reminder>> SqliteStore::remindersFor(const std::vector<reg::PremisesId>& premises,
                                                        Date today) const {
    return guarded([&] { return readRemindersFor(m_db, premises, today); });
}

Result<std::vector<DayStop>> SqliteStore::dayRound(std::optional<reg::EngineerId> engineer, Date day) const {
    return guarded([&] { return readDayRound(m_db, engineer, day); });
}
Result<DueOverview> SqliteStore::dueOverview(Date today) const {
    return guarded([&] { return readOverview(m_db, today); });
}

Result<int> SqliteStore::staleInDue() const {
    return guarded([&] { return store::staleInDue(m_db); });
}
Result<void> SqliteStore::mendDue() {
    return changing([&] { rebuildDue(m_db); });
}

}  // namespace hearth::store

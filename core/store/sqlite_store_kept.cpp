// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/bin_repository.h"
#include "core/store/change_log.h"
#include "core/store/doings_repository.h"
#include "core/store/kept_repository.h"
#include "core/store/record_repository.h"
#include "core/store/register_repository.h"
#include "core/store/sqlite_store.h"
#include "core/store/suggesting.h"
#include "core/store/tables.h"

namespace hearth::store {

Result<std::vector<reg::Appliance>> SqliteStore::appliances(reg::InstallationId id, Removed removed) const {
    return guarded([&] { return readAppliances(m_db, id, removed); });
}
Result<std::vector<reg::Appliance>> SqliteStore::appliancesOf(reg::PremisesId id, Removed removed) const {
    return guarded([&] { return readAppliances(m_db, id, removed); });
}
Result<reg::Appliance> SqliteStore::appliance(reg::ApplianceId id) const {
    return guarded([&] { return valueWithId<reg::Appliance>(m_db, id.bytes); });
}
Result<void> SqliteStore::save(const reg::Appliance& appliance) {
    return changing([&] { saveAppliance(m_session, appliance); });
}
Result<void> SqliteStore::orderAppliances(reg::InstallationId id,
                                          const std::vector<reg::ApplianceId>& order) {
    return changing([&] { store::orderAppliances(m_session, id, order); });
}
Result<ApplianceHistory> SqliteStore::historyOf(reg::ApplianceId id) const {
    return guarded([&] { return readHistory(m_db, id); });
}

Result<std::vector<reg::Competence>> SqliteStore::competences(reg::EngineerId id) const {
    return guarded([&] { return readCompetences(m_db, id); });
}
Result<void> SqliteStore::save(const reg::Competence& competence) {
    return changing([&] { saveOne(m_session, competence); });
}
Result<void> SqliteStore::removeCompetence(reg::CompetenceId id) {
    return changing([&] { removeOne<reg::Competence>(m_session, id.bytes); });
}

Result<std::vector<reg::VisitFile::Holder>> SqliteStore::holdersAt(reg::PremisesId id,
                                                                   calendar::Date date) const {
    return guarded([&] { return readHoldersAt(m_db, id, date); });
}
Result<std::vector<RoleLine>> SqliteStore::rolesOf(reg::PremisesId id) const {
    return guarded([&] { return readRoles(m_db, id); });
}
Result<std::vector<RoleLine>> SqliteStore::rolesOf(reg::PartyId id) const {
    return guarded([&] { return readRoles(m_db, id); });
}
Result<void> SqliteStore::endRole(reg::PremisesId premises, reg::RoleKind kind, calendar::Date lastDay) {
    return changing([&] { store::endRole(m_session, premises, kind, lastDay); });
}

Result<std::vector<reg::AccessAttempt>> SqliteStore::accessAttempts(reg::PremisesId id) const {
    return guarded([&] { return readAttempts(m_db, id); });
}
Result<void> SqliteStore::save(const reg::AccessAttempt& attempt) {
    return changing([&] { saveOne(m_session, attempt); });
}
Result<std::vector<reg::Letter>> SqliteStore::letters(reg::PremisesId id) const {
    return guarded([&] { return readLetters(m_db, id); });
}
Result<std::vector<reg::Letter>> SqliteStore::letters(reg::PartyId id) const {
    return guarded([&] { return readLetters(m_db, id); });
}
Result<void> SqliteStore::save(const reg::Letter& letter) {
    return changing([&] { saveOne(m_session, letter); });
}
Result<std::vector<reg::Booking>> SqliteStore::bookings(reg::PremisesId id) const {
    return guarded([&] { return readBookings(m_db, id); });
}
Result<std::vector<reg::Booking>> SqliteStore::bookings(calendar::Date first, calendar::Date last) const {
    return guarded([&] { return readBookings(m_db, first, last); });
}
Result<void> SqliteStore::save(const reg::Booking& booking) {
    return changing([&] { saveOne(m_session, booking); });
}

Result<std::vector<reg::Situation>> SqliteStore::situations(reg::PremisesId id) const {
    return guarded([&] { return readSituations(m_db, id); });
}
Result<std::vector<reg::Situation>> SqliteStore::openSituations() const {
    return guarded([&] { return readOpenSituations(m_db); });
}
Result<void> SqliteStore::save(const reg::Situation& situation) {
    return changing([&] { saveOne(m_session, situation); });
}
Result<std::vector<reg::SituationEvent>> SqliteStore::eventsOf(reg::SituationId id) const {
    return guarded([&] { return readEvents(m_db, id); });
}
Result<void> SqliteStore::add(const reg::SituationEvent& event) {
    return changing([&] { addEvent(m_session, event); });
}

Result<std::vector<reg::EmergencyContact>> SqliteStore::emergencyContacts() const {
    return guarded([&] { return readContacts(m_db); });
}
Result<void> SqliteStore::save(const reg::EmergencyContact& contact) {
    return changing([&] { saveContact(m_session, contact); });
}
Result<void> SqliteStore::removeEmergencyContact(reg::EmergencyContactId id) {
    return changing([&] { removeOne<reg::EmergencyContact>(m_session, id.bytes); });
}

Result<std::string> SqliteStore::setting(const std::string& name) const {
    return guarded([&] { return readSetting(m_db, name); });
}
Result<void> SqliteStore::saveSetting(const std::string& name, const std::string& value) {
    return changing([&] { store::saveSetting(m_session, name, value); });
}

Result<reg::BinnedId> SqliteStore::putIntoBin(const std::string& table, const UuidBytes& row,
                                              const std::string& label) {
    return changing([&] { return store::putIntoBin(m_session, table, row, label); });
}
Result<std::vector<reg::Binned>> SqliteStore::bin() const {
    return guarded([&] { return readBin(m_db); });
}
Result<void> SqliteStore::bringBack(reg::BinnedId id) {
    return changing([&] { store::bringBack(m_session, id); });
}
Result<void> SqliteStore::removeForGood(reg::BinnedId id) {
    return changing([&] { store::removeForGood(m_session, id); });
}

Result<ChangePage> SqliteStore::changesOfPremises(reg::PremisesId id, int limit,
                                                  std::optional<ChangeId> after) const {
    return guarded([&] { return changePage(m_db, id, limit, after); });
}
Result<ChangePage> SqliteStore::changesOfRecord(RecordId id, int limit, std::optional<ChangeId> after) const {
    return guarded([&] { return changePage(m_db, id, limit, after); });
}
Result<std::vector<RecordEvent>> SqliteStore::recordEvents(RecordId id) const {
    return guarded([&] { return eventsOfRecord(m_db, id); });
}

Result<std::vector<std::string>> SqliteStore::suggestions(Suggest what, const std::string& typed,
                                                          const std::string& make, int limit) const {
    return guarded([&] { return readSuggestions(m_session, what, typed, make, limit); });
}
Result<std::vector<reg::Appliance>> SqliteStore::lastAppliances(reg::PremisesId id) const {
    return guarded([&] { return readLastAppliances(m_db, id); });
}

}  // namespace hearth::store

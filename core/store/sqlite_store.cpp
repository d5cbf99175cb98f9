// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_store.h"

#include "core/store/backup.h"
#include "core/store/change_log.h"
#include "core/store/issuing.h"
#include "core/store/kept_repository.h"
#include "core/store/premises_list.h"
#include "core/store/record_repository.h"
#include "core/store/register_repository.h"
#include "core/store/rule_repository.h"
#include "core/store/tables.h"
#include "core/store/undo.h"
#include "core/store/verification.h"
#include "core/store/visit_repository.h"

#include <cassert>

namespace hearth::store {

SqliteStore::SqliteStore(Opened opened, std::filesystem::path path, const Clock& clock)
    : m_opened(std::move(opened)),
      m_path(std::move(path)),
      m_db(*m_opened.db),
      m_session{m_db, clock, storeIdOf(m_db), {}, {}},
      m_dataVersion(m_db.number("PRAGMA data_version")) {}

// SQLite sees a file that was moved, deleted or put in the place of ours. One that was copied over ours, byte
// by byte, looks to it like the work of another connection, and ours would go on in another firm's store.
void SqliteStore::checkStillOurs() {
    const auto version = m_db.number("PRAGMA data_version");
    if (version == m_dataVersion) {
        return;
    }
    const auto stillOurs = guarded([&] { return storeIdOf(m_db) == m_session.store; });
    if (!stillOurs || !*stillOurs) {
        throw Failure(ErrorCode::StoreMoved, {m_path.string()});
    }
    m_dataVersion = version;
}

Error SqliteStore::whyReadOnly() const {
    assert(isReadOnly());
    return *m_opened.readOnly;
}

Result<void> SqliteStore::together(const std::function<Result<void>()>& writes, Steps steps) {
    const auto undoableBefore = m_session.undoable;
    if (steps == Steps::One) {
        m_session.oneStep = m_session.newId();
    }
    auto done = changing([&] {
        Transaction whole(m_db);
        valueOrThrow(writes());
        whole.commit();
    });
    m_session.oneStep.reset();
    if (!done) {
        m_session.undoable = undoableBefore;
    }
    return done;
}

Result<reg::Firm> SqliteStore::firm() const {
    return guarded([&] { return readFirm(m_db); });
}
Result<void> SqliteStore::saveFirm(const reg::Firm& firm) {
    return changing([&] { store::saveFirm(m_session, firm); });
}
Result<std::vector<reg::Engineer>> SqliteStore::engineers() const {
    return guarded([&] { return readEngineers(m_db); });
}
Result<void> SqliteStore::save(const reg::Engineer& engineer) {
    return changing([&] { saveOne(m_session, engineer); });
}
Result<std::vector<reg::Instrument>> SqliteStore::instruments() const {
    return guarded([&] { return readInstruments(m_db); });
}
Result<void> SqliteStore::save(const reg::Instrument& instrument) {
    return changing([&] { saveOne(m_session, instrument); });
}

Result<rulebook::RuleBook> SqliteStore::ruleBook() const {
    return guarded([&] { return readRuleBook(m_db); });
}
Result<void> SqliteStore::save(const rulebook::FirmEntry& entry) {
    return changing([&] { saveFirmEntry(m_session, entry); });
}
Result<std::vector<rulebook::FirmEntry>> SqliteStore::ruleHistory(const rulebook::RuleKey& key) const {
    return guarded([&] { return readRuleHistory(m_db, key); });
}

Result<std::vector<PremisesLine>> SqliteStore::premises(const std::string& search, int limit) const {
    return guarded([&] { return findPremises(m_db, search, limit); });
}
Result<reg::Premises> SqliteStore::premises(reg::PremisesId id) const {
    return guarded([&] { return valueWithId<reg::Premises>(m_db, id.bytes); });
}
Result<void> SqliteStore::save(const reg::Premises& premises) {
    return changing([&] { saveOne(m_session, premises); });
}
Result<std::vector<reg::Party>> SqliteStore::parties(const std::string& search, int limit) const {
    return guarded([&] { return findParties(m_db, search, limit); });
}
Result<void> SqliteStore::save(const reg::Party& party) {
    return changing([&] { saveOne(m_session, party); });
}
Result<std::vector<reg::VisitFile::Holder>> SqliteStore::holders(reg::PremisesId id) const {
    return guarded([&] { return readHolders(m_session, id); });
}
Result<void> SqliteStore::save(const reg::Role& role) {
    return changing([&] { saveRole(m_session, role); });
}
Result<void> SqliteStore::removeRole(reg::PremisesId premises, reg::RoleKind kind) {
    return changing([&] { store::removeRole(m_session, premises, kind); });
}
Result<std::vector<reg::Installation>> SqliteStore::installations(reg::PremisesId id) const {
    return guarded([&] { return readInstallations(m_db, id); });
}
Result<void> SqliteStore::save(const reg::Installation& installation) {
    return changing([&] { saveOne(m_session, installation); });
}
Result<std::vector<reg::PipeSection>> SqliteStore::pipes(reg::InstallationId id) const {
    return guarded([&] { return readPipes(m_db, id); });
}
Result<void> SqliteStore::savePipes(reg::InstallationId id, const std::vector<reg::PipeSection>& sections) {
    return changing([&] { store::savePipes(m_session, id, sections); });
}

Result<std::vector<VisitLine>> SqliteStore::visits(const std::string& search, int limit) const {
    return guarded([&] { return findVisits(m_db, search, limit); });
}
Result<std::vector<VisitLine>> SqliteStore::visitsOf(reg::PremisesId id) const {
    return guarded([&] { return visitsAt(m_db, id); });
}
Result<reg::VisitId> SqliteStore::startVisit(const reg::Visit& visit) {
    return changing([&] { return store::startVisit(m_session, visit); });
}
Result<void> SqliteStore::save(const reg::Visit& visit) {
    return changing([&] { saveOne(m_session, visit); });
}
Result<reg::TestId> SqliteStore::addTest(reg::VisitId visit, const std::string& label) {
    return changing([&] { return store::addTest(m_session, visit, label); });
}
Result<reg::VisitFile> SqliteStore::visitFile(reg::VisitId id) const {
    return guarded([&] { return readVisitFile(m_session, id); });
}
Result<void> SqliteStore::saveEntry(const reg::Entry& entry) {
    return changing([&] { store::saveEntry(m_session, entry); });
}

Result<RecordId> SqliteStore::issue(const IssueRequest& request, const Render& render) {
    return changing([&] { return issueRecord(m_session, request, render); });
}
Result<std::vector<RecordLine>> SqliteStore::records(const std::string& search, int limit) const {
    return guarded([&] { return findRecords(m_db, search, limit); });
}
Result<std::vector<RecordLine>> SqliteStore::recordsOf(reg::VisitId id) const {
    return guarded([&] { return store::recordsOf(m_db, id); });
}
Result<IssuedRecord> SqliteStore::record(RecordId id) const {
    return guarded([&] { return readRecord(m_db, id); });
}
Result<std::optional<RecordId>> SqliteStore::recordByNumber(const std::string& number) const {
    return guarded([&] { return newestOfNumber(m_db, number); });
}
Result<void> SqliteStore::verify() const {
    return guarded([&] { verifyAll(m_db); });
}
Result<void> SqliteStore::noteEvent(RecordId id, const std::string& event, const std::string& detail) {
    return changing([&] { store::noteEvent(m_session, id, event, detail); });
}

Result<std::vector<Change>> SqliteStore::changes(const std::string& table, const std::string& row) const {
    return guarded([&] { return changesOf(m_db, table, row); });
}
Result<std::vector<Change>> SqliteStore::changesOfVisit(reg::VisitId id) const {
    return guarded([&] { return changesOf(m_db, id); });
}
Result<std::optional<Change>> SqliteStore::undo() {
    return changing([&] { return undoNewest(m_session); });
}

Result<void> SqliteStore::backUp(const std::filesystem::path& target) const {
    return guarded([&] { backUpTo(m_db, target); });
}

Result<std::unique_ptr<Store>> Store::create(const std::filesystem::path& path, const reg::Firm& firm,
                                             const Clock& clock) {
    const auto created = guarded([&] { createFile(path, firm, clock, shippedMigrations()); });
    if (!created) {
        return tl::unexpected<Error>(created.error());
    }
    return open(path, Access::Write, clock);
}

Result<std::unique_ptr<Store>> Store::open(const std::filesystem::path& path, Access access,
                                           const Clock& clock) {
    return guarded([&]() -> std::unique_ptr<Store> {
        return std::make_unique<SqliteStore>(openFile(path, access, clock, shippedMigrations()), path, clock);
    });
}

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/visit_repository.h"

#include "core/store/bin_repository.h"
#include "core/store/doings_repository.h"
#include "core/store/entry_rows.h"
#include "core/store/hand_repository.h"
#include "core/store/register_repository.h"
#include "core/store/search_query.h"
#include "core/store/trace_repository.h"

#include <algorithm>
#include <set>

namespace hearth::store {
namespace {

std::vector<VisitLine> visitLines(const Connection& db, const std::string& where, const Cells& values) {
    const Table& table = tableOf<reg::Visit>();
    const std::string sql = "SELECT " + table.columnList("v") + ", p.line1, p.line2, p.town, p.postcode, " +
                            customerOf("v.premises") +
                            ", coalesce((SELECT e.name FROM engineers AS e WHERE e.id = v.engineer), '')"
                            ", (SELECT count(*) FROM record_snapshots AS s WHERE s.visit = v.id)"
                            " FROM visits AS v JOIN premises AS p ON p.id = v.premises WHERE " +
                            notInBin("v.id") + " AND " + notInBin("v.premises") + " AND " +
                            notInBin("v.installation") + " AND " + where;
    const int after = static_cast<int>(table.columns.size());
    return db.all(sql, values, [&](const Columns& columns) {
        VisitLine line;
        line.visit = valueOf<reg::Visit>(columns);
        line.address = {columns.text(after), columns.text(after + 1), columns.text(after + 2),
                        columns.text(after + 3)};
        line.customer = columns.text(after + 4);
        line.engineer = columns.text(after + 5);
        line.records = columns.number(after + 6);
        return line;
    });
}

std::vector<reg::Test> testsOf(const Connection& db, reg::VisitId visit) {
    return valuesWhere<reg::Test>(db, "WHERE t.visit = ? ORDER BY t.position, t.id", {visit.bytes});
}

/// The subject must be the visit's own: an entry on another's would be shown to nobody.
bool belongs(const Connection& db, const reg::Visit& visit, const reg::SubjectRef& subject) {
    switch (subject.kind) {
        case reg::SubjectKind::Visit:
            return subject.id == visit.id.bytes;
        case reg::SubjectKind::Installation:
            return subject.id == visit.installation.bytes;
        case reg::SubjectKind::Test:
            return db.number("SELECT count(*) FROM tests WHERE id = ? AND visit = ?",
                             {subject.id, visit.id.bytes}) > 0;
        case reg::SubjectKind::Appliance:
            return db.number(
                       "SELECT count(*) FROM appliances AS a JOIN installations AS i ON i.id = "
                       "a.installation WHERE a.id = ? AND i.premises = ?",
                       {subject.id, visit.premises.bytes}) > 0;
        case reg::SubjectKind::Situation:
            return db.number("SELECT count(*) FROM situations WHERE id = ? AND premises = ?",
                             {subject.id, visit.premises.bytes}) > 0;
        case reg::SubjectKind::Room:
            // Known by its entries alone: the room of nobody else's premises, and nothing but a room.
            return subject.id != UuidBytes{} &&
                   db.number(
                       "SELECT count(*) FROM entries AS e JOIN visits AS v ON v.id = e.visit WHERE e.subject "
                       "= ? AND (v.premises <> ? OR e.subject_kind <> 'room')",
                       {subject.id, visit.premises.bytes}) == 0;
    }
    return false;
}

/// Those that stand in the installation, and what the visit says something of (also removed or elsewhere on
/// the premises since).
std::vector<reg::Appliance> appliancesFor(const Connection& db, const reg::Visit& visit) {
    return valuesWhere<reg::Appliance>(
        db,
        "WHERE (t.installation = ? AND t.removed_on IS NULL AND " + notInBin("t.id") +
            ") OR t.id IN (SELECT e.subject FROM entries AS e WHERE e.visit = ? AND e.subject_kind = "
            "'appliance') ORDER BY t.installation, t.position, t.id",
        {visit.installation.bytes, visit.id.bytes});
}

std::vector<reg::Situation> situationsFor(const Connection& db, reg::VisitId visit) {
    return valuesWhere<reg::Situation>(
        db,
        "WHERE (t.visit = ? OR t.id IN (SELECT e.subject FROM entries AS e WHERE e.visit = ? AND "
        "e.subject_kind = 'situation')) AND " +
            notInBin("t.id") + " ORDER BY t.found_at, t.id",
        {visit.bytes, visit.bytes});
}

/// The firm's, with the one who went there even if the bin hides him.
std::vector<reg::Engineer> engineersFor(const Connection& db, const reg::Visit& visit) {
    const Cell there = visit.engineer ? Cell(visit.engineer->bytes) : Cell();
    return valuesWhere<reg::Engineer>(
        db, "WHERE t.id = ? OR " + notInBin("t.id") + " ORDER BY t.name COLLATE NOCASE, t.id", {there});
}

/// The firm's, with those that the visit's readings name. A test's gauge is named by its entry's text.
std::vector<reg::Instrument> instrumentsFor(const Connection& db, reg::VisitId visit) {
    std::vector<reg::Instrument> instruments;
    std::set<UuidBytes> used;
    for (const auto& entry : entriesOf(db, visit)) {
        if (entry.instrument) {
            used.insert(entry.instrument->bytes);
        }
        if (const auto named = uuidFromText(entry.canonical)) {
            used.insert(*named);
        }
    }
    const std::string order = " ORDER BY t.name COLLATE NOCASE, t.id";
    const auto visible = valuesWhere<reg::Instrument>(db, "WHERE " + notInBin("t.id") + order);
    for (auto& instrument : valuesWhere<reg::Instrument>(db, order)) {
        const bool isVisible = std::find(visible.begin(), visible.end(), instrument) != visible.end();
        if (isVisible || used.count(instrument.id.bytes) > 0) {
            instruments.push_back(std::move(instrument));
        }
    }
    return instruments;
}

}  // namespace

std::vector<VisitLine> findVisits(const Connection& db, const std::string& search, int limit) {
    Cells values;
    std::string condition = matching(Indexed::Premises, search, "v.premises", limit, values);
    condition += " OR " + matching(Indexed::Visit, search, "v.id", limit, values);  // by its order number
    values.emplace_back(std::int64_t{limit});
    return visitLines(db, "(" + condition + ") ORDER BY v.date DESC, v.started_at DESC, v.id DESC LIMIT ?",
                      values);
}

std::vector<VisitLine> visitsAt(const Connection& db, reg::PremisesId premises) {
    return visitLines(db, "v.premises = ? ORDER BY v.date DESC, v.started_at DESC, v.id DESC",
                      {premises.bytes});
}

std::vector<VisitLine> visitsWithReadingsOf(const Connection& db, reg::ApplianceId id) {
    return visitLines(db,
                      "v.id IN (SELECT e.visit FROM entries AS e WHERE e.subject = ?)"
                      " ORDER BY v.date DESC, v.started_at DESC, v.id DESC",
                      {id.bytes});
}

reg::VisitId startVisit(Session& session, const reg::Visit& visit) {
    Edit edit(session);
    reg::Visit started = visit;
    if (started.id.isNull()) {
        started.id = reg::VisitId{session.newId()};
    }
    if (started.startedAt == Instant{}) {
        started.startedAt = session.clock.now();
    }
    edit.put(started);
    edit.put(reg::Test{reg::TestId{session.newId()}, started.id, 0, {}});
    edit.commit();
    return started.id;
}

reg::TestId addTest(Session& session, reg::VisitId visit, const std::string& label) {
    Edit edit(session);
    const auto position =
        session.db.number("SELECT coalesce(max(position), -1) + 1 FROM tests WHERE visit = ?", {visit.bytes});
    const reg::Test test{reg::TestId{session.newId()}, visit, static_cast<int>(position), label};
    edit.put(test);
    edit.commit();
    return test.id;
}

reg::VisitFile readVisitFile(const Session& session, reg::VisitId visit) {
    Connection& db = session.db;
    const ReadScope oneState(db);
    reg::VisitFile file;
    file.firm = readFirm(db);
    file.visit = valueWithId<reg::Visit>(db, visit.bytes);
    file.premises = valueWithId<reg::Premises>(db, file.visit.premises.bytes);
    file.installation = valueWithId<reg::Installation>(db, file.visit.installation.bytes);
    file.pipes = readPipes(db, file.installation.id);
    file.tests = testsOf(db, visit);
    file.entries = entriesOf(db, visit);
    file.engineers = engineersFor(db, file.visit);
    file.instruments = instrumentsFor(db, visit);
    file.people = readHolders(session, file.premises.id);
    file.emergencyContacts = readContacts(db);
    file.appliances = appliancesFor(db, file.visit);
    file.situations = situationsFor(db, visit);
    file.signatures = readSignatures(db, visit);
    file.traces = readTraces(db, visit);
    return file;
}

void saveEntry(Session& session, const reg::Entry& entry) {
    Edit edit(session);
    const auto visit = valueWithId<reg::Visit>(session.db, entry.visit.bytes);
    // The item decides the kind under which the row is read back.
    if (reg::infoOf(entry.item).subject != entry.subject.kind || !belongs(session.db, visit, entry.subject)) {
        throw Failure(ErrorCode::NotFound,
                      {std::string(reg::codeOf(entry.subject.kind)), uuidText(entry.subject.id)});
    }
    refuseBinned(session.db,
                 {visit.id.bytes, visit.premises.bytes, visit.installation.bytes, entry.subject.id});
    putEntry(edit, entryRowOf(entry));
    edit.commit();
}

}  // namespace hearth::store

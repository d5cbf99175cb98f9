// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kept_repository.h"

#include "core/store/bin_repository.h"
#include "core/store/change_log.h"
#include "core/store/edit.h"
#include "core/store/record_repository.h"
#include "core/store/visit_repository.h"

#include <algorithm>
#include <cassert>

namespace hearth::store {
namespace {

std::string standing(Removed removed) {
    return removed == Removed::Included ? std::string() : " AND t.removed_on IS NULL";
}

std::string roleKind(reg::RoleKind kind) {
    return std::string(reg::codeOf(kind));
}

/// All roles of one kind on a premises.
std::vector<reg::Role> rolesOfKind(const Connection& db, reg::PremisesId premises, reg::RoleKind kind) {
    return valuesWhere<reg::Role>(db, "WHERE t.premises = ? AND t.kind = ? ORDER BY t.id",
                                  {premises.bytes, roleKind(kind)});
}

std::optional<reg::Role> standingRole(const Connection& db, reg::PremisesId premises, reg::RoleKind kind) {
    for (const auto& role : rolesOfKind(db, premises, kind)) {
        if (!role.until) {
            return role;
        }
    }
    return std::nullopt;
}

/// Two spans certainly share a day. A first day that is not known could be any, so it is no ground to refuse
/// one.
bool overlap(const reg::Role& a, const reg::Role& b) {
    if (a.until == b.until) {
        return true;  // the last day, or today
    }
    const bool aEndsFirst = a.until && (!b.until || *a.until < *b.until);
    const reg::Role& first = aEndsFirst ? a : b;
    const reg::Role& last = aEndsFirst ? b : a;
    return last.since && *last.since <= *first.until;
}

[[noreturn]] void refuseOverlap(const Connection& db, const reg::Role& other) {
    throw Failure(ErrorCode::RoleOverlaps, {valueWithId<reg::Party>(db, other.party.bytes).name});
}

/// The one who stood there goes: by the day before the new one came, or, where that day is not known, as
/// somebody who was named by mistake.
void makeRoom(Edit& edit, reg::Role& row) {
    auto before = standingRole(edit.session().db, row.premises, row.kind);
    if (!before || row.until || edit.rowOf(tableOf<reg::Role>(), row.id.bytes)) {
        return;
    }
    const bool sameDay = before->since && row.since && *before->since == *row.since;
    if (before->party == row.party || !row.since || sameDay) {
        row.id = before->id;
        row.since = row.since ? row.since : before->since;
        return;
    }
    if (before->since && *before->since > *row.since) {
        refuseOverlap(edit.session().db, *before);
    }
    before->until = calendar::addDays(*row.since, -1);
    edit.put(*before);
}

std::vector<RoleLine> roleLines(const Connection& db, const std::string& where, const Cells& values) {
    const Table& role = tableOf<reg::Role>();
    const Table& party = tableOf<reg::Party>();
    const int afterRole = static_cast<int>(role.columns.size());
    const int afterParty = afterRole + static_cast<int>(party.columns.size());
    return db.all("SELECT " + role.columnList("r") + ", " + party.columnList("p") +
                      ", q.line1, q.line2, q.town, q.postcode FROM roles AS r JOIN parties AS p ON p.id = "
                      "r.party JOIN premises AS q ON q.id = r.premises WHERE " +
                      where,
                  values, [&](const Columns& columns) {
                      return RoleLine{valueOf<reg::Role>(columns),
                                      valueOf<reg::Party>(columns, afterRole),
                                      {columns.text(afterParty), columns.text(afterParty + 1),
                                       columns.text(afterParty + 2), columns.text(afterParty + 3)}};
                  });
}

}  // namespace

std::vector<reg::Appliance> readAppliances(const Connection& db, reg::InstallationId id, Removed removed) {
    return valuesWhere<reg::Appliance>(
        db,
        "WHERE t.installation = ? AND " + notInBin("t.id") + standing(removed) + " ORDER BY t.position, t.id",
        {id.bytes});
}

std::vector<reg::Appliance> readAppliances(const Connection& db, reg::PremisesId id, Removed removed) {
    return valuesWhere<reg::Appliance>(
        db,
        "JOIN installations AS i ON i.id = t.installation WHERE i.premises = ? AND " + notInBin("t.id") +
            " AND " + notInBin("i.id") + standing(removed) + " ORDER BY i.id, t.position, t.id",
        {id.bytes});
}

void saveAppliance(Session& session, const reg::Appliance& appliance) {
    assert(!appliance.id.isNull());
    Edit edit(session);
    reg::Appliance row = appliance;
    if (row.position == 0 && !edit.rowOf(tableOf<reg::Appliance>(), row.id.bytes)) {
        row.position = static_cast<int>(
            session.db.number("SELECT coalesce(max(position), -1) + 1 FROM appliances WHERE installation = ?",
                              {row.installation.bytes}));
    }
    edit.put(row);
    edit.commit();
}

void orderAppliances(Session& session, reg::InstallationId id, const std::vector<reg::ApplianceId>& order) {
    Edit edit(session);
    auto all = valuesWhere<reg::Appliance>(
        session.db, "WHERE t.installation = ? AND " + notInBin("t.id") + " ORDER BY t.position, t.id",
        {id.bytes});
    const auto placeOf = [&](const reg::Appliance& appliance) {
        return std::find(order.begin(), order.end(), appliance.id) - order.begin();
    };
    for (const auto wanted : order) {
        if (std::none_of(all.begin(), all.end(), [&](const auto& one) { return one.id == wanted; })) {
            throw Failure(ErrorCode::NotFound, {"appliances", wanted.text()});
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [&](const auto& a, const auto& b) { return placeOf(a) < placeOf(b); });
    int position = 0;
    for (auto& appliance : all) {
        appliance.position = position++;
        edit.put(appliance);
    }
    edit.commit();
}

ApplianceHistory readHistory(Connection& db, reg::ApplianceId id) {
    const ReadScope oneState(db);
    ApplianceHistory history;
    history.appliance = valueWithId<reg::Appliance>(db, id.bytes);
    for (auto& visit : visitsWithReadingsOf(db, id)) {
        auto records = recordsOf(db, visit.visit.id);
        history.visits.push_back({std::move(visit), std::move(records)});
    }
    history.changes = changesOf(db, tableOf<reg::Appliance>().name, id.text());
    return history;
}

std::vector<reg::Competence> readCompetences(const Connection& db, reg::EngineerId id) {
    return valuesWhere<reg::Competence>(
        db, "WHERE t.engineer = ? AND " + notInBin("t.id") + " ORDER BY t.category COLLATE NOCASE, t.id",
        {id.bytes});
}

std::vector<reg::VisitFile::Holder> readHoldersAt(const Connection& db, reg::PremisesId id,
                                                  calendar::Date date) {
    const std::string day = calendar::isoText(date);
    std::vector<reg::VisitFile::Holder> holders;
    db.query("SELECT r.kind, " + tableOf<reg::Party>().columnList("p") +
                 " FROM roles AS r JOIN parties AS p ON p.id = r.party WHERE r.premises = ? "
                 "AND (r.since IS NULL OR r.since <= ?) AND (r.until IS NULL OR r.until >= ?) ORDER BY r.id",
             {id.bytes, day, day}, [&](const Columns& columns) {
                 if (const auto kind = reg::roleKindFromCode(columns.text(0))) {  // else a newer program's
                     holders.push_back({*kind, valueOf<reg::Party>(columns, 1)});
                 }
             });
    std::stable_sort(holders.begin(), holders.end(),
                     [](const auto& a, const auto& b) { return a.role < b.role; });
    return holders;
}

std::vector<RoleLine> readRoles(const Connection& db, reg::PremisesId id) {
    auto lines =
        roleLines(db, "r.premises = ? ORDER BY r.until IS NULL DESC, r.until DESC, r.since DESC, r.id DESC",
                  {id.bytes});
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.role.kind < b.role.kind; });
    return lines;
}

std::vector<RoleLine> readRoles(const Connection& db, reg::PartyId id, Binned binned) {
    return roleLines(db,
                     "r.party = ? AND " + shown("q.id", binned) +
                         " ORDER BY r.until IS NULL DESC, r.until DESC, q.town COLLATE NOCASE, q.line1 "
                         "COLLATE NOCASE, r.id",
                     {id.bytes});
}

void saveRole(Session& session, const reg::Role& role) {
    Edit edit(session);
    reg::Role row = role;
    if (row.id.isNull()) {
        row.id = reg::RoleId{session.newId()};
    }
    makeRoom(edit, row);
    if (row.since && row.until && *row.until < *row.since) {
        refuseOverlap(session.db, row);
    }
    for (const auto& other : rolesOfKind(session.db, row.premises, row.kind)) {
        if (other.id != row.id && overlap(other, row)) {
            refuseOverlap(session.db, other);
        }
    }
    edit.put(row);
    edit.commit();
}

void endRole(Session& session, reg::PremisesId premises, reg::RoleKind kind, calendar::Date lastDay) {
    Edit edit(session);
    auto role = standingRole(session.db, premises, kind);
    if (role) {
        if (role->since && *role->since > lastDay) {
            refuseOverlap(session.db, *role);
        }
        role->until = lastDay;
        edit.put(*role);
    }
    edit.commit();
}

void removeRole(Session& session, reg::PremisesId premises, reg::RoleKind kind) {
    Edit edit(session);
    if (const auto role = standingRole(session.db, premises, kind)) {
        edit.remove(tableOf<reg::Role>(), role->id.bytes);
    }
    edit.commit();
}

std::string readSetting(const Connection& db, const std::string& name) {
    return db.text("SELECT value FROM settings WHERE name = ?", {name});
}

void saveSetting(Session& session, const std::string& name, const std::string& value) {
    Edit edit(session);
    const auto before = readSetting(session.db, name);
    if (before == value) {
        return;
    }
    session.db.run(
        "INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = "
        "excluded.value",
        {name, value});
    edit.log({"settings", name, "value", before, value, std::nullopt});
    edit.commit(Edit::Undoable::No);
}

}  // namespace hearth::store

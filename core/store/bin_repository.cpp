// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/bin_repository.h"

#include "core/store/edit.h"

#include <algorithm>
#include <array>
#include <optional>

namespace hearth::store {
namespace {

/// The tables whose rows may go into the bin. A name from outside never reaches SQL.
constexpr std::array<std::string_view, 13> kBinnable{
    "parties", "premises",        "installations", "appliances", "engineers",  "instruments", "competences",
    "visits",  "access_attempts", "letters",       "bookings",   "situations", "attachments"};

/// Why a row stays out of the bin: a count of what needs it.
struct Need {
    std::string_view table;
    std::string_view count;  // SQL, with one mark for the row
    ErrorCode refusal;
};
constexpr std::array kNeeds{
    Need{"premises", "SELECT count(*) FROM record_snapshots WHERE premises = ?", ErrorCode::BinKeepsRecords},
    Need{"installations",
         "SELECT count(*) FROM visits AS v JOIN record_snapshots AS r ON r.visit = v.id "
         "WHERE v.installation = ?",
         ErrorCode::BinKeepsRecords},
    Need{"visits", "SELECT count(*) FROM record_snapshots WHERE visit = ?", ErrorCode::BinKeepsRecords},
    Need{"parties", "SELECT count(*) FROM roles WHERE party = ? AND until IS NULL", ErrorCode::BinHoldsRole},
    Need{"premises", "SELECT count(*) FROM situations WHERE premises = ? AND closed_at IS NULL",
         ErrorCode::BinOpenSituation},
    Need{"installations", "SELECT count(*) FROM situations WHERE installation = ? AND closed_at IS NULL",
         ErrorCode::BinOpenSituation},
    Need{"appliances", "SELECT count(*) FROM situations WHERE appliance = ? AND closed_at IS NULL",
         ErrorCode::BinOpenSituation},
    Need{"appliances", "SELECT count(*) FROM entries WHERE subject = ?", ErrorCode::BinHasReadings},
    Need{"attachments", "SELECT count(*) FROM firm WHERE logo = ?", ErrorCode::BinLogo},
};

enum class Hang {
    Goes,   // removed with the row
    LetGo,  // stays, and names it no more
    Holds,  // stays, and so does the row
};
/// What hangs on a row that is removed for good, in the order in which it is seen to.
struct Hanging {
    std::string_view table;
    std::string_view child;
    std::string_view column;
    Hang hang;
};
constexpr std::array kHanging{
    Hanging{"premises", "record_snapshots", "premises", Hang::Holds},
    Hanging{"premises", "situations", "premises", Hang::Goes},
    Hanging{"premises", "bookings", "premises", Hang::Goes},
    Hanging{"premises", "letters", "premises", Hang::Goes},
    Hanging{"premises", "access_attempts", "premises", Hang::Goes},
    Hanging{"premises", "check_extensions", "premises", Hang::Goes},
    Hanging{"premises", "earlier_checks", "premises", Hang::Goes},
    Hanging{"premises", "check_plans", "premises", Hang::Goes},
    Hanging{"premises", "visits", "premises", Hang::Goes},
    Hanging{"premises", "installations", "premises", Hang::Goes},
    Hanging{"premises", "roles", "premises", Hang::Goes},
    Hanging{"installations", "situations", "installation", Hang::Holds},
    Hanging{"installations", "visits", "installation", Hang::Goes},
    Hanging{"installations", "pipe_sections", "installation", Hang::Goes},
    Hanging{"installations", "appliances", "installation", Hang::Goes},
    Hanging{"appliances", "pipe_sections", "appliance", Hang::LetGo},
    Hanging{"appliances", "situations", "appliance", Hang::Holds},
    Hanging{"appliances", "entries", "subject", Hang::Holds},
    Hanging{"appliances", "check_extensions", "appliance", Hang::Goes},
    Hanging{"appliances", "earlier_checks", "appliance", Hang::Goes},
    Hanging{"visits", "record_snapshots", "visit", Hang::Holds},
    Hanging{"visits", "bookings", "visit", Hang::LetGo},
    Hanging{"visits", "situations", "visit", Hang::LetGo},
    Hanging{"visits", "earlier_checks", "visit", Hang::LetGo},
    Hanging{"visits", "tests", "visit", Hang::Goes},
    Hanging{"visits", "hand_signatures", "visit", Hang::Goes},
    Hanging{"tests", "traces", "test", Hang::Goes},
    Hanging{"visits", "traces", "visit", Hang::Goes},
    Hanging{"visits", "attachments", "in_record_of", Hang::LetGo},
    Hanging{"parties", "letters", "party", Hang::Holds},
    Hanging{"parties", "roles", "party", Hang::Goes},
    Hanging{"engineers", "visits", "engineer", Hang::Holds},
    Hanging{"engineers", "bookings", "engineer", Hang::LetGo},
    Hanging{"engineers", "competences", "engineer", Hang::Goes},
    Hanging{"instruments", "entries", "instrument", Hang::Holds},
    Hanging{"situations", "situation_events", "situation", Hang::Goes},
    Hanging{"attachments", "firm", "logo", Hang::Holds},
};

const Table& tableToBin(const std::string& name, const UuidBytes& row) {
    if (std::find(kBinnable.begin(), kBinnable.end(), name) == kBinnable.end()) {
        throw Failure(ErrorCode::NotFound, {name, uuidText(row)});
    }
    return *tableNamed(name);
}

/// Removes one row after what hangs on it; `label` names what was in the bin, for a refusal.
class Removal {
  public:
    Removal(Edit& edit, std::string label) : m_edit(edit), m_label(std::move(label)) {}

    void remove(const std::string& table, const UuidBytes& row) {
        for (const auto& hanging : kHanging) {
            if (hanging.table == table) {
                seeTo(hanging, row);
            }
        }
        if (table == "visits") {
            db().run("DELETE FROM entries WHERE visit = ?", {row});
        }
        for (const auto& paper : idsWhere("attachments", "owner", row)) {
            m_edit.erase(*tableNamed("attachments"), paper);
        }
        for (const auto& binned : idsWhere("bin", "row", row)) {
            m_edit.erase(*tableNamed("bin"), binned);
        }
        m_edit.erase(*tableNamed(table), row);
    }

  private:
    [[nodiscard]] Connection& db() { return m_edit.session().db; }
    [[nodiscard]] std::vector<UuidBytes> idsWhere(std::string_view table, std::string_view column,
                                                  const UuidBytes& row) {
        return db().all("SELECT id FROM " + std::string(table) + " WHERE " + std::string(column) + " = ?",
                        {row}, [](const Columns& columns) { return columns.uuid(0); });
    }
    void seeTo(const Hanging& hanging, const UuidBytes& row) {
        if (hanging.hang == Hang::Holds) {
            const auto count = db().number("SELECT count(*) FROM " + std::string(hanging.child) + " WHERE " +
                                               std::string(hanging.column) + " = ?",
                                           {row});
            if (count > 0) {
                throw Failure(ErrorCode::BinStillUsed, {m_label, std::to_string(count)});
            }
            return;
        }
        for (const auto& child : idsWhere(hanging.child, hanging.column, row)) {
            if (hanging.hang == Hang::Goes) {
                remove(std::string(hanging.child), child);
            } else {
                letGo(*tableNamed(hanging.child), child, hanging.column);
            }
        }
    }
    void letGo(const Table& table, const UuidBytes& child, std::string_view column) {
        auto cells = *m_edit.rowOf(table, child);
        cells[table.indexOf(column)] = Cell();
        m_edit.put(table, cells);
    }

    Edit& m_edit;
    std::string m_label;
};

}  // namespace

std::string notInBin(std::string_view column) {
    return std::string(column) + " NOT IN (SELECT row FROM bin)";
}

std::string shown(std::string_view column, Binned binned) {
    return binned == Binned::Included ? std::string("TRUE") : notInBin(column);
}

void refuseBinned(const Connection& db, const std::vector<UuidBytes>& rows) {
    if (rows.empty()) {
        return;
    }
    std::string marks;
    Cells values;
    for (const auto& row : rows) {
        marks.append(marks.empty() ? "?" : ", ?");
        values.emplace_back(row);
    }
    const auto label = db.first("SELECT label FROM bin WHERE row IN (" + marks + ")", values,
                                [](const Columns& columns) { return columns.text(0); });
    if (label) {
        throw Failure(ErrorCode::InBin, {*label});
    }
}

reg::BinnedId putIntoBin(Session& session, const std::string& table, const UuidBytes& row,
                         const std::string& label) {
    Edit edit(session);
    if (!edit.rowOf(tableToBin(table, row), row)) {
        throw Failure(ErrorCode::NotFound, {table, uuidText(row)});
    }
    refuseBinned(session.db, {row});
    for (const auto& need : kNeeds) {
        const auto count = need.table == table ? session.db.number(need.count, {row}) : 0;
        if (count > 0) {
            throw Failure(need.refusal, {label, std::to_string(count)});
        }
    }
    const reg::Binned binned{
        reg::BinnedId{session.newId()}, table, row, label, session.clock.now(), session.actor};
    edit.put(binned);
    edit.commit();
    return binned.id;
}

std::vector<reg::Binned> readBin(const Connection& db) {
    return valuesWhere<reg::Binned>(db, "ORDER BY t.at DESC, t.id DESC");
}

void bringBack(Session& session, reg::BinnedId id) {
    Edit edit(session);
    const auto binned = valueWithId<reg::Binned>(session.db, id.bytes);
    edit.remove(tableOf<reg::Binned>(), binned.id.bytes);
    edit.commit();
}

void removeForGood(Session& session, reg::BinnedId id) {
    Edit edit(session, Edit::Binned::MayChange);
    const auto binned = valueWithId<reg::Binned>(session.db, id.bytes);
    Removal(edit, binned.label).remove(binned.table, binned.row);
    edit.commit(Edit::Undoable::No);
    session.undoable.clear();  // earlier changes of these rows have nothing to come back to
}

}  // namespace hearth::store

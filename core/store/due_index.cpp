// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/due_index.h"

#include "core/store/due_facts.h"
#include "core/store/kept_repository.h"

#include <functional>
#include <string>

namespace hearth::store {
namespace {

/// Raised whenever dueCells() changes: stores are then worked out anew.
constexpr std::string_view kDueForm = "1";
constexpr std::string_view kDueFormSetting = "due_form";

constexpr std::string_view kDueColumns =
    "duty, deadline, latest, reason, base, opens, appliance, items, unknown, last_check, booking, booked, "
    "engineer, landlord, landlord_name, agent, outward, place, postcode";
constexpr int kDueColumnCount = 19;

bool isDueText(int column) {
    return column == 14 || column >= 16;
}
bool isDueKey(int column) {
    return column == 6 || column == 10 || column == 12 || column == 13 || column == 15;
}

/// Whether the row's columns from `first` on hold these.
bool holds(const Columns& row, int first, const Cells& cells) {
    for (int i = 0; i < kDueColumnCount; ++i) {
        const Cell& cell = cells[static_cast<std::size_t>(i)];
        const bool isNull = std::holds_alternative<std::monostate>(cell);
        if (row.isNull(first + i) || isNull) {
            if (!row.isNull(first + i) || !isNull) {
                return false;
            }
            continue;
        }
        const bool same = isDueText(i)  ? std::get<std::string>(cell) == row.textInPlace(first + i)
                          : isDueKey(i) ? std::get<UuidBytes>(cell) == row.uuid(first + i)
                                        : std::get<std::int64_t>(cell) == row.integer(first + i);
        if (!same) {
            return false;
        }
    }
    return true;
}

void writeDue(Connection& db, const UuidBytes& premises, const Cells& cells) {
    Cells values{premises};
    values.insert(values.end(), cells.begin(), cells.end());
    db.run("INSERT OR REPLACE INTO due_premises (premises, " + std::string(kDueColumns) +
               ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
           values);
}

void removeDue(Connection& db, const UuidBytes& premises) {
    db.run("DELETE FROM due_premises WHERE premises = ?", {premises});
}

/// Those whose deadline follows from the firm's usual interval.
constexpr std::string_view kByUsualInterval =
    "SELECT premises FROM check_plans WHERE duty = 'own_interval' AND months = 0";

/// Calls `differs` with what each row should be that is not so: nothing for one that should not be there. Of
/// all premises, or among those that a SELECT gives.
void eachStale(const Connection& db, std::string_view among,
               const std::function<void(const UuidBytes&, const std::optional<Cells>&)>& differs) {
    const int months = readOwnInterval(db);
    const auto all = readDueFactsAmong(db, among);
    const std::string where =
        among.empty() ? std::string() : " WHERE premises IN (" + std::string(among) + ")";
    auto next = all.begin();
    std::vector<std::pair<UuidBytes, std::optional<Cells>>> found;
    const auto missing = [&] {
        found.emplace_back(next->premises, dueCells(*next, months));
        ++next;
    };
    db.query(
        "SELECT premises, " + std::string(kDueColumns) + " FROM due_premises" + where + " ORDER BY premises",
        {}, [&](const Columns& row) {
            const auto premises = row.uuid(0);
            while (next != all.end() && next->premises < premises) {
                missing();
            }
            if (next == all.end() || next->premises != premises) {
                found.emplace_back(premises, std::nullopt);
                return;
            }
            auto cells = dueCells(*next, months);
            if (!holds(row, 1, cells)) {
                found.emplace_back(premises, std::move(cells));
            }
            ++next;
        });
    while (next != all.end()) {
        missing();
    }
    for (const auto& [premises, cells] : found) {
        differs(premises, cells);
    }
}

/// Records whose checks do not count, by what became of them. As a set: SQLite makes it once, not for each
/// check.
constexpr std::string_view kUncounted =
    "SELECT supersedes FROM record_snapshots WHERE supersedes IS NOT NULL"
    " UNION SELECT record FROM record_events WHERE event = 'void'";

void writeStale(Connection& db, std::string_view among = {}) {
    eachStale(db, among, [&](const UuidBytes& premises, const std::optional<Cells>& cells) {
        if (cells) {
            writeDue(db, premises, *cells);
        } else {
            removeDue(db, premises);
        }
    });
}

}  // namespace

void refreshDue(Connection& db, const UuidBytes& premises) {
    if (const auto facts = readDueFacts(db, premises)) {
        writeDue(db, premises, dueCells(*facts, readOwnInterval(db)));
    } else {
        removeDue(db, premises);
    }
}

void rebuildDue(Connection& db) {
    const WideCache cache(db);
    Transaction transaction(db);
    db.run("UPDATE record_checks AS c SET counts = 0 WHERE counts = 1 AND c.record IN (" +
           std::string(kUncounted) + ")");
    db.run("UPDATE record_checks AS c SET counts = 1 WHERE counts = 0 AND c.record NOT IN (" +
           std::string(kUncounted) + ")");
    writeStale(db);
    db.run("INSERT OR REPLACE INTO settings (name, value) VALUES (?, ?)",
           {std::string(kDueFormSetting), std::string(kDueForm)});
    transaction.commit();
}

void refreshDueByInterval(Connection& db) {
    const WideCache cache(db);
    Transaction transaction(db);
    writeStale(db, kByUsualInterval);
    transaction.commit();
}

void rebuildOutdatedDue(Connection& db) {
    if (readSetting(db, std::string(kDueFormSetting)) != kDueForm) {
        rebuildDue(db);
    }
}

int staleInDue(const Connection& db) {
    const WideCache cache(db);
    int stale = static_cast<int>(
        db.number("SELECT count(*) FROM record_checks AS c WHERE counts <> (c.record NOT IN (" +
                  std::string(kUncounted) + "))"));
    eachStale(db, {}, [&](const UuidBytes& /*premises*/, const std::optional<Cells>& /*cells*/) { ++stale; });
    return stale;
}

void keepRecordChecks(Connection& db, RecordId record, const std::optional<RecordId>& supersedes,
                      const UuidBytes& premises, std::string_view kind,
                      const std::vector<record::MadeCheck>& checks) {
    if (supersedes) {
        db.run("UPDATE record_checks SET counts = 0 WHERE record = ?", {supersedes->bytes});
    }
    for (const auto& check : checks) {
        db.run(
            "INSERT INTO record_checks (premises, date, record, appliance, kind, counted_from, counts) "
            "VALUES (?, ?, ?, ?, ?, ?, 1)",
            {premises, calendar::isoText(check.date), record.bytes, check.appliance.bytes, std::string(kind),
             check.countedFrom ? Cell(calendar::isoText(*check.countedFrom)) : Cell()});
    }
    refreshDue(db, premises);
}

void dropRecordChecks(Connection& db, RecordId record, const UuidBytes& premises) {
    db.run("UPDATE record_checks SET counts = 0 WHERE record = ?", {record.bytes});
    refreshDue(db, premises);
}

}  // namespace hearth::store

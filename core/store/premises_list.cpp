// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/premises_list.h"

#include "core/store/bin_repository.h"
#include "core/store/register_repository.h"
#include "core/store/search_query.h"
#include "core/store/tables.h"

#include <algorithm>

namespace hearth::store {
namespace {

std::string premisesOrder(std::string_view direction) {
    std::string order;
    for (const std::string_view column :
         {"p.town COLLATE NOCASE", "p.line1 COLLATE NOCASE", "p.line2 COLLATE NOCASE", "p.id"}) {
        order.append(order.empty() ? "" : ", ").append(column).append(direction);
    }
    return order;
}

/// The lines of the premises that `ids` (SQL, one mark each for `values`) names, in order.
std::vector<PremisesLine> premisesLines(const Connection& db, const std::string& ids, const Cells& values) {
    const Table& table = tableOf<reg::Premises>();
    const std::string sql =
        "SELECT " + table.columnList("p") + ", " + customerOf("p.id") +
        ", (SELECT max(v.date) FROM visits AS v WHERE v.premises = p.id AND " + notInBin("v.id") +
        "), (SELECT count(*) FROM visits AS v WHERE v.premises = p.id AND v.closed = 0 AND " +
        notInBin("v.id") +
        " AND NOT EXISTS (SELECT 1 FROM record_snapshots AS r WHERE r.visit = v.id))"
        " FROM premises AS p WHERE p.id IN (" +
        ids + ") ORDER BY " + premisesOrder({});
    const int after = static_cast<int>(table.columns.size());
    return db.all(sql, values, [&](const Columns& columns) {
        PremisesLine line;
        line.premises = valueOf<reg::Premises>(columns);
        line.customer = columns.text(after);
        if (!columns.isNull(after + 1)) {
            line.lastVisit = calendar::fromIso(columns.text(after + 1));
        }
        line.drafts = columns.number(after + 2);
        return line;
    });
}

/// The ids of a stretch of the list, from its beginning or backwards from its end. The index holds all that
/// is asked for.
std::string stretch(std::string_view direction, bool anyBinned) {
    return "SELECT p.id FROM premises AS p WHERE " + (anyBinned ? notInBin("p.id") : std::string("TRUE")) +
           " ORDER BY " + premisesOrder(direction) + " LIMIT ? OFFSET ?";
}

int countBinned(const Connection& db) {
    return static_cast<int>(db.number("SELECT count(*) FROM bin AS b JOIN premises AS p ON p.id = b.row"));
}

}  // namespace

std::vector<PremisesLine> findPremises(const Connection& db, const std::string& search, int limit) {
    Cells values;
    const std::string found = matching(Indexed::Premises, search, "p.id", limit, values);
    if (values.empty()) {
        return readPremisesPage(db, 0, limit);
    }
    return premisesLines(db, "SELECT p.id FROM premises AS p WHERE " + found + " AND " + notInBin("p.id"),
                         values);
}

int countPremises(const Connection& db) {
    // Each without a condition: SQLite then counts pages and not rows.
    return static_cast<int>(db.number("SELECT count(*) FROM premises")) - countBinned(db);
}

std::vector<PremisesLine> readPremisesPage(const Connection& db, int first, int count,
                                           std::optional<int> counted) {
    const int all = counted ? *counted : countPremises(db);
    const int last = std::min(first + count, all);
    if (first < 0 || last <= first) {
        return {};
    }
    const bool backwards = first > all / 2;  // SQLite steps over all that comes before
    const std::int64_t before = backwards ? all - last : first;
    // Looking each up in an empty bin is half of what it costs to step over them.
    return premisesLines(db, stretch(backwards ? " DESC" : "", countBinned(db) > 0),
                         {std::int64_t{last - first}, before});
}

std::optional<int> rowOfPremises(const Connection& db, reg::PremisesId id) {
    const auto place =
        db.first("SELECT p.town, p.line1, p.line2 FROM premises AS p WHERE p.id = ? AND " + notInBin("p.id"),
                 {id.bytes}, [](const Columns& row) {
                     return Cells{row.text(0), row.text(1), row.text(2)};
                 });
    if (!place) {
        return std::nullopt;
    }
    Cells key = *place;
    key.emplace_back(id.bytes);
    return static_cast<int>(
        db.number("SELECT count(*) FROM premises AS p WHERE (p.town COLLATE NOCASE, p.line1 COLLATE NOCASE, "
                  "p.line2 COLLATE NOCASE, p.id) < (?, ?, ?, ?) AND " +
                      notInBin("p.id"),
                  key));
}

}  // namespace hearth::store

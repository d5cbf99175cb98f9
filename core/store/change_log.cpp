// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"

#include "core/store/record_repository.h"

#include <limits>

namespace hearth::store {
namespace {

constexpr std::string_view kSelect =
    "SELECT id, table_name, row_id, field, before, after, by, at, visit FROM changes ";

std::optional<std::string> optionalText(const Columns& columns, int column) {
    return columns.isNull(column) ? std::nullopt : std::optional<std::string>(columns.text(column));
}

Change changeOf(const Columns& columns) {
    Change change;
    change.id = ChangeId{columns.uuid(0)};
    change.table = columns.text(1);
    change.row = columns.text(2);
    change.field = columns.text(3);
    change.before = optionalText(columns, 4);
    change.after = optionalText(columns, 5);
    change.by = columns.text(6);
    if (!parseInstant(columns.text(7), change.at)) {
        columns.notUnderstood("changes.at = " + columns.text(7));
    }
    return change;
}

/// The position that a page begins before.
std::int64_t beforePosition(const Connection& db, std::optional<ChangeId> after) {
    constexpr std::int64_t kEnd = std::numeric_limits<std::int64_t>::max();
    return after ? db.number("SELECT position FROM changes WHERE id = ?", {after->bytes}) : kEnd;
}

/// `where` has one mark for each of `values`; the newest `limit` before `after`.
ChangePage pageWhere(const Connection& db, const std::string& where, Cells values, int limit,
                     std::optional<ChangeId> after) {
    values.emplace_back(beforePosition(db, after));
    values.emplace_back(std::int64_t{limit} + 1);
    ChangePage page;
    page.lines =
        db.all(std::string(kSelect) + "WHERE (" + where + ") AND position < ? ORDER BY position DESC LIMIT ?",
               values, changeOf);
    if (page.lines.size() > static_cast<std::size_t>(limit)) {
        page.lines.pop_back();
        page.next = page.lines.back().id;
    }
    return page;
}

}  // namespace

ChangePage changePage(const Connection& db, reg::PremisesId premises, int limit,
                      std::optional<ChangeId> after) {
    return pageWhere(db, "premises = ?", {premises.bytes}, limit, after);
}

ChangePage changePage(const Connection& db, RecordId record, int limit, std::optional<ChangeId> after) {
    const auto line = findRecord(db, record);
    if (!line) {
        throw Failure(ErrorCode::NotFound, {"record", record.text()});
    }
    return pageWhere(db, "premises = ? AND (visit = ? OR (visit IS NULL AND at <= ?))",
                     {line->premises.bytes, line->visit.bytes, line->header.issuedAt}, limit, after);
}

std::vector<Change> changesOf(const Connection& db, const std::string& table, const std::string& row) {
    return db.all(std::string(kSelect) + "WHERE table_name = ? AND row_id = ? ORDER BY position",
                  {table, row}, changeOf);
}

std::vector<Change> changesOf(const Connection& db, reg::VisitId visit) {
    return db.all(std::string(kSelect) + "WHERE visit = ? ORDER BY position", {visit.bytes}, changeOf);
}

void eachChange(const Connection& db, const std::function<void(const Change&)>& take) {
    db.query(std::string(kSelect) + "ORDER BY position", {},
             [&](const Columns& columns) { take(changeOf(columns)); });
}

std::vector<GroupLine> linesOfGroup(const Connection& db, const UuidBytes& group) {
    return db.all(
        std::string(kSelect) + "WHERE group_id = ? ORDER BY position", {group}, [](const Columns& columns) {
            return GroupLine{changeOf(columns),
                             columns.isNull(8) ? std::nullopt : std::optional<UuidBytes>(columns.uuid(8))};
        });
}

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"

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

}  // namespace

std::vector<Change> changesOf(const Connection& db, const std::string& table, const std::string& row) {
    return db.all(std::string(kSelect) + "WHERE table_name = ? AND row_id = ? ORDER BY position",
                  {table, row}, changeOf);
}

std::vector<Change> changesOf(const Connection& db, reg::VisitId visit) {
    return db.all(std::string(kSelect) + "WHERE visit = ? ORDER BY position", {visit.bytes}, changeOf);
}

std::vector<GroupLine> linesOfGroup(const Connection& db, const UuidBytes& group) {
    return db.all(
        std::string(kSelect) + "WHERE group_id = ? ORDER BY position", {group}, [](const Columns& columns) {
            return GroupLine{changeOf(columns),
                             columns.isNull(8) ? std::nullopt : std::optional<UuidBytes>(columns.uuid(8))};
        });
}

}  // namespace hearth::store

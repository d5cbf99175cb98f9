// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/undo.h"

#include "core/store/change_log.h"
#include "core/store/edit.h"
#include "core/store/entry_rows.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <utility>

namespace hearth::store {
namespace {

bool endsWith(std::string_view text, std::string_view end) {
    return text.size() > end.size() && text.substr(text.size() - end.size()) == end;
}

/// The item's code of an entry's field, without what the field says of it.
std::string itemOf(std::string_view field) {
    for (const auto suffix : {kUnitField, kInstrumentField}) {
        if (endsWith(field, suffix)) {
            field.remove_suffix(suffix.size());
        }
    }
    return std::string(field);
}

/// The lines of one row, which stand together in the log.
using Lines = std::vector<GroupLine>;

void restoreRow(Edit& edit, const Lines& lines) {
    const Change& head = lines.front().change;
    const Table* table = tableNamed(head.table);
    const auto id = uuidFromText(head.row);
    if (table == nullptr || !id) {
        throw Failure(ErrorCode::StoreDamaged, {edit.session().db.path(), head.table + " " + head.row});
    }
    if (head.field == "id" && !head.before) {  // it was made
        edit.remove(*table, *id);
        return;
    }
    Cells row = edit.rowOf(*table, *id).value_or(table->empty);
    row.front() = *id;
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) {  // the oldest value wins
        const std::size_t column = table->indexOf(line->change.field);
        row[column] = cellFromLog(table->columns[column].type, line->change.before, edit.session().db.path());
    }
    edit.put(*table, row);
}

/// Splits a group into its rows, the last first.
std::vector<Lines> rowsBackwards(const std::vector<GroupLine>& group) {
    std::vector<Lines> rows;
    for (const auto& line : group) {
        const bool sameRow = !rows.empty() && rows.back().front().change.table == line.change.table &&
                             rows.back().front().change.row == line.change.row &&
                             rows.back().front().visit == line.visit;
        if (sameRow) {
            rows.back().push_back(line);
        } else {
            rows.push_back(Lines{line});
        }
    }
    std::reverse(rows.begin(), rows.end());
    return rows;
}

/// Gives one field of an entry its old value.
void takeBack(EntryRow& row, const Change& change) {
    if (endsWith(change.field, kUnitField)) {
        row.unit = change.before.value_or(std::string(quantity::unitText(quantity::UnitCode::None)));
    } else if (endsWith(change.field, kInstrumentField)) {
        row.instrument = change.before ? uuidFromText(*change.before) : std::nullopt;
    } else {
        row.text = change.before;
    }
}

/// Text, unit and instrument come back together: a unit alone is no entry.
void restoreEntries(Edit& edit, const Lines& lines) {
    std::map<std::string, EntryRow> rows;
    const Change& head = lines.front().change;
    const auto subject = uuidFromText(head.row);
    if (!subject || !lines.front().visit) {
        throw Failure(ErrorCode::StoreDamaged, {edit.session().db.path(), head.table + " " + head.row});
    }
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
        const std::string item = itemOf(line->change.field);
        auto known = rows.find(item);
        if (known == rows.end()) {
            known = rows.emplace(item, standingEntry(edit.session().db, *lines.front().visit, *subject, item))
                        .first;
        }
        takeBack(known->second, line->change);
    }
    for (const auto& [item, row] : rows) {
        putEntry(edit, row);
    }
}

}  // namespace

std::optional<Change> undoNewest(Session& session) {
    if (session.undoable.empty()) {
        return std::nullopt;
    }
    const auto group = linesOfGroup(session.db, session.undoable.back());
    assert(!group.empty());
    Edit edit(session);
    session.db.script("PRAGMA defer_foreign_keys = ON");  // rows come back in whatever order
    for (const auto& lines : rowsBackwards(group)) {
        if (lines.front().change.table == kEntriesTable) {
            restoreEntries(edit, lines);
        } else {
            restoreRow(edit, lines);
        }
    }
    edit.commit(Edit::Undoable::No);
    session.undoable.pop_back();
    return group.front().change;
}

}  // namespace hearth::store

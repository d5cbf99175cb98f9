// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/edit.h"

#include "core/store/belonging.h"
#include "core/store/bin_repository.h"
#include "core/store/due_index.h"
#include "core/store/sealing.h"

#include <cassert>
#include <charconv>
#include <system_error>

namespace hearth::store {
namespace {

const UuidBytes& keyOf(const Cells& row) {
    return std::get<UuidBytes>(row.front());
}

/// The visit that a row belongs to, so that a visit's history is found at once.
std::optional<UuidBytes> visitOf(const Table& table, const Cells& row) {
    if (table.name == "visits") {
        return keyOf(row);
    }
    if (table.has("visit")) {
        const auto* visit = std::get_if<UuidBytes>(&row[table.indexOf("visit")]);
        return visit != nullptr ? std::optional<UuidBytes>(*visit) : std::nullopt;
    }
    return std::nullopt;
}

}  // namespace

std::optional<std::string> logText(const Cell& cell) {
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return *text;
    }
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return std::to_string(*number);
    }
    if (const auto* uuid = std::get_if<UuidBytes>(&cell)) {
        return uuidText(*uuid);
    }
    assert(std::holds_alternative<std::monostate>(cell));  // payloads are no register fields
    return std::nullopt;
}

Cell cellFromLog(CellType type, const std::optional<std::string>& text, const std::string& path) {
    if (!text) {
        return {};
    }
    if (type == CellType::Text) {
        return *text;
    }
    if (type == CellType::Uuid) {
        if (const auto uuid = uuidFromText(*text)) {
            return *uuid;
        }
    } else {
        std::int64_t number = 0;
        const auto [end, problem] = std::from_chars(text->data(), text->data() + text->size(), number);
        if (problem == std::errc() && end == text->data() + text->size()) {
            return number;
        }
    }
    throw Failure(ErrorCode::StoreDamaged, {path, *text});
}

Edit::Edit(Session& session, Binned binned)
    : m_session(session),
      m_transaction(session.db),
      m_group(session.oneStep.value_or(session.newId())),
      m_binned(binned) {}

std::optional<Cells> Edit::rowOf(const Table& table, const UuidBytes& id) const {
    const std::string sql =
        "SELECT " + table.columnList("t") + " FROM " + table.name + " AS t WHERE t.id = ?";
    return m_session.db.first(sql, {id}, [&](const Columns& columns) { return cellsOfRow(table, columns); });
}

void Edit::put(const Table& table, const Cells& row) {
    const auto before = rowOf(table, keyOf(row));
    if (before != row) {
        refuseBinnedOf(table, before, row);
    }
    if (!before) {
        insert(table, row);
    } else if (*before != row) {
        update(table, *before, row);
    }
}

void Edit::refuseBinnedOf(const Table& table, const std::optional<Cells>& before, const Cells& after) {
    if (m_binned == Binned::MayChange || table.name == "bin") {
        return;
    }
    std::vector<UuidBytes> rows;
    for (std::size_t i = 0; i < after.size(); ++i) {
        const auto* named = std::get_if<UuidBytes>(&after[i]);
        const bool isKeyOfOld = i == 0 && before;
        const bool isNewName = i > 0 && (!before || (*before)[i] != after[i]);
        const bool isPartOf = table.columns[i].name == "installation";
        if (named != nullptr && (isKeyOfOld || isNewName || isPartOf)) {
            rows.push_back(*named);
        }
    }
    if (const auto premises = placeOf(table, after)) {
        rows.push_back(*premises);
    }
    refuseBinned(m_session.db, rows);
}

std::optional<UuidBytes> Edit::placeOf(const Table& table, const Cells& row) {
    const auto known = m_premisesOf.find(keyOf(row));
    return known != m_premisesOf.end()
               ? known->second
               : m_premisesOf.emplace(keyOf(row), premisesOf(m_session.db, table, row)).first->second;
}

void Edit::insert(const Table& table, const Cells& row) {
    std::string names;
    std::string marks;
    for (const auto& column : table.columns) {
        names.append(names.empty() ? "" : ", ").append(column.name);
        marks.append(marks.empty() ? "?" : ", ?");
    }
    m_session.db.run("INSERT INTO " + table.name + " (" + names + ") VALUES (" + marks + ")", row);
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (i == 0 || row[i] != table.empty[i]) {
            logField(table, row, i, Cell(), row[i]);
        }
    }
    touch(table, row);
}

void Edit::update(const Table& table, const Cells& before, const Cells& after) {
    std::string assignments;
    Cells values;
    for (std::size_t i = 0; i < after.size(); ++i) {
        if (after[i] != before[i]) {
            assignments.append(assignments.empty() ? "" : ", ").append(table.columns[i].name).append(" = ?");
            values.push_back(after[i]);
            logField(table, after, i, before[i], after[i]);
        }
    }
    values.push_back(after.front());
    m_session.db.run("UPDATE " + table.name + " SET " + assignments + " WHERE id = ?", values);
    touch(table, before);
    touch(table, after);
}

void Edit::remove(const Table& table, const UuidBytes& id) {
    const auto row = rowOf(table, id);
    if (!row) {
        return;
    }
    m_session.db.run("DELETE FROM " + table.name + " WHERE id = ?", {id});
    for (std::size_t i = 0; i < row->size(); ++i) {
        if (i == 0 || (*row)[i] != table.empty[i]) {
            logField(table, *row, i, (*row)[i], Cell());
        }
    }
    touch(table, *row);
}

void Edit::erase(const Table& table, const UuidBytes& id) {
    const auto row = rowOf(table, id);
    if (!row) {
        return;
    }
    m_session.db.run("DELETE FROM " + table.name + " WHERE id = ?", {id});
    logField(table, *row, 0, row->front(), Cell());
    touch(table, *row);
}

void Edit::logField(const Table& table, const Cells& row, std::size_t column, const Cell& before,
                    const Cell& after) {
    write({table.name, uuidText(keyOf(row)), table.columns[column].name, logText(before), logText(after),
           visitOf(table, row)},
          placeOf(table, row));
}

void Edit::log(const LogLine& line) {
    std::optional<UuidBytes> premises;
    if (line.visit) {
        const auto known = m_premisesOf.find(*line.visit);
        if (known == m_premisesOf.end()) {
            premises = m_session.db.first("SELECT premises FROM visits WHERE id = ?", {*line.visit},
                                          [](const Columns& columns) { return columns.uuid(0); });
            m_premisesOf.emplace(*line.visit, premises);
        } else {
            premises = known->second;
        }
    }
    write(line, premises);
}

void Edit::write(const LogLine& line, const std::optional<UuidBytes>& premises) {
    const auto text = [](const std::optional<std::string>& value) { return value ? Cell(*value) : Cell(); };
    const auto key = [](const std::optional<UuidBytes>& value) { return value ? Cell(*value) : Cell(); };
    m_session.db.run(
        "INSERT INTO changes (id, position, group_id, store, visit, premises, table_name, row_id, field, "
        "before, after, by, at, salt) VALUES (?, (SELECT coalesce(max(position), 0) + 1 FROM changes), "
        "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {m_session.newId(), m_group, m_session.store, key(line.visit), key(premises), line.table, line.row,
         line.field, text(line.before), text(line.after), m_session.actor, instantText(m_session.clock.now()),
         newSalt()});
    m_logged = true;
}

void Edit::touch(const Table& table, const Cells& row) {
    const auto link = [&](std::string_view column) {
        return std::get<UuidBytes>(row[table.indexOf(column)]);
    };
    touchRow(table.name, keyOf(row));
    if (const auto premises = placeOf(table, row)) {
        m_touchedDue.insert(*premises);
    }
    if (table.name == "roles" || table.name == "installations") {
        touch(Indexed::Premises, link("premises"));
    } else if (table.name == "appliances") {
        touchInstallation(link("installation"));
    } else if (table.name == "bin") {
        const UuidBytes hidden = link("row");
        const auto binned = std::get<std::string>(row[table.indexOf("table_name")]);
        touchRow(binned, hidden);
        if (binned == "installations") {
            touchInstallation(hidden);
        } else if (binned == "appliances") {
            for (const auto& installation :
                 m_session.db.all("SELECT installation FROM appliances WHERE id = ?", {hidden},
                                  [](const Columns& found) { return found.uuid(0); })) {
                touchInstallation(installation);
            }
        }
    }
}

void Edit::touchRow(const std::string& table, const UuidBytes& id) {
    if (table == "premises") {
        touch(Indexed::Premises, id);
    } else if (table == "visits") {
        touch(Indexed::Visit, id);
    } else if (table == "parties") {
        touch(Indexed::Party, id);
        const auto held = m_session.db.all("SELECT premises FROM roles WHERE party = ?", {id},
                                           [](const Columns& row) { return row.uuid(0); });
        for (const auto& premises : held) {
            touch(Indexed::Premises, premises);
            m_touchedDue.insert(premises);
        }
    }
}

void Edit::touchInstallation(const UuidBytes& id) {
    const auto premises = m_session.db.first("SELECT premises FROM installations WHERE id = ?", {id},
                                             [](const Columns& row) { return row.uuid(0); });
    if (premises) {
        touch(Indexed::Premises, *premises);
    }
}

void Edit::commit(Undoable undoable) {
    for (const auto& [kind, row] : m_touched) {
        refreshSearch(m_session.db, kind, row);
    }
    for (const auto& premises : m_touchedDue) {
        refreshDue(m_session.db, premises);
    }
    if (m_logged) {
        sealChanges(m_session.db);
    }
    m_transaction.commit();
    const bool isNew = m_session.undoable.empty() || m_session.undoable.back() != m_group;
    if (m_logged && undoable == Undoable::Yes && isNew) {
        m_session.undoable.push_back(m_group);
    }
}

}  // namespace hearth::store

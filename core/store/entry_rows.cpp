// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/entry_rows.h"

namespace hearth::store {
namespace {

using OptionalText = std::optional<std::string>;

Cell cellOf(const std::optional<UuidBytes>& id) {
    return id ? Cell(*id) : Cell();
}

/// What the log calls absent: a unit of none is no unit.
OptionalText logUnit(const EntryRow& row) {
    return row.text && row.unit != quantity::unitText(quantity::UnitCode::None) ? OptionalText(row.unit)
                                                                                : std::nullopt;
}

OptionalText logInstrument(const EntryRow& row) {
    return row.text && row.instrument ? OptionalText(uuidText(*row.instrument)) : std::nullopt;
}

void logDifferences(Edit& edit, const EntryRow& before, const EntryRow& after) {
    const auto line = [&](std::string_view suffix, const OptionalText& old, const OptionalText& now) {
        if (old != now) {
            edit.log({std::string(kEntriesTable), uuidText(after.subject), after.item + std::string(suffix),
                      old, now, after.visit});
        }
    };
    line({}, before.text, after.text);
    line(kUnitField, logUnit(before), logUnit(after));
    line(kInstrumentField, logInstrument(before), logInstrument(after));
}

std::string canonical(reg::Item item, const std::string& text) {
    return reg::canonicalOf(item, text).value_or(std::string());
}

void insertEntry(Session& session, const EntryRow& row, reg::Item item) {
    session.db.run(
        "INSERT INTO entries (id, visit, subject_kind, subject, item, text, unit, canonical, instrument, at, "
        "by) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {session.newId(), row.visit, std::string(reg::codeOf(reg::infoOf(item).subject)), row.subject,
         row.item, *row.text, row.unit, canonical(item, *row.text), cellOf(row.instrument),
         instantText(session.clock.now()), session.actor});
}

void updateEntry(Session& session, const EntryRow& row, reg::Item item) {
    session.db.run(
        "UPDATE entries SET text = ?, unit = ?, canonical = ?, instrument = ?, at = ?, by = ? "
        "WHERE subject = ? AND item = ? AND visit = ?",
        {*row.text, row.unit, canonical(item, *row.text), cellOf(row.instrument),
         instantText(session.clock.now()), session.actor, row.subject, row.item, row.visit});
}

/// Nothing for a row with a code that this program does not know.
std::optional<reg::Entry> entryOf(const Columns& columns) {
    const auto kind = reg::subjectKindFromCode(columns.text(1));
    const auto item = reg::itemFromCode(columns.text(3));
    const auto unit = quantity::unitFromText(columns.text(5));
    if (!kind || !item || !unit) {
        return std::nullopt;
    }
    reg::Entry entry;
    entry.id = reg::EntryId{columns.uuid(0)};
    entry.subject = {*kind, columns.uuid(2)};
    entry.item = *item;
    entry.text = columns.text(4);
    entry.unit = *unit;
    entry.canonical = columns.text(6);
    if (!columns.isNull(7)) {
        entry.instrument = reg::InstrumentId{columns.uuid(7)};
    }
    if (!parseInstant(columns.text(8), entry.at)) {
        columns.notUnderstood("entries.at = " + columns.text(8));
    }
    entry.by = columns.text(9);
    return entry;
}

}  // namespace

EntryRow entryRowOf(const reg::Entry& entry) {
    EntryRow row;
    row.visit = entry.visit.bytes;
    row.subject = entry.subject.id;
    row.item = reg::infoOf(entry.item).code;
    row.text = entry.text.empty() ? std::nullopt : OptionalText(entry.text);
    row.unit = quantity::unitText(entry.unit);
    row.instrument = entry.instrument ? std::optional<UuidBytes>(entry.instrument->bytes) : std::nullopt;
    return row;
}

EntryRow standingEntry(const Connection& db, const UuidBytes& visit, const UuidBytes& subject,
                       const std::string& item) {
    EntryRow row{
        visit, subject, item, std::nullopt, std::string(quantity::unitText(quantity::UnitCode::None)), {}};
    db.query("SELECT text, unit, instrument FROM entries WHERE subject = ? AND item = ? AND visit = ?",
             {subject, item, visit}, [&](const Columns& columns) {
                 row.text = columns.text(0);
                 row.unit = columns.text(1);
                 if (!columns.isNull(2)) {
                     row.instrument = columns.uuid(2);
                 }
             });
    return row;
}

void putEntry(Edit& edit, const EntryRow& row) {
    Session& session = edit.session();
    const EntryRow before = standingEntry(session.db, row.visit, row.subject, row.item);
    const auto item = reg::itemFromCode(row.item);
    if (!item) {
        throw Failure(ErrorCode::NotFound, {"item", row.item});
    }
    if (!row.text && before.text) {
        session.db.run("DELETE FROM entries WHERE subject = ? AND item = ? AND visit = ?",
                       {row.subject, row.item, row.visit});
    } else if (row.text && !before.text) {
        insertEntry(session, row, *item);
    } else if (row.text &&
               (row.text != before.text || row.unit != before.unit || row.instrument != before.instrument)) {
        updateEntry(session, row, *item);
    }
    logDifferences(edit, before, row);
    if (*item == reg::Item::VisitReference) {
        edit.touch(Indexed::Visit, row.visit);
    }
}

std::vector<reg::Entry> entriesOf(const Connection& db, reg::VisitId visit) {
    std::vector<reg::Entry> entries;
    db.query(
        "SELECT id, subject_kind, subject, item, text, unit, canonical, instrument, at, by FROM entries "
        "WHERE visit = ? ORDER BY id",
        {visit.bytes}, [&](const Columns& columns) {
            if (auto entry = entryOf(columns)) {
                entry->visit = visit;
                entries.push_back(std::move(*entry));
            }
        });
    return entries;
}

}  // namespace hearth::store

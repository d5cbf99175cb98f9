// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/doings_fields.h"
#include "core/store/connection.h"

#include <string>
#include <string_view>
#include <vector>

/// From the register's values to rows and back, by the fields that core/record/register_fields.h names once.
namespace hearth::store {

using record::describe;

enum class CellType { Text, Integer, Uuid };

struct Column {
    std::string name;
    CellType type;
};

/// A table of the register. The first column is its key.
struct Table {
    std::string name;
    std::vector<Column> columns;
    Cells empty;  // a row with nothing filled in

    /// "p.id, p.line1, ..." for an alias.
    [[nodiscard]] std::string columnList(std::string_view alias) const;
    [[nodiscard]] std::size_t indexOf(std::string_view column) const;
    [[nodiscard]] bool has(std::string_view column) const;
};

/// The firm as the one row of its table.
struct FirmRow {
    Id<struct FirmTag> id;
    reg::Firm firm;
};
template <class Archive, record::Is<FirmRow> Value>
void describe(Archive& archive, Value& row) {
    archive.id("id", row.id);
    describe(archive, row.firm);
}

inline std::string_view tableName(const FirmRow&) {
    return "firm";
}
inline std::string_view tableName(const reg::Party&) {
    return "parties";
}
inline std::string_view tableName(const reg::Premises&) {
    return "premises";
}
inline std::string_view tableName(const reg::Role&) {
    return "roles";
}
inline std::string_view tableName(const reg::Installation&) {
    return "installations";
}
inline std::string_view tableName(const reg::PipeSection&) {
    return "pipe_sections";
}
inline std::string_view tableName(const reg::Engineer&) {
    return "engineers";
}
inline std::string_view tableName(const reg::Instrument&) {
    return "instruments";
}
inline std::string_view tableName(const reg::Visit&) {
    return "visits";
}
inline std::string_view tableName(const reg::Test&) {
    return "tests";
}

inline std::string_view tableName(const reg::Appliance&) {
    return "appliances";
}
inline std::string_view tableName(const reg::Competence&) {
    return "competences";
}
inline std::string_view tableName(const reg::AccessAttempt&) {
    return "access_attempts";
}
inline std::string_view tableName(const reg::Letter&) {
    return "letters";
}
inline std::string_view tableName(const reg::Booking&) {
    return "bookings";
}
inline std::string_view tableName(const reg::Situation&) {
    return "situations";
}
inline std::string_view tableName(const reg::SituationEvent&) {
    return "situation_events";
}
inline std::string_view tableName(const reg::EmergencyContact&) {
    return "emergency_contacts";
}
inline std::string_view tableName(const reg::CheckPlan&) {
    return "check_plans";
}
inline std::string_view tableName(const reg::EarlierCheck&) {
    return "earlier_checks";
}
inline std::string_view tableName(const reg::CheckExtension&) {
    return "check_extensions";
}
inline std::string_view tableName(const reg::Attachment&) {
    return "attachments";
}
inline std::string_view tableName(const reg::HandSignature&) {
    return "hand_signatures";
}
inline std::string_view tableName(const reg::GaugeTrace&) {
    return "traces";
}
inline std::string_view tableName(const reg::Binned&) {
    return "bin";
}

/// Archive that writes a value's cells, and the columns with them.
class ToCells {
  public:
    static constexpr bool kStaysInside = true;

    template <class Key>
    void id(const char* name, const Id<Key>& key) {
        add(name, CellType::Uuid, key.bytes);
    }
    template <class Key>
    void link(const char* name, const Id<Key>& key) {
        add(name, CellType::Uuid, key.bytes);
    }
    template <class Key>
    void link(const char* name, const std::optional<Id<Key>>& key) {
        add(name, CellType::Uuid, key ? Cell(key->bytes) : Cell());
    }
    void owner(const char* name, const UuidBytes& key) { add(name, CellType::Uuid, key); }
    void text(const char* name, const std::string& text) { add(name, CellType::Text, text); }
    void secret(const char* name, const std::string& text) { add(name, CellType::Text, text); }
    void number(const char* name, int number) { add(name, CellType::Integer, std::int64_t{number}); }
    void flag(const char* name, bool flag) { add(name, CellType::Integer, std::int64_t{flag ? 1 : 0}); }
    template <class Enumeration>
    void code(const char* name, Enumeration value) {
        add(name, CellType::Text, std::string(record::CodeOf<Enumeration>::text(value)));
    }
    void typed(const char* name, const quantity::Typed& typed) {
        add(name, CellType::Text, typed.text);
        add(std::string(name) + "_unit", CellType::Text, std::string(quantity::unitText(typed.unit)));
    }
    void date(const char* name, const std::optional<calendar::Date>& date) {
        add(name, CellType::Text, date ? Cell(calendar::isoText(*date)) : Cell());
    }
    void instant(const char* name, Instant instant) { add(name, CellType::Text, instantText(instant)); }
    void instant(const char* name, const std::optional<Instant>& instant) {
        add(name, CellType::Text, instant ? Cell(instantText(*instant)) : Cell());
    }

    std::vector<Column> columns;
    Cells cells;

  private:
    void add(std::string name, CellType type, Cell cell) {
        columns.push_back({std::move(name), type});
        cells.push_back(std::move(cell));
    }
};

/// Archive that reads a value from the columns of a query, in order.
class FromColumns {
  public:
    static constexpr bool kStaysInside = true;

    explicit FromColumns(const Columns& columns, int first) : m_columns(columns), m_next(first) {}

    template <class Key>
    void id(const char* /*name*/, Id<Key>& key) {
        key.bytes = m_columns.uuid(m_next++);
    }
    template <class Key>
    void link(const char* /*name*/, Id<Key>& key) {
        key.bytes = m_columns.uuid(m_next++);
    }
    template <class Key>
    void link(const char* /*name*/, std::optional<Id<Key>>& key) {
        if (!m_columns.isNull(m_next)) {
            key = Id<Key>{m_columns.uuid(m_next)};
        }
        ++m_next;
    }
    void owner(const char* /*name*/, UuidBytes& key) { key = m_columns.uuid(m_next++); }
    void text(const char* /*name*/, std::string& text) { text = m_columns.text(m_next++); }
    void secret(const char* /*name*/, std::string& text) { text = m_columns.text(m_next++); }
    void number(const char* /*name*/, int& number) { number = m_columns.number(m_next++); }
    void flag(const char* /*name*/, bool& flag) { flag = m_columns.integer(m_next++) != 0; }
    template <class Enumeration>
    void code(const char* name, Enumeration& value) {
        take(name, value, record::CodeOf<Enumeration>::value(m_columns.text(m_next)));
    }
    void typed(const char* name, quantity::Typed& typed) {
        typed.text = m_columns.text(m_next++);
        take(name, typed.unit, quantity::unitFromText(m_columns.text(m_next)));
    }
    void date(const char* name, calendar::Date& date) {
        take(name, date, calendar::fromIso(m_columns.text(m_next)));
    }
    void date(const char* name, std::optional<calendar::Date>& value) {
        if (m_columns.isNull(m_next)) {
            ++m_next;
            return;
        }
        calendar::Date read{};
        date(name, read);
        value = read;
    }
    void instant(const char* name, std::optional<Instant>& value) {
        if (m_columns.isNull(m_next)) {
            ++m_next;
            return;
        }
        Instant read{};
        instant(name, read);
        value = read;
    }
    void instant(const char* name, Instant& instant) {
        Instant read{};
        const bool good = parseInstant(m_columns.text(m_next), read);
        take(name, instant, good ? std::optional<Instant>(read) : std::nullopt);
    }

  private:
    template <class Value>
    void take(const char* name, Value& value, const std::optional<Value>& read) {
        if (!read) {
            m_columns.notUnderstood(std::string(name) + " = " + m_columns.text(m_next));
        }
        value = *read;
        ++m_next;
    }

    const Columns& m_columns;
    int m_next;
};

template <class Value>
[[nodiscard]] Cells cellsOf(const Value& value) {
    ToCells archive;
    describe(archive, value);
    return std::move(archive.cells);
}

template <class Value>
[[nodiscard]] const Table& tableOf() {
    static const Table kTable = [] {
        const Value value{};
        ToCells archive;
        describe(archive, value);
        return Table{std::string(tableName(value)), std::move(archive.columns), std::move(archive.cells)};
    }();
    return kTable;
}

/// The value whose first column is at `first`.
template <class Value>
[[nodiscard]] Value valueOf(const Columns& columns, int first = 0) {
    Value value{};
    FromColumns archive(columns, first);
    describe(archive, value);
    return value;
}

/// All rows of a table that `where` names ("WHERE x = ? ORDER BY y").
template <class Value>
[[nodiscard]] std::vector<Value> valuesWhere(const Connection& db, std::string_view where,
                                             const Cells& values = {}) {
    const Table& table = tableOf<Value>();
    const std::string sql =
        "SELECT " + table.columnList("t") + " FROM " + table.name + " AS t " + std::string(where);
    return db.all(sql, values, [](const Columns& columns) { return valueOf<Value>(columns); });
}

/// The row with that key; throws NotFound with the table's name.
template <class Value>
[[nodiscard]] Value valueWithId(const Connection& db, const UuidBytes& id) {
    auto values = valuesWhere<Value>(db, "WHERE t.id = ?", {id});
    if (values.empty()) {
        throw Failure(ErrorCode::NotFound, {tableOf<Value>().name, uuidText(id)});
    }
    return std::move(values.front());
}

/// The row that a query stands on, which gave the table's columns in order.
[[nodiscard]] Cells cellsOfRow(const Table& table, const Columns& columns);

/// The table of that name; null for one that is none of the register's.
[[nodiscard]] const Table* tableNamed(std::string_view name);

}  // namespace hearth::store

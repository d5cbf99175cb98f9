// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/whole_rows.h"

#include "core/store/due_index.h"
#include "core/store/durable.h"
#include "core/store/file_header.h"
#include "core/store/migrations.h"
#include "core/store/search_index.h"
#include "core/store/store_lock.h"
#include "core/store/verification.h"

#include <algorithm>
#include <array>
#include <optional>
#include <unistd.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using record::WholeBytes;
using record::WholeCell;
using record::WholeRow;
using record::WholeTable;
using record::WholeType;

/// BLOBs that are no ids.
struct Payload {
    std::string_view table;
    std::string_view column;
    WholeType type;
};
constexpr std::array kPayloads{Payload{"record_snapshots", "json", WholeType::TextBytes},
                               Payload{"record_pdfs", "pdf", WholeType::Bytes},
                               Payload{"attachment_bytes", "bytes", WholeType::Bytes},
                               Payload{"attachment_bytes", "thumbnail", WholeType::Bytes},
                               Payload{"changes", "salt", WholeType::Bytes},
                               Payload{"trace_readings", "packed", WholeType::Bytes}};

bool isLeftOut(const std::string& table) {
    return table == "migrations" || table.substr(0, 7) == "search_" || table.substr(0, 7) == "sqlite_" ||
           table == "due_premises";
}

WholeType typeOf(const std::string& table, const std::string& column, const std::string& declared) {
    if (declared != "BLOB") {
        return declared == "INTEGER" ? WholeType::Integer : WholeType::Text;
    }
    const auto* const payload = std::find_if(kPayloads.begin(), kPayloads.end(), [&](const Payload& known) {
        return known.table == table && known.column == column;
    });
    return payload == kPayloads.end() ? WholeType::Uuid : payload->type;
}

WholeTable wholeTable(const Connection& db, const std::string& name) {
    WholeTable table{name, {}};
    db.query("SELECT name, type, [notnull] FROM pragma_table_info(?) ORDER BY cid", {name},
             [&](const Columns& columns) {
                 table.columns.push_back({columns.text(0), typeOf(name, columns.text(0), columns.text(1)),
                                          columns.integer(2) == 0});
             });
    return table;
}

WholeCell wholeCell(const Columns& columns, int at, WholeType type) {
    if (columns.isNull(at)) {
        return {};
    }
    switch (type) {
        case WholeType::Text:
            return columns.text(at);
        case WholeType::Integer:
            return columns.integer(at);
        case WholeType::Uuid:
            return columns.uuid(at);
        case WholeType::Bytes:
        case WholeType::TextBytes:
            break;
    }
    return WholeBytes{columns.bytes(at)};
}

Cell cellOf(const WholeCell& cell) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return *number;
    }
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return *text;
    }
    if (const auto* id = std::get_if<UuidBytes>(&cell)) {
        return *id;
    }
    if (const auto* bytes = std::get_if<WholeBytes>(&cell)) {
        return Blob{bytes->bytes};
    }
    return {};
}

std::string namesOf(const WholeTable& table) {
    std::string names;
    for (const auto& column : table.columns) {
        names.append(names.empty() ? "" : ", ").append(column.name);
    }
    return names;
}

/// Fills an empty store; a refusal is thrown at its border.
class Loading : public record::WholeSink {
  public:
    Loading(Connection& db, const Clock& clock) : m_db(db), m_clock(clock) {}

    Result<std::vector<WholeTable>> begin(int schema) override {
        const auto all = shippedMigrations();
        if (schema > newestSchema(all) || schema < 1) {
            return fail(ErrorCode::ExportNewer,
                        {m_db.path(), std::to_string(schema), std::to_string(newestSchema(all))});
        }
        try {
            applyMigrations(m_db, all.first(static_cast<std::size_t>(schema)), m_clock);
            m_whole.emplace(m_db);
            m_db.script("PRAGMA defer_foreign_keys = ON");  // rows come in whatever order
            return wholeTables(m_db);
        } catch (const Failure& failure) {
            return tl::unexpected(failure.error());
        }
    }

    Result<void> take(const WholeTable& table, const WholeRow& row) override {
        std::string marks;
        Cells cells;
        for (const auto& cell : row) {
            marks.append(marks.empty() ? "?" : ", ?");
            cells.push_back(cellOf(cell));
        }
        try {
            m_db.run("INSERT INTO " + table.name + " (" + namesOf(table) + ") VALUES (" + marks + ")", cells);
            return {};
        } catch (const Failure& failure) {
            return tl::unexpected(failure.error());
        }
    }

    void finish() {
        if (!m_whole) {
            throw Failure(ErrorCode::ExportInvalid, {m_db.path(), "schema", "missing"});
        }
        if (m_db.number("SELECT count(*) FROM pragma_foreign_key_check") != 0) {
            const auto row = m_db.text("SELECT [table] FROM pragma_foreign_key_check LIMIT 1");
            throw Failure(ErrorCode::ExportInvalid, {m_db.path(), row, "not_found"});
        }
        m_whole->commit();
        m_whole.reset();
        applyMigrations(m_db, shippedMigrations(), m_clock);
        if (m_db.number("SELECT count(*) FROM store") != 1 || m_db.number("SELECT count(*) FROM firm") != 1) {
            throw Failure(ErrorCode::ExportInvalid, {m_db.path(), "store", "missing"});
        }
        verifyAll(m_db);
        rebuildSearch(m_db);
        rebuildDue(m_db);
    }

  private:
    Connection& m_db;
    const Clock& m_clock;
    std::optional<Transaction> m_whole;
};

}  // namespace

std::vector<WholeTable> wholeTables(const Connection& db) {
    std::vector<WholeTable> tables;
    db.query("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name", {},
             [&](const Columns& columns) {
                 if (const std::string name = columns.text(0); !isLeftOut(name)) {
                     tables.push_back({name, {}});
                 }
             });
    for (auto& table : tables) {
        table = wholeTable(db, table.name);
    }
    return tables;
}

void eachWholeRow(const Connection& db, const WholeTable& table,
                  const std::function<void(const WholeRow&)>& take) {
    // what form the index of words and the list of what is due have is derived like these
    const std::string but = table.name == "settings" ? " WHERE name NOT IN ('search_form', 'due_form')" : "";
    db.query("SELECT " + namesOf(table) + " FROM " + table.name + but + " ORDER BY 1", {},
             [&](const Columns& columns) {
                 WholeRow row;
                 for (std::size_t i = 0; i < table.columns.size(); ++i) {
                     row.push_back(wholeCell(columns, static_cast<int>(i), table.columns[i].type));
                 }
                 take(row);
             });
}

void createFromRows(const fs::path& path, const Clock& clock,
                    const std::function<Result<void>(record::WholeSink&)>& rows) {
    const fs::path folder = path.parent_path().empty() ? fs::path(".") : path.parent_path();
    std::error_code problem;
    fs::create_directories(folder, problem);
    if (problem || access(folder.c_str(), W_OK) != 0) {
        throw Failure(ErrorCode::StoreFolderUnusable, {folder.string()});
    }
    if (fs::exists(path)) {
        throw Failure(ErrorCode::StoreFailed, {path.string(), "exists"});
    }
    const auto lock = StoreLock::take(path);
    if (!lock) {
        throw Failure(lock.error());
    }
    const DraftFile draft(path.string() + ".new");
    {
        Connection db(draft.path(), Connection::Mode::ReadWrite);
        db.script("PRAGMA application_id = " + std::to_string(kApplicationId));
        Loading loading(db, clock);
        valueOrThrow(rows(loading));
        loading.finish();
    }
    draft.publish(path, DraftFile::Existing::Keep);
}

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/whole_state.h"

#include <algorithm>
#include <sqlite3.h>
#include <sstream>
#include <stdexcept>
#include <vector>

namespace hearth::store {
namespace {

/// SQLite alone, without anything of ours.
class Bare {
  public:
    explicit Bare(const std::filesystem::path& path) {
        if (sqlite3_open_v2(path.c_str(), &m_db, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK) {
            fail();
        }
    }
    ~Bare() { sqlite3_close(m_db); }
    Bare(const Bare&) = delete;
    Bare& operator=(const Bare&) = delete;

    template <class Read>
    void each(const std::string& sql, Read read) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(m_db, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK) {
            fail();
        }
        int step = SQLITE_ROW;
        while ((step = sqlite3_step(statement)) == SQLITE_ROW) {
            read(statement);
        }
        sqlite3_finalize(statement);
        if (step != SQLITE_DONE) {
            fail();
        }
    }
    std::vector<std::string> texts(const std::string& sql) {
        std::vector<std::string> found;
        each(sql, [&](sqlite3_stmt* row) {
            const auto* text = sqlite3_column_text(row, 0);
            found.emplace_back(text != nullptr ? reinterpret_cast<const char*>(text) : "");
        });
        return found;
    }

  private:
    [[noreturn]] void fail() { throw std::runtime_error(sqlite3_errmsg(m_db)); }
    sqlite3* m_db = nullptr;
};

bool isHex(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
}

/// Whether a UUID's text or a digest's begins there; gives its length.
std::size_t chanceAt(const std::string& text, std::size_t at) {
    constexpr std::size_t kUuid = 36;
    constexpr std::size_t kDigest = 64;
    std::size_t length = 0;
    while (at + length < text.size() && length < kDigest && isHex(text[at + length])) {
        ++length;
    }
    if (length == kDigest) {
        return kDigest;
    }
    constexpr std::size_t kFirstPart = 8;
    const bool isUuid = length == kFirstPart && at + kUuid <= text.size() && text[at + 8] == '-' &&
                        text[at + 13] == '-' && text[at + 18] == '-' && text[at + 23] == '-';
    return isUuid ? kUuid : 0;
}

std::string withoutChance(const std::string& text) {
    std::string kept;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t chance = chanceAt(text, at);
        kept += chance > 0 ? '?' : text[at];
        at += std::max<std::size_t>(chance, 1);
    }
    return kept;
}

std::string cellText(sqlite3_stmt* row, int column, Of of) {
    const int type = sqlite3_column_type(row, column);
    if (type == SQLITE_NULL) {
        return "NULL";
    }
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(row, column));
    const std::string value(bytes != nullptr ? bytes : "",
                            static_cast<std::size_t>(sqlite3_column_bytes(row, column)));
    if (of == Of::OneRun) {
        return value.size() > 200 ? std::to_string(std::hash<std::string>()(value)) : value;
    }
    return type == SQLITE_BLOB ? "blob " + std::to_string(value.size()) : withoutChance(value);
}

std::vector<std::string> rowsOf(Bare& db, const std::string& table, Of of) {
    std::vector<std::string> rows;
    db.each("SELECT * FROM \"" + table + "\"", [&](sqlite3_stmt* row) {
        std::string text = table;
        for (int column = 0; column < sqlite3_column_count(row); ++column) {
            text.append(" | ").append(cellText(row, column, of));
        }
        std::replace(text.begin(), text.end(), '\n', ' ');
        rows.push_back(std::move(text));
    });
    std::sort(rows.begin(), rows.end());
    return rows;
}

}  // namespace

std::string wholeState(const std::filesystem::path& path, Of of) {
    Bare db(path);
    // An index of words keeps tables of its own, which say nothing that it does not say itself.
    const auto tables = db.texts(
        "SELECT name FROM sqlite_schema AS t WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND NOT EXISTS "
        "(SELECT 1 FROM sqlite_schema AS v WHERE v.sql LIKE 'CREATE VIRTUAL%' AND "
        "t.name LIKE v.name || '_%') ORDER BY name");
    std::string state;
    for (const auto& table : tables) {
        for (const auto& row : rowsOf(db, table, of)) {
            state.append(row).append("\n");
        }
    }
    return state;
}

std::string firstDifference(const std::string& one, const std::string& other) {
    std::istringstream first(one);
    std::istringstream second(other);
    std::string left;
    std::string right;
    while (true) {
        const bool more = static_cast<bool>(std::getline(first, left));
        const bool moreThere = static_cast<bool>(std::getline(second, right));
        if (!more && !moreThere) {
            return {};
        }
        if (left != right || more != moreThere) {
            return "< " + (more ? left : "") + "\n> " + (moreThere ? right : "");
        }
    }
}

std::string problemsOf(const std::filesystem::path& path) {
    Bare db(path);
    std::string problems;
    for (const auto& line : db.texts("PRAGMA integrity_check(5)")) {
        problems += line == "ok" ? "" : line + "\n";
    }
    for (const auto& table : db.texts("PRAGMA foreign_key_check")) {
        problems += "a row of " + table + " belongs to nothing\n";
    }
    return problems;
}

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

/// What the store asks of SQLite, noted while it works, and the same without the store.
namespace hearth::bench {

/// Notes the statements, values and all, that any connection runs that was opened after the first call.
void watchStatements();
/// Those run since the last call, without what triggers did within them.
[[nodiscard]] std::vector<std::string> takeStatements();

/// A connection of its own, set up as the store sets up its own, with nothing of ours around it. Each
/// statement is prepared beforehand: what is measured is running it and reading its columns, no more.
class BareStatements {
  public:
    /// Throws std::runtime_error with SQLite's words, as run() does.
    explicit BareStatements(const std::filesystem::path& path);
    ~BareStatements();
    BareStatements(const BareStatements&) = delete;
    BareStatements& operator=(const BareStatements&) = delete;

    void prepare(const std::vector<std::string>& statements);
    /// Runs all in order to their ends and reads every column.
    void run();

  private:
    [[noreturn]] void fail() const;
    void drop();

    sqlite3* m_db = nullptr;
    std::vector<sqlite3_stmt*> m_statements;
};

/// How often SQLite asked the disk to keep what it was given, by any connection opened after the first call.
[[nodiscard]] long syncsSoFar();

}  // namespace hearth::bench

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/search_index.h"
#include "core/store/session.h"
#include "core/store/tables.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace hearth::store {

/// One line of the change log before it is written.
struct LogLine {
    std::string table;
    std::string row;
    std::string field;
    std::optional<std::string> before;
    std::optional<std::string> after;
    std::optional<UuidBytes> visit;
};

/// One action of a person: a transaction in which rows are put and removed, each changed field logged, and
/// what is derived (the words to search by) kept in step. Every change of the register and of the entries
/// goes through here. Without commit() nothing has happened.
class Edit {
  public:
    /// Whether rows that lie in the bin may be changed and named: only by what empties it.
    enum class Binned { Refused, MayChange };
    explicit Edit(Session& session, Binned binned = Binned::Refused);

    /// Makes the row or changes what differs.
    template <class Value>
    void put(const Value& value) {
        put(tableOf<Value>(), cellsOf(value));
    }
    /// Throws InBin when the row, or one that it comes to name, lies in the bin.
    void put(const Table& table, const Cells& row);
    /// Nothing when there is no such row.
    void remove(const Table& table, const UuidBytes& id);
    /// As remove(), but of the row's fields only the key is logged: its texts are not to live on in the log.
    void erase(const Table& table, const UuidBytes& id);
    [[nodiscard]] std::optional<Cells> rowOf(const Table& table, const UuidBytes& id) const;

    void log(const LogLine& line);
    /// What it is found by has changed; the index follows on commit().
    void touch(Indexed kind, const UuidBytes& row) { m_touched.emplace(kind, row); }
    [[nodiscard]] Session& session() { return m_session; }
    /// Ends the action; undoable ones can be taken back as a whole.
    enum class Undoable { Yes, No };
    void commit(Undoable undoable = Undoable::Yes);

  private:
    void refuseBinnedOf(const Table& table, const std::optional<Cells>& before, const Cells& after);
    /// The premises that a row belongs to.
    [[nodiscard]] std::optional<UuidBytes> placeOf(const Table& table, const Cells& row);
    void insert(const Table& table, const Cells& row);
    void update(const Table& table, const Cells& before, const Cells& after);
    void logField(const Table& table, const Cells& row, std::size_t column, const Cell& before,
                  const Cell& after);
    void write(const LogLine& line, const std::optional<UuidBytes>& premises);
    void touch(const Table& table, const Cells& row);
    void touchRow(const std::string& table, const UuidBytes& id);
    void touchInstallation(const UuidBytes& id);

    Session& m_session;
    Transaction m_transaction;
    UuidBytes m_group;
    Binned m_binned;
    bool m_logged = false;
    std::map<UuidBytes, std::optional<UuidBytes>> m_premisesOf;  // of rows and visits already logged
    std::set<std::pair<Indexed, UuidBytes>> m_touched;
    std::set<UuidBytes> m_touchedDue;  // premises whose deadlines may have changed
};

/// A cell as the change log writes it; nothing for NULL.
[[nodiscard]] std::optional<std::string> logText(const Cell& cell);
/// And back, for a column of that type. Throws StoreDamaged for what can't be one.
[[nodiscard]] Cell cellFromLog(CellType type, const std::optional<std::string>& text,
                               const std::string& path);

}  // namespace hearth::store

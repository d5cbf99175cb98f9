// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migrations.h"

#include "core/record/snapshot.h"

namespace hearth::store {
namespace {

/// Foreign keys are off while a step runs, since a table that is built anew loses its rows for a moment; so
/// they are checked by hand before it counts.
class ForeignKeysOff {
  public:
    explicit ForeignKeysOff(Connection& connection) : m_connection(connection) {
        m_connection.script("PRAGMA foreign_keys = OFF");
    }
    ~ForeignKeysOff() {
        try {
            m_connection.script("PRAGMA foreign_keys = ON");
        } catch (const Failure&) {
            // The caller is on its way out with a worse failure, and closes the connection.
            return;
        }
    }
    ForeignKeysOff(const ForeignKeysOff&) = delete;
    ForeignKeysOff& operator=(const ForeignKeysOff&) = delete;

  private:
    Connection& m_connection;
};

void checkForeignKeys(const Connection& connection) {
    const auto orphan = connection.first(
        "PRAGMA foreign_key_check", {}, [](const Columns& row) { return row.text(0) + " > " + row.text(2); });
    if (orphan) {
        throw Failure(ErrorCode::StoreFailed, {connection.path(), "foreign key: " + *orphan});
    }
}

void apply(Connection& connection, const Migration& step, const Clock& clock) {
    Transaction transaction(connection);
    connection.script(std::string(step.sql));
    checkForeignKeys(connection);
    connection.run(
        "INSERT INTO migrations (number, name, sha256, applied_at, program) VALUES (?, ?, ?, ?, ?)",
        {std::int64_t{step.number}, std::string(step.name), record::sha256(step.sql),
         instantText(clock.now()), std::string(HEARTH_VERSION)});
    connection.script("PRAGMA user_version = " + std::to_string(step.number));
    transaction.commit();
}

}  // namespace

int newestSchema(MigrationList list) {
    return list.empty() ? 0 : list.back().number;
}

int schemaOf(const Connection& connection) {
    return static_cast<int>(connection.number("PRAGMA user_version"));
}

void checkApplied(const Connection& connection, MigrationList list) {
    for (const auto& step : list) {
        const auto applied =
            connection.text("SELECT sha256 FROM migrations WHERE number = ?", {std::int64_t{step.number}});
        if (!applied.empty() && applied != record::sha256(step.sql)) {
            throw Failure(ErrorCode::MigrationChanged, {std::to_string(step.number)});
        }
    }
}

void applyMigrations(Connection& connection, MigrationList list, const Clock& clock) {
    const int from = schemaOf(connection);
    const ForeignKeysOff keysOff(connection);
    for (const auto& step : list) {
        if (step.number > from) {
            apply(connection, step, clock);
        }
    }
}

}  // namespace hearth::store

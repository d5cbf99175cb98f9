// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/bridge.h"
#include "core/store/due_index.h"
#include "core/store/file_header.h"
#include "core/store/migrations.h"
#include "core/store/register_repository.h"
#include "core/store/signature_repository.h"
#include "core/store/store.h"
#include "core/store/verification.h"

#include <QTemporaryDir>

#include <system_error>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

/// A store with a journal that a killed program left can be read only after that was played back, which
/// writes: so copies of the two are looked at.
class Looked {
  public:
    explicit Looked(const fs::path& path) : m_path(path) {
        if (!hasJournal(path)) {
            return;
        }
        m_path = fs::path(fromQt(m_folder.path())) / path.filename();
        std::error_code problem;
        fs::copy_file(path, m_path, problem);
        if (!problem) {
            fs::copy_file(journalOf(path), journalOf(m_path), problem);
        }
        if (problem) {
            throw Failure(ErrorCode::StoreFailed, {path.string(), problem.message()});
        }
        m_mode = Connection::Mode::ReadWrite;
    }
    [[nodiscard]] std::unique_ptr<Connection> open() const {
        return std::make_unique<Connection>(m_path, m_mode);
    }

  private:
    QTemporaryDir m_folder;
    fs::path m_path;
    Connection::Mode m_mode = Connection::Mode::ReadOnly;
};

/// What a damaged file still tells.
int count(const Connection& db, const char* sql) {
    return static_cast<int>(guarded([&] { return db.number(sql); }).value_or(0));
}

Health healthOf(Connection& db, const fs::path& path) {
    Health health;
    health.path = path.string();
    health.schema = static_cast<int>(guarded([&] { return schemaOf(db); }).value_or(0));
    const auto integrity = guarded([&] { return integrityOf(db, Check::Full); });
    health.integrity = integrity ? *integrity : std::string(codeText(integrity.error().code));
    health.chain = guarded([&] { verifyAll(db); });
    health.outOfTime = guarded([&] { return recordsOutOfTime(db); }).value_or(std::vector<std::string>());
    const auto signatures = guarded([&] { return holdSignatures(db); }).value_or(SignaturesHeld());
    health.signatures = signatures.right;
    health.wrongSignatures = signatures.wrong;
    health.records = count(db, "SELECT count(*) FROM record_headers");
    health.letGo = count(db, "SELECT count(*) FROM record_events WHERE event = 'payload erased'");
    health.visits = count(db, "SELECT count(*) FROM visits");
    health.premises = count(db, "SELECT count(*) FROM premises");
    health.staleDue = guarded([&] { return staleInDue(db); }).value_or(0);  // older stores have no list
    health.demonstration = count(db, "SELECT demonstration FROM firm") != 0;
    return health;
}

}  // namespace

Result<Health> Store::inspect(const fs::path& path) {
    return guarded([&] {
        const int schema = valueOrThrow(readFileHeader(path)).schema;
        const int ours = newestSchema(shippedMigrations());
        if (schema > ours) {
            throw Failure(ErrorCode::StoreNewer,
                          {path.string(), std::to_string(schema), std::to_string(ours)});
        }
        const Looked looked(path);
        const auto db = looked.open();
        return healthOf(*db, path);
    });
}

}  // namespace hearth::store

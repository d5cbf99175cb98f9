// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include "core/store/bridge.h"
#include "core/store/sqlite_error.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QVariant>

#include <algorithm>
#include <atomic>
#include <cassert>
#include <sqlite3.h>

namespace hearth::store {
namespace {

QString nextConnectionName() {
    static std::atomic<unsigned> count{0};
    return QStringLiteral("hearth-store-%1").arg(count.fetch_add(1));
}

QVariant variantOf(const Cell& cell) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return {static_cast<qlonglong>(*number)};
    }
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return {toQt(*text)};
    }
    if (const auto* uuid = std::get_if<UuidBytes>(&cell)) {
        const std::string bytes(uuid->begin(), uuid->end());
        return {bytesToQt(bytes)};
    }
    if (const auto* blob = std::get_if<Blob>(&cell)) {
        return {bytesToQt(blob->bytes)};
    }
    return {};
}

/// The errno behind SQLite's error. The database file remembers its own; the process's may be a later one's
/// by now.
int systemErrorOf(sqlite3* db) {
    int ofFile = 0;
    if (sqlite3_file_control(db, "main", SQLITE_FCNTL_LAST_ERRNO, &ofFile) == SQLITE_OK && ofFile != 0) {
        return ofFile;
    }
    return sqlite3_system_errno(db);
}

}  // namespace

bool Columns::isNull(int column) const {
    return m_query.isNull(column);
}

std::string Columns::text(int column) const {
    const QVariant value = m_query.value(column);
    if (value.typeId() != QMetaType::QString) {
        notUnderstood(fromQt(value.toString()));
    }
    return fromQt(value.toString());
}

std::int64_t Columns::integer(int column) const {
    const QVariant value = m_query.value(column);
    if (value.typeId() != QMetaType::LongLong && value.typeId() != QMetaType::Int) {
        notUnderstood(fromQt(value.toString()));
    }
    return value.toLongLong();
}

UuidBytes Columns::uuid(int column) const {
    const QByteArray bytes = m_query.value(column).toByteArray();
    UuidBytes uuid{};
    if (static_cast<std::size_t>(bytes.size()) != uuid.size()) {
        notUnderstood(bytes.toHex().toStdString());
    }
    std::copy(bytes.begin(), bytes.end(), uuid.begin());
    return uuid;
}

std::string Columns::bytes(int column) const {
    return bytesFromQt(m_query.value(column).toByteArray());
}

void Columns::notUnderstood(const std::string& what) const {
    throw Failure(ErrorCode::StoreDamaged, {m_path, what});
}

Connection::Connection(const std::filesystem::path& path, Mode mode)
    : m_path(path.string()),
      m_name(nextConnectionName()),
      m_database(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name)) {
    try {
        open(mode);
        setUp();
    } catch (...) {
        m_database = QSqlDatabase();
        QSqlDatabase::removeDatabase(m_name);
        throw;
    }
}

Connection::~Connection() {
    m_database.close();
    m_database = QSqlDatabase();  // removeDatabase() wants no one to hold it
    QSqlDatabase::removeDatabase(m_name);
}

void Connection::open(Mode mode) {
    m_database.setDatabaseName(toQt(m_path));
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000");
    if (mode == Mode::ReadOnly) {
        options += QStringLiteral(";QSQLITE_OPEN_READONLY");
    }
    m_database.setConnectOptions(options);
    if (!m_database.open()) {
        const QSqlError error = m_database.lastError();
        const QString code = error.nativeErrorCode();
        throw Failure(
            sqliteError(code.isEmpty() ? SQLITE_ERROR : code.toInt(), 0, m_path, fromQt(error.text())));
    }
}

void Connection::setUp() {
    sqlite3* db = handle();
    sqlite3_extended_result_codes(db, 1);
    constexpr std::pair<int, int> kSwitches[] = {
        {SQLITE_DBCONFIG_DEFENSIVE, 1},   {SQLITE_DBCONFIG_DQS_DML, 0},        {SQLITE_DBCONFIG_DQS_DDL, 0},
        {SQLITE_DBCONFIG_ENABLE_FKEY, 1}, {SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
    };
    for (const auto& [name, value] : kSwitches) {
        if (sqlite3_db_config(db, name, value, nullptr) != SQLITE_OK) {
            raise();
        }
    }
    script(
        "PRAGMA cell_size_check = ON;"
        "PRAGMA recursive_triggers = ON;"
        "PRAGMA synchronous = EXTRA;"
        "PRAGMA mmap_size = 0;");
    if (!isReadOnly()) {
        script("PRAGMA journal_mode = DELETE;");
    }
}

bool Connection::isReadOnly() const {
    return sqlite3_db_readonly(handle(), "main") == 1;
}

sqlite3* Connection::handle() const {
    const QVariant value = m_database.driver()->handle();
    assert(value.isValid() && qstrcmp(value.typeName(), "sqlite3*") == 0);
    return *static_cast<sqlite3* const*>(value.constData());
}

bool Connection::isInTransaction() const {
    return sqlite3_get_autocommit(handle()) == 0;
}

QSqlQuery Connection::execute(std::string_view sql, const Cells& values) const {
    QSqlQuery query(m_database);
    query.setForwardOnly(true);
    if (!query.prepare(toQt(sql))) {
        raise(query);
    }
    for (const auto& value : values) {
        query.addBindValue(variantOf(value));
    }
    if (!query.exec()) {
        raise(query);
    }
    return query;
}

void Connection::run(std::string_view sql, const Cells& values) {
    static_cast<void>(execute(sql, values));
}

void Connection::query(std::string_view sql, const Cells& values,
                       const std::function<void(const Columns&)>& read) const {
    QSqlQuery query = execute(sql, values);
    const Columns columns(query, m_path);
    while (query.next()) {
        read(columns);
    }
    if (query.lastError().isValid()) {
        raise(query);
    }
}

std::int64_t Connection::number(std::string_view sql, const Cells& values) const {
    return first(sql, values, [](const Columns& row) { return row.isNull(0) ? 0 : row.integer(0); })
        .value_or(0);
}

std::string Connection::text(std::string_view sql, const Cells& values) const {
    return first(sql, values, [](const Columns& row) { return row.isNull(0) ? std::string() : row.text(0); })
        .value_or(std::string());
}

void Connection::script(const std::string& sql) {
    if (!tryScript(sql.c_str())) {
        raise();
    }
}

bool Connection::tryScript(const char* sql) const noexcept {
    return sqlite3_exec(handle(), sql, nullptr, nullptr, nullptr) == SQLITE_OK;
}

void Connection::raise() const {
    sqlite3* db = handle();
    throw Failure(sqliteError(sqlite3_extended_errcode(db), systemErrorOf(db), m_path, sqlite3_errmsg(db)));
}

void Connection::raise(const QSqlQuery& query) const {
    sqlite3* db = handle();
    const int primary = query.lastError().nativeErrorCode().toInt();
    const int extended = sqlite3_extended_errcode(db);
    constexpr int kPrimary = 0xff;
    // Qt keeps the code of the call that failed; SQLite may have been called since.
    const int code = (extended & kPrimary) == (primary & kPrimary) ? extended : primary;
    throw Failure(sqliteError(code, systemErrorOf(db), m_path, fromQt(query.lastError().text())));
}

Transaction::Transaction(Connection& connection)
    : m_connection(connection), m_isPart(connection.isInTransaction()) {
    m_connection.script(m_isPart ? "SAVEPOINT part" : "BEGIN IMMEDIATE");
}

Transaction::~Transaction() {
    // SQLite has rolled back by itself after some failures (disk full).
    if (m_open && m_connection.isInTransaction()) {
        m_connection.tryScript(m_isPart ? "ROLLBACK TO part; RELEASE part" : "ROLLBACK");
    }
}

void Transaction::commit() {
    m_connection.script(m_isPart ? "RELEASE part" : "COMMIT");
    m_open = false;
}

ReadScope::ReadScope(Connection& connection)
    : m_connection(connection), m_mine(!connection.isInTransaction()) {
    if (m_mine) {
        m_connection.script("BEGIN");
    }
}

ReadScope::~ReadScope() {
    if (m_mine && m_connection.isInTransaction()) {
        m_connection.tryScript("ROLLBACK");
    }
}

}  // namespace hearth::store

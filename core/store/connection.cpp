// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include "core/store/bridge.h"
#include "core/store/sqlite_error.h"

#include <QSqlDatabase>
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

bool isAscii(std::string_view text) {
    return std::all_of(text.begin(), text.end(),
                       [](char c) { return (static_cast<unsigned char>(c) & 0x80U) == 0; });
}

/// Text as UTF-8 that can be relied on: what is none (a damaged file) comes out with marks in its place.
std::string asUtf8(std::string_view bytes) {
    return isAscii(bytes) ? std::string(bytes) : fromQt(toQt(bytes));
}

int bindText(sqlite3_stmt* statement, int at, const std::string& text) {
    const auto size = static_cast<sqlite3_uint64>(text.size());
    if (isAscii(text)) {
        return sqlite3_bind_text64(statement, at, text.data(), size, SQLITE_STATIC, SQLITE_UTF8);
    }
    const std::string sound = asUtf8(text);
    return sqlite3_bind_text64(statement, at, sound.data(), sound.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
}

int bindBytes(sqlite3_stmt* statement, int at, const void* bytes, std::size_t size) {
    return sqlite3_bind_blob64(statement, at, bytes, static_cast<sqlite3_uint64>(size), SQLITE_STATIC);
}

/// Statements run on SQLite's handle, kept prepared: Qt Sql prepares each anew and makes a variant of each
/// column. The values outlive the statement's run, so SQLite need not copy them.
int bind(sqlite3_stmt* statement, int at, const Cell& cell) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return sqlite3_bind_int64(statement, at, *number);
    }
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return bindText(statement, at, *text);
    }
    if (const auto* uuid = std::get_if<UuidBytes>(&cell)) {
        return bindBytes(statement, at, uuid->data(), uuid->size());
    }
    if (const auto* blob = std::get_if<Blob>(&cell)) {
        return bindBytes(statement, at, blob->bytes.data(), blob->bytes.size());
    }
    return sqlite3_bind_null(statement, at);
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
    return sqlite3_column_type(m_row, column) == SQLITE_NULL;
}

std::string Columns::text(int column) const {
    const int type = sqlite3_column_type(m_row, column);
    std::string text = bytes(column);
    if (type != SQLITE_TEXT) {
        notUnderstood(asUtf8(text));
    }
    return isAscii(text) ? text : asUtf8(text);
}

std::string_view Columns::textInPlace(int column) const {
    if (sqlite3_column_type(m_row, column) != SQLITE_TEXT) {
        return {};
    }
    const auto* found = static_cast<const char*>(sqlite3_column_blob(m_row, column));
    return {found == nullptr ? "" : found, static_cast<std::size_t>(sqlite3_column_bytes(m_row, column))};
}

std::int64_t Columns::integer(int column) const {
    if (sqlite3_column_type(m_row, column) != SQLITE_INTEGER) {
        notUnderstood(asUtf8(bytes(column)));
    }
    return sqlite3_column_int64(m_row, column);
}

UuidBytes Columns::uuid(int column) const {
    UuidBytes uuid{};
    const auto* found = static_cast<const std::uint8_t*>(sqlite3_column_blob(m_row, column));
    if (static_cast<std::size_t>(sqlite3_column_bytes(m_row, column)) != uuid.size()) {
        notUnderstood(bytesToQt(bytes(column)).toHex().toStdString());
    }
    std::copy(found, found + uuid.size(), uuid.begin());
    return uuid;
}

std::string Columns::bytes(int column) const {
    const auto* found = static_cast<const char*>(sqlite3_column_blob(m_row, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_row, column));
    return found == nullptr ? std::string() : std::string(found, size);
}

void Columns::notUnderstood(const std::string& what) const {
    throw Failure(ErrorCode::StoreDamaged, {m_path, what});
}

class Connection::Database {
  public:
    Database(const std::string& path, Mode mode)
        : m_name(nextConnectionName()),
          m_database(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name)) {
        m_database.setDatabaseName(toQt(path));
        m_database.setConnectOptions(mode == Mode::ReadOnly
                                         ? QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000;QSQLITE_OPEN_READONLY")
                                         : QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000"));
    }
    ~Database() {
        m_database.close();
        m_database = QSqlDatabase();  // removeDatabase() wants no one to hold it
        QSqlDatabase::removeDatabase(m_name);
    }
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    [[nodiscard]] bool open() { return m_database.open(); }
    [[nodiscard]] QSqlError error() const { return m_database.lastError(); }
    [[nodiscard]] sqlite3* handle() const {
        const QVariant value = m_database.driver()->handle();
        assert(value.isValid() && qstrcmp(value.typeName(), "sqlite3*") == 0);
        return *static_cast<sqlite3* const*>(value.constData());
    }

  private:
    QString m_name;
    QSqlDatabase m_database;
};

Connection::Connection(const std::filesystem::path& path, Mode mode) : m_path(path.string()) {
    open(mode);
    setUp();
}

Connection::~Connection() = default;

void Connection::open(Mode mode) {
    m_database = std::make_unique<Database>(m_path, mode);
    if (!m_database->open()) {
        const QSqlError error = m_database->error();
        const QString code = error.nativeErrorCode();
        throw Failure(
            sqliteError(code.isEmpty() ? SQLITE_ERROR : code.toInt(), 0, m_path, fromQt(error.text())));
    }
    m_db = m_database->handle();
    m_statements.emplace(m_db);
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

bool Connection::isInTransaction() const {
    return sqlite3_get_autocommit(handle()) == 0;
}

void Connection::ready(sqlite3_stmt* statement, const Cells& values) const {
    if (statement == nullptr) {
        raise();
    }
    assert(sqlite3_bind_parameter_count(statement) == static_cast<int>(values.size()));
    int at = 0;
    for (const auto& value : values) {
        if (bind(statement, ++at, value) != SQLITE_OK) {
            raise();
        }
    }
}

void Connection::run(std::string_view sql, const Cells& values) {
    const Statement statement(*m_statements, sql);
    ready(statement.get(), values);
    int step = SQLITE_ROW;
    while (step == SQLITE_ROW) {
        step = sqlite3_step(statement.get());
    }
    if (step != SQLITE_DONE) {
        raise();
    }
}

void Connection::query(std::string_view sql, const Cells& values,
                       const std::function<void(const Columns&)>& read) const {
    const Statement statement(*m_statements, sql);
    ready(statement.get(), values);
    const Columns columns(statement.get(), m_path);
    int step = SQLITE_DONE;
    while ((step = sqlite3_step(statement.get())) == SQLITE_ROW) {
        read(columns);
    }
    if (step != SQLITE_DONE) {
        raise();
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

WideCache::WideCache(const Connection& connection)
    : m_connection(connection), m_before(connection.number("PRAGMA cache_size")) {
    constexpr std::int64_t kKibibytes = 48 * 1024;
    static_cast<void>(m_connection.tryScript(("PRAGMA cache_size = -" + std::to_string(kKibibytes)).c_str()));
}

WideCache::~WideCache() {
    static_cast<void>(m_connection.tryScript(("PRAGMA cache_size = " + std::to_string(m_before)).c_str()));
    sqlite3_db_release_memory(m_connection.handle());
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

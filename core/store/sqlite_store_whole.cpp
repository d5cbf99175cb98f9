// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/bin_repository.h"
#include "core/store/change_log.h"
#include "core/store/migrations.h"
#include "core/store/register_repository.h"
#include "core/store/sqlite_store.h"
#include "core/store/tables.h"
#include "core/store/whole_rows.h"

namespace hearth::store {
namespace {

/// Rows that stand, and whose owners in these columns do.
template <class Value>
std::vector<Value> standing(const Connection& db, std::initializer_list<const char*> owners,
                            const char* order) {
    std::string where = "WHERE " + notInBin("t.id");
    for (const char* owner : owners) {
        where += " AND " + notInBin(std::string("t.") + owner);
    }
    return valuesWhere<Value>(db, where + " ORDER BY " + order);
}

}  // namespace

Result<record::RegisterRows> SqliteStore::registerRows() const {
    return guarded([&] {
        const ReadScope oneMoment(m_db);
        record::RegisterRows rows;
        rows.firm = readFirm(m_db);
        rows.engineers = standing<reg::Engineer>(m_db, {}, "t.name, t.id");
        rows.competences = standing<reg::Competence>(m_db, {"engineer"}, "t.engineer, t.category, t.id");
        rows.instruments = standing<reg::Instrument>(m_db, {}, "t.name, t.id");
        rows.parties = standing<reg::Party>(m_db, {}, "t.name COLLATE NOCASE, t.id");
        rows.premises = standing<reg::Premises>(
            m_db, {}, "t.town COLLATE NOCASE, t.line1 COLLATE NOCASE, t.line2 COLLATE NOCASE, t.id");
        rows.roles = standing<reg::Role>(m_db, {"premises", "party"}, "t.premises, t.kind, t.since, t.id");
        rows.installations = standing<reg::Installation>(m_db, {"premises"}, "t.premises, t.name, t.id");
        // those of an installation in the bin, or of premises there, go with it
        rows.appliances = valuesWhere<reg::Appliance>(
            m_db, "JOIN installations AS i ON i.id = t.installation WHERE " + notInBin("t.id") + " AND " +
                      notInBin("i.id") + " AND " + notInBin("i.premises") +
                      " ORDER BY t.installation, t.position, t.id");
        rows.visits = standing<reg::Visit>(m_db, {"premises", "installation"}, "t.date, t.started_at, t.id");
        return rows;
    });
}

Result<void> SqliteStore::eachChange(const std::function<void(const Change&)>& take) const {
    return guarded([&] { store::eachChange(m_db, take); });
}

int SqliteStore::schema() const {
    return schemaOf(m_db);
}

Result<void> SqliteStore::readWhole(
    const std::function<Result<void>(const record::WholeTable&)>& begin,
    const std::function<Result<void>(const record::WholeTable&, const record::WholeRow&)>& take) const {
    return guarded([&] {
        const ReadScope oneMoment(m_db);
        for (const auto& table : wholeTables(m_db)) {
            valueOrThrow(begin(table));
            eachWholeRow(m_db, table, [&](const record::WholeRow& row) { valueOrThrow(take(table, row)); });
        }
    });
}

Result<void> Store::createFrom(const std::filesystem::path& path, const Clock& clock,
                               const std::function<Result<void>(record::WholeSink&)>& rows) {
    return guarded([&] { createFromRows(path, clock, rows); });
}

}  // namespace hearth::store

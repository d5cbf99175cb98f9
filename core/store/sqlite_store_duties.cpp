// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/duty_reader.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<std::vector<DutyLine>> SqliteStore::dutiesOpen(calendar::Date today,
                                                      std::optional<reg::PremisesId> premises) const {
    return guarded([&] {
        const ReadScope scope(m_db);  // its parts must be of one state
        return readDuties(m_db, today, premises);
    });
}

Result<DutyCount> countDuties(const std::filesystem::path& store, calendar::Date today) {
    return guarded([&] {
        Connection db(store, Connection::Mode::ReadOnly);
        const ReadScope scope(db);
        return countDuties(db, today);
    });
}

Result<std::vector<DutyLine>> openDuties(const std::filesystem::path& store, calendar::Date today) {
    return guarded([&] {
        Connection db(store, Connection::Mode::ReadOnly);
        const ReadScope scope(db);
        return readDuties(db, today, std::nullopt);
    });
}

}  // namespace hearth::store

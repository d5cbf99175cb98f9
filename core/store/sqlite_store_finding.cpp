// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/finder.h"
#include "core/store/premises_list.h"
#include "core/store/search_index.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<Hits> SqliteStore::find(const std::string& typed, std::size_t most) const {
    return guarded([&] { return findHits(m_db, typed, most); });
}

Result<int> SqliteStore::premisesCount() const {
    return guarded([&] { return countPremises(m_db); });
}

Result<std::vector<PremisesLine>> SqliteStore::premisesPage(int first, int count,
                                                            std::optional<int> all) const {
    return guarded([&] { return readPremisesPage(m_db, first, count, all); });
}

Result<std::optional<int>> SqliteStore::premisesRow(reg::PremisesId id) const {
    return guarded([&] { return rowOfPremises(m_db, id); });
}

Result<int> SqliteStore::staleInSearch() const {
    return guarded([&] { return store::staleInSearch(m_db); });
}

Result<void> SqliteStore::mendSearch() {
    return changing([&] { rebuildSearch(m_db); });
}

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/series.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<NextNumber> SqliteStore::nextNumber() const {
    return guarded([&] {
        const auto series = allSeries(m_db);
        const bool goesOn = !series.empty() && series.back().place == placeOf(m_db.path());
        return goesOn ? NextNumber{series.back().letters, series.back().lastRecord + 1} : NextNumber{};
    });
}

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/suggesting.h"

#include "core/store/bin_repository.h"
#include "core/store/tables.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace hearth::store {
namespace {

/// Where the values of a kind come from. With an index the whole table is asked; else the newest rows.
struct Source {
    Suggest what;
    std::string_view table;
    std::string_view column;
    bool indexed;
};
constexpr std::array kSources{
    Source{Suggest::Make, "appliances", "make", true},
    Source{Suggest::Model, "appliances", "model", false},
    Source{Suggest::Place, "appliances", "place", false},
    Source{Suggest::TubeCode, "pipe_sections", "tube_code", false},
    Source{Suggest::Town, "premises", "town", true},
};
constexpr std::int64_t kNewest = 5000;

/// The time in a version 7 UUID: its first 48 bits, in milliseconds (RFC 9562).
std::int64_t madeAt(const UuidBytes& id) {
    std::int64_t milliseconds = 0;
    for (std::size_t i = 0; i < 6; ++i) {
        milliseconds = milliseconds * 256 + id.at(i);
    }
    return milliseconds;
}

struct Used {
    std::string value;
    double worth = 0;
};

std::string queryOf(const Source& source, const std::string& typed, const std::string& make, Cells& values) {
    const std::string column(source.column);
    std::string condition = "s." + column + " <> '' AND " + notInBin("s.id");
    if (!make.empty()) {
        condition += " AND s.make = ? COLLATE NOCASE";
        values.emplace_back(make);
    }
    if (!typed.empty()) {
        condition += " AND s." + column + " >= ? COLLATE NOCASE AND s." + column + " < ? COLLATE NOCASE";
        values.emplace_back(typed);
        values.emplace_back(typed + "\U0010FFFF");
    }
    const bool whole = source.indexed ? !typed.empty() : !make.empty();
    const std::string newest = "(SELECT * FROM " + std::string(source.table) + " ORDER BY id DESC LIMIT " +
                               std::to_string(kNewest) + ")";
    return "SELECT max(s." + column + "), count(*), max(s.id) FROM " +
           (whole ? std::string(source.table) : newest) + " AS s WHERE " + condition + " GROUP BY s." +
           column + " COLLATE NOCASE";
}

}  // namespace

double suggestionWorth(std::int64_t times, double days) {
    constexpr double kDaysOfYear = 365.25;
    return static_cast<double>(times) * std::exp2(-std::max(days, 0.0) / kDaysOfYear);
}

std::vector<std::string> readSuggestions(const Session& session, Suggest what, const std::string& typed,
                                         const std::string& make, int limit) {
    const auto* source = std::find_if(kSources.begin(), kSources.end(),
                                      [&](const Source& known) { return known.what == what; });
    Cells values;
    const std::string sql = queryOf(*source, typed, what == Suggest::Model ? make : std::string(), values);
    constexpr double kMillisecondsOfDay = 24.0 * 3600 * 1000;
    const auto now = session.clock.now().time_since_epoch().count();
    auto found = session.db.all(sql, values, [&](const Columns& columns) {
        const auto age = static_cast<double>(now - madeAt(columns.uuid(2))) / kMillisecondsOfDay;
        return Used{columns.text(0), suggestionWorth(columns.integer(1), age)};
    });
    std::stable_sort(found.begin(), found.end(),
                     [](const Used& a, const Used& b) { return a.worth > b.worth; });
    std::vector<std::string> best;
    for (const auto& used : found) {
        if (best.size() < static_cast<std::size_t>(limit)) {
            best.push_back(used.value);
        }
    }
    return best;
}

std::vector<reg::Appliance> readLastAppliances(Connection& db, reg::PremisesId id) {
    const ReadScope oneState(db);
    const auto newest = db.first(
        "SELECT v.id FROM visits AS v WHERE v.premises = ? AND " + notInBin("v.id") +
            " AND EXISTS (SELECT 1 FROM entries AS e WHERE e.visit = v.id AND e.subject_kind = 'appliance')"
            " ORDER BY v.date DESC, v.started_at DESC, v.id DESC LIMIT 1",
        {id.bytes}, [](const Columns& columns) { return columns.uuid(0); });
    const std::string seen =
        newest ? " AND t.id IN (SELECT subject FROM entries WHERE visit = ?)" : std::string();
    Cells values{id.bytes};
    if (newest) {
        values.emplace_back(*newest);
    }
    return valuesWhere<reg::Appliance>(db,
                                       "JOIN installations AS i ON i.id = t.installation WHERE i.premises = "
                                       "? AND t.removed_on IS NULL AND " +
                                           notInBin("t.id") + " AND " + notInBin("i.id") + seen +
                                           " ORDER BY i.id, t.position, t.id",
                                       values);
}

}  // namespace hearth::store

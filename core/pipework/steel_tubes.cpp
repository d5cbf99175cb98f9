// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube_tables.h"

#include <array>
#include <string_view>

namespace hearth::pipework {

namespace {

using rulebook::Provenance;

constexpr std::string_view kEn10255 = "EN 10255";
constexpr std::string_view kRead = "A table of EN 10255 tube sizes; nominal outside diameters";
constexpr std::string_view kSteelRecalled = "recalled from EN 10255, not read; nominal outside diameters";
constexpr std::string_view kSteelTables =
    "An exam revision page and a trade forum's copy of a trade handbook's table; they exceed the geometry of "
    "EN 10255 "
    "medium tube by 2 to 24 %, DN 20 the most, which errs to the larger volume";
constexpr std::string_view kForumSteel =
    "A trade forum's copy of a trade handbook's table; it exceeds the geometry of EN 10255 medium tube by 2 "
    "to 24 %, "
    "which errs to the larger volume";

/// A row of the standard: one DN in both series, and the trade table's one figure for steel of that DN.
struct Row {
    std::string_view mediumCode;
    std::string_view heavyCode;
    double dn;
    double outside;
    double mediumWall;
    double heavyWall;
    std::string_view label;
    double table;
};

constexpr std::array kRows{
    Row{"steel_medium_15", "steel_heavy_15", 15, 21.3, 2.6, 3.2, "DN 15 (R 1/2)", 0.00024},
    Row{"steel_medium_20", "steel_heavy_20", 20, 26.9, 2.6, 3.2, "DN 20 (R 3/4)", 0.00046},
    Row{"steel_medium_25", "steel_heavy_25", 25, 33.7, 3.2, 4.0, "DN 25 (R 1)", 0.00064},
    Row{"steel_medium_32", "steel_heavy_32", 32, 42.4, 3.2, 4.0, "DN 32 (R 1 1/4)", 0.0011},
    Row{"steel_medium_40", "steel_heavy_40", 40, 48.3, 3.2, 4.0, "DN 40 (R 1 1/2)", 0.0015},
    Row{"steel_medium_50", "steel_heavy_50", 50, 60.3, 3.6, 4.5, "DN 50 (R 2)", 0.0024},
    Row{"steel_medium_65", "steel_heavy_65", 65, 76.1, 3.6, 4.5, "DN 65 (R 2 1/2)", 0.0038},
    Row{"steel_medium_80", "steel_heavy_80", 80, 88.9, 4.0, 5.0, "DN 80 (R 3)", 0.0054},
    Row{"steel_medium_100", "steel_heavy_100", 100, 114.3, 4.5, 5.4, "DN 100 (R 4)", 0.009},
    Row{"steel_medium_125", "steel_heavy_125", 125, 139.7, 5.0, 5.4, "DN 125 (R 5)", 0.014},
    Row{"steel_medium_150", "steel_heavy_150", 150, 165.1, 5.0, 5.4, "DN 150 (R 6)", 0.02},
};

constexpr double kLargestRead = 50;  // DN to which the dimensions and both copies of the table were read

enum class Series { Medium, Heavy };

constexpr Tube tubeOf(const Row& row, Series series) {
    const bool medium = series == Series::Medium;
    const bool read = row.dn <= kLargestRead;
    return {medium ? row.mediumCode : row.heavyCode,
            medium ? TubeFamily::SteelMedium : TubeFamily::SteelHeavy,
            row.dn,
            row.outside,
            medium ? row.mediumWall : row.heavyWall,
            row.label,
            kEn10255,
            row.table,
            Provenance::Secondary,
            read ? kSteelTables : kForumSteel,
            read ? Provenance::Secondary : Provenance::Memory,
            read ? kRead : kSteelRecalled};
}

constexpr std::array<Tube, kRows.size()> tableOf(Series series) {
    std::array<Tube, kRows.size()> table{};
    for (std::size_t i = 0; i < kRows.size(); ++i) {
        table[i] = tubeOf(kRows[i], series);
    }
    return table;
}

constexpr auto kMedium = tableOf(Series::Medium);
constexpr auto kHeavy = tableOf(Series::Heavy);

}  // namespace

std::span<const Tube> steelMediumTubes() {
    return kMedium;
}

std::span<const Tube> steelHeavyTubes() {
    return kHeavy;
}

}  // namespace hearth::pipework

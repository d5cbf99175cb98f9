// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube_tables.h"

#include <array>
#include <string_view>

namespace hearth::pipework {

namespace {

using rulebook::Provenance;

constexpr std::string_view kEn1555 = "EN 1555-2";
constexpr std::string_view kPlasticTables =
    "An exam revision page and a trade forum's copy of a trade handbook's table";
constexpr std::string_view kForumPlastic = "A trade forum's copy of a trade handbook's table";
constexpr std::string_view kSlip355 =
    "The trade forum's copy gives 0.056 m3/m, which looks like a slip for 0.066: the geometry is used";
constexpr std::string_view kPlasticWalls = "A table of polyethylene pipe walls by SDR";
constexpr std::string_view kSmallWalls =
    "The wall that the trade table fits; pages give 2.0, 2.3 or 3.0 mm for small sizes, which is worth up to "
    "30 % of "
    "the volume";
constexpr std::string_view kDivided = "outside diameter divided by 11, not read";

constexpr Tube sdr11(std::string_view code, double size, double wall, std::string_view label, double table) {
    return {code,   TubeFamily::PeSdr11,   size,  size, wall, label, kEn1555, table, Provenance::Secondary,
            kForumPlastic, Provenance::Secondary, kPlasticWalls};
}
constexpr Tube smallSdr11(std::string_view code, double size, double wall, std::string_view label,
                          double table) {
    Tube tube = sdr11(code, size, wall, label, table);
    tube.tableSource = kPlasticTables;
    tube.dimensionSource = kSmallWalls;
    return tube;
}
constexpr Tube dividedSdr11(std::string_view code, double size, std::string_view label,
                            std::optional<double> table) {
    Tube tube = sdr11(code, size, size / 11.0, label, 0);
    tube.tableVolume = table;
    tube.tableSource = table ? kForumPlastic : kSlip355;
    tube.dimensionProvenance = Provenance::Memory;
    tube.dimensionSource = kDivided;
    return tube;
}
constexpr Tube sdr176(std::string_view code, double size, double wall, std::string_view label) {
    return {code, TubeFamily::PeSdr176,  size,  size, wall, label, kEn1555, {}, Provenance::Secondary,
            {},   Provenance::Secondary, kPlasticWalls};
}

constexpr std::array kPolyethylene{
    smallSdr11("pe11_20", 20, 2.3, "20 mm SDR 11", 0.00019),
    smallSdr11("pe11_25", 25, 2.3, "25 mm SDR 11", 0.00033),
    smallSdr11("pe11_32", 32, 3.0, "32 mm SDR 11", 0.00053),
    dividedSdr11("pe11_55", 55, "55 mm SDR 11", 0.0016),
    sdr11("pe11_63", 63, 5.8, "63 mm SDR 11", 0.0021),
    sdr11("pe11_75", 75, 6.8, "75 mm SDR 11", 0.0029),
    sdr11("pe11_90", 90, 8.2, "90 mm SDR 11", 0.004),
    sdr11("pe11_125", 125, 11.4, "125 mm SDR 11", 0.008),
    sdr11("pe11_180", 180, 16.4, "180 mm SDR 11", 0.017),
    sdr11("pe11_250", 250, 22.7, "250 mm SDR 11", 0.032),
    dividedSdr11("pe11_315", 315, "315 mm SDR 11", 0.051),
    dividedSdr11("pe11_355", 355, "355 mm SDR 11", std::nullopt),
    dividedSdr11("pe11_400", 400, "400 mm SDR 11", 0.083),
    sdr176("pe176_63", 63, 3.6, "63 mm SDR 17.6"),
    sdr176("pe176_75", 75, 4.3, "75 mm SDR 17.6"),
    sdr176("pe176_90", 90, 5.1, "90 mm SDR 17.6"),
    sdr176("pe176_125", 125, 7.1, "125 mm SDR 17.6"),
    sdr176("pe176_180", 180, 10.2, "180 mm SDR 17.6"),
    sdr176("pe176_250", 250, 14.2, "250 mm SDR 17.6"),
};

constexpr std::string_view kEn15266 = "EN 15266";
constexpr std::string_view kFromMaker =
    "No volume per metre is known: corrugation makes it larger than the bore says; take it from the maker";

constexpr Tube corrugated(std::string_view code, double dn, std::string_view label) {
    return {code,       TubeFamily::Corrugated, dn,        0, 0, label, kEn15266, {}, Provenance::Maker,
            kFromMaker, Provenance::Maker,      kFromMaker};
}

// Sizes DN 10 to 50 of EN 15266:2024; the steps between are common nominal sizes.
constexpr std::array kCorrugated{
    corrugated("corrugated", 0, "corrugated, size not said"),
    corrugated("corrugated_10", 10, "corrugated DN 10"),
    corrugated("corrugated_12", 12, "corrugated DN 12"),
    corrugated("corrugated_15", 15, "corrugated DN 15"),
    corrugated("corrugated_20", 20, "corrugated DN 20"),
    corrugated("corrugated_25", 25, "corrugated DN 25"),
    corrugated("corrugated_32", 32, "corrugated DN 32"),
    corrugated("corrugated_40", 40, "corrugated DN 40"),
    corrugated("corrugated_50", 50, "corrugated DN 50"),
};

}  // namespace

std::span<const Tube> polyethyleneTubes() {
    return kPolyethylene;
}

std::span<const Tube> corrugatedTubes() {
    return kCorrugated;
}

}  // namespace hearth::pipework

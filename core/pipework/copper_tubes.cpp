// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/table_sources.h"
#include "core/pipework/tube_tables.h"

#include <array>
#include <string_view>

namespace hearth::pipework {

namespace {

using rulebook::Provenance;

constexpr std::string_view kEn1057 = "EN 1057";
constexpr std::string_view kCopperWalls = "Two tables of copper tube sizes to EN 1057";
constexpr std::string_view kCopperRecalled = "recalled from the trade's table, not read: the geometry is used";

constexpr Tube plain(std::string_view code, double size, double wall, std::string_view label) {
    return {code, TubeFamily::Copper,    size,  size, wall, label, kEn1057, {}, Provenance::Published,
            {},   Provenance::Published, kCopperWalls};
}
constexpr Tube listed(Tube tube, double table, Provenance provenance, std::string_view source) {
    tube.tableVolume = table;
    tube.tableProvenance = provenance;
    tube.tableSource = source;
    return tube;
}

// The common walls (EN 1057's former table X), then the thick ones (Y), then thin ones that are sold.
constexpr std::array kCopper{
    plain("copper_10", 10, 0.6, "10 mm"),
    plain("copper_12", 12, 0.6, "12 mm"),
    listed(plain("copper_15", 15, 0.7, "15 mm"), 0.00014, Provenance::Published, kGuide),
    listed(plain("copper_22", 22, 0.9, "22 mm"), 0.00032, Provenance::Secondary, kRevisionPage),
    listed(plain("copper_28", 28, 0.9, "28 mm"), 0.00054, Provenance::Secondary, kRevisionPage),
    listed(plain("copper_35", 35, 1.2, "35 mm"), 0.00084, Provenance::Secondary, kRevisionPage),
    listed(plain("copper_42", 42, 1.2, "42 mm"), 0.0012, Provenance::Memory, kCopperRecalled),
    listed(plain("copper_54", 54, 1.2, "54 mm"), 0.0021, Provenance::Memory, kCopperRecalled),
    listed(plain("copper_67", 66.7, 1.2, "66.7 mm"), 0.0033, Provenance::Memory, kCopperRecalled),
    listed(plain("copper_76", 76.1, 1.5, "76.1 mm"), 0.0043, Provenance::Memory, kCopperRecalled),
    plain("copper_108", 108, 1.5, "108 mm"),
    plain("copper_thick_15", 15, 1.0, "15 mm, 1.0 mm wall"),
    plain("copper_thick_22", 22, 1.2, "22 mm, 1.2 mm wall"),
    plain("copper_thick_28", 28, 1.2, "28 mm, 1.2 mm wall"),
    plain("copper_thin_35", 35, 1.0, "35 mm, 1.0 mm wall"),
    plain("copper_thin_42", 42, 1.0, "42 mm, 1.0 mm wall"),
    plain("copper_thin_54", 54, 1.0, "54 mm, 1.0 mm wall"),
};

}  // namespace

std::span<const Tube> copperTubes() {
    return kCopper;
}

}  // namespace hearth::pipework

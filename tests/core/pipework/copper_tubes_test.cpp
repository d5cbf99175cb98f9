// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube.h"

#include <gtest/gtest.h>

namespace hearth::pipework {
namespace {

using rulebook::Provenance;

struct CopperCase {
    const char* code;
    double outside;
    double wall;
    double geometry;  // m3/m, pi/4 d2 of EN 1057's dimensions, to the figures given
    std::optional<double> table;
    Provenance provenance;
};

// Dimensions: two tables of copper tube to EN 1057. Trade table: certification body's pocket guide Gas 2 (15
// mm) and an exam revision page (22 to 35 mm); 42 mm and above from memory.
TEST(CopperTubes, AgreeWithEn1057AndTheTradeTable) {
    const CopperCase cases[] = {
        {"copper_10", 10, 0.6, 0.000061, {}, Provenance::Published},
        {"copper_12", 12, 0.6, 0.000092, {}, Provenance::Published},
        {"copper_15", 15, 0.7, 0.000145, 0.00014, Provenance::Published},
        {"copper_22", 22, 0.9, 0.000320, 0.00032, Provenance::Secondary},
        {"copper_28", 28, 0.9, 0.000539, 0.00054, Provenance::Secondary},
        {"copper_35", 35, 1.2, 0.000835, 0.00084, Provenance::Secondary},
        {"copper_42", 42, 1.2, 0.001232, 0.0012, Provenance::Memory},
        {"copper_54", 54, 1.2, 0.002091, 0.0021, Provenance::Memory},
        {"copper_67", 66.7, 1.2, 0.003247, 0.0033, Provenance::Memory},
        {"copper_76", 76.1, 1.5, 0.004197, 0.0043, Provenance::Memory},
        {"copper_108", 108, 1.5, 0.008659, {}, Provenance::Published},
        {"copper_thick_15", 15, 1.0, 0.000133, {}, Provenance::Published},
        {"copper_thick_22", 22, 1.2, 0.000302, {}, Provenance::Published},
        {"copper_thick_28", 28, 1.2, 0.000515, {}, Provenance::Published},
        {"copper_thin_35", 35, 1.0, 0.000855, {}, Provenance::Published},
        {"copper_thin_42", 42, 1.0, 0.001257, {}, Provenance::Published},
        {"copper_thin_54", 54, 1.0, 0.002124, {}, Provenance::Published},
    };
    for (const auto& c : cases) {
        const Tube* tube = tubeByCode(c.code);
        ASSERT_NE(tube, nullptr) << c.code;
        EXPECT_EQ(tube->family, TubeFamily::Copper);
        EXPECT_DOUBLE_EQ(tube->outside, c.outside) << c.code;
        EXPECT_DOUBLE_EQ(tube->wall, c.wall) << c.code;
        EXPECT_NEAR(tube->geometricVolume(), c.geometry, 0.5e-6) << c.code;
        EXPECT_EQ(tube->tableVolume, c.table) << c.code;
        EXPECT_EQ(tube->tableProvenance, c.provenance) << c.code;
    }
}

TEST(CopperTubes, TableLiesWithinFourPercentOfTheGeometry) {
    for (const auto& tube : tubes()) {
        if (tube.family == TubeFamily::Copper && tube.tableVolume) {
            EXPECT_NEAR(*tube.tableVolume / tube.geometricVolume(), 1.0, 0.04) << tube.code;
        }
    }
}

}  // namespace
}  // namespace hearth::pipework

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube.h"

#include <gtest/gtest.h>
#include <string>

namespace hearth::pipework {
namespace {

struct PlasticCase {
    const char* code;
    double outside;
    double geometry;  // m3/m
    double slack;     // half of the last figure given
    std::optional<double> table;
};

// Walls: a table of polyethylene pipe by SDR (32 mm and above). Trade table: a trade forum's copy of a
// handbook's table (20 to 32 mm also an exam revision page).
TEST(PlasticTubes, Sdr11AgreesWithTheWallsAndTheTradeTable) {
    const PlasticCase cases[] = {
        {"pe11_20", 20, 0.00019, 5e-6, 0.00019}, {"pe11_25", 25, 0.00033, 5e-6, 0.00033},
        {"pe11_32", 32, 0.00053, 5e-6, 0.00053}, {"pe11_55", 55, 0.00159, 5e-6, 0.0016},
        {"pe11_63", 63, 0.00207, 5e-6, 0.0021},  {"pe11_75", 75, 0.00296, 5e-6, 0.0029},
        {"pe11_90", 90, 0.00425, 5e-6, 0.004},   {"pe11_125", 125, 0.00820, 5e-6, 0.008},
        {"pe11_180", 180, 0.01702, 5e-6, 0.017}, {"pe11_250", 250, 0.03288, 5e-6, 0.032},
        {"pe11_315", 315, 0.0522, 5e-5, 0.051},  {"pe11_355", 355, 0.0663, 5e-5, {}},
        {"pe11_400", 400, 0.0841, 5e-5, 0.083},
    };
    for (const auto& c : cases) {
        const Tube* tube = tubeByCode(c.code);
        ASSERT_NE(tube, nullptr) << c.code;
        EXPECT_EQ(tube->family, TubeFamily::PeSdr11);
        EXPECT_DOUBLE_EQ(tube->outside, c.outside) << c.code;
        EXPECT_NEAR(tube->geometricVolume(), c.geometry, c.slack) << c.code;
        EXPECT_EQ(tube->tableVolume, c.table) << c.code;
        if (c.table) {
            EXPECT_NEAR(*c.table / tube->geometricVolume(), 1.0, 0.07) << c.code;
        }
    }
}

// The copy's 0.056 m3/m for 355 mm looks like a slip for 0.066: it is not used, and the text says so.
TEST(PlasticTubes, SuspectedSlipIsLeftOut) {
    EXPECT_NE(tubeByCode("pe11_355")->tableSource.find("0.056"), std::string_view::npos);
}

TEST(PlasticTubes, SmallWallsCarryTheirDoubt) {
    for (const char* code : {"pe11_20", "pe11_25"}) {
        EXPECT_NE(tubeByCode(code)->dimensionSource.find("3.0 mm"), std::string_view::npos) << code;
    }
}

struct Sdr176Case {
    const char* code;
    double wall;
    double geometry;
};

// Walls: a table of walls by SDR (63 to 180 mm). The volumes expected are those of EN 1555's least walls
// where they differ (90 mm 5.2, 180 mm 10.3; from memory): within 0.5 %.
TEST(PlasticTubes, Sdr176AgreesWithTheWalls) {
    const Sdr176Case cases[] = {
        {"pe176_63", 3.6, 0.00245},  {"pe176_75", 4.3, 0.00346},   {"pe176_90", 5.1, 0.00498},
        {"pe176_125", 7.1, 0.00964}, {"pe176_180", 10.2, 0.01996}, {"pe176_250", 14.2, 0.03857},
    };
    for (const auto& c : cases) {
        const Tube* tube = tubeByCode(c.code);
        ASSERT_NE(tube, nullptr) << c.code;
        EXPECT_EQ(tube->family, TubeFamily::PeSdr176);
        EXPECT_DOUBLE_EQ(tube->wall, c.wall) << c.code;
        EXPECT_NEAR(tube->geometricVolume() / c.geometry, 1.0, 0.005) << c.code;
        EXPECT_FALSE(tube->tableVolume) << c.code;
    }
}

// EN 15266:2024 covers DN 10 to 50; no volume per metre is known.
TEST(PlasticTubes, CorrugatedHasNoVolumeOfItsOwn) {
    int sizes = 0;
    for (const auto& tube : tubes()) {
        if (tube.family == TubeFamily::Corrugated) {
            ++sizes;
            EXPECT_FALSE(tube.hasDimensions());
            EXPECT_FALSE(tube.tableVolume);
            EXPECT_LE(tube.nominal, 50);
        }
    }
    EXPECT_GT(sizes, 1);
    EXPECT_EQ(tubeByCode("corrugated")->nominal, 0) << "size not said";
}

}  // namespace
}  // namespace hearth::pipework

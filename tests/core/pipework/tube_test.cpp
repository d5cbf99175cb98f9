// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube.h"

#include "core/pipework/tube_tables.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <initializer_list>
#include <numbers>
#include <set>
#include <string_view>

namespace hearth::pipework {
namespace {

TEST(Tubes, CodesAreDifferentAndFound) {
    std::set<std::string_view> codes;
    for (const auto& tube : tubes()) {
        EXPECT_TRUE(codes.insert(tube.code).second) << tube.code;
        EXPECT_EQ(tubeByCode(tube.code), &tube);
        EXPECT_FALSE(tube.label.empty()) << tube.code;
        EXPECT_FALSE(tube.standard.empty()) << tube.code;
        EXPECT_FALSE(tube.dimensionSource.empty()) << tube.code;
        EXPECT_EQ(tube.tableVolume && tube.tableSource.empty(), false) << tube.code;
    }
    EXPECT_EQ(tubeByCode("copper_16"), nullptr);
    EXPECT_EQ(tubeByCode(""), nullptr);
}

TEST(Tubes, GeometryIsACircleOfTheBore) {
    for (const auto& tube : tubes()) {
        const double bore = tube.outside - 2 * tube.wall;
        EXPECT_NEAR(tube.geometricVolume(), std::numbers::pi * bore * bore / 4e6, 1e-15) << tube.code;
        EXPECT_EQ(tube.hasDimensions(), tube.family != TubeFamily::Corrugated) << tube.code;
    }
}

TEST(TubeTables, MakeUpTheWhole) {
    const auto isAll = [](std::span<const Tube> table, std::initializer_list<TubeFamily> families) {
        EXPECT_FALSE(table.empty());
        for (const auto& tube : table) {
            EXPECT_NE(std::find(families.begin(), families.end(), tube.family), families.end()) << tube.code;
            EXPECT_NE(tubeByCode(tube.code), nullptr) << tube.code;
        }
        return table.size();
    };
    EXPECT_EQ(isAll(copperTubes(), {TubeFamily::Copper}) +
                  isAll(steelMediumTubes(), {TubeFamily::SteelMedium}) +
                  isAll(steelHeavyTubes(), {TubeFamily::SteelHeavy}) +
                  isAll(polyethyleneTubes(), {TubeFamily::PeSdr11, TubeFamily::PeSdr176}) +
                  isAll(corrugatedTubes(), {TubeFamily::Corrugated}),
              tubes().size());
}

}  // namespace
}  // namespace hearth::pipework

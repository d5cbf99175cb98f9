// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/demand.h"

#include "core/quantity/units.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::pipework {
namespace {

using namespace quantity;

TEST(PipeDemand, KilowattsToCubicMetresAnHour) {
    testing::Agreement agreement(
        "Flow that an appliance draws",
        "A two-page handout on pipe sizing (10 kW at 38.5 MJ/m3 is 0.26 l/s, 0.936 m3/h)", "m3/h",
        0.0018);  // printed from 0.26 l/s; its second digit is worth 0.018 m3/h
    const auto flow = demandFlow(GrossPower(10, kKilowatt), GrossHeatValue(38.5, kMegajoulePerCubicMetre));
    agreement.hold("10 kW gross", flow->in(kCubicMetrePerHour), 0.936);
}

// Arithmetic on the same definition: 11 kW gross at 38.76 MJ/m3; 30 kW net with gross/net 1.11.
TEST(PipeDemand, ByGrossAndByNet) {
    const auto gross = demandFlow(GrossPower(11, kKilowatt), GrossHeatValue(38.76, kMegajoulePerCubicMetre));
    EXPECT_NEAR(gross->in(kCubicMetrePerHour), 1.02, 0.005);
    const auto net = demandFlow(NetPower(30, kKilowatt), NetHeatValue(38.76 / 1.11, kMegajoulePerCubicMetre));
    EXPECT_NEAR(net->in(kCubicMetrePerHour), 3.09, 0.005);
}

TEST(PipeDemand, IsNothingOutsideItsValidity) {
    const GrossHeatValue value(38.76, kMegajoulePerCubicMetre);
    EXPECT_FALSE(demandFlow(GrossPower(-1, kKilowatt), value));
    EXPECT_FALSE(demandFlow(GrossPower(10, kKilowatt), GrossHeatValue{}));
    EXPECT_EQ(demandFlow(GrossPower{}, value), Flow{});
}

}  // namespace
}  // namespace hearth::pipework

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/purge.h"

#include "core/quantity/units.h"
#include "tests/core/pipework/samples.h"
#include "tests/support/agreement.h"

#include <array>
#include <gtest/gtest.h>

namespace hearth::pipework {
namespace {

using quantity::kCubicMetre;
using quantity::kCubicMetrePerHour;
using rulebook::Outcome;
using rulebook::Rule;

const std::vector<rulebook::RuleKey> kPurgeRecalled{
    {Rule::PurgePipeFactor, rulebook::Edition::General, rulebook::Gas::NaturalGas},
    {Rule::PurgeMeterCycles, rulebook::Edition::General, rulebook::Gas::NaturalGas},
    {Rule::PurgeFlow100, rulebook::Edition::General, rulebook::Gas::NaturalGas},
    {Rule::PurgeEndShare, rulebook::Edition::General, rulebook::Gas::NaturalGas},
};

/// 30 m of DN 100 without a meter.
LargePurgeInput thirtyMetres() {
    SectionInput section;
    section.tube = tubeByCode("steel_medium_100");
    section.length = quantity::Length(30.0, quantity::kMetre);
    VolumeInput around;
    around.meter = meterByCode("none");
    around.sections = {section};
    LargePurgeInput input;
    input.volume = volume(around);
    input.meter = around.meter;
    takeLargestPipe(input, around.sections);
    return input;
}

// Source: facts' example by hand: 0.009 x 30 x 1.1 = 0.297 m3, 1.5 times 0.4455 m3; at 20 m3/h 80 s (trade
// table's volume; factor and flow recalled from IGE/UP/1).
TEST(LargePurge, isTheWorkedExample) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const auto need = largePurgeNeed(thirtyMetres(), rules);
    ASSERT_TRUE(need.volume);
    testing::Agreement agreement("Purge of 30 m of DN 100",
                                 "Worked by hand from the trade's volume table; IGE/UP/1 from memory",
                                 "m3, s", 0.6);
    agreement.hold("volume", need.volume->in(kCubicMetre), 0.4455);
    EXPECT_NEAR(need.volume->in(kCubicMetre), 0.4455, 1e-9);
    const auto flow = leastPurgeFlow(thirtyMetres(), rules);
    ASSERT_TRUE(flow.flow);
    EXPECT_NEAR(flow.flow->in(kCubicMetrePerHour), 20.0, 1e-9);
    agreement.hold("time", purgeTime(*need.volume, *flow.flow)->in(quantity::kSecond), 80.0);
}

// Source: 0.6 m/s through nominal bores by hand (facts: tightness 2.7).
TEST(LargePurge, speedThroughABoreIsAFlow) {
    testing::Agreement agreement("0.6 m/s through nominal bores",
                                 "Arithmetic in the facts from IGE/UP/1, from memory", "m3/h", 0.05);
    constexpr std::array<std::pair<double, double>, 5> kRows{
        {{20, 0.68}, {25, 1.06}, {40, 2.71}, {80, 10.9}, {150, 38.2}}};
    for (const auto& [dn, flow] : kRows) {
        agreement.hold("DN " + std::to_string(dn),
                       flowAtSpeed(0.6, quantity::Length(dn, quantity::kMillimetre))->in(kCubicMetrePerHour),
                       flow);
    }
    EXPECT_FALSE(flowAtSpeed(0.0, quantity::Length(1.0, quantity::kMetre)));
}

TEST(LargePurge, nothingPassesOnMemoryAndShortFails) {
    auto input = thirtyMetres();
    const auto recalled = samples::rulesOf(samples::shippedBook());
    input.passed = quantity::Volume(0.5, kCubicMetre);
    EXPECT_EQ(judgeLargePurgeVolume(input, recalled).outcome, Outcome::LookAgain);
    const auto book = samples::confirmed(kPurgeRecalled);
    const auto rules = samples::rulesOf(book);
    EXPECT_EQ(judgeLargePurgeVolume(input, rules).outcome, Outcome::Pass);
    input.passed = quantity::Volume(0.4, kCubicMetre);
    EXPECT_EQ(judgeLargePurgeVolume(input, rules).outcome, Outcome::Fail);
    input.passed = {};
    EXPECT_EQ(judgeLargePurgeVolume(input, rules).outcome, Outcome::NoVerdict);
}

TEST(LargePurge, flowAndEndAreHeldAgainstTheirEntries) {
    auto input = thirtyMetres();
    const auto book = samples::confirmed(kPurgeRecalled);
    const auto rules = samples::rulesOf(book);
    input.flow = quantity::Flow(25.0, kCubicMetrePerHour);
    EXPECT_EQ(judgePurgeFlow(input, rules).outcome, Outcome::Pass);
    input.flow = quantity::Flow(15.0, kCubicMetrePerHour);
    EXPECT_EQ(judgePurgeFlow(input, rules).outcome, Outcome::Fail);
    input.flow = quantity::Flow(20.0, kCubicMetrePerHour);
    EXPECT_EQ(judgePurgeFlow(input, rules).outcome, Outcome::LookAgain) << "at the limit";
    input.endGas = quantity::Share(95.0, quantity::kPercent);
    EXPECT_EQ(judgePurgeEnd(input, rules).outcome, Outcome::Pass);
    input.endGas = quantity::Share(80.0, quantity::kPercent);
    EXPECT_EQ(judgePurgeEnd(input, rules).outcome, Outcome::Fail);
    input.endGas = {};
    EXPECT_EQ(judgePurgeEnd(input, rules).outcome, Outcome::NoVerdict);
}

TEST(LargePurge, aDiaphragmMeterAddsFiveTurns) {
    auto input = thirtyMetres();
    input.meter = meterByCode("u16_g10");
    const auto rules = samples::rulesOf(samples::shippedBook());
    EXPECT_EQ(cyclicVolumeRule(*input.meter), Rule::CyclicVolumeU16);
    EXPECT_EQ(cyclicVolumeRule(*meterByCode("e6")), std::nullopt);
    EXPECT_NEAR(largePurgeNeed(input, rules).volume->in(kCubicMetre), 0.4455 + 5 * 0.006, 1e-9);
    input.plateCyclic = quantity::Volume(0.007, kCubicMetre);
    EXPECT_NEAR(largePurgeNeed(input, rules).volume->in(kCubicMetre), 0.4455 + 5 * 0.007, 1e-9);
}

TEST(PurgeTime, isVolumeOverFlow) {
    EXPECT_NEAR(purgeTime({0.01, kCubicMetre}, {1.2, kCubicMetrePerHour})->in(quantity::kSecond), 30.0, 1e-9);
    EXPECT_FALSE(purgeTime({0.01, kCubicMetre}, {}));
    // 0.010 m3 at 38.76 MJ/m3 is 387.6 kJ: through 3 kW 129.2 s, by hand.
    EXPECT_NEAR(purgeTimeThroughBurner({0.01, kCubicMetre}, {3.0, quantity::kKilowatt},
                                       {38.76, quantity::kMegajoulePerCubicMetre})
                    ->in(quantity::kSecond),
                129.2, 1e-6);
}

}  // namespace
}  // namespace hearth::pipework

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/air_inlet.h"

#include "core/rulebook/conclude.h"
#include "tests/core/burner/flue_samples.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using rulebook::Outcome;
using rulebook::Say;

struct InletCase {
    double oxygen;
    double carbonDioxide;
    Outcome byOxygen;
    Outcome byCarbonDioxide;
};

// O2 20.6 % or above and CO2 below 0.2 %: a boiler maker's page (there of fresh air), as air-inlet test from
// memory of TB 143. Both count: each case has one that the other would let through.
TEST(AirInlet, BothReadingsAreHeldAgainstTheirEntries) {
    const auto book = flue::confirmed();
    const InletCase cases[] = {
        {20.9, 0.0, Outcome::Pass, Outcome::Pass},      {20.7, 0.1, Outcome::Pass, Outcome::Pass},
        {20.6, 0.0, Outcome::LookAgain, Outcome::Pass}, {20.5, 0.1, Outcome::Fail, Outcome::Pass},
        {20.9, 0.2, Outcome::Pass, Outcome::LookAgain}, {20.7, 0.3, Outcome::Pass, Outcome::Fail},
        {19.0, 1.0, Outcome::Fail, Outcome::Fail},
    };
    for (const auto& c : cases) {
        const auto findings =
            airInlet(flue::read(0, c.carbonDioxide, c.oxygen), flue::zeroed(), flue::inForce(book));
        EXPECT_EQ(findings.oxygen.outcome, c.byOxygen) << c.oxygen;
        EXPECT_EQ(findings.carbonDioxide.outcome, c.byCarbonDioxide) << c.carbonDioxide;
    }
}

// Shown as read: 0.15 % below the 0.2 % of the entry does not read as 0.2 %.
TEST(AirInlet, ShowsAReadingWithItsOwnDecimals) {
    const auto book = flue::confirmed();
    auto readings = flue::read(0, 0.15, 20.9);
    readings.carbonDioxide = flue::percentRead(0.15, 0.01);
    const auto found = airInlet(readings, flue::zeroed(), flue::inForce(book)).carbonDioxide;
    ASSERT_TRUE(found.measured);
    EXPECT_EQ(found.measured->value.text(), "0.15");
}

TEST(AirInlet, ShippedFiguresAreFromMemoryAndPassNothing) {
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = airInlet(flue::read(0, 0.0, 20.9), flue::zeroed(), flue::inForce(book));
    for (const auto* finding : {&findings.oxygen, &findings.carbonDioxide}) {
        EXPECT_EQ(finding->outcome, Outcome::LookAgain);
        EXPECT_EQ(finding->why.say, Say::LimitFromMemory);
    }
    const auto bad = airInlet(flue::read(0, 1.0, 19.0), flue::zeroed(), flue::inForce(book));
    EXPECT_EQ(bad.oxygen.outcome, Outcome::Fail);
    EXPECT_EQ(bad.carbonDioxide.outcome, Outcome::Fail);
}

TEST(AirInlet, SaysWhatToDoInOrder) {
    const auto book = flue::confirmed();
    const auto bad = airInlet(flue::read(0, 1.0, 19.0), flue::zeroed(), flue::inForce(book)).oxygen;
    ASSERT_EQ(bad.notes.size(), 2u);
    EXPECT_EQ(bad.notes[0].say, Say::CombustionCheckFlue);
    EXPECT_EQ(bad.notes[1].say, Say::CombustionStillBeyond);
    EXPECT_EQ(bad.why.say, Say::AirInletOxygenLow);
}

TEST(AirInlet, NothingPassesUnlessTheAnalyserWasSetToFreshAir) {
    const auto book = flue::confirmed();
    Analyser analyser;
    for (const auto zeroed : {std::optional<bool>(), std::optional(false)}) {
        analyser.zeroedOutdoors = zeroed;
        const auto findings = airInlet(flue::read(0, 0.0, 20.9), analyser, flue::inForce(book));
        EXPECT_EQ(findings.oxygen.outcome, Outcome::LookAgain);
        EXPECT_EQ(findings.oxygen.why.say, Say::AnalyserNotZeroed);
        const auto bad = airInlet(flue::read(0, 1.0, 19.0), analyser, flue::inForce(book));
        EXPECT_EQ(bad.carbonDioxide.outcome, Outcome::Fail);
        EXPECT_TRUE(says(bad.carbonDioxide, Say::AnalyserNotZeroed));
    }
    // Its accuracy then counts: 20.3 against 20.6 with +-0.3 can't be told.
    analyser.oxygenAccuracy = flue::percent(0.3);
    EXPECT_EQ(airInlet(flue::read(0, 0.0, 20.3), analyser, flue::inForce(book)).oxygen.why.say, Say::AtLimit);
}

TEST(AirInlet, AMissingReadingIsNoVerdict) {
    const auto book = flue::confirmed();
    FlueReadings readings = flue::read(0, 0.0, 20.9);
    readings.carbonDioxide = {};
    const auto findings = airInlet(readings, flue::zeroed(), flue::inForce(book));
    EXPECT_EQ(findings.oxygen.outcome, Outcome::Pass);
    EXPECT_EQ(findings.carbonDioxide.outcome, Outcome::NoVerdict);
    EXPECT_EQ(findings.carbonDioxide.why.say, Say::ReadingMissing);
    const auto below = airInlet(flue::read(0, -0.1, 20.9), flue::zeroed(), flue::inForce(book));
    EXPECT_EQ(below.carbonDioxide.why.say, Say::CombustionBelowNought);
    const rulebook::RuleBook none({});
    EXPECT_EQ(airInlet(flue::read(0, 0, 20.9), flue::zeroed(), flue::inForce(none)).oxygen.why.say,
              Say::LimitMissing);
}

// 0.2 % at the inlet against 9 % in the products is 2.2 %: by hand.
TEST(AirInlet, TellsHowMuchIsRecirculated) {
    EXPECT_NEAR(recirculation(flue::percent(0.2), flue::percent(9))->in(quantity::kPercent), 2.22, 0.005);
    EXPECT_FALSE(recirculation(flue::percent(0.2), flue::percent(0)));
    EXPECT_FALSE(recirculation(flue::percent(9.1), flue::percent(9)));
}

}  // namespace
}  // namespace hearth::burner

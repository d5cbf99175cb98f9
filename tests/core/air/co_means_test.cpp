// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_means.h"

#include "core/rulebook/conclude.h"
#include "tests/core/air/air_samples.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using quantity::UnitCode;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;
using samples::airRules;
using samples::minutes;
using samples::ppm;

CoSeries seriesOf(double atRoom, double nextDoor, double last) {
    CoSeries series;
    series.digit = ppm(1);
    for (double t = 0; t <= last; t += 5) {
        series.readings.push_back({minutes(t), ppm(atRoom), CoPlace::Room});
        series.readings.push_back({minutes(t), ppm(nextDoor), CoPlace::NextRoom});
    }
    return series;
}

// EH40 prints 20 ppm as 23 mg/m3 and 100 ppm as 117 (from memory); 1 ppm is 0.0001 %.
TEST(CoMeans, ALevelInTheUnitsItIsReadIn) {
    EXPECT_NEAR(coInUnit(ppm(20), UnitCode::Ppm), 20, 1e-9);
    EXPECT_NEAR(coInUnit(ppm(20), UnitCode::Percent), 0.002, 1e-12);
    EXPECT_NEAR(coInUnit(ppm(20), UnitCode::MilligramPerCubicMetre), 23, 0.5);
    EXPECT_NEAR(coInUnit(ppm(100), UnitCode::MilligramPerCubicMetre), 117, 0.6);
}

TEST(CoMeans, AnEntrysLevelOrNothing) {
    EXPECT_EQ(coLimit(nullptr), std::nullopt);
    const auto shipped = rulebook::RuleBook::shipped();
    EXPECT_EQ(coLimit(airRules(shipped).find(Rule::RoomCoShortLimit)), ppm(100));
    EXPECT_EQ(coLimit(airRules(shipped).find(Rule::RoomCoLeaveFrom)), std::nullopt);
}

// Digit of 1 ppm: 1 / sqrt(12); accuracy of 3 ppm: 3 / sqrt(3).
TEST(CoMeans, TheInstrumentsUncertainty) {
    CoSeries series;
    series.digit = ppm(1);
    EXPECT_NEAR(coMeasured(ppm(9), series, UnitCode::Ppm).u, 1.0 / std::sqrt(12.0), 1e-9);
    series.accuracy = ppm(3);
    const auto both = coMeasured(ppm(9), series, UnitCode::Ppm);
    EXPECT_NEAR(both.u, std::sqrt(1.0 / 12.0 + 3.0), 1e-9);
    EXPECT_NEAR(both.value, 9, 1e-9);
}

TEST(CoMeans, TheMostExposedPlaceIndoors) {
    EXPECT_TRUE(mostExposed({}).empty());
    EXPECT_TRUE(mostExposed(seriesOf(5, 9, 0)).empty()) << "one instant";
    EXPECT_EQ(mostExposed(seriesOf(5, 9, 20)).front().place, CoPlace::NextRoom);
    EXPECT_EQ(mostExposed(seriesOf(9, 5, 20)).front().place, CoPlace::Room);
    auto outdoors = seriesOf(9, 5, 20);
    for (auto& reading : outdoors.readings) {
        reading.place = CoPlace::Outside;
    }
    EXPECT_TRUE(mostExposed(outdoors).empty());
}

TEST(CoMeans, TheGravestPlaceDecidesAndAPartOfTheTimeNeverPasses) {
    const auto book = samples::confirmedBook();
    const auto mean = [&](const CoSeries& series) {
        return coMeanFinding(FindingKind::RoomCoShortMean, Rule::RoomCoShortLimit, kCoShortExposure, series,
                             airRules(book));
    };
    EXPECT_EQ(mean({}), std::nullopt);
    EXPECT_EQ(mean(seriesOf(5, 130, 20))->outcome, Outcome::Fail);
    EXPECT_EQ(mean(seriesOf(5, 9, 20))->outcome, Outcome::Pass);
    EXPECT_EQ(mean(seriesOf(5, 9, 10))->outcome, Outcome::NoVerdict);
    auto unread = seriesOf(5, 9, 20);
    unread.someUnreadable = true;
    EXPECT_EQ(mean(unread)->outcome, Outcome::NoVerdict);
    auto missing = seriesOf(5, 9, 20);
    missing.someMissing = true;
    EXPECT_EQ(mean(missing)->outcome, Outcome::NoVerdict);
    unread = seriesOf(5, 130, 20);
    unread.someUnreadable = true;
    EXPECT_EQ(mean(unread)->outcome, Outcome::Fail);
}

}  // namespace
}  // namespace hearth::air

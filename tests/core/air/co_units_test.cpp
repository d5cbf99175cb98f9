// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_units.h"

#include "tests/core/air/air_samples.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using quantity::kPpm;
using quantity::UnitCode;
using samples::ppm;

quantity::Temperature degrees(double celsius) {
    return {celsius, quantity::kCelsius};
}

TEST(CoUnits, MassOfAPartInAMillion) {
    // Half of the last printed digit.
    testing::Agreement agreement("mg/m3 of a ppm of carbon monoxide at 0 and 25 degrees C",
                                 "a page on flue gas conversion; a page on carbon monoxide levels", "mg/m3",
                                 0.0005);
    agreement.hold("0", massFromShare(ppm(1), degrees(0)).milligramsPerCubicMetre, 1.250);
    agreement.hold("25", massFromShare(ppm(1), degrees(25)).milligramsPerCubicMetre, 1.145);
}

TEST(CoUnits, WorkplaceLimitsByVolumeAndByMass) {
    // Whole mg/m3 are printed; for 100 ppm the list has 117, where its own molar volume (24.06 l) gives
    // 116.4: so a little more than half a digit.
    testing::Agreement agreement("Workplace exposure limits, 20 and 100 ppm, by mass",
                                 "HSE EH40/2005, third edition (from memory)", "mg/m3", 0.6);
    agreement.hold("20 ppm", massFromShare(ppm(20)).milligramsPerCubicMetre, 23);
    agreement.hold("100 ppm", massFromShare(ppm(100)).milligramsPerCubicMetre, 117);
}

TEST(CoUnits, GuidelinesByMassAndByVolume) {
    const auto at25 = [](double mass) { return shareFromMass({mass}, degrees(25)).in(kPpm); };
    // Their ppm are rounded to tens, 25 to fives: half of that.
    testing::Agreement tens("Guidelines of 100, 60 and 10 mg/m3 by volume",
                            "WHO Air Quality Guidelines for Europe, 2nd edition (a journal's table)", "ppm",
                            5.0);
    tens.hold("15 min", at25(100), 90);
    tens.hold("30 min", at25(60), 50);
    tens.hold("8 h", at25(10), 10);
    testing::Agreement fives("Guideline of 30 mg/m3 by volume",
                             "WHO Air Quality Guidelines for Europe, 2nd edition (a journal's table)", "ppm",
                             2.5);
    fives.hold("1 h", at25(30), 25);
}

TEST(CoUnits, BackwardsIsTheSame) {
    for (const double celsius : {-20.0, 0.0, 20.0, 45.0}) {
        for (const double value : {0.0, 1.0, 35.0, 5000.0}) {
            EXPECT_NEAR(shareFromMass(massFromShare(ppm(value), degrees(celsius)), degrees(celsius)).in(kPpm),
                        value, 1e-9);
        }
    }
}

TEST(CoUnits, TypedFigures) {
    const auto typed = [](std::int64_t value, UnitCode unit) {
        return coShare({quantity::Decimal(value, 0), unit});
    };
    EXPECT_NEAR(typed(35, UnitCode::Ppm)->in(kPpm), 35, 1e-9);
    EXPECT_NEAR(typed(1, UnitCode::Percent)->in(kPpm), 10000, 1e-6);
    EXPECT_NEAR(typed(23, UnitCode::MilligramPerCubicMetre)->in(kPpm), 19.75, 0.005);  // 23 / 1.1644
    EXPECT_FALSE(typed(1, UnitCode::Millibar));
    EXPECT_FALSE(typed(1, UnitCode::None));
}

}  // namespace
}  // namespace hearth::air

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/ratio.h"

#include "core/rulebook/conclude.h"
#include "tests/core/burner/flue_samples.h"
#include "tests/support/agreement.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using flue::percent;
using flue::percentRead;
using flue::ppm;
using flue::ppmRead;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

constexpr auto kRatioKind = FindingKind::CombustionRatioMaximum;

TEST(Ratio, IsThatOfTheWorkedExample) {
    // Worked by hand: 80/10 000/9.2 = 0.000870; the tolerance is half the last digit.
    testing::Agreement agreement("CO/CO2 ratio, worked example", "derived by hand; formula as trade training",
                                 "", 0.000005);
    agreement.hold("CO 80 ppm, CO2 9.2 %", *ratioOf(ppm(80), percent(9.2)), 0.00087);
    // The limit of the trade's procedure, met exactly.
    agreement.hold("CO 350 ppm, CO2 8.75 %", *ratioOf(ppm(350), percent(8.75)), 0.0040);
}

TEST(Ratio, HasItsValidity) {
    EXPECT_EQ(ratioOf(ppm(0), percent(9)).value(), 0.0);
    for (const auto& wrong :
         {ratioOf(ppm(10), percent(0)), ratioOf(ppm(10), percent(-0.1)), ratioOf(ppm(-1), percent(9))}) {
        ASSERT_FALSE(wrong);
        EXPECT_EQ(wrong.error().code, ErrorCode::OutOfRange);
    }
    EXPECT_FALSE(ratioRead(ppmRead(10), percentRead(0), {}));
}

TEST(Ratio, IsNotChangedByAirThatThinsTheProducts) {
    const double undiluted = *ratioOf(ppm(137), percent(9.3));
    for (const double part : {0.9, 0.5, 0.1, 0.01}) {
        EXPECT_NEAR(*ratioOf(ppm(137) * part, percent(9.3) * part), undiluted, 1e-15);
    }
}

// BS EN 50379-3 / BS 7927 as quoted: 3 ppm up to 20 ppm, 5 % above; ours never falls below 3 ppm.
TEST(CarbonMonoxideAccuracy, IsThatOfTheStandardAndNeverNarrower) {
    EXPECT_DOUBLE_EQ(carbonMonoxideAccuracy(ppm(0)).in(quantity::kPpm), 3.0);
    EXPECT_DOUBLE_EQ(carbonMonoxideAccuracy(ppm(20)).in(quantity::kPpm), 3.0);
    EXPECT_DOUBLE_EQ(carbonMonoxideAccuracy(ppm(100)).in(quantity::kPpm), 5.0);
    EXPECT_DOUBLE_EQ(carbonMonoxideAccuracy(ppm(350)).in(quantity::kPpm), 17.5);
    for (double value = 0.0; value < 500.0; value += 1.0) {
        const double quoted = value <= 20.0 ? 3.0 : 0.05 * value;
        EXPECT_GE(carbonMonoxideAccuracy(ppm(value)).in(quantity::kPpm), quoted - 1e-9);
        EXPECT_GE(carbonMonoxideAccuracy(ppm(value + 1)), carbonMonoxideAccuracy(ppm(value)));
    }
}

// GUM 4.3.7 and 5.1.2 (from memory): variance of a half-width a is a^2/3, relative ones of a quotient add.
TEST(RatioUncertainty, ComesFromStepsAndAccuracies) {
    const double uCo = std::sqrt(0.5 * 0.5 / 3.0 + 17.5 * 17.5 / 3.0) / 350.0;
    const double uCo2 = std::sqrt(0.05 * 0.05 / 3.0) / 8.75;
    const auto ratio = ratioRead(ppmRead(350), percentRead(8.75, 0.01), {});
    ASSERT_TRUE(ratio);
    EXPECT_NEAR(ratio->u, 0.004 * std::sqrt(uCo * uCo + uCo2 * uCo2), 1e-12);

    Analyser stated;
    stated.carbonMonoxideAccuracy = ppm(10);
    stated.carbonDioxideAccuracy = percent(0.3);
    const double sCo = std::sqrt(0.5 * 0.5 / 3.0 + 100.0 / 3.0) / 350.0;
    const double sCo2 = std::sqrt(0.05 * 0.05 / 3.0 + 0.3 * 0.3 / 3.0) / 8.75;
    EXPECT_NEAR(ratioRead(ppmRead(350), percentRead(8.75), stated)->u,
                0.004 * std::sqrt(sCo * sCo + sCo2 * sCo2), 1e-12);
}

TEST(RatioUncertainty, ScalesWithResolution) {
    Analyser exact;  // displays alone
    exact.carbonMonoxideAccuracy = ppm(0);
    const auto at = [&](double times) {
        auto analyser = exact;
        analyser.carbonMonoxideStep = ppm(1.0 * times);
        analyser.carbonDioxideStep = percent(0.1 * times);
        return ratioRead(ppmRead(100, 0.01), percentRead(9.0, 0.001), analyser)->u;
    };
    for (const double times : {0.1, 2.0, 10.0}) {
        EXPECT_NEAR(at(times), times * at(1.0), 1e-15);
    }
}

TEST(RatioUncertainty, TakesTheTypedDigitWhenItIsCoarser) {
    EXPECT_DOUBLE_EQ(carbonMonoxideRead(ppmRead(100, 10), {}).u,
                     std::sqrt(5.0 * 5.0 / 3.0 + 5.0 * 5.0 / 3.0));
    EXPECT_DOUBLE_EQ(carbonDioxideRead(percentRead(9, 1.0), {}).u, 0.5 / std::sqrt(3.0));
    EXPECT_DOUBLE_EQ(oxygenRead(percentRead(4.5, 0.01), {}).u, 0.05 / std::sqrt(3.0));
}

struct RatioCase {
    const char* name;
    FlueReadings readings;
    Outcome outcome;
    Say why;
};

TEST(RatioFinding, IsHeldAgainstItsEntry) {
    const auto book = rulebook::RuleBook::shipped();
    const auto* limit = flue::inForce(book).find(rulebook::Rule::CombustionRatioCondensing);
    FlueReadings unreadable = flue::read(80, 9.2);
    unreadable.carbonMonoxide = rulebook::Given<ShareReading>::unusable();
    FlueReadings half = flue::read(80, 9.2);
    half.carbonDioxide = {};
    const RatioCase cases[] = {
        {"in order", flue::read(80, 9.2), Outcome::Pass, Say::CombustionRatioWithin},
        {"no CO", flue::read(0, 9.2), Outcome::Pass, Say::CombustionRatioWithin},
        {"at the limit", flue::read(350, 8.75), Outcome::LookAgain, Say::CombustionAtLimit},
        {"just below", flue::read(335, 8.75), Outcome::LookAgain, Say::CombustionAtLimit},
        {"just above", flue::read(365, 8.75), Outcome::LookAgain, Say::CombustionAtLimit},
        {"beyond", flue::read(400, 8.75), Outcome::Fail, Say::CombustionRatioBeyond},
        {"no CO2", flue::read(80, 0), Outcome::NoVerdict, Say::CombustionNoFlueGas},
        {"neither", flue::read(0, 0), Outcome::NoVerdict, Say::CombustionNoFlueGas},
        {"below nought", flue::read(-2, 9), Outcome::NoVerdict, Say::CombustionBelowNought},
        {"CO2 missing", half, Outcome::NoVerdict, Say::ReadingMissing},
        {"unreadable", unreadable, Outcome::NoVerdict, Say::ReadingUnusable},
        {"nothing", {}, Outcome::NoVerdict, Say::ReadingMissing},
    };
    for (const auto& c : cases) {
        const auto finding = ratioFinding(kRatioKind, c.readings, {}, limit);
        EXPECT_EQ(finding.outcome, c.outcome) << c.name;
        EXPECT_EQ(finding.why.say, c.why) << c.name;
    }
    EXPECT_EQ(ratioFinding(kRatioKind, flue::read(80, 9.2), {}, nullptr).why.say, Say::LimitMissing);
}

TEST(RatioFinding, ShowsFourDecimalsAndJudgesAllOfThem) {
    const auto book = rulebook::RuleBook::shipped();
    const auto* limit = flue::inForce(book).find(rulebook::Rule::CombustionRatioCondensing);
    Analyser fine;
    fine.carbonMonoxideAccuracy = ppm(0);
    fine.carbonMonoxideStep = ppm(0.01);
    fine.carbonDioxideStep = percent(0.0001);
    FlueReadings readings{ppmRead(400.9, 0.01), percentRead(10, 0.0001), {}};
    const auto finding = ratioFinding(kRatioKind, readings, fine, limit);
    EXPECT_EQ(finding.measured->value.text(), "0.0040");  // 0.004009
    EXPECT_EQ(finding.outcome, Outcome::Fail);
    EXPECT_EQ(finding.limit->value.text(), "0.0040");
}

TEST(RatioFinding, SaysThatTheAnalyserComputesCarbonDioxide) {
    const auto book = rulebook::RuleBook::shipped();
    const auto* limit = flue::inForce(book).find(rulebook::Rule::CombustionRatioCondensing);
    Analyser computing;
    computing.computesCarbonDioxide = true;
    EXPECT_TRUE(
        says(ratioFinding(kRatioKind, flue::read(80, 9.2), computing, limit), Say::CarbonDioxideComputed));
    EXPECT_FALSE(says(ratioFinding(kRatioKind, flue::read(80, 9.2), {}, limit), Say::CarbonDioxideComputed));
}

}  // namespace
}  // namespace hearth::burner

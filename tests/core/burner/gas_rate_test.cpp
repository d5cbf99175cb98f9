// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/gas_rate.h"

#include "core/rulebook/conclude.h"
#include "tests/core/burner/rate_samples.h"
#include "tests/support/agreement.h"
#include "tests/support/files.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

namespace rs = ratesamples;
using quantity::Duration;
using quantity::Flow;
using quantity::kCubicFoot;
using quantity::kCubicMetre;
using quantity::kCubicMetrePerHour;
using quantity::kSecond;
using quantity::Volume;
using rulebook::Outcome;
using rulebook::Say;

constexpr Duration kNoSlip{};
const Duration kHalfASecond(0.5, kSecond);

Measured<Flow> rateOf(const Passed& passed, double took, Duration byHand = kHalfASecond) {
    const auto volume = volumePassed(passed);
    EXPECT_TRUE(volume);
    const auto rate = gasRate(*volume, {rs::seconds(took), byHand});
    EXPECT_TRUE(rate);
    return *rate;
}

Passed litres(double volume, double digit = 0.001) {
    return VolumeRead{rs::cubicMetres(volume), rs::cubicMetres(digit)};
}

Passed turns(double feet, double count = 1.0) {
    return DialTurns{Volume(feet, kCubicFoot), count, {}};
}

TEST(GasRateAgainst, WorkedExamples) {
    // The last digit that is printed.
    testing::Agreement metric("Gas rate, metric meter, worked examples",
                              "Technical note on gas rate by a UK gas installer; training worked examples",
                              "m3/h", 0.0005);
    metric.hold("0.088 m3 in 122 s", rateOf(litres(0.088), 122).value.in(kCubicMetrePerHour), 2.597);
    metric.hold("0.040 m3 in 120 s", rateOf(litres(0.040), 120).value.in(kCubicMetrePerHour), 1.2);
    testing::Agreement imperial("Gas rate, imperial test dial, worked example", "Training worked example",
                                "ft3/h", 0.05);
    imperial.hold("1 ft3 in 80 s", rateOf(turns(1), 80).value.in(quantity::kCubicFootPerHour), 45.0);
}

TEST(GasRateAgainst, AFootOfTheDialByGnuUnits) {
    const auto answer = testing::runCommand("units --terse --output-format %.17g 'ft^3' 'm^3' 2>&1");
    ASSERT_EQ(answer.exitCode, 0) << "GNU units (package units) must be installed: " << answer.text;
    testing::Agreement exact("A turn of the test dial in cubic metres", "GNU units 2.22", "%", 1e-9);
    for (const double feet : {1.0, 2.0, 5.0, 10.0}) {
        exact.holdRelative("turn", volumePassed(turns(feet))->value.in(kCubicMetre),
                           feet * std::stod(answer.text));
    }
    // Printed as 2.83 m3 for a hundred cubic feet.
    testing::Agreement bill("A hundred cubic feet on a bill", "Suppliers' help pages on bills: 2.83", "m3",
                            0.005);
    bill.hold("100 ft3", volumePassed(turns(10, 10))->value.in(kCubicMetre), 2.83);
}

// facts' arithmetic: 30 kW passes about 0.093 m3 in two minutes, one digit about 1 %; a ring of 2 kW 16 %.
TEST(GasRate, OneDigitCountsMoreForASmallBurner) {
    const auto boiler = rateOf(litres(0.093), 120, kNoSlip);
    const auto ring = rateOf(litres(0.006), 120, kNoSlip);
    // Each of two readings is off by half a digit at most: the expanded uncertainty is below one digit.
    EXPECT_LT(boiler.relative().in(quantity::kPercent), 1.1);
    EXPECT_GT(boiler.relative().in(quantity::kPercent), 0.8);
    EXPECT_LT(ring.relative().in(quantity::kPercent), 17.0);
    EXPECT_GT(ring.relative().in(quantity::kPercent), 13.0);
}

TEST(GasRate, AnIndexThatComesBackToNoughtIsSaidSo) {
    const IndexReadings index{rs::cubicMetres(99999.960), rs::cubicMetres(0.048), rs::cubicMetres(0.001), {}};
    EXPECT_FALSE(volumePassed(index)) << "backwards";
    auto rolled = index;
    rolled.rolledOverAt = rs::cubicMetres(100000);
    EXPECT_NEAR(volumePassed(rolled)->value.in(kCubicMetre), 0.088, 1e-9);
    rolled.end = rs::cubicMetres(99999.999);
    EXPECT_FALSE(volumePassed(rolled)) << "more than half the index in one timing";
    const IndexReadings plain{rs::cubicMetres(412.310), rs::cubicMetres(412.398), rs::cubicMetres(0.001), {}};
    EXPECT_NEAR(volumePassed(plain)->value.in(kCubicMetre), 0.088, 1e-9);
}

TEST(GasRate, RefusesWhatCannotBe) {
    const auto code = [](const auto& result) { return result ? "none" : codeText(result.error().code); };
    EXPECT_EQ(code(volumePassed(litres(0))), "out_of_range");
    EXPECT_EQ(code(volumePassed(litres(-0.01))), "out_of_range");
    EXPECT_EQ(code(volumePassed(litres(0.1, 0))), "out_of_range") << "an index has a last digit";
    EXPECT_EQ(code(volumePassed(turns(3))), "out_of_range");
    EXPECT_EQ(code(volumePassed(turns(1, 0.5))), "out_of_range");
    const auto some = *volumePassed(litres(0.1));
    EXPECT_EQ(code(gasRate(some, {rs::seconds(0), kHalfASecond})), "out_of_range");
    EXPECT_EQ(code(gasRate(some, {rs::seconds(-5), kHalfASecond})), "out_of_range");
    EXPECT_EQ(code(gasRate(some, {rs::seconds(90000), kHalfASecond})), "out_of_range");
    EXPECT_EQ(code(gasRate({}, {rs::seconds(60), kHalfASecond})), "out_of_range");
    const auto absurd = gasRate(*volumePassed(litres(88)), {rs::seconds(122), kHalfASecond});
    EXPECT_EQ(code(absurd), "out_of_range") << "88 m3 for 0.088";
    EXPECT_EQ(absurd.error().details.at(2), "1000.000000") << "names the limit";
    EXPECT_EQ(code(timeNeeded({}, rs::cubicMetres(0.001), kHalfASecond, rs::percent(2))), "out_of_range");
    EXPECT_EQ(code(timeNeeded(rs::hourly(1), rs::cubicMetres(0.001), kHalfASecond, rs::percent(0))),
              "out_of_range");
}

TEST(GasRateLaws, UncertaintyScalesWithTheDigit) {
    for (const double volume : {0.006, 0.04, 0.093, 1.0}) {
        for (const double digit : {0.0001, 0.001, 0.01}) {
            const double one = rateOf(litres(volume, digit), 120, kNoSlip).u.base();
            const double ten = rateOf(litres(volume, 10 * digit), 120, kNoSlip).u.base();
            EXPECT_NEAR(ten / one, 10.0, 1e-9);
        }
    }
}

TEST(GasRateLaws, TheUnitDoesNotMatter) {
    for (const double volume : {0.02, 0.0881, 0.4}) {
        const Passed metres = litres(volume, 0.001);
        const Passed feet = VolumeRead{Volume(volume / kCubicFoot.factor, kCubicFoot),
                                       Volume(0.001 / kCubicFoot.factor, kCubicFoot)};
        const auto a = rateOf(metres, 120);
        const auto b = volumePassed(feet);
        const auto c = gasRate(*b, {Duration(2, quantity::kMinute), kHalfASecond});
        EXPECT_NEAR(a.value / c->value, 1.0, 1e-12);
        EXPECT_NEAR(a.u / c->u, 1.0, 1e-12);
    }
}

TEST(GasRateLaws, TimingLongerNeverMakesItWorse) {
    for (const double flow : {0.1, 0.5, 2.5, 6.0, 16.0}) {
        double before = 1e9;
        for (double took = 10; took <= 1200; took += 7) {
            const auto rate = rateOf(litres(flow * took / 3600), took);
            EXPECT_LE(rate.relative().in(quantity::kOne), before);
            before = rate.relative().in(quantity::kOne);
        }
    }
}

TEST(GasRateLaws, TimingAsLongAsRecommendedReachesTheAim) {
    int reached = 0;
    for (const double flow : {0.05, 0.2, 1.2, 2.6, 6.0, 40.0}) {
        for (const double digit : {0.0001, 0.001, 0.01}) {
            for (const double aim : {0.5, 1.0, 2.0, 5.0}) {
                const auto took =
                    timeNeeded(rs::hourly(flow), rs::cubicMetres(digit), kHalfASecond, rs::percent(aim));
                if (!took) {
                    // A trickle on a coarse meter: a whole day would not do.
                    const auto day = rateOf(litres(flow * 24, digit), 86400);
                    EXPECT_GT(day.relative().in(quantity::kPercent), aim);
                    continue;
                }
                ++reached;
                const double seconds = took->in(kSecond);
                const auto rate = rateOf(litres(flow * seconds / 3600, digit), seconds);
                EXPECT_LE(rate.relative().in(quantity::kPercent), aim * (1 + 1e-9));
                // And no longer than it must be: a second and a bit less does not.
                const double shorter = seconds - 1.5;
                const auto worse = rateOf(litres(flow * shorter / 3600, digit), shorter);
                EXPECT_GT(worse.relative().in(quantity::kPercent), aim);
            }
        }
    }
    EXPECT_GE(reached, 70) << "of 72";
}

// Rectangular +-2 % has a standard uncertainty of 2 % / sqrt(3) (GUM 4.3.7).
TEST(GasRate, TheMetersOwnAccuracyIsAdded) {
    const Measured<Flow> sharp{rs::hourly(2), {}};
    EXPECT_NEAR(withMeterAccuracy(sharp, rs::percent(2)).u.in(kCubicMetrePerHour), 0.04 / std::sqrt(3.0),
                1e-12);
    const Measured<Flow> blunt{rs::hourly(2), rs::hourly(0.03)};
    EXPECT_NEAR(withMeterAccuracy(blunt, rs::percent(2)).u.in(kCubicMetrePerHour),
                std::hypot(0.03, 0.04 / std::sqrt(3.0)), 1e-12);
}

struct RateCase {
    const char* name;
    void (*change)(RateInput&);
    Outcome outcome;
    Say why;
    bool hasRate;
};

TEST(JudgeRate, SaysWhatIsWrongWithATiming) {
    const RateCase cases[] = {
        {"good", [](RateInput&) {}, Outcome::Pass, Say::RateGood, true},
        {"no meter", [](RateInput& i) { i.hasNoMeter = true; }, Outcome::NoVerdict, Say::RateNoMeter, false},
        {"no volume", [](RateInput& i) { i.passed = {}; }, Outcome::NoVerdict, Say::ReadingMissing, false},
        {"no time", [](RateInput& i) { i.took = {}; }, Outcome::NoVerdict, Say::ReadingMissing, false},
        {"unreadable", [](RateInput& i) { i.took = rulebook::Given<Duration>::unusable(); },
         Outcome::NoVerdict, Say::ReadingUnusable, false},
        {"no seconds", [](RateInput& i) { i.took = rs::seconds(0); }, Outcome::NoVerdict, Say::RateTimeWrong,
         false},
        {"backwards",
         [](RateInput& i) {
             i.passed =
                 Passed{IndexReadings{rs::cubicMetres(5), rs::cubicMetres(4), rs::cubicMetres(0.001), {}}};
         },
         Outcome::NoVerdict, Say::RateIndexBackwards, false},
        {"stood still",
         [](RateInput& i) {
             i.passed =
                 Passed{IndexReadings{rs::cubicMetres(5), rs::cubicMetres(5), rs::cubicMetres(0.001), {}}};
         },
         Outcome::NoVerdict, Say::RateNothingPassed, false},
        {"absurd", [](RateInput& i) { i.passed = litres(88); }, Outcome::NoVerdict, Say::RateAbsurd, false},
        {"dial", [](RateInput& i) { i.passed = turns(3); }, Outcome::NoVerdict, Say::RateDialUnknown, false},
        {"others on", [](RateInput& i) { i.othersOff = false; }, Outcome::NoVerdict, Say::RateOthersOn,
         false},
        {"low flame", [](RateInput& i) { i.atFullRate = false; }, Outcome::NoVerdict, Say::RateNotFull,
         false},
        {"not said", [](RateInput& i) { i.othersOff = {}; }, Outcome::NoVerdict, Say::RateConditionsNotSaid,
         false},
        {"rate not said", [](RateInput& i) { i.atFullRate = {}; }, Outcome::NoVerdict,
         Say::RateConditionsNotSaid, false},
        {"warmth not said", [](RateInput& i) { i.warm = {}; }, Outcome::NoVerdict, Say::RateConditionsNotSaid,
         false},
        {"cold", [](RateInput& i) { i.warm = false; }, Outcome::LookAgain, Say::RateCold, true},
        {"above the meter", [](RateInput& i) { i.meterMost = rs::hourly(2.5); }, Outcome::LookAgain,
         Say::RateAboveMeter, true},
        {"within the meter", [](RateInput& i) { i.meterMost = rs::hourly(6); }, Outcome::Pass, Say::RateGood,
         true},
        {"a trickle for the meter", [](RateInput& i) { i.meterMost = rs::hourly(160); }, Outcome::LookAgain,
         Say::RateBelowMeterRange, true},
        {"hopeless",
         [](RateInput& i) {
             i.passed = Passed{VolumeRead{rs::cubicMetres(0.001), rs::cubicMetres(1)}};
             i.took = rs::seconds(3600);
         },
         Outcome::LookAgain, Say::RateTooCoarse, true},
        {"coarse", [](RateInput& i) { i.passed = litres(0.006); }, Outcome::LookAgain, Say::RateCoarse, true},
    };
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& c : cases) {
        auto input = rs::timed(0.088, 122);
        c.change(input);
        const auto judged = judgeRate(input, rs::on(book));
        EXPECT_EQ(judged.finding.outcome, c.outcome) << c.name;
        EXPECT_EQ(judged.finding.why.say, c.why) << c.name;
        EXPECT_EQ(judged.rate.has_value(), c.hasRate) << c.name;
    }
}

TEST(JudgeRate, CountsTheMeterOnlyIfAskedAndSaysSo) {
    const auto book = rulebook::RuleBook::shipped();
    auto input = rs::timed(0.088, 122);
    const auto with = judgeRate(input, rs::on(book));
    input.countMeterAccuracy = false;
    const auto bare = judgeRate(input, rs::on(book));
    EXPECT_TRUE(says(with.finding, Say::RateMeterCounted));
    EXPECT_TRUE(says(bare.finding, Say::RateMeterNotCounted));
    EXPECT_GT(with.rate->u, bare.rate->u);
    EXPECT_EQ(with.finding.measured, bare.finding.measured) << "the timing is judged without the meter";
}

TEST(JudgeRate, WithoutTheRuleBooksEntriesThereIsNoVerdict) {
    for (const auto rule : {rulebook::Rule::MeterAccuracy, rulebook::Rule::TimingByHand}) {
        const auto book = rs::without(rulebook::RuleBook::shipped(), rule);
        const auto judged = judgeRate(rs::timed(0.088, 122), rs::on(book));
        EXPECT_EQ(judged.finding.why.say, Say::LimitMissing);
        EXPECT_FALSE(judged.rate);
    }
}

}  // namespace
}  // namespace hearth::burner

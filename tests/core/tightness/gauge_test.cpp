// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/gauge.h"

#include "core/quantity/units.h"
#include "tests/core/tightness/samples.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kMillibar;

struct UncertaintyCase {
    const char* name;
    Gauge gauge;
    double typedDigit;
    double expanded;  // mbar
};

// JCGM 100:2008 (GUM), 4.3.7: a rectangular distribution of half-width a has the variance a^2/3 (from
// memory). Two readings, k = 2: U = 2 sqrt(2 (d/2)^2/3 + 2 r^2/3).
TEST(ChangeUncertainty, IsThatOfResolutionAndRepeatability) {
    const auto by = [](double step, double repeat) {
        return 2 * std::sqrt(2 * (step * step / 12 + repeat * repeat / 3));
    };
    auto stated = electronic(0.01);
    stated.repeatability = millibar(0.02);
    auto unknown = electronic();
    unknown.resolution.reset();
    const UncertaintyCase cases[] = {
        {"0.01 display, repeatability not stated: one step", electronic(0.01), 0.01, by(0.01, 0.01)},
        {"0.1 display", electronic(0.1), 0.1, by(0.1, 0.1)},
        {"repeatability stated", stated, 0.01, by(0.01, 0.02)},
        {"resolution unknown: the typed digit", unknown, 0.1, by(0.1, 0.1)},
        {"typed more coarsely than shown", electronic(0.01), 0.1, by(0.1, 0.1)},
        {"typed more finely than shown", electronic(0.1), 0.01, by(0.1, 0.1)},
        {"water, read to half a division", water(), 0.5, by(0.25, 0)},
        {"water, whole numbers typed", water(), 1.0, by(0.25, 0)},
    };
    for (const auto& c : cases) {
        const auto change = changeBetween(c.gauge, reading(20.5, c.typedDigit), reading(20.5, c.typedDigit));
        EXPECT_NEAR(change.uncertainty.in(kMillibar), c.expanded, 1e-12) << c.name;
    }
}

TEST(ChangeUncertainty, DoesNotDependOnAccuracy) {
    auto gauge = electronic(0.01);
    const auto before = changeBetween(gauge, reading(20.5), reading(20.4)).uncertainty;
    gauge.accuracy = millibar(5);
    EXPECT_EQ(changeBetween(gauge, reading(20.5), reading(20.4)).uncertainty, before);
}

// A display with whole numbers and one with hundredths: the finer of the two typed says how finely it was
// read.
TEST(ChangeUncertainty, TakesTheFinerOfTheTwoTypedDigits) {
    auto gauge = electronic();
    gauge.resolution.reset();
    const auto change = changeBetween(gauge, reading(20, 1.0), reading(20.04, 0.01));
    EXPECT_LT(change.uncertainty, millibar(0.02));
}

struct StandingCase {
    Gauge gauge;
    double fall;
    double limit;
    Standing expected;
};

TEST(Standing, NothingSeenStandsClearOfTheThresholdOnEveryUsualGauge) {
    const StandingCase cases[] = {
        {electronic(0.01), 0.0, 0.2, Standing::Within},   {electronic(0.01), 0.04, 0.2, Standing::Within},
        {electronic(0.01), 0.18, 0.2, Standing::Within},  {electronic(0.01), 0.19, 0.2, Standing::AtLimit},
        {electronic(0.01), 0.20, 0.2, Standing::AtLimit}, {electronic(0.01), 0.21, 0.2, Standing::AtLimit},
        {electronic(0.01), 0.22, 0.2, Standing::Beyond},  {electronic(0.1), 0.0, 0.2, Standing::Within},
        {electronic(0.1), 0.1, 0.2, Standing::AtLimit},   {electronic(0.1), 0.4, 0.2, Standing::Beyond},
        {water(), 0.0, 0.25, Standing::Within},           {water(), 0.25, 0.25, Standing::AtLimit},
        {water(), 0.5, 0.25, Standing::Beyond},           {electronic(1.0), 0.0, 0.2, Standing::AtLimit},
    };
    for (const auto& c : cases) {
        const auto change = changeBetween(c.gauge, reading(20.5), reading(20.5 - c.fall));
        EXPECT_EQ(standing(change, millibar(c.limit)), c.expected)
            << c.fall << " on a step of " << c.gauge.resolution->in(kMillibar);
    }
}

TEST(Standing, ReversedIsTheRise) {
    const auto change = changeBetween(electronic(), reading(20.5), reading(20.9));
    EXPECT_EQ(standing(change, millibar(0.2)), Standing::Within);
    EXPECT_EQ(standing(change.reversed(), millibar(0.2)), Standing::Beyond);
}

TEST(MovementThreshold, GoesByTheKindOfGauge) {
    const auto book = rulebook::RuleBook::shipped();
    const auto rules = edition4(book);
    EXPECT_EQ(movementThreshold(water(), rules)->key.rule, rulebook::Rule::NoMovementWater);
    EXPECT_EQ(movementThreshold(electronic(), rules)->key.rule, rulebook::Rule::NoMovementElectronic);
    const rulebook::RuleBook none({});
    EXPECT_EQ(movementThreshold(water(), edition4(none)), nullptr);
}

}  // namespace
}  // namespace hearth::tightness

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/readable_movement.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kMillibar;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;

LargerGauge ofKind(LargerGaugeKind kind, double range, std::optional<int> decimals = std::nullopt) {
    return {kind, millibar(range), decimals, std::nullopt};
}

struct TableRow {
    const char* name;
    LargerGauge gauge;
    double movement;  // mbar
};

// Trade-forum extract of a handbook's table after IGE/UP/1; each gauge at the top of its range.
const TableRow kTable[] = {
    {"water to 120 mbar", ofKind(LargerGaugeKind::Water, 120), 0.5},
    {"1.99 times as dense to 200 mbar", ofKind(LargerGaugeKind::DenseFluid, 200), 1},
    {"one decimal to 200 mbar", ofKind(LargerGaugeKind::Electronic, 200, 1), 0.5},
    {"two decimals to 200 mbar", ofKind(LargerGaugeKind::Electronic, 200, 2), 0.1},
    {"one decimal to 2000 mbar", ofKind(LargerGaugeKind::Electronic, 2000, 1), 0.5},
    {"no decimal to 20 bar", ofKind(LargerGaugeKind::Electronic, 20000, 0), 5},
    {"mercury to 1000 mbar", ofKind(LargerGaugeKind::Mercury, 1000), 7},
};

TEST(ReadableMovement, AgreesWithTheTable) {
    testing::Agreement agreement("Readable movement of seven gauges",
                                 "Trade-forum extract of a handbook's table after IGE/UP/1", "mbar", 1e-12);
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& row : kTable) {
        const auto readable = readableMovement(row.gauge, edition4(book));
        ASSERT_TRUE(readable.movement) << row.name;
        agreement.hold(row.name, readable.movement->in(kMillibar), row.movement);
        ASSERT_NE(readable.entry, nullptr);
        EXPECT_EQ(readable.finding.outcome, Outcome::LookAgain) << "read in a trade forum alone";
        EXPECT_TRUE(says(readable.finding, Say::ReadableMovementIs));
    }
}

TEST(GaugeRules, AreNoneOutsideTheTable) {
    const LargerGauge gauges[] = {
        ofKind(LargerGaugeKind::Water, 121),          ofKind(LargerGaugeKind::Water, 0),
        ofKind(LargerGaugeKind::DenseFluid, 201),     ofKind(LargerGaugeKind::Mercury, 1001),
        ofKind(LargerGaugeKind::Electronic, 200, 3),  ofKind(LargerGaugeKind::Electronic, 201, 2),
        ofKind(LargerGaugeKind::Electronic, 2001, 1), ofKind(LargerGaugeKind::Electronic, 20001, 0),
        ofKind(LargerGaugeKind::Electronic, 200, -1),
    };
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& gauge : gauges) {
        EXPECT_FALSE(gaugeRules(gauge)) << gauge.range->in(kMillibar);
        const auto readable = readableMovement(gauge, edition4(book));
        EXPECT_FALSE(readable.movement);
        EXPECT_EQ(readable.finding.outcome, Outcome::NoVerdict);
        EXPECT_EQ(readable.finding.why.say, Say::ReadableMovementNotTabled);
    }
    EXPECT_EQ(gaugeRules(ofKind(LargerGaugeKind::Electronic, 200.5, 1))->readable,
              Rule::ReadableOneDecimalWide);
    EXPECT_EQ(gaugeRules(ofKind(LargerGaugeKind::Electronic, 150, 1))->longest, Rule::LongestOneDecimal);
}

TEST(ReadableMovement, IsNotGuessed) {
    const auto book = rulebook::RuleBook::shipped();
    EXPECT_EQ(readableMovement(std::nullopt, edition4(book)).finding.why.say, Say::GaugeNotChosen);
    auto noRange = ofKind(LargerGaugeKind::Water, 120);
    noRange.range.reset();
    EXPECT_FALSE(gaugeRules(noRange));
    EXPECT_EQ(readableMovement(noRange, edition4(book)).finding.why.say, Say::ReadingMissing);
    EXPECT_EQ(readableMovement(ofKind(LargerGaugeKind::Electronic, 200), edition4(book)).finding.why.say,
              Say::ReadingMissing)
        << "decimals not said";
    const rulebook::RuleBook none({});
    const auto readable = readableMovement(kTable[0].gauge, edition4(none));
    EXPECT_EQ(readable.finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(readable.finding.why.say, Say::LimitMissing);
    auto emptied = rulebook::RuleBook::shipped();
    empty(emptied, {Rule::ReadableWater});
    EXPECT_FALSE(readableMovement(kTable[0].gauge, edition4(emptied)).movement);
}

TEST(ReadableMovement, PassesOnceTheFirmHasConfirmedIt) {
    const auto book = allConfirmed();
    EXPECT_EQ(readableMovement(kTable[0].gauge, edition4(book)).finding.outcome, Outcome::Pass);
}

// The small-installation standard's perceptible movement (0.2, 0.25 mbar) never stands in for it.
TEST(ReadableMovement, IsNotThePerceptibleMovement) {
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& row : kTable) {
        const auto rule = readableMovement(row.gauge, edition4(book)).entry->key.rule;
        EXPECT_NE(rule, Rule::NoMovementWater);
        EXPECT_NE(rule, Rule::NoMovementElectronic);
    }
}

struct StepCase {
    LargerGauge gauge;
    double readable;
    GaugeKind kind;
    double resolution;
};

TEST(AsGauge, AFluidIsReadToHalfOfItsMovementADisplayToItsLastDecimal) {
    const StepCase cases[] = {
        {ofKind(LargerGaugeKind::Water, 120), 0.5, GaugeKind::Water, 0.5},
        {ofKind(LargerGaugeKind::Mercury, 1000), 7, GaugeKind::Water, 7},
        {ofKind(LargerGaugeKind::Electronic, 200, 1), 0.5, GaugeKind::Electronic, 0.1},
        {ofKind(LargerGaugeKind::Electronic, 200, 2), 0.1, GaugeKind::Electronic, 0.01},
        {ofKind(LargerGaugeKind::Electronic, 20000, 0), 5, GaugeKind::Electronic, 1},
    };
    for (const auto& c : cases) {
        const auto gauge = asGauge(c.gauge, millibar(c.readable));
        EXPECT_EQ(gauge.kind, c.kind);
        EXPECT_NEAR(gauge.resolution->in(kMillibar), c.resolution, 1e-12);
    }
    auto stated = ofKind(LargerGaugeKind::Electronic, 200, 1);
    stated.repeatability = millibar(0.3);
    EXPECT_EQ(asGauge(stated, millibar(0.5)).repeatability, millibar(0.3));
    EXPECT_FALSE(asGauge({}, millibar(0.5)).resolution) << "the last digit typed is taken";
}

TEST(LongestTest, IsAskedForWhileTheMinutesAreNotKnown) {
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& row : kTable) {
        const auto finding = longestTest(row.gauge, seconds(420), edition4(book));
        EXPECT_EQ(finding.outcome, Outcome::NoVerdict) << row.name;
        EXPECT_EQ(finding.why.say, Say::LongestUnknown);
        ASSERT_EQ(finding.limits.size(), 1U) << "what is to be entered";
        EXPECT_FALSE(finding.limits.front().isKnown());
    }
}

TEST(LongestTest, HoldsTheNeededTimeAgainstTheFirmsMinutes) {
    auto book = rulebook::RuleBook::shipped();
    // Invented and of no standard.
    layFigure(book, {Rule::LongestWater}, {quantity::Decimal(20, 0), quantity::UnitCode::Minute});
    const auto rules = edition4(book);
    const auto gauge = ofKind(LargerGaugeKind::Water, 120);
    EXPECT_EQ(longestTest(gauge, seconds(19 * 60), rules).outcome, Outcome::Pass);
    EXPECT_EQ(longestTest(gauge, seconds(20 * 60), rules).outcome, Outcome::Pass) << "at it";
    const auto beyond = longestTest(gauge, seconds(21 * 60), rules);
    EXPECT_EQ(beyond.outcome, Outcome::NoVerdict);
    EXPECT_EQ(beyond.why.say, Say::LongestBeyond);
    EXPECT_EQ(longestTest(gauge, std::nullopt, rules).why.say, Say::ReadingMissing);
    EXPECT_EQ(longestTest(std::nullopt, seconds(60), rules).why.say, Say::GaugeNotChosen);
    const rulebook::RuleBook none({});
    EXPECT_EQ(longestTest(gauge, seconds(60), edition4(none)).outcome, Outcome::NoVerdict);
}

}  // namespace
}  // namespace hearth::tightness

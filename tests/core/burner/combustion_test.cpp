// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/combustion.h"

#include "core/rulebook/conclude.h"
#include "tests/core/burner/flue_samples.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Provenance;
using rulebook::Range;
using rulebook::RuleBook;
using rulebook::Say;

CombustionInput firing(ApplianceKind kind, FlueReadings maximum, FlueReadings minimum = {}) {
    CombustionInput input;
    input.kind = kind;
    input.atMaximum = maximum;
    input.atMinimum = minimum;
    return input;
}

const Finding* partOf(const CombustionFindings& findings, FindingKind kind) {
    const auto found = std::find_if(findings.parts.begin(), findings.parts.end(),
                                    [&](const Finding& part) { return part.kind == kind; });
    return found == findings.parts.end() ? nullptr : &*found;
}

struct BoilerCase {
    const char* name;
    FlueReadings maximum;
    FlueReadings minimum;
    Outcome outcome;
    Say why;
};

// 350 ppm and 0.0040 where the maker gives none, at both rates: CO charity's pages on TB 143.
TEST(CondensingBoiler, IsHeldToBothFiguresAtBothRates) {
    const auto book = RuleBook::shipped();
    const auto good = flue::read(80, 9.2);
    const BoilerCase cases[] = {
        {"in order", good, flue::read(20, 8.8), Outcome::Pass, Say::CombustionInOrder},
        {"no CO at all", flue::read(0, 9.2), flue::read(0, 8.8), Outcome::Pass, Say::CombustionInOrder},
        {"CO beyond, ratio within", flue::read(420, 11.7), good, Outcome::Fail, Say::CarbonMonoxideBeyond},
        {"ratio beyond, CO within", flue::read(300, 6.0), good, Outcome::Fail, Say::CombustionRatioBeyond},
        {"beyond at minimum", good, flue::read(300, 6.0), Outcome::Fail, Say::CombustionRatioBeyond},
        {"at the limit", flue::read(350, 9.6), good, Outcome::LookAgain, Say::CombustionAtLimit},
        {"minimum missing", good, {}, Outcome::NoVerdict, Say::CombustionMinimumMissing},
        {"maximum missing", {}, good, Outcome::NoVerdict, Say::CombustionMaximumMissing},
        {"nothing", {}, {}, Outcome::NoVerdict, Say::CombustionMaximumMissing},
        {"no flue gas", flue::read(80, 0), good, Outcome::NoVerdict, Say::CombustionNoFlueGas},
    };
    for (const auto& c : cases) {
        const auto findings =
            combustion(firing(ApplianceKind::CondensingBoiler, c.maximum, c.minimum), flue::inForce(book));
        EXPECT_EQ(findings.overall.outcome, c.outcome) << c.name;
        EXPECT_EQ(findings.overall.why.say, c.why) << c.name;
        EXPECT_EQ(findings.parts.size(), 4u) << c.name;
    }
}

TEST(CondensingBoiler, FailsThoughTheOtherRateIsMissing) {
    const auto book = RuleBook::shipped();
    const auto findings =
        combustion(firing(ApplianceKind::CondensingBoiler, flue::read(900, 9)), flue::inForce(book));
    EXPECT_EQ(findings.overall.outcome, Outcome::Fail);
    EXPECT_TRUE(says(findings.overall, Say::CombustionMinimumMissing));
}

TEST(CondensingBoiler, OneReadingOfARateIsNoVerdict) {
    const auto book = RuleBook::shipped();
    FlueReadings half = flue::read(80, 9.2);
    half.carbonDioxide = {};
    const auto findings =
        combustion(firing(ApplianceKind::CondensingBoiler, half, flue::read(20, 8.8)), flue::inForce(book));
    EXPECT_EQ(findings.overall.outcome, Outcome::NoVerdict);
    EXPECT_EQ(findings.overall.why.say, Say::ReadingMissing);
}

// The procedure's order: flue, joints and seals first, then off, safe, maker.
TEST(Combustion, BeyondSaysWhatToDoInOrder) {
    const auto book = RuleBook::shipped();
    const auto rules = flue::inForce(book);
    const auto boiler = combustion(firing(ApplianceKind::CondensingBoiler, flue::read(900, 9)), rules);
    const auto& notes = partOf(boiler, FindingKind::CombustionRatioMaximum)->notes;
    ASSERT_EQ(notes.size(), 2u);
    EXPECT_EQ(notes[0].say, Say::CombustionCheckFlue);
    EXPECT_EQ(notes[1].say, Say::CombustionStillBeyond);
    auto flueless = firing(ApplianceKind::FluelessSpaceHeater, flue::read(900, 5));
    flueless.maker.ratioMost = Figure{Decimal(10, 4), UnitCode::None};
    const auto judged = combustion(flueless, rules);
    EXPECT_TRUE(says(judged.overall, Say::CombustionMeasureAgain));
    EXPECT_FALSE(says(judged.overall, Say::CombustionCheckFlue));
}

struct KindCase {
    ApplianceKind kind;
    double ratio;  // with CO2 5 %
    Outcome shipped;
    Outcome confirmed;
};

// Memory looks again within and fails beyond; what is remembered too faintly has no verdict. A fire's 0.012
// is far beyond any boiler's figure and within its own.
TEST(Combustion, GoesByTheKind) {
    const auto shipped = RuleBook::shipped();
    const auto confirmed = flue::confirmed();
    const auto kNone = Outcome::NoVerdict;
    const KindCase cases[] = {
        {ApplianceKind::NonCondensingBoiler, 0.006, Outcome::LookAgain, Outcome::Pass},
        {ApplianceKind::NonCondensingBoiler, 0.012, Outcome::Fail, Outcome::Fail},
        {ApplianceKind::WarmAirHeater, 0.006, Outcome::LookAgain, Outcome::Pass},
        {ApplianceKind::WarmAirHeater, 0.012, Outcome::Fail, Outcome::Fail},
        {ApplianceKind::GasFire, 0.012, Outcome::LookAgain, Outcome::Pass},
        {ApplianceKind::GasFire, 0.030, Outcome::Fail, Outcome::Fail},
        {ApplianceKind::BackBoiler, 0.006, kNone, kNone},
        {ApplianceKind::BackBoilerFire, 0.006, kNone, kNone},
        {ApplianceKind::OpenFluedWaterHeater, 0.006, kNone, kNone},
        {ApplianceKind::RoomSealedWaterHeater, 0.006, kNone, kNone},
        {ApplianceKind::FluelessSpaceHeater, 0.0001, kNone, kNone},
        {ApplianceKind::FluelessWaterHeater, 0.006, kNone, kNone},
        {ApplianceKind::Oven, 0.006, kNone, kNone},
        {ApplianceKind::Grill, 0.006, kNone, kNone},
        {ApplianceKind::Hotplate, 0.0001, kNone, kNone},
        {ApplianceKind::RangeCooker, 0.0001, kNone, kNone},
        {ApplianceKind::TumbleDryer, 0.0001, kNone, kNone},
        {ApplianceKind::Other, 0.0001, kNone, kNone},
    };
    for (const auto& c : cases) {
        const auto input = firing(c.kind, flue::read(c.ratio * 5.0 * 10000.0, 5.0));
        EXPECT_EQ(combustion(input, flue::inForce(shipped)).overall.outcome, c.shipped)
            << applianceKindText(c.kind) << ' ' << c.ratio;
        EXPECT_EQ(combustion(input, flue::inForce(confirmed)).overall.outcome, c.confirmed)
            << applianceKindText(c.kind) << ' ' << c.ratio;
    }
}

TEST(Combustion, SaysWhyAKindHasNoVerdict) {
    const auto book = RuleBook::shipped();
    const auto whyOf = [&](std::optional<ApplianceKind> kind) {
        auto input = firing(ApplianceKind::Other, flue::read(80, 9.2));
        input.kind = kind;
        return combustion(input, flue::inForce(book)).overall.why.say;
    };
    EXPECT_EQ(whyOf(ApplianceKind::Hotplate), Say::CombustionNotByRatio);
    EXPECT_EQ(whyOf(ApplianceKind::Other), Say::CombustionNoLimitForKind);
    EXPECT_EQ(whyOf(ApplianceKind::Oven), Say::LimitMissing);
    EXPECT_EQ(whyOf(std::nullopt), Say::CombustionKindUnknown);
}

TEST(Combustion, MinimumIsJudgedWhenItWasRead) {
    const auto book = flue::confirmed();
    const auto rules = flue::inForce(book);
    const auto good = flue::read(50, 5);
    EXPECT_EQ(combustion(firing(ApplianceKind::GasFire, good), rules).parts.size(), 1u);
    const auto both = combustion(firing(ApplianceKind::GasFire, good, flue::read(2500, 5)), rules);
    EXPECT_EQ(both.overall.outcome, Outcome::Fail);
    EXPECT_EQ(partOf(both, FindingKind::CombustionRatioMinimum)->outcome, Outcome::Fail);
}

// A boiler maker's page: CO below 300 ppm and a ratio of 0.004 or below.
TEST(MakersFigures, DecideBeforeAllOthers) {
    const auto book = RuleBook::shipped();
    auto input = firing(ApplianceKind::CondensingBoiler, flue::read(325, 11.5), flue::read(20, 8.8));
    EXPECT_EQ(combustion(input, flue::inForce(book)).overall.outcome, Outcome::Pass);
    input.maker.carbonMonoxideMost = Figure{Decimal(300, 0), UnitCode::Ppm};
    input.maker.source = "Installation manual, commissioning";
    const auto findings = combustion(input, flue::inForce(book));
    EXPECT_EQ(findings.overall.outcome, Outcome::Fail);
    EXPECT_EQ(findings.overall.why.say, Say::CarbonMonoxideBeyond);
    EXPECT_EQ(findings.overall.limits.front().provenance, Provenance::Maker);
    EXPECT_EQ(partOf(findings, FindingKind::CombustionRatioMaximum)->limits.front().provenance,
              Provenance::Published);
}

TEST(MakersFigures, DecideForKindsWithoutAStandardsFigure) {
    const auto book = RuleBook::shipped();
    for (const auto kind : {ApplianceKind::Other, ApplianceKind::Hotplate, ApplianceKind::Oven}) {
        auto input = firing(kind, flue::read(80, 9.2));
        input.maker.ratioMost = Figure{Decimal(20, 4), UnitCode::None};
        EXPECT_EQ(combustion(input, flue::inForce(book)).overall.outcome, Outcome::Pass);
        input.atMaximum = flue::read(300, 9.2);
        EXPECT_EQ(combustion(input, flue::inForce(book)).overall.outcome, Outcome::Fail);
    }
}

TEST(MakersFigures, WithoutAKindNothingPasses) {
    const auto book = RuleBook::shipped();
    auto input = firing(ApplianceKind::Other, flue::read(80, 9.2));
    input.kind.reset();
    input.maker.ratioMost = Figure{Decimal(20, 4), UnitCode::None};
    EXPECT_EQ(combustion(input, flue::inForce(book)).overall.why.say, Say::CombustionKindUnknown);
}

struct DioxideCase {
    double carbonDioxide;
    Outcome outcome;
    Say why;
};

TEST(MakersFigures, GiveARangeOfCarbonDioxide) {
    const auto book = RuleBook::shipped();
    const DioxideCase cases[] = {
        {9.3, Outcome::Pass, Say::CarbonDioxideWithin},
        {9.0, Outcome::LookAgain, Say::CarbonDioxideAtEnd},
        {9.6, Outcome::LookAgain, Say::CarbonDioxideAtEnd},
        {8.8, Outcome::Fail, Say::CarbonDioxideBeyond},
        {9.8, Outcome::Fail, Say::CarbonDioxideBeyond},
    };
    for (const auto& c : cases) {
        auto input = firing(ApplianceKind::GasFire, flue::read(10, c.carbonDioxide));
        input.maker.carbonDioxideAtMaximum = Range{Decimal(90, 1), Decimal(96, 1), UnitCode::Percent};
        const auto findings = combustion(input, flue::inForce(book));
        const auto* part = partOf(findings, FindingKind::CarbonDioxideMaximum);
        ASSERT_NE(part, nullptr);
        EXPECT_EQ(part->outcome, c.outcome) << c.carbonDioxide;
        EXPECT_EQ(part->why.say, c.why) << c.carbonDioxide;
    }
    auto input = firing(ApplianceKind::GasFire, flue::read(10, 9.3));
    input.maker.carbonDioxideAtMinimum = Range{Decimal(80, 1), Decimal(90, 1), UnitCode::Percent};
    EXPECT_EQ(combustion(input, flue::inForce(book)).overall.why.say, Say::CombustionMinimumMissing);
}

TEST(MakersFigures, InPerCentAreTheSameAndInMilligramsAreAskedForAgain) {
    const auto book = RuleBook::shipped();
    auto input = firing(ApplianceKind::GasFire, flue::read(325, 5));
    input.maker.carbonMonoxideMost = Figure{Decimal(3, 2), UnitCode::Percent};  // 300 ppm
    EXPECT_EQ(partOf(combustion(input, flue::inForce(book)), FindingKind::CarbonMonoxideMaximum)->outcome,
              Outcome::Fail);
    input.maker.carbonMonoxideMost = Figure{Decimal(4, 2), UnitCode::Percent};
    EXPECT_EQ(partOf(combustion(input, flue::inForce(book)), FindingKind::CarbonMonoxideMaximum)->outcome,
              Outcome::Pass);
    input.maker.carbonMonoxideMost = Figure{Decimal(400, 0), UnitCode::MilligramPerCubicMetre};
    const auto findings = combustion(input, flue::inForce(book));
    EXPECT_EQ(partOf(findings, FindingKind::CarbonMonoxideMaximum)->why.say, Say::CombustionLimitUnit);
    EXPECT_EQ(findings.overall.outcome, Outcome::NoVerdict);
}

int badness(Outcome outcome) {
    return outcome == Outcome::Pass ? 0 : outcome == Outcome::LookAgain ? 1 : 2;
}

TEST(Combustion, MoreCarbonMonoxideIsNeverBetter) {
    const auto book = flue::confirmed();
    const auto rules = flue::inForce(book);
    for (const auto kind : {ApplianceKind::CondensingBoiler, ApplianceKind::NonCondensingBoiler,
                            ApplianceKind::WarmAirHeater, ApplianceKind::GasFire}) {
        for (const double carbonDioxide : {0.1, 1.0, 5.0, 9.2}) {
            int before = 0;
            for (int carbonMonoxide = 0; carbonMonoxide < 2500; carbonMonoxide += 1) {
                const auto readings = flue::read(carbonMonoxide, carbonDioxide);
                const int now = badness(combustion(firing(kind, readings, readings), rules).overall.outcome);
                ASSERT_GE(now, before) << applianceKindText(kind) << ' ' << carbonMonoxide << " ppm at "
                                       << carbonDioxide << " %";
                before = now;
            }
        }
    }
}

// A maker's low limit is where the accuracy's two forms meet.
TEST(MakersFigures, MoreCarbonMonoxideIsNeverBetterNearALowLimit) {
    const auto book = flue::confirmed();
    for (int limit = 5; limit < 80; ++limit) {
        auto input = firing(ApplianceKind::GasFire, flue::read(0, 9.0));
        input.maker.carbonMonoxideMost = Figure{Decimal(limit, 0), UnitCode::Ppm};
        int before = 0;
        for (int carbonMonoxide = 0; carbonMonoxide < 120; ++carbonMonoxide) {
            input.atMaximum = flue::read(carbonMonoxide, 9.0);
            const int now = badness(combustion(input, flue::inForce(book)).overall.outcome);
            ASSERT_GE(now, before) << carbonMonoxide << " ppm, limit " << limit;
            before = now;
        }
        EXPECT_EQ(before, 2) << limit;
    }
}

}  // namespace
}  // namespace hearth::burner

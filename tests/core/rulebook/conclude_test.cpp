// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/conclude.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

Entry limitFrom(Provenance provenance, int millibar = 4) {
    Entry entry;
    entry.value = quantity::Figure{quantity::Decimal(millibar, 0), quantity::UnitCode::Millibar};
    entry.provenance = provenance;
    return entry;
}

Finding restingOn(std::initializer_list<Provenance> provenances) {
    Finding finding{FindingKind::Tightness};
    for (const auto provenance : provenances) {
        restOn(finding, limitFrom(provenance));
    }
    return finding;
}

constexpr Say kWhy = Say::TightWithinDrop;

TEST(Conclude, FirstEntryGivesTheLimit) {
    Finding finding{FindingKind::Tightness};
    auto first = limitFrom(Provenance::Firm, 4);
    first.comparison = Comparison::Below;
    restOn(finding, first);
    restOn(finding, limitFrom(Provenance::Firm, 9));
    EXPECT_EQ(finding.limit, figureOf(first));
    EXPECT_EQ(finding.comparison, Comparison::Below);
    EXPECT_EQ(finding.limits.size(), 2U);
}

TEST(Conclude, WithinPassesOnlyIfEveryEntryMayDecide) {
    auto pass = restingOn({Provenance::Published, Provenance::Firm});
    concludeWithin(pass, {kWhy});
    EXPECT_EQ(pass.outcome, Outcome::Pass);
    EXPECT_EQ(pass.why.say, kWhy);
    EXPECT_TRUE(pass.notes.empty());

    auto memory = restingOn({Provenance::Published, Provenance::Secondary, Provenance::Memory});
    concludeWithin(memory, {kWhy});
    EXPECT_EQ(memory.outcome, Outcome::LookAgain);
    EXPECT_EQ(memory.why.say, Say::LimitFromMemory);
    ASSERT_EQ(memory.notes.size(), 1U);
    EXPECT_EQ(memory.notes.front().say, kWhy);

    auto secondary = restingOn({Provenance::Secondary});
    concludeWithin(secondary, {kWhy});
    EXPECT_EQ(secondary.outcome, Outcome::LookAgain);
    EXPECT_EQ(secondary.why.say, Say::LimitSecondary);
}

TEST(Conclude, WithoutAnEntryThereIsNoVerdict) {
    Finding finding{FindingKind::Tightness};
    concludeWithin(finding, {kWhy});
    EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(finding.why.say, Say::LimitMissing);
}

TEST(Conclude, BeyondFailsByTheDecisiveEntry) {
    auto memory = restingOn({Provenance::Memory});
    concludeBeyond(memory, memory.limits.front(), {Say::FallBeyondDrop});
    EXPECT_EQ(memory.outcome, Outcome::Fail);
    EXPECT_EQ(memory.why.say, Say::FallBeyondDrop);
    EXPECT_TRUE(says(memory, Say::LimitFromMemory));

    auto habit = restingOn({Provenance::CommonPractice});
    concludeBeyond(habit, habit.limits.front(), {Say::NotSettled});
    EXPECT_EQ(habit.outcome, Outcome::LookAgain);
    EXPECT_TRUE(says(habit, Say::LimitCommonPractice));
}

TEST(Conclude, AHabitOfTheTradePassesNothing) {
    auto habit = restingOn({Provenance::CommonPractice});
    concludeWithin(habit, {kWhy});
    EXPECT_EQ(habit.outcome, Outcome::LookAgain);
    EXPECT_EQ(habit.why.say, Say::LimitCommonPractice);
    EXPECT_TRUE(says(habit, kWhy));
    auto both = restingOn({Provenance::Published, Provenance::CommonPractice});
    concludeWithin(both, {kWhy});
    EXPECT_EQ(both.outcome, Outcome::LookAgain);
    // What can be checked against a copy of a standard is said first.
    auto memory = restingOn({Provenance::CommonPractice, Provenance::Memory});
    concludeWithin(memory, {kWhy});
    EXPECT_EQ(memory.why.say, Say::LimitFromMemory);
}

TEST(Conclude, TheRest) {
    auto finding = restingOn({Provenance::Published});
    concludeAtLimit(finding, {Say::AtLimit});
    EXPECT_EQ(finding.outcome, Outcome::LookAgain);
    concludeOpen(finding, {Say::ReadingMissing});
    EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(noVerdict(FindingKind::Purge, {Say::LimitMissing}).outcome, Outcome::NoVerdict);
    EXPECT_EQ(plainFinding(FindingKind::OpenEnds, Outcome::Fail, Say::OpenEndsFound).outcome, Outcome::Fail);
    EXPECT_FALSE(says(finding, Say::AtLimit));
}

}  // namespace
}  // namespace hearth::rulebook

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/finding.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::rulebook {
namespace {

constexpr Outcome kOutcomes[] = {Outcome::Pass, Outcome::LookAgain, Outcome::NoVerdict, Outcome::Fail};

TEST(Outcomes, GraverIsTheLaterOfPassLookAgainNoVerdictFail) {
    for (std::size_t a = 0; a < std::size(kOutcomes); ++a) {
        for (std::size_t b = 0; b < std::size(kOutcomes); ++b) {
            EXPECT_EQ(graver(kOutcomes[a], kOutcomes[b]), kOutcomes[std::max(a, b)]);
        }
    }
}

TEST(Outcomes, TextsComeBack) {
    for (const auto outcome : kOutcomes) {
        EXPECT_EQ(outcomeFromText(outcomeText(outcome)), outcome);
    }
    EXPECT_FALSE(outcomeFromText("passed"));
}

TEST(FindingKinds, TextsAreDifferentAndComeBack) {
    std::set<std::string_view> texts;
    for (int i = 0; i <= static_cast<int>(FindingKind::WorkingPressure); ++i) {
        const auto kind = static_cast<FindingKind>(i);
        EXPECT_TRUE(texts.insert(kindText(kind)).second);
        EXPECT_EQ(kindFromText(kindText(kind)), kind);
    }
    EXPECT_FALSE(kindFromText(""));
}

struct DecideCase {
    Provenance provenance;
    Outcome within;
    Outcome beyond;
};

// The rule book's rule on provenance: nothing passes on memory alone, a habit of the trade advises only.
TEST(Decide, FollowsTheProvenance) {
    const DecideCase cases[] = {
        {Provenance::Published, Outcome::Pass, Outcome::Fail},
        {Provenance::Firm, Outcome::Pass, Outcome::Fail},
        {Provenance::Maker, Outcome::Pass, Outcome::Fail},
        {Provenance::Secondary, Outcome::LookAgain, Outcome::Fail},
        {Provenance::Memory, Outcome::LookAgain, Outcome::Fail},
        {Provenance::CommonPractice, Outcome::LookAgain, Outcome::LookAgain},
    };
    for (const auto& c : cases) {
        EXPECT_EQ(decide(true, c.provenance), c.within);
        EXPECT_EQ(decide(false, c.provenance), c.beyond);
    }
}

TEST(Holds, ComparesAtBelowAndAbove) {
    EXPECT_TRUE(holds(1.0, Comparison::AtMost, 1.0));
    EXPECT_FALSE(holds(1.01, Comparison::AtMost, 1.0));
    EXPECT_FALSE(holds(1.0, Comparison::Below, 1.0));
    EXPECT_TRUE(holds(0.99, Comparison::Below, 1.0));
    EXPECT_TRUE(holds(60.0, Comparison::AtLeast, 60.0));
    EXPECT_FALSE(holds(59.0, Comparison::AtLeast, 60.0));
    EXPECT_TRUE(holds(2.0, Comparison::Equals, 2.0));
    EXPECT_FALSE(holds(2.1, Comparison::Equals, 2.0));
}

TEST(Holds, ForgivesBinaryFractionsAndNoMore) {
    EXPECT_FALSE(holds(20.70 - 20.50, Comparison::Below, 0.2));  // 0.19999999999999929 in binary
    EXPECT_TRUE(holds(0.1 + 0.2, Comparison::AtMost, 0.3));
    EXPECT_TRUE(holds(0.1999, Comparison::Below, 0.2));
    EXPECT_FALSE(holds(0.3001, Comparison::AtMost, 0.3));
}

}  // namespace
}  // namespace hearth::rulebook

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/conclude.h"
#include "tests/core/judging/scenario.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using namespace scenario;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

struct EditionDay {
    const char* date;
    const char* edition;
};
constexpr EditionDay kDays[] = {{"2026-09-15", "ed3"}, {"2026-09-15", "ed4"}, {"2026-11-10", "ed4"}};

// Common practice, no source: let-by steady at about 9 mbar falling 0.01 to 0.02, settled at about 20.5, a
// fall of 0.04 in two minutes on an existing domestic installation, two displays differing by 0.01; no
// perceptible movement.
TEST(CommonPractice, PassesBeforeAndAfterFirstOctoberWithConfirmedEntries) {
    const auto book = confirmedBook();
    for (const auto& [date, edition] : kDays) {
        const auto judged = judge(commonPractice(date, edition), book);
        EXPECT_EQ(overall(judged), Outcome::Pass) << date << edition;
        EXPECT_EQ(outcomeOf(judged, FindingKind::LetBy), Outcome::Pass) << date << edition;
        EXPECT_EQ(outcomeOf(judged, FindingKind::Settling), Outcome::Pass) << date << edition;
        EXPECT_EQ(outcomeOf(judged, FindingKind::Scope), Outcome::Pass) << date << edition;
        const auto& tightness = findingOf(judged, FindingKind::Tightness)->finding;
        EXPECT_EQ(tightness.outcome, Outcome::Pass) << date << edition;
        EXPECT_EQ(tightness.why.say, Say::TightNoMovement) << date << edition;
        EXPECT_EQ(tightness.measured->value.text(), "0.04") << date << edition;
        EXPECT_EQ(tightness.limit->value.text(), "0.2") << date << edition;
    }
}

TEST(CommonPractice, DifferingDisplaysAreWithinOneDigit) {
    const auto judged = judge(commonPractice("2026-11-10", "ed4"), confirmedBook());
    const auto& displays = findingOf(judged, FindingKind::DisplaysAgree)->finding;
    EXPECT_EQ(displays.outcome, Outcome::Pass);
    EXPECT_EQ(displays.why.say, Say::DisplaysWithinDigit);
    EXPECT_EQ(displays.measured->value.text(), "0.01");
}

// The same figures in the other direction: a movement below the threshold is none, either way.
TEST(CommonPractice, PassesWithTheSameMovementUpwards) {
    auto file = commonPractice("2026-11-10", "ed4");
    enter(file, reg::Item::LetByEnd, "9.05");
    enter(file, reg::Item::TightEnd, "20.57");
    EXPECT_EQ(overallOf(file, confirmedBook()), Outcome::Pass);
}

TEST(CommonPractice, IsLookedAtAgainWhileTheEntriesAreUnconfirmed) {
    const auto shipped = rulebook::RuleBook::shipped();
    for (const auto& [date, edition] : kDays) {
        const auto judged = judge(commonPractice(date, edition), shipped);
        for (const auto kind : {FindingKind::LetBy, FindingKind::Settling, FindingKind::Tightness}) {
            const auto& finding = findingOf(judged, kind)->finding;
            EXPECT_EQ(finding.outcome, Outcome::LookAgain) << date << edition;
            EXPECT_EQ(finding.why.say, Say::LimitSecondary) << date << edition;
        }
    }
    EXPECT_EQ(overallOf(commonPractice("2026-09-15", "ed3"), shipped), Outcome::LookAgain);
    // Edition 4's scope has been read by nobody: the headline waits for it, and does not pass.
    EXPECT_EQ(overallOf(commonPractice("2026-11-10", "ed4"), shipped), Outcome::NoVerdict);
}

TEST(CommonPractice, EveryFindingSaysWhereItStandsAndWhatItJudges) {
    const auto file = commonPractice("2026-11-10", "ed4");
    for (const auto& judged : judge(file, confirmedBook())) {
        EXPECT_FALSE(judged.about.empty()) << kindText(judged.finding.kind);
        const bool ofVisit = judged.subject == reg::subject(file.visit.id);
        const bool ofTest = judged.subject == reg::subject(file.tests.front().id);
        EXPECT_TRUE(ofVisit || ofTest);
        for (const auto item : judged.about) {
            EXPECT_EQ(reg::infoOf(item).subject, judged.subject.kind) << reg::infoOf(item).code;
        }
    }
}

TEST(CommonPractice, SaysWhatTheFallIsWorth) {
    const auto judged = judge(commonPractice("2026-11-10", "ed4"), confirmedBook());
    EXPECT_TRUE(says(findingOf(judged, FindingKind::Tightness)->finding, Say::LeakRate));
}

}  // namespace
}  // namespace hearth::judging

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/scenario.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using namespace scenario;
using rulebook::FindingKind;
using rulebook::Outcome;

std::vector<Judged> passing() {
    return judge(commonPractice("2026-11-10", "ed4"), confirmedBook());
}

Judged& of(std::vector<Judged>& judged, FindingKind kind) {
    return *std::find_if(judged.begin(), judged.end(),
                         [&](const auto& one) { return one.finding.kind == kind; });
}

constexpr FindingKind kNeeded[] = {
    FindingKind::EditionChoice, FindingKind::Scope,    FindingKind::LetBy,    FindingKind::Settling,
    FindingKind::TestPressure,  FindingKind::TestTime, FindingKind::Tightness};

TEST(Overall, NeverPassesWithoutADecisiveFinding) {
    EXPECT_EQ(overall({}), Outcome::NoVerdict);
    for (const auto kind : kNeeded) {
        auto judged = passing();
        ASSERT_EQ(overall(judged), Outcome::Pass);
        judged.erase(std::remove_if(judged.begin(), judged.end(),
                                    [&](const auto& one) { return one.finding.kind == kind; }),
                     judged.end());
        EXPECT_EQ(overall(judged), Outcome::NoVerdict) << kindText(kind);
    }
}

TEST(Overall, TakesTheGravestOfTheDecisiveFindings) {
    for (const auto kind : {FindingKind::Scope, FindingKind::LetBy, FindingKind::TestPressure,
                            FindingKind::TestTime, FindingKind::Tightness}) {
        for (const auto outcome : {Outcome::LookAgain, Outcome::NoVerdict, Outcome::Fail}) {
            auto judged = passing();
            of(judged, kind).finding.outcome = outcome;
            EXPECT_EQ(overall(judged), outcome) << kindText(kind);
        }
    }
}

TEST(Overall, GaugeAndSmellOnArrivalMakeAPassLookAgain) {
    for (const auto kind :
         {FindingKind::GaugeZero, FindingKind::GaugeCalibration, FindingKind::SmellOnArrival}) {
        for (const auto outcome : {Outcome::LookAgain, Outcome::NoVerdict, Outcome::Fail}) {
            auto judged = passing();
            of(judged, kind).finding.outcome = outcome;
            EXPECT_EQ(overall(judged), Outcome::LookAgain) << kindText(kind);
        }
    }
}

TEST(Overall, LeavesWhatDoesNotDecide) {
    for (const auto kind : {FindingKind::Purge, FindingKind::JointsProved, FindingKind::DisplaysAgree}) {
        auto judged = passing();
        of(judged, kind).finding.outcome = Outcome::Fail;
        EXPECT_EQ(overall(judged), Outcome::Pass) << kindText(kind);
    }
}

TEST(Overall, TwoTestsAreTwoHeadlines) {
    auto file = commonPractice("2026-11-10", "ed4");
    auto second = file.tests.front();
    second.id.bytes.fill(77);
    second.position = 1;
    for (auto entry : std::vector<reg::Entry>(file.entries)) {
        if (entry.subject == reg::subject(file.tests.front().id)) {
            entry.subject = reg::subject(second.id);
            file.entries.push_back(entry);
        }
    }
    file.tests.push_back(second);
    enter(file, reg::Item::TestSmell, "yes");  // the first, before the work
    const auto judged = judge(file, confirmedBook());
    EXPECT_EQ(overall(judged, file.tests.front().id), Outcome::Fail);
    EXPECT_EQ(overall(judged, second.id), Outcome::Pass);
    EXPECT_EQ(overall(judged), Outcome::Fail);
}

}  // namespace
}  // namespace hearth::judging

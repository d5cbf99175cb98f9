// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/what_first.h"

#include "tests/ui/visit/sheet_bench.h"
#include "ui/shell/kit.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using testing::SheetBench;
using words::Words;

/// The panel in view; there is at most one that is wanted in these tests.
WhatFirst* panelIn(const SheetBench& bench, PartKind kind) {
    for (auto* panel : bench.sheet().paper()->part({kind})->findChildren<WhatFirst*>()) {
        if (!panel->isHidden()) {
            return panel;
        }
    }
    return nullptr;
}

TEST(WhatFirst, SmellOnArrivalSaysWhatToDoBeforeAnotherFieldIsAsked) {
    SheetBench bench;
    EXPECT_EQ(panelIn(bench, PartKind::BeforeYouStart), nullptr);
    bench.type(Item::SmellOnArrival, QStringLiteral("y"));
    auto* panel = panelIn(bench, PartKind::BeforeYouStart);
    ASSERT_NE(panel, nullptr);
    EXPECT_EQ(panel->title(), bench.firm.words.emergencyTitle(Words::Emergency::SmellOrEscape));
    const auto steps = bench.firm.words.emergencySteps(
        Words::Emergency::SmellOrEscape, bench.file().installation.gas, bench.file().premises.country, {});
    EXPECT_EQ(panel->accessibleDescription(), steps.join(u'\n'));
    // The keyboard is at the steps' button, not at the next question, which waits.
    EXPECT_EQ(QApplication::focusWidget(), panel->doneButton());
    EXPECT_FALSE(bench.editor(Item::OpenEnds).isEnabled());
    EXPECT_FALSE(bench.editor(Item::VisualInspection).isEnabled());
    SheetBench::press(Qt::Key_Return);
    EXPECT_TRUE(bench.editor(Item::OpenEnds).isEnabled());
    EXPECT_EQ(QApplication::focusWidget(), bench.editor(Item::OpenEnds).focusTarget());
    EXPECT_NE(panelIn(bench, PartKind::BeforeYouStart), nullptr) << "the steps stay while the answer does";
}

TEST(WhatFirst, TheStepsGoWithTheAnswer) {
    SheetBench bench;
    bench.type(Item::SmellOnArrival, QStringLiteral("y"));
    bench.at(Item::SmellOnArrival);
    SheetBench::line(QStringLiteral("n"));
    EXPECT_EQ(panelIn(bench, PartKind::BeforeYouStart), nullptr);
    EXPECT_TRUE(bench.editor(Item::OpenEnds).isEnabled());
}

TEST(WhatFirst, VoltageOnThePipeStopsTheOtherQuestions) {
    SheetBench bench;
    bench.enter(Item::SmellOnArrival, "no");
    bench.enter(Item::OpenEnds, "none_seen");
    bench.type(Item::SafeToTouch, QStringLiteral("v"));
    if (bench.outcome(FindingKind::SafeToTouch) == Outcome::Fail) {
        ASSERT_NE(panelIn(bench, PartKind::BeforeYouStart), nullptr);
        EXPECT_FALSE(bench.editor(Item::VisualInspection).isEnabled());
    } else {
        FAIL() << "voltage found does not fail";
    }
}

TEST(WhatFirst, LpgHasItsOwnSteps) {
    SheetBench bench;
    reg::Installation installation = bench.file().installation;
    installation.gas = rulebook::Gas::Propane;
    testing::need(bench.model().save(installation));
    bench.type(Item::SmellOnArrival, QStringLiteral("y"));
    auto* panel = panelIn(bench, PartKind::BeforeYouStart);
    ASSERT_NE(panel, nullptr);
    EXPECT_EQ(panel->accessibleDescription(),
              bench.firm.words
                  .emergencySteps(Words::Emergency::SmellOrEscape, rulebook::Gas::Propane,
                                  bench.file().premises.country, {})
                  .join(u'\n'));
}

TEST(WhatFirst, AFailedTestWithoutSmellKeepsTheGasOff) {
    SheetBench bench;
    bench.fillIn();
    EXPECT_EQ(panelIn(bench, PartKind::Tightness), nullptr);
    bench.enter(Item::TestAppliances, "isolated");
    bench.enter(Item::TightEnd, "17.00");
    ASSERT_EQ(bench.outcome(FindingKind::Tightness), Outcome::Fail);
    auto* panel = panelIn(bench, PartKind::Tightness);
    ASSERT_NE(panel, nullptr);
    EXPECT_EQ(panel->title(), bench.firm.words.emergencyTitle(Words::Emergency::FailedTest));
    EXPECT_NE(panelIn(bench, PartKind::Restore), nullptr);
}

TEST(WhatFirst, SmellDuringTheTestGoesBeforeTheFailedTest) {
    SheetBench bench;
    bench.fillIn();
    bench.enter(Item::TestSmell, "yes");
    auto* panel = panelIn(bench, PartKind::Tightness);
    ASSERT_NE(panel, nullptr);
    EXPECT_EQ(panel->title(), bench.firm.words.emergencyTitle(Words::Emergency::SmellOrEscape));
}

TEST(WhatFirst, LetByIsSaidAtOnce) {
    SheetBench bench;
    bench.fillIn();
    bench.enter(Item::LetByEnd, "9.80");
    ASSERT_EQ(bench.outcome(FindingKind::LetBy), Outcome::Fail);
    auto* panel = panelIn(bench, PartKind::Tightness);
    ASSERT_NE(panel, nullptr);
    EXPECT_TRUE(panel->accessibleDescription().contains(
        bench.firm.words.sentence(bench.finding(FindingKind::LetBy)->finding.why)));
}

}  // namespace
}  // namespace hearth::ui::visit

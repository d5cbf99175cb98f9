// SPDX-License-Identifier: GPL-3.0-or-later
// What is doubted of who does the work and with what, in the margin and before a record is issued.
#include "tests/ui/visit/sheet_bench.h"
#include "ui/shell/kit.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using rulebook::FindingKind;
using rulebook::Outcome;
using testing::need;
using testing::SheetBench;

QString saidBeforeIssue(const SheetBench& bench) {
    return bench.sheet().recordsPart()->findChild<QWidget*>(QStringLiteral("doubtsBeforeIssue"))->isHidden()
               ? QString()
               : bench.sheet()
                     .recordsPart()
                     ->findChild<shell::Text*>(QStringLiteral("doubtsBeforeIssue"))
                     ->text();
}

TEST(Doubts, OfACompetentEngineerNothingIsSaid) {
    const SheetBench bench;
    EXPECT_EQ(bench.note(FindingKind::EngineerCard), nullptr);
    EXPECT_EQ(bench.note(FindingKind::EngineerCategories), nullptr);
    EXPECT_TRUE(saidBeforeIssue(bench).isEmpty());
}

TEST(Doubts, ACardThatRanOutStandsInTheMarginAndBeforeIssueButInNoRecord) {
    SheetBench bench;
    reg::Engineer engineer = bench.firm.engineer;
    engineer.cardExpires = calendar::addMonths(bench.firm.clock.today("Europe/London"), -1);
    need(bench.firm.store->save(engineer));
    bench.open();
    const auto* note = bench.note(FindingKind::EngineerCard);
    ASSERT_NE(note, nullptr);
    EXPECT_EQ(note->judged().finding.outcome, Outcome::Fail);
    EXPECT_TRUE(saidBeforeIssue(bench).contains(QStringLiteral("R. Ashdown")));
    EXPECT_EQ(bench.finding(FindingKind::EngineerCard), nullptr) << "no finding of the record";
}

}  // namespace
}  // namespace hearth::ui::visit

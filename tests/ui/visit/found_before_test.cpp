// SPDX-License-Identifier: GPL-3.0-or-later
// What earlier visits left stands at the head of the sheet. A gas smell that is a failure: the design,
// section 7; no figure is expected here.
#include "ui/visit/found_before.h"

#include "tests/ui/support/keys.h"
#include "tests/ui/visit/sheet_bench.h"

#include <QLabel>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using hearth::testing::child;
using reg::Item;
using testing::need;
using testing::SheetBench;

struct ComingBack : ::testing::Test {
    SheetBench bench;

    [[nodiscard]] QLabel* text(const char* name) const {
        return child<QLabel>(bench.sheet().paper()->part({PartKind::WhoAndWhere}), name);
    }
    void comeBack() {
        bench.firm.clock.advance(std::chrono::hours(24 * 30));
        bench.visit = bench.firm.startVisit(bench.premises);
        bench.open();
    }
    reg::Situation leaveOpen(const char* what) {
        reg::Situation situation;
        situation.id = {bench.firm.store->newId()};
        situation.premises = bench.premises;
        situation.visit = bench.visit;
        situation.foundAt = bench.firm.clock.now();
        situation.danger = reg::Danger::AtRisk;
        situation.what = what;
        situation.where = "kitchen";
        need(bench.firm.store->save(situation));
        return situation;
    }
};

TEST_F(ComingBack, NothingIsSaidWhereNothingWasLeft) {
    EXPECT_TRUE(text("openBefore")->isHidden());
    EXPECT_TRUE(text("failedBefore")->isHidden());
    leaveOpen("the flue is not sealed");
    bench.open();
    EXPECT_TRUE(text("openBefore")->isHidden()) << "what this visit finds has its own part";
}

TEST_F(ComingBack, AnUnsafeSituationStaysInViewUntilSomebodyClosesIt) {
    auto situation = leaveOpen("the flue is not sealed");
    comeBack();
    ASSERT_FALSE(text("openBefore")->isHidden());
    const QString said = text("openBefore")->text();
    EXPECT_TRUE(said.contains(QStringLiteral("the flue is not sealed"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("At Risk"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("kitchen"))) << said.toStdString();
    situation.closedAt = bench.firm.clock.now();
    need(bench.firm.store->save(situation));
    bench.open();
    EXPECT_TRUE(text("openBefore")->isHidden());
}

TEST_F(ComingBack, WhatFailedOnTheLastVisitIsSaidWithItsDay) {
    bench.fillIn();
    need(bench.model().enter(bench.test(), Item::TestSmell, QStringLiteral("yes")));
    const auto& findings = bench.model().findings();
    ASSERT_TRUE(std::any_of(findings.begin(), findings.end(), [](const judging::Judged& judged) {
        return judged.finding.outcome == rulebook::Outcome::Fail;
    }));
    const QString day = words::Words().shortDate(bench.file().visit.date);
    comeBack();
    ASSERT_FALSE(text("failedBefore")->isHidden());
    EXPECT_TRUE(text("failedBefore")->text().contains(day)) << text("failedBefore")->text().toStdString();
    EXPECT_GE(text("failedBefore")->text().count(u'\n'), 1);
}

}  // namespace
}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/take_over.h"

#include "tests/ui/support/firm_bench.h"

#include <gtest/gtest.h>

namespace hearth::ui::workings {
namespace {

using hearth::testing::FirmBench;
using hearth::testing::need;
using judging::Group;
using judging::Question;
using judging::Worksheet;
using quantity::UnitCode;
using reg::Item;

class TakeOverTest : public ::testing::Test {
  protected:
    void SetUp() override { visit = bench.startVisit(bench.addPremises("14 Tanner's Row")); }
    [[nodiscard]] Worksheet pressures(const std::string& text) const {
        Worksheet sheet(Question::Pressures, bench.clock.today("Europe/London"));
        sheet.put(Group::Once, 0, Item::MeterWorkingPressure, text, UnitCode::Millibar);
        return sheet;
    }
    void write(const reg::SubjectRef& subject, Item item, const std::string& text) {
        reg::Entry entry;
        entry.visit = visit;
        entry.subject = subject;
        entry.item = item;
        entry.text = text;
        need(bench.store->saveEntry(entry));
    }
    [[nodiscard]] std::string remarks() const { return textOf(reg::subject(visit), Item::VisitRemarks); }
    [[nodiscard]] std::string textOf(const reg::SubjectRef& subject, Item item) const {
        const auto file = need(bench.store->visitFile(visit));
        const auto* entry = file.find(subject, item);
        return entry == nullptr ? std::string() : entry->text;
    }
    [[nodiscard]] reg::SubjectRef lastTest() const {
        return reg::subject(need(bench.store->visitFile(visit)).tests.back().id);
    }

    FirmBench bench;
    reg::VisitId visit;
};

TEST_F(TakeOverTest, ADraftIsOfferedAClosedOrIssuedVisitIsNot) {
    const auto closed = bench.startVisit(bench.addPremises("2 Kiln Yard"));
    auto closing = need(bench.store->visitFile(closed)).visit;
    closing.closed = true;
    need(bench.store->save(closing));
    const auto issued = bench.startVisit(bench.addPremises("5 Kiln Yard"));
    (void)need(bench.issue()(issued, std::nullopt, {}));
    const auto open = need(openVisits(*bench.store));
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().visit.id, visit);
}

TEST_F(TakeOverTest, RemarksGrowByAParagraphAndKeepWhatStandsThere) {
    const Worksheet sheet(Question::RoomCo, bench.clock.today("Europe/London"));
    (void)need(takeOver(*bench.store, visit, sheet, "first"));
    EXPECT_EQ(remarks(), "first");
    (void)need(takeOver(*bench.store, visit, sheet, "second\nline"));
    EXPECT_EQ(remarks(), "first\n\nsecond\nline");
    ASSERT_TRUE(need(bench.store->undo()));
    EXPECT_EQ(remarks(), "first");
}

TEST_F(TakeOverTest, TheWorkingPressureGoesIntoATestThatHasNone) {
    const auto taken = need(takeOver(*bench.store, visit, pressures("20.6"), "text"));
    EXPECT_TRUE(taken.workingPressure);
    EXPECT_EQ(textOf(lastTest(), Item::WorkingPressure), "20.6");
    const auto file = need(bench.store->visitFile(visit));
    EXPECT_EQ(file.find(lastTest(), Item::WorkingPressure)->unit, UnitCode::Millibar);
}

TEST_F(TakeOverTest, AWorkingPressureThatStandsThereIsLeft) {
    write(lastTest(), Item::WorkingPressure, "19.9");
    EXPECT_FALSE(need(takeOver(*bench.store, visit, pressures("20.6"), "text")).workingPressure);
    EXPECT_EQ(textOf(lastTest(), Item::WorkingPressure), "19.9");
    EXPECT_EQ(remarks(), "text");
}

TEST_F(TakeOverTest, WhatCannotBeReadIsNoWorkingPressure) {
    EXPECT_FALSE(need(takeOver(*bench.store, visit, pressures("about twenty"), "text")).workingPressure);
    EXPECT_EQ(textOf(lastTest(), Item::WorkingPressure), "");
}

TEST_F(TakeOverTest, AnotherQuestionBringsNoPressure) {
    const Worksheet sheet(Question::GasRate, bench.clock.today("Europe/London"));
    EXPECT_FALSE(need(takeOver(*bench.store, visit, sheet, "text")).workingPressure);
}

TEST_F(TakeOverTest, AVisitThatIsGoneIsSaid) {
    const Worksheet sheet(Question::GasRate, bench.clock.today("Europe/London"));
    EXPECT_FALSE(takeOver(*bench.store, reg::VisitId{bench.store->newId()}, sheet, "text"));
}

}  // namespace
}  // namespace hearth::ui::workings

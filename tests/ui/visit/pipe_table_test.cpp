// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/pipe_table.h"

#include "tests/ui/visit/sheet_bench.h"
#include "ui/visit/volume_text.h"

#include <QLineEdit>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::need;
using testing::SheetBench;

class PipeTableTest : public ::testing::Test {
  protected:
    [[nodiscard]] PipeTable& table() const { return *m_bench.sheet().findChild<PipeTable*>(); }
    void atTube(std::size_t row) const {
        table().editorAt(row, 0)->focusTarget()->setFocus(Qt::TabFocusReason);
    }
    /// A row by the keyboard: tube, length, where it leads; "goes on from" stays.
    void typeRow(std::size_t row, const char* tube, const char* length, const char* leadsTo) const {
        atTube(row);
        for (const char* text : {tube, length, leadsTo, ""}) {
            SheetBench::line(QString::fromUtf8(text));
        }
    }
    [[nodiscard]] std::vector<reg::PipeSection> stored() const {
        return need(m_bench.firm.store->visitFile(m_bench.visit)).pipes;
    }
    SheetBench m_bench;
};

// Certification body's pocket guide Gas 2, reproducing IGEM/UP/1B Edition 3: G4 meter and 9 m of 15 mm
// copper, 0.009386 m3.
TEST_F(PipeTableTest, TheVolumeFollowsAsItIsTyped) {
    typeRow(0, "15", "9", "boiler");
    ASSERT_TRUE(m_bench.model().volume().total);
    EXPECT_NEAR(m_bench.model().volume().total->in(quantity::kCubicMetre), 0.009386, 1e-9);
    bool shown = false;
    for (const auto* label : m_bench.sheet().paper()->findChildren<QLabel*>()) {
        shown = shown || (label->isVisible() && label->text().contains(QStringLiteral("0.009386")));
    }
    EXPECT_TRUE(shown);
}

TEST_F(PipeTableTest, ARowIsASectionAndAnEmptyOneFollows) {
    typeRow(0, "28 cu", "4", "tee");
    EXPECT_EQ(table().rowCount(), 2U);
    // Enter led into the empty row.
    EXPECT_EQ(QApplication::focusWidget(), table().editorAt(1, 0)->focusTarget());
    typeRow(1, "22", "3,5", "boiler");
    const auto pipes = stored();
    ASSERT_EQ(pipes.size(), 2U);
    EXPECT_EQ(pipes[0].tubeCode, "copper_28");
    EXPECT_EQ(pipes[1].length.text, "3,5");
    EXPECT_EQ(pipes[1].leadsTo, "boiler");
    EXPECT_EQ(pipes[1].after, pipes[0].id);
}

TEST_F(PipeTableTest, ABranchIsTypedByTheNumberOfItsFeeder) {
    typeRow(0, "28", "4", "tee");
    typeRow(1, "22", "3", "boiler");
    typeRow(2, "15", "2", "hob");
    auto* after = table().editorAt(2, 4);
    EXPECT_EQ(after->text(), QStringLiteral("2"));
    after->focusTarget()->setFocus();
    SheetBench::press(Qt::Key_A, Qt::ControlModifier);
    SheetBench::line(QStringLiteral("1"));
    EXPECT_EQ(stored()[2].after, stored()[0].id);
    // What it feeds itself can't feed it: kept in the field, marked, not stored.
    auto* first = table().editorAt(0, 4);
    first->focusTarget()->setFocus();
    SheetBench::press(Qt::Key_A, Qt::ControlModifier);
    SheetBench::line(QStringLiteral("3"));
    EXPECT_EQ(first->text(), QStringLiteral("3"));
    EXPECT_TRUE(first->focusTarget()->property("problem").toBool());
    EXPECT_FALSE(stored()[0].after);
}

TEST_F(PipeTableTest, WhatIsNoTubeIsKeptAndMarked) {
    typeRow(0, "seventeen", "9", "");
    for (int start = 0; start < 2; ++start) {
        auto* tube = table().editorAt(0, 0);
        EXPECT_EQ(tube->text(), QStringLiteral("seventeen"));
        EXPECT_TRUE(tube->focusTarget()->property("problem").toBool());
        EXPECT_FALSE(m_bench.model().volume().total);
        m_bench.open();
    }
}

TEST_F(PipeTableTest, ASizeThatCouldBeSeveralIsAskedFor) {
    typeRow(0, "25", "9", "");
    auto* tube = table().editorAt(0, 0);
    EXPECT_EQ(tube->text(), QStringLiteral("25"));
    EXPECT_TRUE(tube->focusTarget()->accessibleDescription().contains(QStringLiteral("25")));
    atTube(0);
    SheetBench::press(Qt::Key_A, Qt::ControlModifier);
    SheetBench::line(QStringLiteral("25 steel"));
    EXPECT_FALSE(tube->focusTarget()->property("problem").toBool());
}

TEST_F(PipeTableTest, CtrlDeleteRemovesARowAndLeavesTheRest) {
    typeRow(0, "28", "4", "tee");
    typeRow(1, "22", "3", "boiler");
    typeRow(2, "15", "2", "hob");
    atTube(1);
    SheetBench::press(Qt::Key_Delete, Qt::ControlModifier);
    const auto pipes = stored();
    ASSERT_EQ(pipes.size(), 2U);
    EXPECT_EQ(pipes[1].leadsTo, "hob");
    EXPECT_EQ(pipes[1].after, pipes[0].id);
    EXPECT_EQ(table().rowCount(), 3U);
}

TEST_F(PipeTableTest, EnterInTheEmptyRowGoesOn) {
    atTube(0);
    SheetBench::press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), m_bench.editor(Item::TestVolumeTyped).focusTarget());
    EXPECT_TRUE(stored().empty());
}

TEST_F(PipeTableTest, UnderTestIsAskedWhereAPartIsTested) {
    typeRow(0, "28", "4", "tee");
    EXPECT_TRUE(table().editorAt(0, 5)->isHidden());
    m_bench.enter(Item::TestExtent, "part");
    EXPECT_FALSE(table().editorAt(0, 5)->isHidden());
}

TEST_F(PipeTableTest, CorrugatedTubeIsGivenItsVolumeByHand) {
    atTube(0);
    SheetBench::line(QStringLiteral("csst"));
    SheetBench::line(QStringLiteral("4"));
    // The volume by hand is asked for at once.
    EXPECT_EQ(QApplication::focusWidget(), table().editorAt(0, 2)->focusTarget());
    SheetBench::line(QStringLiteral("0.002"));
    ASSERT_TRUE(m_bench.model().volume().sections.front().volume);
    EXPECT_NEAR(m_bench.model().volume().sections.front().volume->in(quantity::kCubicMetre), 0.002, 1e-12);
    EXPECT_EQ(m_bench.model().volume().sections.front().basis, pipework::VolumeBasis::Typed);
}

TEST_F(PipeTableTest, AVolumeFromElsewhereIsUsedInsteadOfTheList) {
    typeRow(0, "15", "9", "boiler");
    m_bench.type(Item::TestVolumeTyped, QStringLiteral("0.012"));
    EXPECT_TRUE(m_bench.model().volume().typedTotal);
    EXPECT_NEAR(m_bench.model().volume().total->in(quantity::kCubicMetre), 0.012, 1e-12);
}

}  // namespace
}  // namespace hearth::ui::visit

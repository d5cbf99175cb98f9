// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/pipe_sketch.h"

#include "tests/ui/visit/piped_bench.h"
#include "ui/visit/pipe_table.h"

#include <QScrollBar>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using rulebook::FindingKind;
using testing::SheetBench;

class PipeSketchTest : public ::testing::Test {
  protected:
    void SetUp() override { testing::layPipes(m_bench); }
    [[nodiscard]] PipeSketch& sketch() const { return *m_bench.sheet().findChild<PipeSketch*>(); }
    SheetBench m_bench;
};

TEST_F(PipeSketchTest, TellsAReaderWhatItShows) {
    const QString told = sketch().accessibleDescription();
    EXPECT_TRUE(told.contains(QStringLiteral("lost at full load"))) << qPrintable(told);
    EXPECT_TRUE(told.contains(QStringLiteral("(kitchen)"))) << qPrintable(told);
    EXPECT_TRUE(sketch().accessibleName().contains(QStringLiteral("100")))
        << qPrintable(sketch().accessibleName());
}

TEST_F(PipeSketchTest, ZoomsByKeysAndGoesBack) {
    sketch().setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(sketch().hasFocus());
    SheetBench::press(Qt::Key_Plus, Qt::ShiftModifier);
    EXPECT_EQ(sketch().zoom(), 125);
    SheetBench::press(Qt::Key_Minus);
    SheetBench::press(Qt::Key_Minus);
    EXPECT_EQ(sketch().zoom(), 80);
    for (int i = 0; i < 20; ++i) {
        SheetBench::press(Qt::Key_Plus);
    }
    EXPECT_EQ(sketch().zoom(), 300);
    EXPECT_GT(sketch().horizontalScrollBar()->maximum(), 0) << "it scrolls in its own room";
    const int before = sketch().horizontalScrollBar()->value();
    SheetBench::press(Qt::Key_Right);
    EXPECT_GT(sketch().horizontalScrollBar()->value(), before);
    SheetBench::press(Qt::Key_0);
    EXPECT_EQ(sketch().zoom(), 100);
}

TEST_F(PipeSketchTest, TheWheelAloneChangesNothing) {
    const auto turn = [&](Qt::KeyboardModifiers with) {
        QWheelEvent event(QPointF(5, 5), sketch().mapToGlobal(QPointF(5, 5)), {}, {0, 120}, Qt::NoButton,
                          with, Qt::NoScrollPhase, false);
        QApplication::sendEvent(sketch().viewport(), &event);
        return event.isAccepted();
    };
    EXPECT_FALSE(turn(Qt::NoModifier)) << "it is left to the sheet";
    EXPECT_EQ(sketch().zoom(), 100);
    EXPECT_TRUE(turn(Qt::ControlModifier));
    EXPECT_EQ(sketch().zoom(), 125);
}

TEST_F(PipeSketchTest, TheDropsAreJudgedInTheMargin) {
    EXPECT_NE(m_bench.note(FindingKind::PressureDropDesign), nullptr);
    int drops = 0;
    for (const auto* note : m_bench.sheet().paper()->notes()) {
        drops += note->judged().finding.kind == FindingKind::PressureDropDesign ? 1 : 0;
    }
    EXPECT_EQ(drops, 2) << "one for each end";
}

TEST_F(PipeSketchTest, FittingsAreTypedInOneCellAndNonsenseIsKeptAndExplained) {
    auto& table = *m_bench.sheet().findChild<PipeTable*>();
    ASSERT_TRUE(table.asksForEnds());
    auto* fittings = table.editorAt(1, 6);
    ASSERT_FALSE(fittings->isHidden());
    const auto type = [&](const char* text) {
        fittings->focusTarget()->setFocus();
        SheetBench::press(Qt::Key_A, Qt::ControlModifier);
        SheetBench::line(QString::fromLatin1(text));
    };
    type("3e 1t");
    EXPECT_EQ(m_bench.file().pipes[1].fittings, "3e 1t");
    EXPECT_FALSE(fittings->focusTarget()->property("problem").toBool());
    type("three of them");
    EXPECT_EQ(m_bench.file().pipes[1].fittings, "three of them");
    EXPECT_TRUE(fittings->focusTarget()->property("problem").toBool());
    EXPECT_TRUE(fittings->focusTarget()->accessibleDescription().contains(QStringLiteral("3 elbows")))
        << qPrintable(fittings->focusTarget()->accessibleDescription());
    EXPECT_TRUE(sketch().accessibleDescription().contains(QStringLiteral("at least")));
}

TEST_F(PipeSketchTest, WhatHangsAtAnEndIsChosenFromTheAppliances) {
    auto& table = *m_bench.sheet().findChild<PipeTable*>();
    auto* end = table.editorAt(1, 7);
    EXPECT_EQ(end->text(), QString::fromStdString(m_bench.file().appliances[0].id.text()));
    Q_EMIT end->committed(QStringLiteral("capped"));
    EXPECT_TRUE(m_bench.file().pipes[1].capped);
    EXPECT_FALSE(m_bench.file().pipes[1].appliance);
    Q_EMIT end->committed(QString());
    EXPECT_FALSE(m_bench.file().pipes[1].capped);
    Q_EMIT end->committed(QString::fromStdString(m_bench.file().appliances[1].id.text()));
    EXPECT_EQ(m_bench.file().pipes[1].appliance, m_bench.file().appliances[1].id);
}

}  // namespace
}  // namespace hearth::ui::visit

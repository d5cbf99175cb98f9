// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/test_clock.h"

#include "tests/ui/visit/sheet_bench.h"
#include "ui/visit/part_state.h"
#include "ui/visit/readings_table.h"
#include "ui/visit/spine.h"

#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using namespace std::chrono_literals;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using testing::SheetBench;

class TestClockTest : public ::testing::Test {
  protected:
    TestClockTest() {
        m_bench.enter(Item::TestGauge, m_bench.firm.gauge.id.text());
        listen();
    }
    [[nodiscard]] TestClock& clock() const { return *m_bench.sheet().tightnessPart()->clock(); }
    void listen() {
        clock().setBell([this] { ++m_rings; });
    }
    void pass(std::chrono::milliseconds time) {
        m_bench.firm.clock.advance(time);
        clock().tick();
        SheetBench::settle();
    }
    static void toggle() { SheetBench::press(Qt::Key_Return, Qt::ControlModifier); }
    [[nodiscard]] QString text(Item item) const { return m_bench.model().textOf(m_bench.test(), item); }
    [[nodiscard]] bool isAt(Item item) const {
        return QApplication::focusWidget() == m_bench.editor(item).focusTarget();
    }

    SheetBench m_bench;
    int m_rings = 0;
};

// Let-by 1 min, stabilisation 1 min, test 2 min: certification body's pocket guide Gas 2, reproducing
// IGEM/UP/1B Edition 3; Edition 4 the same (GB gas register's article). Readings: common practice, no source.
TEST_F(TestClockTest, RunsTheWholeTestBySingleKeys) {
    m_bench.at(Item::LetByStart);
    SheetBench::keys(QStringLiteral("9.02"));
    toggle();
    EXPECT_EQ(clock().running(), Stage::LetBy);
    EXPECT_EQ(text(Item::LetByStart), QStringLiteral("9.02"));  // committed by the key
    EXPECT_EQ(text(Item::LetByStartedAt), QStringLiteral("09:00:00"));
    EXPECT_TRUE(isAt(Item::LetByEnd));
    pass(59s);
    EXPECT_EQ(m_rings, 0);
    EXPECT_EQ(clock().figure(), QStringLiteral("0:01"));
    pass(1s);
    EXPECT_EQ(m_rings, 1);
    pass(2s);
    SheetBench::line(QStringLiteral("9.01"));  // the first key ends the stage
    EXPECT_FALSE(clock().running());
    EXPECT_EQ(text(Item::LetByEndedAt), QStringLiteral("09:01:02"));
    EXPECT_EQ(m_bench.outcome(FindingKind::LetBy), Outcome::Pass);

    toggle();
    EXPECT_EQ(clock().running(), Stage::Raise);
    pass(20s);
    toggle();  // raised: settling begins
    EXPECT_EQ(clock().running(), Stage::Settle);
    EXPECT_TRUE(isAt(Item::SettleStart));
    SheetBench::line(QStringLiteral("20.52"));
    pass(60s);
    EXPECT_EQ(m_rings, 2);
    SheetBench::line(QStringLiteral("20.50"));

    m_bench.at(Item::TightStart);
    SheetBench::keys(QStringLiteral("20.50"));
    toggle();
    EXPECT_EQ(clock().running(), Stage::Tightness);
    EXPECT_EQ(m_bench.sheet().spine()->lines()[3].state, PartWord::Running);
    pass(120s);
    EXPECT_EQ(m_rings, 3);
    SheetBench::line(QStringLiteral("20.46"));
    EXPECT_EQ(m_bench.outcome(FindingKind::TestTime), Outcome::Pass);
    EXPECT_EQ(m_bench.sheet().tightnessPart()->readings()->changeOf(Stage::Tightness),
              QString::fromUtf8("\u2212"
                                "0.04\u00A0mbar"));
    EXPECT_EQ(clock().next(), Stage::Restore);
    toggle();
    EXPECT_TRUE(isAt(Item::PurgeDone));
}

TEST_F(TestClockTest, AFigureTypedBesideTheFieldsIsTheNextReading) {
    auto* button = clock().findChild<QPushButton*>(QStringLiteral("stageButton"));
    ASSERT_NE(button, nullptr);
    button->setFocus(Qt::TabFocusReason);
    SheetBench::line(QStringLiteral("9.02"));
    EXPECT_EQ(text(Item::LetByStart), QStringLiteral("9.02"));
    EXPECT_FALSE(clock().running());
    button->setFocus(Qt::TabFocusReason);
    SheetBench::line(QStringLiteral("9.01"));
    EXPECT_EQ(text(Item::LetByEnd), QStringLiteral("9.01"));
}

TEST_F(TestClockTest, AStageEndedTooEarlyIsKeptAsItWasAndDoesNotPass) {
    m_bench.at(Item::LetByStart);
    SheetBench::keys(QStringLiteral("9.02"));
    toggle();
    pass(30s);
    toggle();
    EXPECT_EQ(text(Item::LetByEndedAt), QStringLiteral("09:00:30"));
    SheetBench::line(QStringLiteral("9.01"));
    EXPECT_NE(m_bench.outcome(FindingKind::LetBy), Outcome::Pass);
}

TEST_F(TestClockTest, AnEndTypedBeforeTheTimeIsUpDoesNotStopTheClock) {
    m_bench.at(Item::LetByStart);
    SheetBench::keys(QStringLiteral("9.02"));
    toggle();
    pass(30s);
    SheetBench::line(QStringLiteral("9.01"));
    EXPECT_EQ(clock().running(), Stage::LetBy);
    EXPECT_TRUE(text(Item::LetByEndedAt).isEmpty());
}

TEST_F(TestClockTest, SurvivesSleepAndSaysSo) {
    m_bench.at(Item::LetByStart);
    toggle();
    pass(10min);  // the lid was shut
    EXPECT_EQ(m_rings, 1);
    EXPECT_EQ(clock().figure(), QStringLiteral("+9:00"));
    EXPECT_EQ(m_bench.firm.navigator.said.size(), 1);
}

TEST_F(TestClockTest, GoesOnAfterAnotherStartOfTheProgram) {
    m_bench.at(Item::LetByStart);
    toggle();
    pass(20s);
    m_bench.open();
    listen();
    EXPECT_EQ(clock().running(), Stage::LetBy);
    EXPECT_EQ(clock().figure(), QStringLiteral("0:40"));
    pass(40s);
    EXPECT_EQ(m_rings, 1);
}

TEST_F(TestClockTest, AStageLeftYesterdayIsNotRunning) {
    m_bench.at(Item::LetByStart);
    toggle();
    m_bench.firm.clock.advance(24h);
    m_bench.open();
    EXPECT_FALSE(clock().running());
}

TEST_F(TestClockTest, StartingAgainAsksAndKeepsBySafeAnswer) {
    m_bench.fillInReadings();
    m_bench.at(Item::LetByStart);
    Q_EMIT clock().findChild<StageStrip*>()->chosen(Stage::LetBy);
    m_bench.firm.dialogs.answers.push_back(1);
    toggle();
    EXPECT_FALSE(clock().running());
    EXPECT_EQ(text(Item::LetByEnd), QStringLiteral("9.01"));
    Q_EMIT clock().findChild<StageStrip*>()->chosen(Stage::LetBy);
    m_bench.firm.dialogs.answers.push_back(0);
    toggle();
    EXPECT_EQ(clock().running(), Stage::LetBy);
    EXPECT_TRUE(text(Item::LetByEnd).isEmpty());
}

// A rise in the let-by minute means that the valve passes: stop (certification body's pocket guide Gas 2,
// reproducing IGEM/UP/1B Edition 3: no perceptible rise).
TEST_F(TestClockTest, AfterLetByNothingIsStarted) {
    m_bench.enter(Item::LetByStart, "8.00");
    m_bench.enter(Item::LetByStartedAt, "09:00");
    m_bench.enter(Item::LetByEndedAt, "09:01");
    m_bench.enter(Item::LetByEnd, "9.50");
    ASSERT_EQ(m_bench.outcome(FindingKind::LetBy), Outcome::Fail);
    EXPECT_FALSE(clock().next());
    m_bench.at(Item::LetByStart);
    toggle();
    EXPECT_FALSE(clock().running());
}

TEST_F(TestClockTest, PropaneAsksForItsTimesAndIsEndedByHand) {
    reg::Installation installation = m_bench.file().installation;
    installation.gas = rulebook::Gas::Propane;
    testing::need(m_bench.model().save(installation));
    m_bench.enter(Item::LetByStart, "9");
    m_bench.enter(Item::LetByEnd, "9");
    m_bench.at(Item::SettleStart);
    Q_EMIT clock().findChild<StageStrip*>()->chosen(Stage::Settle);
    toggle();
    EXPECT_EQ(clock().running(), Stage::Settle);
    pass(5min);
    EXPECT_EQ(m_rings, 0);
    EXPECT_EQ(clock().figure(), QStringLiteral("5:00"));
    toggle();
    EXPECT_EQ(text(Item::SettleEndedAt), QStringLiteral("09:05:00"));
}

TEST_F(TestClockTest, NothingIsStartedOnAClosedVisit) {
    reg::Visit closed = m_bench.file().visit;
    closed.closed = true;
    testing::need(m_bench.model().save(closed));
    testing::need(m_bench.model().reload());
    clock().toggle();
    EXPECT_FALSE(clock().running());
}

}  // namespace
}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/stage_timer.h"

#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using namespace std::chrono_literals;
using reg::Item;

StagePlan minutes() {
    StagePlan plan;
    plan.needed[static_cast<std::size_t>(Stage::LetBy)] = 60s;
    plan.needed[static_cast<std::size_t>(Stage::Settle)] = 60s;
    plan.needed[static_cast<std::size_t>(Stage::Tightness)] = 120s;
    return plan;
}

class StageTimerTest : public ::testing::Test {
  protected:
    StageTimerTest() { m_timer.setPlan(minutes()); }
    FixedClock m_clock = testing::fixedClock("2026-11-25", "09:46");
    StageTimer m_timer{m_clock};
};

TEST_F(StageTimerTest, StandsUntilItIsStarted) {
    EXPECT_FALSE(m_timer.running());
    EXPECT_FALSE(m_timer.left());
    EXPECT_FALSE(m_timer.isDue());
    EXPECT_FALSE(m_timer.stop());
}

TEST_F(StageTimerTest, CountsDownAndRingsOnce) {
    m_timer.start(Stage::LetBy);
    m_clock.advance(59s);
    EXPECT_EQ(m_timer.left(), 1s);
    EXPECT_FALSE(m_timer.takeBell());
    m_clock.advance(1s);
    EXPECT_TRUE(m_timer.isDue());
    EXPECT_TRUE(m_timer.takeBell());
    EXPECT_FALSE(m_timer.takeBell());
}

TEST_F(StageTimerTest, GoesOnPastItsTimeUntilItIsStopped) {
    m_timer.start(Stage::Tightness);
    m_clock.advance(127s);
    EXPECT_EQ(m_timer.left(), -7s);
    const auto run = m_timer.stop();
    ASSERT_TRUE(run);
    EXPECT_EQ(run->endedAt - run->startedAt, 127s);
    EXPECT_FALSE(m_timer.running());
}

TEST_F(StageTimerTest, SurvivesSleep) {
    m_timer.start(Stage::Tightness);
    // The lid was shut for an hour: one jump of both clocks.
    m_clock.advance(1h);
    EXPECT_TRUE(m_timer.isDue());
    EXPECT_TRUE(m_timer.takeBell());
    EXPECT_EQ(m_timer.passed(), 1h);
}

TEST_F(StageTimerTest, AWallClockThatIsSetInBetweenChangesNoStage) {
    m_timer.start(Stage::LetBy);
    m_clock.advance(30s);
    m_clock.set(m_clock.now() + 1h);  // only the wall clock
    EXPECT_EQ(m_timer.passed(), 30s);
    m_clock.advance(30s);
    const auto run = m_timer.stop();
    ASSERT_TRUE(run);
    EXPECT_EQ(run->endedAt - run->startedAt, 60s);
}

TEST_F(StageTimerTest, TakesUpWhatAnotherRunOfTheProgramStarted) {
    const Instant start = m_clock.now();
    m_clock.advance(45s);
    m_timer.resume(Stage::LetBy, start);
    EXPECT_EQ(m_timer.left(), 15s);
    m_clock.advance(15s);
    EXPECT_TRUE(m_timer.takeBell());
}

TEST_F(StageTimerTest, AStageWithoutATimeCountsUpAndNeverRings) {
    m_timer.start(Stage::Raise);
    m_clock.advance(10min);
    EXPECT_FALSE(m_timer.left());
    EXPECT_FALSE(m_timer.takeBell());
    EXPECT_EQ(m_timer.passed(), 10min);
}

TEST_F(StageTimerTest, TimesOfDayKeepTheirSeconds) {
    m_clock.advance(10s);
    EXPECT_EQ(timeOfDay(m_clock.now()), "09:46:10");
    EXPECT_EQ(timeOfDay(testing::fixedClock("2026-07-01", "00:05").now()),
              "00:05:00");  // British Summer Time
}

struct StageItemsCase {
    Stage stage;
    Item start, end;
};

TEST(StageItems, EveryTimedStageHasItsReadings) {
    for (const auto& one : {StageItemsCase{Stage::LetBy, Item::LetByStart, Item::LetByEnd},
                            StageItemsCase{Stage::Settle, Item::SettleStart, Item::SettleEnd},
                            StageItemsCase{Stage::Tightness, Item::TightStart, Item::TightEnd},
                            StageItemsCase{Stage::Retest, Item::RetestStart, Item::RetestEnd}}) {
        ASSERT_TRUE(itemsOf(one.stage));
        EXPECT_EQ(itemsOf(one.stage)->start, one.start);
        EXPECT_EQ(itemsOf(one.stage)->end, one.end);
    }
    EXPECT_FALSE(itemsOf(Stage::Raise));
    EXPECT_FALSE(itemsOf(Stage::Restore));
}

reg::VisitFile fileOn(calendar::Date date, rulebook::Gas gas) {
    reg::VisitFile file;
    file.visit.date = date;
    file.installation.gas = gas;
    file.tests.push_back({reg::TestId{makeUuid7(1)}, {}, 0, {}});
    return file;
}

// Let-by 1 min, stabilisation 1 min, test 2 min: GB gas register's article on IGEM/UP/1B Edition 4 (let-by)
// and the certification body's pocket guide Gas 2, reproducing IGEM/UP/1B Edition 3 (all three).
TEST(StagePlan, NaturalGasTakesItsTimesFromTheRuleBook) {
    const auto book = rulebook::RuleBook::shipped();
    for (const auto date :
         {calendar::Date{std::chrono::year(2026), std::chrono::month(9), std::chrono::day(30)},
          calendar::Date{std::chrono::year(2026), std::chrono::month(10), std::chrono::day(1)}}) {
        const auto file = fileOn(date, rulebook::Gas::NaturalGas);
        const StagePlan plan = stagePlan(file, file.tests.front(), book);
        EXPECT_EQ(plan.of(Stage::LetBy), 60s) << calendar::isoText(date);
        EXPECT_EQ(plan.of(Stage::Settle), 60s) << calendar::isoText(date);
        EXPECT_EQ(plan.of(Stage::Tightness), 120s) << calendar::isoText(date);
        EXPECT_EQ(plan.of(Stage::Retest), 120s) << calendar::isoText(date);
        EXPECT_FALSE(plan.of(Stage::Raise));
    }
}

// Propane's stabilisation and test times are of low confidence, so they ship empty and the stage is ended by
// hand.
TEST(StagePlan, PropaneHasNoTimesUntilTheFirmEntersThem) {
    const auto file = fileOn({std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)},
                             rulebook::Gas::Propane);
    const StagePlan plan = stagePlan(file, file.tests.front(), rulebook::RuleBook::shipped());
    EXPECT_FALSE(plan.of(Stage::Settle));
    EXPECT_FALSE(plan.of(Stage::Tightness));
}

}  // namespace
}  // namespace hearth::ui::visit

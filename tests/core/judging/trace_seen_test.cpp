// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/trace_seen.h"

#include "tests/core/judging/scenario.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::kSecond;
using reg::Item;
using reg::TraceEvent;
using tightness::TraceSays;

/// Open to the air for four seconds, at 8.5 mbar from 6 s to 76 s, raised by 80 s, and there till 270 s,
/// falling by `fall` in each minute; ten readings a second, to a hundredth.
tightness::Trace walked(double fall = 0.0, double zero = 0.0) {
    tightness::Trace trace;
    for (int i = 0; i <= 2700; ++i) {
        const double t = i * 0.1;
        double value = zero;
        if (t >= 80.0) {
            value = 20.6 * std::exp(-fall / 20.6 * (t - 80.0) / 60.0);
        } else if (t >= 76.0) {
            value = 8.5 + (t - 76.0) * 3.0;
        } else if (t >= 4.0) {
            value = t < 6.0 ? (t - 4.0) * 4.25 : 8.5;
        }
        trace.push_back({Duration(t, kSecond), GaugePressure(std::round(value * 100) / 100, kMillibar)});
    }
    return trace;
}

TraceGiven given(tightness::Trace trace, reg::TraceMarks marks = {}) {
    TraceGiven all;
    all.source.name = "logger.csv";
    all.marks = std::move(marks);
    all.trace = std::move(trace);
    return all;
}

class TraceOfAVisit : public ::testing::Test {
  protected:
    [[nodiscard]] Instant at(const char* time) const {
        Instant instant{};
        EXPECT_TRUE(instantAt(file.visit.date, time, instant));
        return instant;
    }
    [[nodiscard]] reg::TestId test() const { return file.tests.front().id; }
    [[nodiscard]] TraceSeen guessed(const tightness::Trace& trace) const {
        return seenTrace(file, book, test(), given(trace, guessedMarks(file, book, test(), trace)));
    }
    reg::VisitFile file = scenario::commonPractice("2026-11-25", "ed_4");
    rulebook::RuleBook book = scenario::confirmedBook();
};

TEST_F(TraceOfAVisit, hasItsStagesMarkedWhereTheySeemToBe) {
    const auto marks = guessedMarks(file, book, test(), walked());
    ASSERT_TRUE(reg::whenOf(marks, TraceEvent::LetBy) && reg::whenOf(marks, TraceEvent::Settling) &&
                reg::whenOf(marks, TraceEvent::Timing) && reg::whenOf(marks, TraceEvent::TestEnd));
    EXPECT_NEAR(*reg::whenOf(marks, TraceEvent::Settling), 80000, 1500);
    EXPECT_EQ(*reg::whenOf(marks, TraceEvent::Timing) - *reg::whenOf(marks, TraceEvent::Settling), 60000);
    EXPECT_EQ(*reg::whenOf(marks, TraceEvent::TestEnd) - *reg::whenOf(marks, TraceEvent::Timing), 120000);
}

TEST_F(TraceOfAVisit, tellsWhatItMeansByTheVolumeThatWasTested) {
    const auto still = guessed(walked());
    EXPECT_EQ(still.told.says, TraceSays::Still);
    ASSERT_TRUE(still.asked.volume);
    // 8 l of the meter and the pipes of the case: a fall of 0.6 mbar a minute is a leak of
    // Q = V dp / 1013.25 * 60 (facts: isothermal leak) = about 10 * 0.6 / 1013 * 60 = 0.36 l/h.
    const auto leak = guessed(walked(0.6));
    EXPECT_EQ(leak.told.says, TraceSays::Leak);
    const double expected = leak.asked.volume->in(quantity::kLitre)*0.6 / 1013.25 * 60.0;
    EXPECT_NEAR(leak.told.test->leak.best.in(quantity::kLitrePerHour), expected, 0.05);
    ASSERT_TRUE(leak.asked.threshold);
    EXPECT_NEAR(leak.asked.threshold->in(kMillibar), 0.2, 1e-12);
}

TEST_F(TraceOfAVisit, saysNothingOfALeakWithoutAVolume) {
    file.installation.meterCode.clear();
    file.pipes.clear();
    const auto seen = guessed(walked(0.6));
    EXPECT_FALSE(seen.asked.volume);
    EXPECT_EQ(seen.told.says, TraceSays::NothingToGoBy);
    EXPECT_FALSE(proposalsOf(seen).empty());
}

TEST_F(TraceOfAVisit, knowsWhetherTheGaugeStoodAtZeroBeforeItWasConnected) {
    ASSERT_TRUE(guessed(walked()).zero);
    EXPECT_TRUE(guessed(walked()).zero->isZero);
    const auto off = guessed(walked(0.3, 0.05)).zero;
    ASSERT_TRUE(off);
    EXPECT_FALSE(off->isZero);
    EXPECT_NEAR(off->reads.in(kMillibar), 0.05, 1e-9);
    // One that was connected from its beginning says nothing of it.
    EXPECT_FALSE(
        guessed(tightness::stretchOf(walked(), {Duration(10.0, kSecond), Duration(270.0, kSecond)})).zero);
}

TEST_F(TraceOfAVisit, proposesReadingsAtTheStagesEnds) {
    auto with =
        given(walked(0.6),
              {{TraceEvent::LetBy, 12000}, {TraceEvent::Settling, 82000}, {TraceEvent::Timing, 142000}});
    with.source.beganAt = at("09:00:00");
    const auto seen = seenTrace(file, book, test(), with);
    const auto proposals = proposalsOf(seen);
    ASSERT_EQ(proposals.size(), 6U);
    const std::vector<std::pair<Item, std::string>> expected{
        {Item::LetByStart, "8.50"}, {Item::LetByEnd, "8.50"},    {Item::SettleStart, "20.58"},
        {Item::SettleEnd, "19.99"}, {Item::TightStart, "19.99"}, {Item::TightEnd, "18.86"}};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(proposals[i].item, expected[i].first) << i;
        EXPECT_EQ(proposals[i].reading, (quantity::Typed{expected[i].second, quantity::UnitCode::Millibar}));
    }
    EXPECT_EQ(proposals[4].timeItem, Item::TightStartedAt);
    ASSERT_TRUE(proposals[4].at);
    EXPECT_EQ(instantText(*proposals[4].at), instantText(at("09:02:22")));
}

TEST_F(TraceOfAVisit, proposesInTheUnitAndToTheStepOfTheGauge) {
    auto with = given(walked(), {{TraceEvent::Timing, 142000}});
    with.source.resolution = {"0.001", quantity::UnitCode::Kilopascal};
    const auto proposals = proposalsOf(seenTrace(file, book, test(), with));
    ASSERT_EQ(proposals.size(), 2U);
    EXPECT_EQ(proposals[0].reading, (quantity::Typed{"2.060", quantity::UnitCode::Kilopascal}));
    EXPECT_FALSE(proposals[0].at);
}

TEST_F(TraceOfAVisit, proposesNothingThatWasNotSeen) {
    auto with = given(walked(), guessedMarks(file, book, test(), walked()));
    with.source.isSimulated = true;
    EXPECT_TRUE(proposalsOf(seenTrace(file, book, test(), with)).empty());

    auto stuck = walked();
    for (auto& point : stuck) {
        point.pressure = GaugePressure(8.5, kMillibar);
    }
    const auto seen = seenTrace(
        file, book, test(),
        given(stuck,
              {{TraceEvent::LetBy, 10000}, {TraceEvent::Settling, 80000}, {TraceEvent::Timing, 140000}}));
    EXPECT_EQ(seen.told.says, TraceSays::StuckGauge);
    EXPECT_TRUE(proposalsOf(seen).empty());

    auto silent = walked();
    std::erase_if(silent, [](const tightness::TracePoint& point) {
        return point.at > Duration(130.0, kSecond) && point.at < Duration(150.0, kSecond);
    });
    const auto proposals =
        proposalsOf(seenTrace(file, book, test(), given(silent, {{TraceEvent::Timing, 142000}})));
    ASSERT_EQ(proposals.size(), 1U);
    EXPECT_EQ(proposals[0].item, Item::TightEnd);
}

TEST_F(TraceOfAVisit, hasNoStageThatIsNotMarkedAndNoneBeyondItsEnd) {
    EXPECT_FALSE(seenTrace(file, book, test(), given(walked())).stages.timing);
    const auto late = seenTrace(file, book, test(), given(walked(), {{TraceEvent::Timing, 200000}}));
    ASSERT_TRUE(late.stages.timing);
    EXPECT_NEAR(late.stages.timing->to.in(kSecond), 270.0, 1e-9);
    EXPECT_FALSE(
        seenTrace(file, book, test(), given(walked(), {{TraceEvent::Timing, 280000}})).stages.timing);
    EXPECT_FALSE(seenTrace(file, book, test(), given({}, {{TraceEvent::Timing, 0}})).stages.timing);
    const auto cut = seenTrace(file, book, test(),
                               given(walked(), {{TraceEvent::LetBy, 40000}, {TraceEvent::Settling, 75000}}));
    EXPECT_NEAR(cut.stages.letBy->to.in(kSecond), 75.0, 1e-9);
}

}  // namespace
}  // namespace hearth::judging

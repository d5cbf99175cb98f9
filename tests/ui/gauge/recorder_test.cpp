// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/recorder.h"

#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

using namespace std::chrono_literals;
using quantity::Decimal;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::UnitCode;

GaugeReading readingOf(const char* value, UnitCode unit, std::chrono::milliseconds at) {
    GaugeReading reading;
    reading.line.value = *Decimal::parse(value);
    reading.line.unit = unit;
    reading.at = at;
    return reading;
}

class RecorderTest : public ::testing::Test {
  protected:
    void addAfter(std::chrono::milliseconds step, const char* value, UnitCode unit = UnitCode::Millibar) {
        m_clock.advance(step);
        m_recorder.add(readingOf(value, unit, m_clock.elapsed()));
    }
    FixedClock m_clock = testing::fixedClock("2026-11-25", "09:46");
    Recorder m_recorder{m_clock};
};

TEST_F(RecorderTest, MakesATraceInOneUnitWhateverTheGaugeIsSetTo) {
    m_recorder.begin({"gauge"});
    addAfter(100ms, "20.51");
    addAfter(100ms, "2.050", UnitCode::Kilopascal);
    addAfter(100ms, "5", UnitCode::Ppm);  // no pressure
    const auto& trace = m_recorder.taken().trace;
    ASSERT_EQ(trace.size(), 2U);
    EXPECT_NEAR(trace[0].at.in(kSecond), 0.1, 1e-9);
    EXPECT_NEAR(trace[0].pressure.in(kMillibar), 20.51, 1e-9);
    EXPECT_NEAR(trace[1].pressure.in(kMillibar), 20.50, 1e-9);
}

TEST_F(RecorderTest, ASetWallClockChangesNothing) {
    m_recorder.begin({"gauge"});
    addAfter(100ms, "20.51");
    m_clock.set(m_clock.now() + 1h);
    addAfter(100ms, "20.50");
    m_clock.set(m_clock.now() - 48h);
    addAfter(100ms, "20.49");
    const auto& trace = m_recorder.taken().trace;
    ASSERT_EQ(trace.size(), 3U);
    EXPECT_NEAR(trace[2].at.in(kSecond), 0.3, 1e-9);
    EXPECT_TRUE(m_recorder.taken().gaps.empty());
}

TEST_F(RecorderTest, KeepsAGapAsAGap) {
    m_recorder.begin({"gauge"});
    addAfter(1s, "20.51");
    m_clock.advance(1s);
    m_recorder.lose();
    m_clock.advance(2s);
    m_recorder.lose();  // again while it is lost
    addAfter(2s, "20.40");
    ASSERT_EQ(m_recorder.taken().gaps.size(), 1U);
    EXPECT_NEAR(m_recorder.taken().gaps[0].from.in(kSecond), 2.0, 1e-9);
    EXPECT_NEAR(m_recorder.taken().gaps[0].to.in(kSecond), 6.0, 1e-9);
    EXPECT_EQ(m_recorder.taken().trace.size(), 2U) << "nothing is made up in between";
}

TEST_F(RecorderTest, KeepsWhatASlowGaugeSendsInBursts) {
    m_recorder.begin({"gauge"});
    for (int burst = 0; burst < 60; ++burst) {  // ten a second, handed over every other second
        m_clock.advance(2s);
        for (int i = 0; i < 20; ++i) {
            m_recorder.add(readingOf("20.51", UnitCode::Millibar, m_clock.elapsed()));
        }
    }
    EXPECT_EQ(m_recorder.taken().trace.size(), 1200U);
    EXPECT_EQ(m_recorder.thinned(), 0U);
}

TEST_F(RecorderTest, ThinsAFloodEvenlyAndCountsIt) {
    m_recorder.begin({"gauge"});
    for (int i = 0; i < 60 * 10000; ++i) {  // a minute of 10,000 a second, ten each millisecond
        if (i % 10 == 0) {
            m_clock.advance(1ms);
        }
        m_recorder.add(readingOf("20.51", UnitCode::Millibar, m_clock.elapsed()));
    }
    const auto kept = m_recorder.taken().trace.size();
    EXPECT_GE(kept, 60U * Recorder::kMostASecond);
    EXPECT_LE(kept, 60U * Recorder::kMostASecond + Recorder::kBurst);
    EXPECT_EQ(kept + m_recorder.thinned(), 600000U);
    EXPECT_LE(tightness::gapsOf(m_recorder.taken().trace).size(), 0U);
}

TEST_F(RecorderTest, StopsWhenItIsFullAndSaysSo) {
    m_recorder.begin({"gauge"});
    for (std::size_t i = 0; i < Recorder::kMostPoints + 5; ++i) {
        EXPECT_EQ(m_recorder.isFull(), i >= Recorder::kMostPoints);
        addAfter(50ms, "20.51");
    }
    EXPECT_EQ(m_recorder.taken().trace.size(), Recorder::kMostPoints);
    EXPECT_EQ(m_recorder.tooMany(), 5U);
}

// A second gauge's times are the first's, and the same bounds hold for it, by itself.
TEST_F(RecorderTest, OfASecondGaugeHasTheTimesOfTheFirstAndItsOwnBounds) {
    Recorder second(m_clock);
    m_recorder.begin({"first"});
    addAfter(2s, "20.51");
    second.beginBeside(m_recorder, {"second"});
    for (int i = 0; i < 10000; ++i) {
        m_clock.advance(1ms);
        second.add(readingOf("20.49", UnitCode::Millibar, m_clock.elapsed()));
    }
    const auto& trace = second.taken().trace;
    EXPECT_NEAR(trace.front().at.in(kSecond), 2.001, 1e-9);
    EXPECT_NEAR(trace.back().at.in(kSecond), 12.0, 0.1);
    EXPECT_LE(trace.size(), 10U * Recorder::kMostASecond + Recorder::kBurst);
    EXPECT_EQ(trace.size() + second.thinned(), 10000U);
    EXPECT_EQ(m_recorder.taken().trace.size(), 1U);
    second.beginBeside(m_recorder, {"second"});
    for (std::size_t i = 0; i < Recorder::kMostPoints + 5; ++i) {
        m_clock.advance(50ms);
        second.add(readingOf("20.49", UnitCode::Millibar, m_clock.elapsed()));
    }
    EXPECT_EQ(second.taken().trace.size(), Recorder::kMostPoints);
    EXPECT_EQ(second.tooMany(), 5U);
    second.forget();
    EXPECT_TRUE(second.taken().isEmpty());
}

TEST_F(RecorderTest, TakesNothingBeforeItBeginsOrAfterItEnds) {
    addAfter(1s, "20.51");
    m_recorder.mark(GaugeEvent::LetBy);
    m_recorder.begin({"gauge"});
    m_recorder.add(readingOf("20.51", UnitCode::Millibar, m_clock.elapsed() - 1s));  // still under way
    addAfter(1s, "20.50");
    m_recorder.mark(GaugeEvent::ValveShut);
    m_recorder.end();
    addAfter(1s, "20.49");
    m_recorder.mark(GaugeEvent::DoorOpened);
    EXPECT_EQ(m_recorder.taken().trace.size(), 1U);
    EXPECT_EQ(m_recorder.taken().marks, (std::vector<GaugeMark>{{GaugeEvent::ValveShut, 1s}}));
    m_recorder.begin({"other"});
    EXPECT_TRUE(m_recorder.taken().trace.empty());
    EXPECT_TRUE(m_recorder.taken().marks.empty());
    EXPECT_EQ(m_recorder.taken().origin.name, "other");
}

TEST_F(RecorderTest, TakesTheSecondChannelForWhatItsUnitSays) {
    m_recorder.begin({"gauge"});
    m_clock.advance(1s);
    auto reading = readingOf("20.51", UnitCode::Millibar, m_clock.elapsed());
    reading.line.second = *Decimal::parse("18.4");
    reading.line.secondUnit = UnitCode::Celsius;
    m_recorder.add(reading);
    reading.line.second = *Decimal::parse("1013.2");
    reading.line.secondUnit = UnitCode::Millibar;
    m_recorder.add(reading);
    const auto& trace = m_recorder.taken().trace;
    ASSERT_EQ(trace.size(), 2U);
    EXPECT_NEAR(trace[0].temperature.value().in(quantity::kCelsius), 18.4, 1e-9);
    EXPECT_FALSE(trace[0].barometer);
    EXPECT_NEAR(trace[1].barometer.value().in(kMillibar), 1013.2, 1e-9);
}

}  // namespace
}  // namespace hearth::ui::gauge

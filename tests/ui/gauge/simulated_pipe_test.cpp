// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/simulated_pipe.h"

#include "core/tightness/trace_meaning.h"
#include "tests/support/fixed_clock.h"
#include "tests/ui/gauge/source_bench.h"
#include "ui/gauge/recorder.h"
#include "ui/gauge/simulated_source.h"

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

TEST(SimulatedPipe, GoesThroughTheStagesOfATest) {
    for (const auto pipe : {PracticePipe::TightCooling, PracticePipe::LeakUnderWarming, PracticePipe::LetBy,
                            PracticePipe::StuckGauge}) {
        EXPECT_DOUBLE_EQ(practicePressure(pipe, 0.0), 0.0);
        EXPECT_DOUBLE_EQ(practicePressure(pipe, kPracticeLetBy), 10.0);
        EXPECT_EQ(practicePressure(pipe, 60.0) > 10.0, pipe == PracticePipe::LetBy);
        EXPECT_EQ(practicePressure(pipe, kPracticeTest) < 20.0, pipe == PracticePipe::StuckGauge);
    }
}

/// By hand, from the ideal gas law. 0.3 K of 288.15 K are 1.0549 mbar of 1013.25, and a time constant leaves
/// 1/e of them. 0.6 l/h out of 12 l are 1013.25 * 0.6 / 12 / 3600 = 0.014073 mbar in the first second.
TEST(SimulatedPipe, FollowsTheGasLaw) {
    EXPECT_NEAR(practicePressure(PracticePipe::TightCooling, kPracticeTest), 20.5 + 1.0549, 1e-4);
    EXPECT_NEAR(practicePressure(PracticePipe::TightCooling, kPracticeTest + 40.0), 20.5 + 1.0549 / 2.718282,
                1e-4);
    // 0.5 K at 60 s: 1.75816 (1 - exp(-1 / 60)) = 0.029060 mbar up in the first second.
    EXPECT_NEAR(practicePressure(PracticePipe::LeakUnderWarming, kPracticeTest + 1.0),
                20.5 - 0.014068 + 0.029060, 1e-4);
}

TEST(SimulatedPipe, IsReadToAHundredthWithinAStep) {
    for (std::uint32_t i = 0; i < 3000; ++i) {
        const double at = i * 0.1;
        const double read = practiceReading(PracticePipe::TightCooling, at, i);
        EXPECT_NEAR(read, practicePressure(PracticePipe::TightCooling, at), 0.0101);
        EXPECT_NEAR(read * 100.0, std::round(read * 100.0), 1e-6);
    }
}

/// What a gauge shows from `from` to `to`, ten times a second.
tightness::Trace practiceTrace(PracticePipe pipe, double from, double to) {
    tightness::Trace trace;
    for (std::uint32_t i = 0; from + i * 0.1 <= to; ++i) {
        const double at = from + i * 0.1;
        trace.push_back({quantity::Duration(at, quantity::kSecond),
                         quantity::GaugePressure(practiceReading(pipe, at, i), quantity::kMillibar)});
    }
    return trace;
}

tightness::TraceMeaning meaningOf(PracticePipe pipe, double from, double to, double at) {
    const auto fit = tightness::fitTrace(
        practiceTrace(pipe, from, to),
        {quantity::Volume(12.0, quantity::kLitre), quantity::GaugePressure(at, quantity::kMillibar),
         quantity::PressureChange(0.01, quantity::kMillibar),
         quantity::PressureChange(0.0, quantity::kMillibar), quantity::Share{}});
    return fit ? tightness::meaningOf(*fit) : tightness::TraceMeaning::CantTell;
}

/// What each of them is made to be is what the fit, which knows nothing of how they are made, finds.
TEST(SimulatedPipe, EachIsToldApart) {
    using tightness::TraceMeaning;
    const double test = kPracticeTest + 1.0;
    const double end = kPracticeTest + 240.0;
    EXPECT_EQ(meaningOf(PracticePipe::TightCooling, test, end, 20.5), TraceMeaning::Cooling);
    EXPECT_EQ(meaningOf(PracticePipe::LeakUnderWarming, test, end, 20.5), TraceMeaning::Leak);
    // Let-by is seen by the rise that the standard asks for: a minute is too short for a fit of 12 l.
    const auto rise = [](PracticePipe pipe) {
        const auto trace = practiceTrace(pipe, kPracticeLetBy, kPracticeLetBy + 60.0);
        return (trace.back().pressure - trace.front().pressure).in(quantity::kMillibar);
    };
    EXPECT_NEAR(rise(PracticePipe::LetBy), 1.2, 0.021);
    EXPECT_NEAR(rise(PracticePipe::TightCooling), 0.0, 0.021);
    EXPECT_TRUE(tightness::isStuck(practiceTrace(PracticePipe::StuckGauge, kPracticeLetBy, 80.0),
                                   practiceTrace(PracticePipe::StuckGauge, test, end)));
    EXPECT_FALSE(tightness::isStuck(practiceTrace(PracticePipe::TightCooling, kPracticeLetBy, 80.0),
                                    practiceTrace(PracticePipe::TightCooling, test, end)));
}

TEST(SimulatedSource, SendsWhatAGaugeWouldAndIsMarked) {
    const SystemClock clock;
    SimulatedSource source(PracticePipe::TightCooling, clock);
    testing::Heard heard(source);
    source.start();
    EXPECT_TRUE(source.isSimulated());
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() >= 5; }, 20000));
    EXPECT_EQ(heard.values.front(), "0.00");
    EXPECT_EQ(source.refusals(), 0U);
    source.stop();
    const auto before = heard.values.size();
    QTest::qWait(250);
    EXPECT_EQ(heard.values.size(), before);
}

}  // namespace
}  // namespace hearth::ui::gauge

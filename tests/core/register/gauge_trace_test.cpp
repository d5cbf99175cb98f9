// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/gauge_trace.h"

#include <gtest/gtest.h>

namespace hearth::reg {
namespace {

TEST(TraceMarks, areReadBackAsTheyWere) {
    const TraceMarks marks{{TraceEvent::LetBy, 0},
                           {TraceEvent::ValveShut, 1},
                           {TraceEvent::Settling, 90'500},
                           {TraceEvent::Timing, 150'000},
                           {TraceEvent::TestEnd, 270'000}};
    EXPECT_EQ(marksText(marks), "let_by@0 valve_shut@0.001 settling@90.5 timing@150 test_end@270");
    EXPECT_EQ(marksFromText(marksText(marks)), marks);
    EXPECT_EQ(marksFromText(""), TraceMarks{});
}

TEST(TraceMarks, standInTheOrderOfTime) {
    EXPECT_EQ(marksText({{TraceEvent::DoorOpened, 9000}, {TraceEvent::LetBy, 1000}}),
              "let_by@1 door_opened@9");
    EXPECT_EQ(marksFromText("door_opened@9 let_by@1"), marksFromText("let_by@1 door_opened@9"));
}

TEST(TraceMarks, refuseWhatIsNone) {
    for (const char* text : {" ", "let_by", "let_by@", "let_by@a", "let_by@-1", "let_by@1 ", " let_by@1",
                             "let_by@1  timing@2", "nobody@1", "let_by@0.0001", "let_by@86401", "@1"}) {
        EXPECT_FALSE(marksFromText(text).has_value()) << text;
    }
    EXPECT_TRUE(marksFromText("let_by@86400").has_value());
    EXPECT_TRUE(marksFromText(marksText(TraceMarks(kMostTraceMarks, {TraceEvent::ValveShut, 7}))));
    EXPECT_FALSE(marksFromText(marksText(TraceMarks(kMostTraceMarks + 1, {TraceEvent::ValveShut, 7}))));
}

// A stage begins once; a door may be opened twice.
TEST(TraceMarks, moveAStageAndAddAnEvent) {
    TraceMarks marks;
    marks = withMark(marks, {TraceEvent::Timing, 5000});
    marks = withMark(marks, {TraceEvent::DoorOpened, 6000});
    marks = withMark(marks, {TraceEvent::DoorOpened, 2000});
    marks = withMark(marks, {TraceEvent::Timing, 4000});
    EXPECT_EQ(marksText(marks), "door_opened@2 timing@4 door_opened@6");
    EXPECT_EQ(whenOf(marks, TraceEvent::Timing), 4000);
    EXPECT_EQ(whenOf(marks, TraceEvent::DoorOpened), 6000);
    EXPECT_FALSE(whenOf(marks, TraceEvent::LetBy).has_value());
}

TEST(GaugeTrace, hasCodesThatAreReadBack) {
    for (const auto origin :
         {TraceOrigin::File, TraceOrigin::Serial, TraceOrigin::Network, TraceOrigin::Simulator}) {
        EXPECT_EQ(traceOriginFromCode(codeOf(origin)), origin);
    }
    for (const auto event : {TraceEvent::LetBy, TraceEvent::Settling, TraceEvent::Timing, TraceEvent::TestEnd,
                             TraceEvent::ValveShut, TraceEvent::PumpRemoved, TraceEvent::DoorOpened}) {
        EXPECT_EQ(traceEventFromCode(codeOf(event)), event);
    }
    EXPECT_FALSE(traceOriginFromCode("dream").has_value());
    EXPECT_FALSE(traceEventFromCode("").has_value());
}

}  // namespace
}  // namespace hearth::reg

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/trace_text.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using quantity::kCelsius;
using quantity::kMillibar;
using quantity::kSecond;

tightness::TracePoint point(double seconds, double millibar) {
    return {quantity::Duration(seconds, kSecond), quantity::GaugePressure(millibar, kMillibar)};
}

TEST(TraceText, isALineForEachPoint) {
    auto full = point(0.1, 20.635);
    full.barometer = quantity::AbsolutePressure(1013.25, kMillibar);
    full.temperature = quantity::Temperature(-2.5, kCelsius);
    EXPECT_EQ(traceText({point(0, 20), full, point(120.05, -0.01)}),
              "0,20,,\n0.1,20.635,1013.25,-2.5\n120.05,-0.01,,\n");
    EXPECT_EQ(traceText({}), "");
}

// What a display shows in any of the units comes back to a hundred-thousandth of a millibar.
TEST(TraceText, isReadBack) {
    tightness::Trace trace;
    for (int i = 0; i < 3000; ++i) {
        auto one = point(i * 0.1, 20.71 - i * 0.01 / 7.0);
        if (i % 3 == 0) {
            one.temperature = quantity::Temperature(18.0 + i * 1e-4, kCelsius);
        }
        trace.push_back(one);
    }
    const auto back = traceFromText(traceText(trace));
    ASSERT_TRUE(back.has_value());
    ASSERT_EQ(back->size(), trace.size());
    for (std::size_t i = 0; i < trace.size(); ++i) {
        EXPECT_NEAR((*back)[i].at.in(kSecond), trace[i].at.in(kSecond), 1e-9);
        EXPECT_NEAR((*back)[i].pressure.in(kMillibar), trace[i].pressure.in(kMillibar), 0.5001e-5);
        EXPECT_EQ((*back)[i].temperature.has_value(), trace[i].temperature.has_value());
        EXPECT_FALSE((*back)[i].barometer.has_value());
    }
    EXPECT_EQ(traceText(*back), traceText(trace));
}

TEST(TraceText, refusesWhatIsNone) {
    for (const char* text : {"0,20,,", "\n", "0,20\n", "0,20,\n", "0,20,,,\n", ",20,,\n", "0,,,\n",
                             "a,20,,\n", "0,20,x,\n", "1,20,,\n0,20,,\n"}) {
        EXPECT_FALSE(traceFromText(text).has_value()) << text;
    }
    EXPECT_TRUE(traceFromText("1,20,,\n1,20,,\n").has_value());
    EXPECT_TRUE(traceFromText("")->empty());
}

TEST(RoomTraceText, isALineForEachReadingWithItsPlace) {
    using air::CoPlace;
    const std::vector<air::CoReading> readings{
        {quantity::Duration(0, kSecond), quantity::Share(0, quantity::kPpm), CoPlace::Outside},
        {quantity::Duration(1.5, kSecond), quantity::Share(12.25, quantity::kPpm), CoPlace::Room},
        {quantity::Duration(3, kSecond), quantity::Share(9, quantity::kPpm), CoPlace::AtAppliance},
        {quantity::Duration(3, kSecond), quantity::Share(1, quantity::kPpm), CoPlace::NextRoom}};
    const std::string text = "0,0,outdoors\n1.5,12.25,room\n3,9,appliance\n3,1,elsewhere\n";
    EXPECT_EQ(roomTraceText(readings), text);
    const auto back = roomTraceFromText(text);
    ASSERT_TRUE(back);
    EXPECT_EQ(roomTraceText(*back), text);
    for (const auto place : {CoPlace::Outside, CoPlace::Room, CoPlace::AtAppliance, CoPlace::NextRoom}) {
        EXPECT_EQ(coPlaceFromCode(codeOf(place)), place);
    }
    EXPECT_EQ(coPlaceFromCode("attic"), std::nullopt);
}

TEST(RoomTraceText, isNothingWhereItIsSpoilt) {
    for (const char* text : {"0,1,attic\n", "0,1\n", "0,,room\n", ",1,room\n", "0,x,room\n", "0,1,room",
                             "5,1,room\n4,1,room\n", "0,1,room,2\n"}) {
        EXPECT_FALSE(roomTraceFromText(text)) << text;
    }
    EXPECT_TRUE(roomTraceFromText("")->empty());
}

}  // namespace
}  // namespace hearth::record

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/trace_file.h"

#include <gtest/gtest.h>
#include <string>

namespace hearth::exchange {
namespace {

using quantity::kMillibar;
using quantity::kSecond;
using quantity::UnitCode;

/// "0 20.50, 60 20.40": what was read, in seconds and millibar.
std::string readIn(std::string_view bytes, const TraceForm& form = {}) {
    const auto file = readTrace(bytes, form);
    if (!file) {
        return "refused " + std::to_string(static_cast<int>(file.error().fault)) + " at " +
               std::to_string(file.error().line);
    }
    std::string text;
    for (const auto& point : file->trace) {
        char one[64];
        std::snprintf(one, sizeof one, "%g %.2f", point.at.in(kSecond), point.pressure.in(kMillibar));
        text += text.empty() ? one : ", " + std::string(one);
    }
    return text;
}

std::string refusal(TraceFault fault, int line) {
    return "refused " + std::to_string(static_cast<int>(fault)) + " at " + std::to_string(line);
}

struct ReadCase {
    const char* name;
    const char* bytes;
    const char* expected;
};
std::ostream& operator<<(std::ostream& out, const ReadCase& one) {
    return out << one.name;
}

class TraceFileReads : public ::testing::TestWithParam<ReadCase> {};

TEST_P(TraceFileReads, whatALoggerWrote) {
    EXPECT_EQ(readIn(GetParam().bytes), GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Tables, TraceFileReads,
    ::testing::Values(
        ReadCase{"seconds", "elapsed (s),pressure (mbar)\n0,20.50\n60,20.40\n", "0 20.50, 60 20.40"},
        ReadCase{"minutes", "min,mbar\n0,20.50\n1.5,20.40\n", "0 20.50, 90 20.40"},
        ReadCase{"beginsLater", "s,mbar\n100,20.50\n101,20.40\n", "0 20.50, 1 20.40"},
        ReadCase{"kilopascal", "time s;p / kPa\n0;2,050\n1;2,040\n", "0 20.50, 1 20.40"},
        // 1 inch of water is 2.4908891 mbar (conventional, 1000 kg/m3 and standard gravity).
        ReadCase{"inchesOfWater", "s,in Pressure [inWG]\n0,8\n1,8.2\n", "0 19.93, 1 20.43"},
        ReadCase{"hectopascal", "s,pressure hPa\n0,20.5\n1,20.4\n", "0 20.50, 1 20.40"},
        ReadCase{"unitInCells", "09:40:00,20.5 mbar\n09:40:01,2.04 kPa\n", "0 20.50, 1 20.40"},
        ReadCase{"clock", "Time,Gauge mbar\n09:40:00,20.50\n09:40:00.5,20.49\n9:41,20.40\n",
                 "0 20.50, 0.5 20.49, 60 20.40"},
        ReadCase{"midnight", "time,mbar\n23:59:30,20.50\n00:00:30,20.40\n", "0 20.50, 60 20.40"},
        ReadCase{"dated", "Date time,mbar\n2026-11-25T23:59:00,20.50\n2026-11-26T00:01:00,20.40\n",
                 "0 20.50, 120 20.40"},
        ReadCase{"britishDates", "timestamp\tmbar\n25/11/2026 09:40:00\t20.50\n26/11/2026 09:40:00\t20.40\n",
                 "0 20.50, 86400 20.40"},
        ReadCase{"dayAndClockApart",
                 "Date,Time,Pressure mbar\n2026-11-25,09:40:00,20.50\n2026-11-25,09:40:10,20.40\n",
                 "0 20.50, 10 20.40"},
        ReadCase{"otherColumnsBefore", "no,battery,pressure mbar,time s\n1,90,20.50,0\n2,90,20.40,1\n",
                 "0 20.50, 1 20.40"},
        ReadCase{"vacuum", "s,mbar\n0,-0.02\n1,\u22120.03\n", "0 -0.02, 1 -0.03"}),
    [](const auto& one) { return one.param.name; });

TEST(TraceFile, LeavesOutWhatItCantReadAndCountsIt) {
    const auto file = readTrace("s,mbar\n0,20.50\n1,over\n2,\n3\nx,20.4\n5,20.4\n");
    ASSERT_TRUE(file);
    EXPECT_EQ(file->trace.size(), 2U);
    EXPECT_EQ(file->leftOut, 4);
    EXPECT_EQ(file->firstLeftOut, 3);
    EXPECT_EQ(tightness::gapsOf(file->trace).size(), 0U);  // two points have one step, whatever it is
}

TEST(TraceFile, TakesNoUnitThatNobodySaid) {
    EXPECT_EQ(readIn("time s,pressure\n0,20.50\n1,20.40\n"), refusal(TraceFault::NoUnit, 2));
    EXPECT_EQ(readIn("0,20.50\n1,20.40\n"), refusal(TraceFault::NoUnit, 1));
    EXPECT_EQ(readIn("0,2.05\n1,2.04\n", {UnitCode::Kilopascal}), "0 20.50, 1 20.40");
    // What the file says is not put aside for what is said beside it.
    EXPECT_EQ(readIn("s,mbar\n0,20.5\n1,20.4\n", {UnitCode::Kilopascal}), "0 20.50, 1 20.40");
}

TEST(TraceFile, SaysWhenPlainTimesWereTakenForSeconds) {
    EXPECT_FALSE(readTrace("time,mbar\n0,20\n1,20\n")->timesSaid);
    EXPECT_TRUE(readTrace("time s,mbar\n0,20\n1,20\n")->timesSaid);
    EXPECT_TRUE(readTrace("time,mbar\n9:40:00,20\n9:40:01,20\n")->timesSaid);
}

TEST(TraceFile, TakesNothingWhereItCantTellWhatLiesBetween) {
    EXPECT_EQ(readIn("s,mbar\n5,20.50\n4,20.40\n"), refusal(TraceFault::ClockGoesBack, 3));
    EXPECT_EQ(readIn("time,mbar\n10:00:00,20.5\n09:00:00,20.4\n"), refusal(TraceFault::ClockGoesBack, 3));
    EXPECT_EQ(readIn("mbar,litres\n20,1\n20,1\n"), refusal(TraceFault::NoTimes, 0));
    EXPECT_EQ(readIn("time,litres\n20,1\n20,1\n"), refusal(TraceFault::NoPressures, 0));
    EXPECT_EQ(readIn("date,mbar\n2026-11-25,20.5\n2026-11-26,20.4\n"), refusal(TraceFault::NoTimes, 0));
    EXPECT_EQ(readIn("s,mbar\n0,20.5\n"), refusal(TraceFault::TooFew, 0));
    EXPECT_EQ(readIn(""), refusal(TraceFault::TooFew, 0));
}

TEST(TraceFile, ReadsBarometerAndTemperatureWhereTheyAre) {
    const auto file = readTrace(
        "time s,pressure mbar,barometer hPa,pipe temp °C\n0,20.50,1013.2,18.0\n1,20.40,1013.1,17.9\n");
    ASSERT_TRUE(file);
    EXPECT_NEAR(file->trace[1].barometer->in(kMillibar), 1013.1, 1e-9);
    EXPECT_NEAR(file->trace[1].temperature->in(quantity::kKelvin), 291.05, 1e-9);
    // Without a unit they are not used.
    const auto bare = readTrace("time s,pressure mbar,barometer\n0,20.50,1013.2\n1,20.40,1013.1\n");
    ASSERT_TRUE(bare);
    EXPECT_FALSE(bare->trace[0].barometer.has_value());
}

TEST(TraceFile, takesTheColumnsThatAreSaidByHand) {
    const std::string text = "a,b,c\n1,20.5,0\n2,20.4,1\n3,20.3,2\n";
    EXPECT_FALSE(readTrace(text));
    TraceForm form;
    form.columns = TraceColumns{};
    form.columns->headed = true;
    form.columns->time = TraceColumn{2, {}, quantity::UnitCode::Minute};
    form.columns->pressure = TraceColumn{1, {}, quantity::UnitCode::Millibar};
    const auto file = readTrace(text, form);
    ASSERT_TRUE(file);
    ASSERT_EQ(file->trace.size(), 3U);
    EXPECT_NEAR(file->trace[2].at.in(quantity::kSecond), 120.0, 1e-9);
    EXPECT_NEAR(file->trace[2].pressure.in(quantity::kMillibar), 20.3, 1e-9);
    EXPECT_FALSE(file->beganAt || file->beganOn);
}

TEST(TraceFile, saysWhenItBeganWhereItsTimesDo) {
    const auto clock = readTrace("time,pressure (mbar)\n09:40:12,20.5\n09:40:13,20.4\n");
    ASSERT_TRUE(clock);
    EXPECT_EQ(clock->beganAt, 9 * 3600 + 40 * 60 + 12);
    EXPECT_FALSE(clock->beganOn);
    const auto dated =
        readTrace("time,pressure (mbar)\n2026-11-25 09:40:12,20.5\n2026-11-25 09:40:13,20.4\n");
    ASSERT_TRUE(dated);
    EXPECT_EQ(dated->beganAt, 9 * 3600 + 40 * 60 + 12);
    EXPECT_EQ(dated->beganOn,
              (calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)}));
}

}  // namespace
}  // namespace hearth::exchange

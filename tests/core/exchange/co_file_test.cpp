// SPDX-License-Identifier: GPL-3.0-or-later
// The tables are invented.
#include "core/exchange/co_file.h"

#include "core/quantity/units.h"

#include <cstdio>
#include <gtest/gtest.h>
#include <string>

namespace hearth::exchange {
namespace {

std::string coRefusal(CoFault fault, int line) {
    return "refused " + std::to_string(static_cast<int>(fault)) + " at " + std::to_string(line);
}

/// "0 3, 60 4": seconds and ppm.
std::string coRead(std::string_view bytes, const std::optional<CoColumns>& said = std::nullopt) {
    const auto file = readCoFile(bytes, said);
    if (!file) {
        return coRefusal(file.error().fault, file.error().line);
    }
    std::string text;
    for (const auto& reading : file->readings) {
        char one[64];
        std::snprintf(one, sizeof one, "%g %g", reading.at.in(quantity::kSecond),
                      reading.level.in(quantity::kPpm));
        text += text.empty() ? one : ", " + std::string(one);
    }
    return text;
}

TEST(CoFile, ReadsATableByItsHeadings) {
    EXPECT_EQ(coRead("time s,CO ppm\n0,3\n60,4\n"), "0 3, 60 4");
    EXPECT_EQ(coRead("Time;Carbon monoxide (ppm)\n09:40:00;3,5\n09:41:00;4\n"), "0 3.5, 60 4");
    EXPECT_EQ(coRead("elapsed min\tCO2 ppm\tCO ppm\n0\t600\t3\n1\t610\t4\n"), "0 3, 60 4")
        << "carbon dioxide is another gas";
    EXPECT_EQ(coRead("time,CO\n23:59:30,3 ppm\n00:00:30,4 ppm\n"), "0 3, 60 4");
    EXPECT_EQ(coRead("Date time,CO (ppm)\n25/11/2026 09:40:00,3\n26/11/2026 09:40:00,4\n"), "0 3, 86400 4");
}

TEST(CoFile, ConvertsNoOtherUnit) {
    EXPECT_EQ(coRead("time s,CO mg/m3\n0,3\n60,4\n"), coRefusal(CoFault::OtherUnit, 0));
    EXPECT_EQ(coRead("time s,CO ppb\n0,3\n60,4\n"), coRefusal(CoFault::OtherUnit, 0));
    EXPECT_EQ(coRead("time s,CO %\n0,3\n60,4\n"), coRefusal(CoFault::OtherUnit, 0));
    EXPECT_EQ(coRead("time s,CO\n0,3 ppm\n60,4 mg/m3\n"), coRefusal(CoFault::OtherUnit, 3));
    EXPECT_EQ(coRead("time s,CO\n0,3\n60,4\n"), coRefusal(CoFault::NoUnit, 2));
    EXPECT_EQ(coRead("0,3\n60,4\n"), coRefusal(CoFault::NoUnit, 1));
    EXPECT_EQ(coRead("time s,pressure mbar\n0,3\n60,4\n"), coRefusal(CoFault::NoLevels, 0));
}

TEST(CoFile, KnowsAHeadingThatSaysOtherwise) {
    for (const char* other : {"CO mg/m3", "CO \u00B5g/m3", "CO2 ppm", "CO (ppb)", "CO %", "carbon dioxide"}) {
        EXPECT_TRUE(saysOtherwise(other)) << other;
    }
    for (const char* good : {"CO", "CO ppm", "Carbon monoxide (ppm)", "kitchen", ""}) {
        EXPECT_FALSE(saysOtherwise(good)) << good;
    }
}

TEST(CoFile, TakesItsColumnsByHand) {
    auto columns = guessCoColumns({"0", "3"});
    EXPECT_FALSE(columns.headed);
    columns.level->unit = quantity::UnitCode::Ppm;
    EXPECT_EQ(coRead("0,3\n60,4\n", columns), "0 3, 60 4");
    columns.level->unit = quantity::UnitCode::MilligramPerCubicMetre;
    EXPECT_EQ(coRead("0,3\n60,4\n", columns), coRefusal(CoFault::OtherUnit, 0));
    auto headed = guessCoColumns({"when", "room", "kitchen"});
    EXPECT_FALSE(headed.time);
    headed.time = TraceColumn{0, "when", {}};
    headed.level = TraceColumn{2, "kitchen", quantity::UnitCode::Ppm};
    EXPECT_EQ(coRead("when,room,kitchen\n9:00:00,1,2\n9:00:01,3,4\n", headed), "0 2, 1 4");
}

TEST(CoFile, LeavesOutWhatItCantReadAndCountsIt) {
    const auto file =
        readCoFile("time,CO ppm\n9:00:00,3\n9:00:01,HI\n9:00:02,\n9:00:03\nx,4\n9:00:05,4.25\n");
    ASSERT_TRUE(file);
    EXPECT_EQ(file->readings.size(), 2U);
    EXPECT_EQ(file->leftOut, 4);
    EXPECT_EQ(file->firstLeftOut, 3);
    EXPECT_EQ(file->decimals, 2);
    EXPECT_EQ(file->beganAt, 9 * 3600);
    EXPECT_TRUE(file->timesSaid);
    EXPECT_FALSE(readCoFile("time,CO ppm\n0,3\n1,3\n")->timesSaid);
}

TEST(CoFile, TakesNothingWhereItCantTellWhatLiesBetween) {
    EXPECT_EQ(coRead("s,CO ppm\n5,3\n4,3\n"), coRefusal(CoFault::ClockGoesBack, 3));
    EXPECT_EQ(coRead("litres,CO ppm\n5,3\n4,3\n"), coRefusal(CoFault::NoTimes, 0));
    EXPECT_EQ(coRead("s,CO ppm\n5,3\n"), coRefusal(CoFault::TooFew, 0));
    EXPECT_EQ(coRead("date,CO ppm\n2026-11-25,3\n2026-11-26,3\n"), coRefusal(CoFault::NoTimes, 0));
    EXPECT_EQ(coRead(""), coRefusal(CoFault::TooFew, 0));
}

}  // namespace
}  // namespace hearth::exchange

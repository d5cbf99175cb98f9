// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_guidelines.h"

#include "tests/core/air/air_samples.h"

#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using samples::minutes;

TEST(CoGuidelines, AndAlarmsAsTheirSourcesPrintThem) {
    struct Row {
        double mass, ppm, minutes;
        bool memory;
    };
    const Row rows[] = {
        {100, 90, 15, false}, {60, 50, 30, false}, {30, 25, 60, false},
        {10, 10, 480, false}, {100, 0, 15, true},  {35, 0, 60, true},
        {10, 0, 480, true},   {7, 0, 1440, true},  {4, 0, 1440, false},
    };
    ASSERT_EQ(coGuidelines().size(), std::size(rows));
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        EXPECT_EQ(coGuidelines()[i].milligramsPerCubicMetre, rows[i].mass);
        EXPECT_EQ(coGuidelines()[i].ppm, rows[i].ppm);
        EXPECT_EQ(coGuidelines()[i].over, minutes(rows[i].minutes));
        EXPECT_EQ(coGuidelines()[i].fromMemory, rows[i].memory);
        EXPECT_STRNE(coGuidelines()[i].document, "");
    }
    const struct {
        double ppm, from, by;
    } alarms[] = {{30, 120, -1}, {50, 60, 90}, {100, 10, 40}, {300, 0, 3}};
    ASSERT_EQ(coAlarmRows().size(), std::size(alarms));
    for (std::size_t i = 0; i < std::size(alarms); ++i) {
        EXPECT_EQ(coAlarmRows()[i].ppm, alarms[i].ppm);
        EXPECT_EQ(coAlarmRows()[i].notBefore, minutes(alarms[i].from));
        EXPECT_EQ(coAlarmRows()[i].by.value_or(minutes(-1)), minutes(alarms[i].by));
    }
}

}  // namespace
}  // namespace hearth::air

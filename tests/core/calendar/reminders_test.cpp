// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/reminders.h"

#include <gtest/gtest.h>
#include <random>

namespace hearth::calendar {
namespace {

Date remindDay(const char* iso) {
    return fromIso(iso).value();
}
const Cadence kUsual(kUsualWeeks.begin(), kUsualWeeks.end());

TEST(CadenceText, IsReadAsSomebodyTypesIt) {
    EXPECT_EQ(cadenceFrom("8 / 4 / 2 / 1"), kUsual);
    EXPECT_EQ(cadenceFrom("1,2,4,8"), kUsual);
    EXPECT_EQ(cadenceFrom("4 4 8 2 1"), kUsual);
    EXPECT_EQ(cadenceText(kUsual), "8 4 2 1");
    EXPECT_EQ(cadenceFrom(cadenceText(kUsual)), kUsual);
    for (const char* wrong : {"", " ", "0", "53", "eight", "-4", "4.5", "99999999999999999999"}) {
        EXPECT_FALSE(cadenceFrom(wrong)) << wrong;
    }
}

// Common practice, no source; the dates as the notes on office practice have them for 1 June 2026.
TEST(ReminderDates, OfTheUsualCadence) {
    const std::vector expected{remindDay("2026-04-06"), remindDay("2026-05-04"), remindDay("2026-05-18"),
                               remindDay("2026-05-25")};
    EXPECT_EQ(reminderDates(remindDay("2026-06-01"), kUsual), expected);
}

TEST(ReminderStage, IsTheNewestWhoseDayHasCome) {
    const Date deadline = remindDay("2026-06-01");
    EXPECT_FALSE(reminderStage(deadline, kUsual, {}, remindDay("2026-04-05")));
    EXPECT_EQ(reminderStage(deadline, kUsual, {}, remindDay("2026-04-06")), 1);
    EXPECT_EQ(reminderStage(deadline, kUsual, {}, remindDay("2026-05-03")), 1);
    EXPECT_EQ(reminderStage(deadline, kUsual, {}, remindDay("2026-05-04")), 2);  // the first was missed
    EXPECT_EQ(reminderStage(deadline, kUsual, {}, remindDay("2026-06-20")), 4);  // overdue, never told
    const std::vector sent{remindDay("2026-04-08")};
    EXPECT_FALSE(reminderStage(deadline, kUsual, sent, remindDay("2026-05-03")));
    EXPECT_EQ(reminderStage(deadline, kUsual, sent, remindDay("2026-05-04")), 2);
    const std::vector both{remindDay("2026-05-26"), remindDay("2026-04-08")};
    EXPECT_FALSE(reminderStage(deadline, kUsual, both, remindDay("2026-06-20")));
}

TEST(ReminderStage, SentEachDayThatItIsDueComesOnceAStage) {
    std::mt19937 random(17);
    std::uniform_int_distribution<int> day(0, 3000);
    for (int i = 0; i < 200; ++i) {
        const Date deadline = addDays(remindDay("2020-01-01"), day(random));
        std::vector<Date> sent;
        int last = 0;
        for (Date today = addDays(deadline, -100); today <= addDays(deadline, 30);
             today = addDays(today, 1)) {
            if (const auto stage = reminderStage(deadline, kUsual, sent, today)) {
                EXPECT_EQ(*stage, last + 1);
                last = *stage;
                sent.push_back(today);
            }
        }
        EXPECT_EQ(sent, reminderDates(deadline, kUsual));
    }
}

}  // namespace
}  // namespace hearth::calendar

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/civil_date.h"
#include "tests/support/agreement.h"
#include "tests/support/files.h"

#include <gtest/gtest.h>
#include <random>
#include <sstream>
#include <string>
#include <vector>

namespace hearth::calendar {
namespace {

struct MonthsAdded {
    Date from;
    int months;
};

std::vector<MonthsAdded> randomSums() {
    constexpr int kSums = 10000;
    constexpr int kSpan = 120 * 365;
    std::mt19937 random(20260925);
    std::uniform_int_distribution<int> day(0, kSpan);
    std::uniform_int_distribution<int> months(-60, 60);
    std::vector<MonthsAdded> sums;
    for (int i = 0; i < kSums; ++i) {
        sums.push_back({addDays(*fromIso("1980-01-01"), day(random)), months(random)});
    }
    return sums;
}

// dateutil's relativedelta: the same day number in the target month, or its last day.
TEST(AddMonths, AgreesWithDateutil) {
    const auto sums = randomSums();
    std::string lines;
    for (const auto& sum : sums) {
        lines += isoText(sum.from) + ' ' + std::to_string(sum.months) + '\n';
    }
    const testing::TempDir folder;
    testing::writeFile(folder / "sums", lines);
    const auto said =
        testing::runCommand("python3 '" HEARTH_SOURCE_DIR "/tests/core/calendar/months_by_dateutil.py' < '" +
                            (folder / "sums").string() + "'");
    ASSERT_EQ(said.exitCode, 0) << said.text;
    testing::Agreement agreement("Dates a number of months away, 10,000 at random",
                                 "python3-dateutil, relativedelta", "days", 0.0);
    std::istringstream answers(said.text);
    std::string answer;
    std::size_t read = 0;
    for (const auto& sum : sums) {
        ASSERT_TRUE(std::getline(answers, answer)) << "one answer a sum";
        const auto theirs = fromIso(answer);
        ASSERT_TRUE(theirs) << answer;
        const int apart = daysBetween(*theirs, addMonths(sum.from, sum.months));
        agreement.hold(isoText(sum.from) + " + " + std::to_string(sum.months), apart, 0);
        ++read;
    }
    EXPECT_EQ(read, sums.size());
}

}  // namespace
}  // namespace hearth::calendar

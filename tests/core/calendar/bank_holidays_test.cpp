// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/bank_holidays.h"

#include "tests/support/agreement.h"
#include "tests/support/files.h"

#include <gtest/gtest.h>
#include <sstream>

namespace hearth::calendar {
namespace {

Date holiday(const char* iso) {
    return fromIso(iso).value();
}
Date holiday(std::chrono::year_month_weekday day) {
    return std::chrono::sys_days(day);
}
Date holiday(std::chrono::year_month_weekday_last day) {
    return std::chrono::sys_days(day);
}

TEST(BankHolidayTable, IsReadLineByLine) {
    const auto table = bankHolidaysFrom(
        "# a remark\r\n# source: a page\r\n# last year: 2027\r\n2027-03-17;N;St Patrick's Day\r\n"
        "2027-01-01;EWSN;New Year's Day");
    ASSERT_TRUE(table);
    EXPECT_EQ(table->source, "a page");
    EXPECT_EQ(table->lastYear, 2027);
    ASSERT_EQ(table->holidays.size(), 2U);
    EXPECT_EQ(table->holidays.front().name, "New Year's Day");
    EXPECT_EQ(bankHolidayOn(*table, holiday("2027-03-17"), Nation::NorthernIreland), "St Patrick's Day");
    EXPECT_FALSE(bankHolidayOn(*table, holiday("2027-03-17"), Nation::Wales));
    EXPECT_FALSE(bankHolidayOn(*table, holiday("2027-03-18"), Nation::NorthernIreland));
    EXPECT_FALSE(isBeyond(*table, holiday("2027-12-31")));
    EXPECT_TRUE(isBeyond(*table, holiday("2028-01-01")));
    EXPECT_TRUE(isBeyond({}, holiday("2026-01-01")));
}

TEST(BankHolidayTable, ComesBackAsItWasWritten) {
    auto table = shippedBankHolidays();
    EXPECT_EQ(bankHolidaysFrom(bankHolidaysText(table)), table);
    table.taken = holiday("2026-11-25");
    EXPECT_EQ(bankHolidaysFrom(bankHolidaysText(table)), table);
    EXPECT_FALSE(bankHolidaysFrom("# taken in: yesterday"));
}

// Banking and Financial Dealings Act 1971, Schedule 1, from memory: eight days or more in every nation.
TEST(BankHolidayTable, SaysUpToWhichYearItIsWhole) {
    auto table = shippedBankHolidays();
    EXPECT_EQ(lastWholeYear(table, 2025), 2028);
    EXPECT_EQ(lastWholeYear(table, 2029), 0);
    const auto drop = [&table](const char* iso) {
        std::erase_if(table.holidays, [&](const BankHoliday& one) { return one.date == holiday(iso); });
    };
    drop("2027-05-03");  // leaves England and Wales with seven
    EXPECT_EQ(lastWholeYear(table, 2025), 2026);
    EXPECT_EQ(lastWholeYear(table, 2028), 2028);
    table = shippedBankHolidays();
    std::erase_if(table.holidays, [](const BankHoliday& one) {  // a list that stops in autumn
        return one.date >= holiday("2028-12-01");
    });
    EXPECT_EQ(lastWholeYear(table, 2025), 2027);
}

TEST(BankHolidayTable, OfTheFirmGoesBeforeOursAndIsCarriedOn) {
    const auto ours =
        *bankHolidaysFrom("# source: ours\n# last year: 2028\n2027-01-01;EWSN;ours\n2028-01-03;EWSN;ours");
    const auto firms = *bankHolidaysFrom("# source: theirs\n# last year: 2027\n2027-01-04;EWSN;theirs");
    const auto joined = joinedHolidays(firms, ours);
    EXPECT_EQ(joined.source, "theirs");
    EXPECT_EQ(joined.lastYear, 2028);
    EXPECT_FALSE(bankHolidayOn(joined, holiday("2027-01-01"), Nation::England));
    EXPECT_EQ(bankHolidayOn(joined, holiday("2027-01-04"), Nation::England), "theirs");
    EXPECT_EQ(bankHolidayOn(joined, holiday("2028-01-03"), Nation::England), "ours");
}

TEST(BankHolidayTable, RefusesWhatItDoesNotUnderstand) {
    for (const char* wrong : {"2027-02-30;E;x", "2027-01-01;X;x", "2027-01-01;EE;x", "2027-01-01;;x",
                              "2027-01-01;E;", "2027-01-01;E", "1 January 2027", "# last year: soon"}) {
        EXPECT_FALSE(bankHolidaysFrom(wrong)) << wrong;
    }
}

TEST(ShippedBankHolidays, SayWhereTheyComeFromAndHowFarTheyGo) {
    const auto& table = shippedBankHolidays();
    EXPECT_NE(table.source.find("from memory"), std::string::npos);
    EXPECT_GE(table.lastYear, 2028);
    EXPECT_EQ(static_cast<int>(table.holidays.back().date.year()), table.lastYear);
    for (const auto& one : table.holidays) {
        const auto day = std::chrono::weekday(std::chrono::sys_days(one.date));
        EXPECT_TRUE(day != std::chrono::Saturday && day != std::chrono::Sunday) << isoText(one.date);
    }
}

// Banking and Financial Dealings Act 1971, Schedule 1, and the yearly proclamations, from memory: the rules
// by which the days fall.
TEST(ShippedBankHolidays, FallAsTheirRulesSay) {
    using namespace std::chrono;
    const auto& table = shippedBankHolidays();
    for (int y = 2025; y <= table.lastYear; ++y) {
        const year in(y);
        const auto holds = [&](Date date, Nation nation) {
            EXPECT_TRUE(bankHolidayOn(table, date, nation)) << isoText(date);
        };
        for (const auto nation :
             {Nation::England, Nation::Wales, Nation::Scotland, Nation::NorthernIreland}) {
            holds(holiday(in / May / Monday[1]), nation);
            holds(holiday(in / May / Monday[last]), nation);
            const auto summer = nation == Nation::Scotland ? holiday(in / August / Monday[1])
                                                           : holiday(in / August / Monday[last]);
            holds(summer, nation);
        }
        const auto count = [&](auto member) {
            return std::count_if(table.holidays.begin(), table.holidays.end(), [&](const BankHoliday& one) {
                return one.date.year() == in && one.*member;
            });
        };
        EXPECT_EQ(count(&BankHoliday::england), 8) << y;
        EXPECT_EQ(count(&BankHoliday::wales), 8) << y;
        EXPECT_EQ(count(&BankHoliday::scotland), 9) << y;
        EXPECT_EQ(count(&BankHoliday::northernIreland), 10) << y;
    }
}

TEST(ShippedBankHolidays, EasterAgreesWithDateutil) {
    const auto& table = shippedBankHolidays();
    std::string years;
    for (int year = 2025; year <= table.lastYear; ++year) {
        years += " " + std::to_string(year);
    }
    const auto said = testing::runCommand(
        "python3 '" HEARTH_SOURCE_DIR "/tests/core/calendar/easter_by_dateutil.py'" + years);
    ASSERT_EQ(said.exitCode, 0) << said.text;
    testing::Agreement agreement("Good Friday and Easter Monday of the table of bank holidays",
                                 "python3-dateutil, easter", "days", 0.0);
    std::istringstream answers(said.text);
    std::string answer;
    while (std::getline(answers, answer)) {
        const Date sunday = fromIso(answer).value();
        for (const auto& one : table.holidays) {
            if (one.date.year() != sunday.year()) {
                continue;
            }
            if (one.name == "Good Friday") {
                agreement.hold("Good Friday " + answer, daysBetween(sunday, one.date), -2);
                EXPECT_TRUE(one.scotland);
            } else if (one.name == "Easter Monday") {
                agreement.hold("Easter Monday " + answer, daysBetween(sunday, one.date), 1);
                EXPECT_FALSE(one.scotland);
            }
        }
    }
}

}  // namespace
}  // namespace hearth::calendar

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/civil_date.h"

#include <gtest/gtest.h>
#include <random>
#include <string>

namespace hearth::calendar {
namespace {

using namespace std::chrono_literals;

const Date kToday = 2026y / std::chrono::November / 25;

Date date(std::string_view iso) {
    return fromIso(iso).value();
}

TEST(IsoText, roundTripsEveryDayOfFourHundredYears) {
    for (Date day = date("1900-01-01"); day < date("2300-01-01"); day = addDays(day, 1)) {
        ASSERT_EQ(fromIso(isoText(day)), day) << isoText(day);
    }
    EXPECT_EQ(isoText(2026y / std::chrono::March / 4), "2026-03-04");
}

TEST(FromIso, anythingElseIsNothing) {
    for (const std::string_view text : {"", "2026-02-29", "2026-2-28", "26-02-28", "2026/02/28", "2026-13-01",
                                        "2026-00-10", "2026-01-00", "20260228", "2026-02-28 ", " 2026-02-28",
                                        "2026-02-28T00:00", "202a-02-28", "+026-02-28", "2026-02-+8"}) {
        EXPECT_FALSE(fromIso(text)) << text;
    }
}

TEST(ParseDate, readsWhatPeopleType) {
    struct Case {
        std::string_view typed;
        std::string_view expected;
    };
    for (const auto& [typed, expected] : {
             Case{"25/11/2026", "2026-11-25"},
             Case{"25.11.2026", "2026-11-25"},
             Case{"25-11-26", "2026-11-25"},
             Case{"25 11 2026", "2026-11-25"},
             Case{"1/2/26", "2026-02-01"},  // the day first, always
             Case{"25 Nov 2026", "2026-11-25"},
             Case{"25 november 2026", "2026-11-25"},
             Case{"25nov26", "2026-11-25"},
             Case{"25-Nov-2026", "2026-11-25"},
             Case{"1 Sept 2026", "2026-09-01"},
             Case{"25 nov", "2026-11-25"},
             Case{"2026-11-25", "2026-11-25"},
             Case{"2026/11/25", "2026-11-25"},
             Case{"3/12", "2026-12-03"},
             Case{"3", "2026-11-03"},
             Case{"03", "2026-11-03"},
             Case{"t", "2026-11-25"},
             Case{"Today", "2026-11-25"},
             Case{"+3", "2026-11-28"},
             Case{"+ 7", "2026-12-02"},
             Case{"-25", "2026-10-31"},
             Case{"\u22123", "2026-11-22"},
             Case{"+0", "2026-11-25"},
             Case{"  25/11/2026\u00A0", "2026-11-25"},
             Case{"29/2/2028", "2028-02-29"},
             Case{"1/1/1900", "1900-01-01"},
             Case{"31/12/2199", "2199-12-31"},
         }) {
        const auto read = parseDate(typed, kToday);
        ASSERT_TRUE(read) << typed;
        EXPECT_EQ(isoText(*read), expected) << typed;
    }
}

TEST(ParseDate, saysWhatIsWrong) {
    struct Case {
        std::string_view typed;
        ErrorCode code;
    };
    for (const auto& [typed, code] : {
             Case{"", ErrorCode::DateUnreadable},
             Case{"   ", ErrorCode::DateUnreadable},
             Case{"soon", ErrorCode::DateUnreadable},
             Case{"25/11-2026", ErrorCode::DateUnreadable},
             Case{"25/11/2026/1", ErrorCode::DateUnreadable},
             Case{"25/11/", ErrorCode::DateUnreadable},
             Case{"/11/2026", ErrorCode::DateUnreadable},
             Case{"25//2026", ErrorCode::DateUnreadable},
             Case{"25:11:2026", ErrorCode::DateUnreadable},
             Case{"25/11/206", ErrorCode::DateUnreadable},
             Case{"25/11/20266", ErrorCode::DateUnreadable},
             Case{"251126", ErrorCode::DateUnreadable},
             Case{"25 no 2026", ErrorCode::DateUnreadable},
             Case{"nov 2026", ErrorCode::DateUnreadable},
             Case{"25 nov 2026 x", ErrorCode::DateUnreadable},
             Case{"25!nov", ErrorCode::DateUnreadable},
             Case{"+", ErrorCode::DateUnreadable},
             Case{"+3d", ErrorCode::DateUnreadable},
             Case{"+999999", ErrorCode::DateUnreadable},
             Case{"\xFF\xFE", ErrorCode::DateUnreadable},
             Case{"31/2/2026", ErrorCode::DateImpossible},
             Case{"29/2/2026", ErrorCode::DateImpossible},
             Case{"31 Nov 2026", ErrorCode::DateImpossible},
             Case{"31", ErrorCode::DateImpossible},  // November has thirty
             Case{"0/1/2026", ErrorCode::DateImpossible},
             Case{"1/13/2026", ErrorCode::DateImpossible},
             Case{"2026-02-30", ErrorCode::DateImpossible},
             Case{"25/11/0206", ErrorCode::DateImpossible},
             Case{"25/11/2926", ErrorCode::DateImpossible},
             Case{"1/1/1899", ErrorCode::DateImpossible},
         }) {
        const auto read = parseDate(typed, kToday);
        ASSERT_FALSE(read) << typed << " read as " << isoText(*read);
        EXPECT_EQ(codeText(read.error().code), codeText(code)) << typed;
        EXPECT_EQ(read.error().details, std::vector{std::string(typed)});
    }
}

TEST(ParseDateProperty, anyBytesAreAnswered) {
    std::mt19937 random(31);
    const std::string_view letters = "0123456789/.- +tnovabyr\xC2\xA0\xE2\x88\x92\xFF";
    for (int i = 0; i < 50'000; ++i) {
        std::string typed;
        for (auto length = random() % 12; length > 0; --length) {
            typed += letters[random() % letters.size()];
        }
        if (const auto read = parseDate(typed, kToday)) {
            ASSERT_TRUE(read->ok()) << typed;
        }
    }
}

TEST(ParseDateProperty, everyDayIsReadInEveryForm) {
    const auto number = [](unsigned value) { return std::to_string(value); };
    for (Date day = date("2023-12-25"); day < date("2029-01-05"); day = addDays(day, 1)) {
        const std::string d = number(static_cast<unsigned>(day.day()));
        const std::string m = number(static_cast<unsigned>(day.month()));
        const std::string y = std::to_string(static_cast<int>(day.year()));
        for (const std::string& typed :
             {d + '/' + m + '/' + y, d + '.' + m + '.' + y.substr(2), isoText(day)}) {
            ASSERT_EQ(parseDate(typed, kToday), day) << typed;
        }
        ASSERT_EQ(parseDate(d, day), day);
        ASSERT_EQ(parseDate(d + '/' + m, day), day);
    }
}

TEST(AddMonths, aDayThatTheMonthLacksBecomesItsLast) {
    struct Case {
        std::string_view start;
        int months;
        std::string_view expected;
    };
    for (const auto& [start, months, expected] : {
             Case{"2026-01-31", 1, "2026-02-28"},
             Case{"2028-01-31", 1, "2028-02-29"},
             Case{"2026-08-31", 1, "2026-09-30"},
             Case{"2026-11-25", 12, "2027-11-25"},
             Case{"2028-02-29", 12, "2029-02-28"},
             Case{"2028-02-29", 48, "2032-02-29"},
             Case{"2026-03-31", -1, "2026-02-28"},
             Case{"2026-01-15", -13, "2024-12-15"},
             Case{"2026-12-31", 2, "2027-02-28"},
             Case{"2026-05-05", 0, "2026-05-05"},
         }) {
        EXPECT_EQ(isoText(addMonths(date(start), months)), expected) << start << " + " << months;
    }
}

TEST(Days, countFromOneDateToAnother) {
    EXPECT_EQ(daysBetween(date("2026-01-01"), date("2027-01-01")), 365);
    EXPECT_EQ(daysBetween(date("2028-01-01"), date("2029-01-01")), 366);
    EXPECT_EQ(daysBetween(date("2026-11-25"), date("2026-11-20")), -5);
    EXPECT_EQ(isoText(addDays(date("2026-02-27"), 2)), "2026-03-01");
    EXPECT_EQ(isoText(addDays(date("2026-03-01"), -1)), "2026-02-28");
    // Gregorian reform of the leap rule: 1900 has no 29 February, 2000 has (ISO 8601).
    EXPECT_EQ(daysBetween(date("1900-02-28"), date("1900-03-01")), 1);
    EXPECT_EQ(daysBetween(date("2000-02-28"), date("2000-03-01")), 2);
}

TEST(DaysProperty, addingAndCountingAgree) {
    std::mt19937 random(400);
    for (int i = 0; i < 10'000; ++i) {
        const Date start = addDays(date("1950-01-01"), static_cast<int>(random() % 60'000));
        const int days = static_cast<int>(random() % 20'000) - 10'000;
        ASSERT_EQ(daysBetween(start, addDays(start, days)), days) << isoText(start);
    }
}

}  // namespace
}  // namespace hearth::calendar

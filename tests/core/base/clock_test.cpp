// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock.h"

#include "tests/support/files.h"

#include <chrono>
#include <gtest/gtest.h>
#include <random>

namespace hearth {
namespace {

using namespace std::chrono_literals;
using std::chrono::year_month_day;

Instant instantOf(const std::string& text) {
    Instant instant{};
    EXPECT_TRUE(parseInstant(text, instant)) << text;
    return instant;
}

// ISO 8601 and the epoch of POSIX; 1645557742000 ms is the example of RFC 9562 appendix A.6.
TEST(InstantText, isIso8601InUtc) {
    EXPECT_EQ(instantText(Instant{}), "1970-01-01T00:00:00.000Z");
    EXPECT_EQ(instantText(Instant{1645557742000ms}), "2022-02-22T19:22:22.000Z");
    EXPECT_EQ(instantText(Instant{-1ms}), "1969-12-31T23:59:59.999Z");
}

TEST(InstantText, roundTrips) {
    std::mt19937_64 random(20261125);
    // From the year 0 to the end of 9999.
    std::uniform_int_distribution<std::int64_t> milliseconds(-62'167'219'200'000, 253'402'300'799'999);
    for (int i = 0; i < 20'000; ++i) {
        const Instant instant{std::chrono::milliseconds{milliseconds(random)}};
        ASSERT_EQ(instantOf(instantText(instant)), instant) << instantText(instant);
    }
}

TEST(InstantText, anyOtherFormIsRefusedAndLeavesTheResultAlone) {
    for (const std::string text : {
             "",
             "2026-11-25",
             "2026-11-25T09:46:10Z",
             "2026-11-25T09:46:10.000",
             "2026-11-25 09:46:10.000Z",
             "2026-11-25T09:46:10.000+00:00",
             "2026-11-25T09:46:10.000z",
             "2026-02-29T09:46:10.000Z",
             "2026-13-01T09:46:10.000Z",
             "2026-00-01T09:46:10.000Z",
             "2026-11-00T09:46:10.000Z",
             "2026-11-25T24:00:00.000Z",
             "2026-11-25T09:60:10.000Z",
             "2026-11-25T09:46:60.000Z",
             "2026-11-25T09:46:10.0000Z",
             " 2026-11-25T09:46:10.000Z",
             "2026-11-25T09:46:1O.000Z",
         }) {
        Instant instant{42ms};
        EXPECT_FALSE(parseInstant(text, instant)) << text;
        EXPECT_EQ(instant, Instant{42ms});
    }
}

// Summer Time Act 1972 section 1 as amended by the Summer Time Order 2002 (SI 2002/262), from memory: one
// hour ahead from 01:00 GMT on the last Sunday of March to 01:00 GMT on the last Sunday of October. In 2026:
// 29 March, 25 October.
TEST(WallTime, followsTheClocksInLondon) {
    struct Case {
        std::string instant;
        std::string wall;
    };
    for (const auto& [instant, wall] : {
             Case{"2026-03-29T00:59:59.999Z", "00:59"},
             Case{"2026-03-29T01:00:00.000Z", "02:00"},
             Case{"2026-07-01T08:46:00.000Z", "09:46"},
             Case{"2026-10-25T00:59:59.999Z", "01:59"},
             Case{"2026-10-25T01:00:00.000Z", "01:00"},
             Case{"2026-11-25T09:46:10.000Z", "09:46"},
         }) {
        EXPECT_EQ(wallTimeText(instantOf(instant)), wall) << instant;
    }
}

TEST(WallTime, ofAZoneThatNobodyKnowsSaysThatItIsUtc) {
    EXPECT_EQ(wallTimeText(instantOf("2026-07-01T08:46:00.000Z"), "Europe/Nowhere"), "08:46Z");
}

TEST(InstantAt, findsTheInstantOfAWallTime) {
    struct Case {
        year_month_day date;
        std::string wall;
        std::string expected;
    };
    using std::chrono::March;
    using std::chrono::November;
    using std::chrono::October;
    for (const auto& [date, wall, expected] : {
             Case{2026y / November / 25, "09:46", "2026-11-25T09:46:00.000Z"},
             Case{2026y / November / 25, "09:46:10", "2026-11-25T09:46:10.000Z"},
             Case{2026y / std::chrono::July / 1, "00:30", "2026-06-30T23:30:00.000Z"},
             Case{2026y / March / 29, "00:59", "2026-03-29T00:59:00.000Z"},
             Case{2026y / March / 29, "02:00", "2026-03-29T01:00:00.000Z"},
             Case{2026y / October / 25, "00:59", "2026-10-24T23:59:00.000Z"},
             Case{2026y / October / 25, "01:30", "2026-10-25T00:30:00.000Z"},  // comes twice: the first
             Case{2026y / October / 25, "02:00", "2026-10-25T02:00:00.000Z"},
         }) {
        Instant instant{};
        ASSERT_TRUE(instantAt(date, wall, instant)) << wall;
        EXPECT_EQ(instantText(instant), expected);
    }
}

TEST(InstantAt, refusesWhatIsNoTime) {
    const year_month_day day = 2026y / std::chrono::November / 25;
    Instant instant{42ms};
    for (const std::string text :
         {"", "9:46", "0946", "24:00", "09:60", "09:46:60", "09:46:1", "09.46", "ab:cd"}) {
        EXPECT_FALSE(instantAt(day, text, instant)) << text;
    }
    EXPECT_FALSE(instantAt(2026y / std::chrono::March / 29, "01:30", instant));  // left out by the clocks
    EXPECT_FALSE(instantAt(2026y / std::chrono::February / 30, "09:46", instant));
    EXPECT_FALSE(instantAt(day, "09:46", instant, "Europe/Nowhere"));
    EXPECT_FALSE(instantAt(day, "09:46", instant, "../../../etc/passwd"));
    EXPECT_EQ(instant, Instant{42ms});
}

TEST(FixedClock, standsUntilItIsMoved) {
    FixedClock clock(instantOf("2026-06-30T22:59:59.000Z"));
    EXPECT_EQ(clock.today("Europe/London"), 2026y / std::chrono::June / 30);
    EXPECT_EQ(clock.elapsed(), 0ms);
    clock.advance(1s);
    EXPECT_EQ(instantText(clock.now()), "2026-06-30T23:00:00.000Z");
    EXPECT_EQ(clock.today("Europe/London"), 2026y / std::chrono::July / 1);  // it is midnight by summer time
    EXPECT_EQ(clock.today("UTC"), 2026y / std::chrono::June / 30);
    EXPECT_EQ(clock.elapsed(), 1s);
    clock.set(instantOf("2026-11-25T09:46:10.000Z"));
    EXPECT_EQ(clock.elapsed(), 1s) << "setting the wall clock is not time passing";
}

TEST(SystemClock, agreesWithTheSystem) {
    const SystemClock clock;
    const auto before = std::chrono::system_clock::now();
    const auto now = clock.now();
    EXPECT_LE(std::chrono::abs(now - before), 5s);
    const auto start = clock.elapsed();
    EXPECT_GE(clock.elapsed(), start);
    // The first figure of /proc/uptime is the seconds since the start, sleep included (proc(5)).
    const double uptime = std::stod(testing::readFile("/proc/uptime"));
    EXPECT_NEAR(static_cast<double>(start.count()) / 1000.0, uptime, 5.0);
}

TEST(SystemClock, todayIsTodayByTheSystemsOwnReckoning) {
    const SystemClock clock;
    const auto ask = [] { return testing::runCommand("TZ=Europe/London date +%F").text; };
    std::string theirs;
    std::string ours;
    do {  // again when midnight falls between the two questions
        theirs = ask();
        ours = instantText(std::chrono::sys_days{clock.today("Europe/London")}).substr(0, 10) + '\n';
    } while (theirs != ask());
    EXPECT_EQ(ours, theirs);
}

}  // namespace
}  // namespace hearth

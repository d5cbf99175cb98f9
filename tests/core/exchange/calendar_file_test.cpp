// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: RFC 5545. Each file is read back by python3-icalendar, which knows nothing of ours.
#include "core/exchange/calendar_file.h"

#include "tests/support/files.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

calendar::Date eventDay(const char* iso) {
    return calendar::fromIso(iso).value();
}
Instant eventNow() {
    Instant now{};
    EXPECT_TRUE(parseInstant("2026-11-25T09:46:10.000Z", now));
    return now;
}

/// What the other library reads, a line an entry.
std::string readBack(const std::string& text) {
    const testing::TempDir folder;
    testing::writeFile(folder / "checks.ics", text);
    const auto said = testing::runCommand("LC_ALL=C.UTF-8 /usr/bin/python3 '" HEARTH_SOURCE_DIR
                                          "/tests/core/exchange/read_calendar.py' '" +
                                          (folder / "checks.ics").string() + "'");
    EXPECT_EQ(said.exitCode, 0) << said.text;
    return said.text;
}

CalendarEvent deadline() {
    CalendarEvent event;
    event.uid = "due-1@hearthledger";
    event.sequence = 7;
    event.summary = "Gas safety check due: 1 Mill Lane, Ashby";
    event.date = eventDay("2026-06-01");
    event.alarmsBefore = {28 * 24 * 60, 7 * 24 * 60};
    return event;
}

TEST(CalendarFile, HoldsADeadlineAsAWholeDayWithAlarms) {
    const auto text = calendarOf({deadline()}, eventNow());
    ASSERT_TRUE(text);
    EXPECT_EQ(readBack(*text),
              "due-1@hearthledger\t7\t2026-06-01\t2026-06-02\tCONFIRMED\t40320,10080\t"
              "Gas safety check due: 1 Mill Lane, Ashby\t\t\n");
}

// 10:00 in Ashby is 09:00 UTC in summer, and 10:00 in winter.
TEST(CalendarFile, HoldsABookingAtItsTimeInUtc) {
    CalendarEvent booking;
    booking.uid = "b@hearthledger";
    booking.summary = "Check";
    booking.date = eventDay("2026-06-01");
    booking.from = "10:00";
    booking.until = "11:30";
    booking.location = "1 Mill Lane, Ashby; QA1 1AA";
    auto winter = booking;
    winter.uid = "w@hearthledger";
    winter.date = eventDay("2026-12-01");
    winter.until.clear();
    winter.cancelled = true;
    winter.alarmsBefore = {60};
    const auto text = calendarOf({booking, winter}, eventNow());
    ASSERT_TRUE(text);
    EXPECT_EQ(
        readBack(*text),
        "b@hearthledger\t0\t2026-06-01T09:00:00+00:00\t2026-06-01T10:30:00+00:00\tCONFIRMED\t\tCheck\t\t"
        "1 Mill Lane, Ashby; QA1 1AA\n"
        "w@hearthledger\t0\t2026-12-01T10:00:00+00:00\t2026-12-01T11:00:00+00:00\tCANCELLED\t\tCheck\t\t"
        "1 Mill Lane, Ashby; QA1 1AA\n");
}

TEST(CalendarFile, KeepsLettersAndLineEndsAndFoldsBetweenLetters) {
    auto event = deadline();
    event.alarmsBefore.clear();
    event.description = "Zofia Wiśniewska; flat 2, „na górze”\nback\\slash";
    for (int i = 0; i < 40; ++i) {
        event.description += "żółć ";
    }
    event.description += ".";
    const auto text = calendarOf({event}, eventNow());
    ASSERT_TRUE(text);
    std::string expected = event.description;
    expected.replace(expected.find('\n'), 1, "|");
    EXPECT_NE(readBack(*text).find("\t" + expected + "\t"), std::string::npos) << *text;
}

TEST(CalendarFile, OfTheSameEntryHasTheSameUidAndALaterSequence) {
    auto event = deadline();
    event.sequence = sequenceAt(eventNow());
    const auto first = readBack(*calendarOf({event}, eventNow()));
    event.date = eventDay("2027-06-01");
    event.sequence = sequenceAt(eventNow() + std::chrono::minutes(1));
    const auto second = readBack(*calendarOf({event}, eventNow()));
    const auto uid = [](const std::string& line) { return line.substr(0, line.find('\t')); };
    const auto sequence = [](const std::string& line) { return std::stoi(line.substr(line.find('\t') + 1)); };
    EXPECT_EQ(uid(first), uid(second));
    EXPECT_EQ(sequence(second), sequence(first) + 1);
    EXPECT_GT(sequence(first), 0);
}

TEST(CalendarFile, RefusesATimeThatIsNone) {
    auto event = deadline();
    event.from = "25:00";
    EXPECT_EQ(calendarOf({event}, eventNow()).error().code, ErrorCode::TimeUnreadable);
    event.from = "01:30";  // left out when the clocks go forward
    event.date = eventDay("2026-03-29");
    EXPECT_EQ(calendarOf({event}, eventNow()).error().code, ErrorCode::TimeUnreadable);
}

TEST(CalendarFile, OfNothingIsStillAFile) {
    const auto text = calendarOf({}, eventNow());
    ASSERT_TRUE(text);
    EXPECT_EQ(readBack(*text), "");
}

}  // namespace
}  // namespace hearth::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/bank_holiday_file.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hearth::exchange {
namespace {

using calendar::BankHoliday;
using calendar::Nation;

calendar::Date holidayDay(const char* iso) {
    return *calendar::fromIso(iso);
}
const calendar::Date kToday = holidayDay("2026-11-25");

/// Our own table in the form in which the government publishes its: the form from memory (GOV.UK, "Bank
/// holidays", JSON); the expected days are those of the Banking and Financial Dealings Act 1971 that
/// tests/core/calendar/bank_holidays_test.cpp holds.
nlohmann::json published() {
    nlohmann::json root;
    const auto add = [&root](const char* division, bool BankHoliday::*nation) {
        auto& one = root[division];
        one["division"] = division;
        for (const auto& holiday : calendar::shippedBankHolidays().holidays) {
            if (holiday.*nation) {
                one["events"].push_back({{"title", holiday.name},
                                         {"date", calendar::isoText(holiday.date)},
                                         {"notes", ""},
                                         {"bunting", true}});
            }
        }
    };
    add("england-and-wales", &BankHoliday::england);
    add("scotland", &BankHoliday::scotland);
    add("northern-ireland", &BankHoliday::northernIreland);
    return root;
}

HolidayFault faultOf(const std::string& bytes) {
    const auto read = readBankHolidayFile(bytes, "a.json", kToday);
    EXPECT_FALSE(read);
    return read ? HolidayFault{HolidayDoubt::TooLarge, "it was read"} : read.error();
}

TEST(BankHolidayFile, IsReadInThePublishedForm) {
    const auto read = readBankHolidayFile(published().dump(), "bank-holidays.json", kToday);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->source, "bank-holidays.json");
    EXPECT_EQ(read->taken, kToday);
    EXPECT_EQ(read->lastYear, 2028);
    EXPECT_EQ(read->holidays.size(), calendar::shippedBankHolidays().holidays.size());
    for (const auto& one : calendar::shippedBankHolidays().holidays) {
        for (const auto nation :
             {Nation::England, Nation::Wales, Nation::Scotland, Nation::NorthernIreland}) {
            EXPECT_EQ(calendar::bankHolidayOn(*read, one.date, nation),
                      calendar::bankHolidayOn(calendar::shippedBankHolidays(), one.date, nation))
                << calendar::isoText(one.date);
        }
    }
}

TEST(BankHolidayFile, IsReadInThePlainForm) {
    auto table = calendar::shippedBankHolidays();
    const auto read = readBankHolidayFile(calendar::bankHolidaysText(table), "a.txt", kToday);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->source, table.source) << "it names its own";
    table.taken = kToday;
    EXPECT_EQ(*read, table);
}

TEST(BankHolidayFile, RefusesWhatIsNoSuchList) {
    EXPECT_EQ(faultOf("").what, HolidayDoubt::YearNotWhole);
    for (const char* bytes : {"{", "[1]", "{\"scotland\"", "dear sirs", "date,name\n"}) {
        EXPECT_EQ(faultOf(bytes).what, HolidayDoubt::NotUnderstood) << bytes;
    }
    EXPECT_EQ(faultOf(std::string(2'000'000, ' ')).what, HolidayDoubt::TooLarge);
    auto root = published();
    root["scotland"]["events"] = "none";
    EXPECT_EQ(faultOf(root.dump()), (HolidayFault{HolidayDoubt::NotUnderstood, "scotland.events"}));
    root = published();
    root["scotland"]["events"][3]["title"] = 7;
    EXPECT_EQ(faultOf(root.dump()), (HolidayFault{HolidayDoubt::NotUnderstood, "scotland.events[3].title"}));
}

TEST(BankHolidayFile, RefusesDoubtfulContents) {
    auto root = published();
    root.erase("northern-ireland");
    EXPECT_EQ(faultOf(root.dump()), (HolidayFault{HolidayDoubt::DivisionMissing, "northern-ireland"}));
    root = published();
    root["scotland"]["events"][0]["date"] = "2025-02-30";
    EXPECT_EQ(faultOf(root.dump()), (HolidayFault{HolidayDoubt::DateUnreadable, "2025-02-30"}));
    root = published();
    root["scotland"]["events"][0]["title"] = "a\nb";
    EXPECT_EQ(faultOf(root.dump()), (HolidayFault{HolidayDoubt::NameMissing, "2025-01-01"}));
    root = published();
    root["scotland"]["events"].push_back(root["scotland"]["events"][0]);
    EXPECT_EQ(faultOf(root.dump()), (HolidayFault{HolidayDoubt::Twice, "2025-01-01 New Year's Day"}));
    root = published();
    auto& welsh = root["england-and-wales"]["events"];
    welsh.erase(welsh.begin() + 9);  // of 2026, the year in which it is taken in
    EXPECT_EQ(faultOf(root.dump()), (HolidayFault{HolidayDoubt::YearNotWhole, "2026"}));
    EXPECT_FALSE(readBankHolidayFile(published().dump(), "a", holidayDay("2029-01-01"))) << "it has ended";
    auto table = calendar::shippedBankHolidays();
    table.lastYear = 2030;
    EXPECT_EQ(faultOf(calendar::bankHolidaysText(table)), (HolidayFault{HolidayDoubt::YearNotWhole, "2029"}));
}

TEST(BankHolidayFile, GoesAsFarAsItIsWhole) {
    auto root = published();
    auto& events = root["england-and-wales"]["events"];
    events.erase(events.end() - 1);  // of 2028: seven are left
    const auto read = readBankHolidayFile(root.dump(), "a.json", kToday);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->lastYear, 2027);
}

}  // namespace
}  // namespace hearth::exchange

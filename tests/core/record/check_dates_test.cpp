// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: a page on the 2018 changes, which quotes regulation 36A(1) and (4) with its example (last
// check 10 February 2018, checked 5 January 2019: next due 10 February 2020); a law firm's article (an early
// check resets).
#include "core/record/check_dates.h"

#include "tests/core/record/sample_kinds.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using reg::Item;

calendar::Date civilDay(const char* iso) {
    return calendar::fromIso(iso).value();
}

struct CheckDatesTest : ::testing::Test {
    reg::VisitFile file = testing::visitOfKind(RecordKind::LandlordSafety);
    reg::SubjectRef boiler = reg::subject(file.appliances[0].id);

    void say(Item item, const char* text) { testing::enter(file, boiler, item, text); }
    CheckDates dates() const { return checkDatesOf(file, file.appliances[0]); }
};

TEST_F(CheckDatesTest, AreThoseOfThePublishedExample) {
    say(Item::CheckedOn, "2019-01-05");
    say(Item::LastCheckCounted, "2018-02-10");
    EXPECT_EQ(dates().checked, civilDay("2019-01-05"));
    EXPECT_EQ(dates().before, civilDay("2019-02-10"));
    EXPECT_TRUE(dates().keepsDeadline);
    EXPECT_EQ(dates().next->date, civilDay("2020-02-10"));
    EXPECT_EQ(dates().copyBy, civilDay("2019-02-02"));  // 28 days of the actual check
}

TEST_F(CheckDatesTest, AnEarlyCheckStartsTwelveMonthsAnew) {
    say(Item::CheckedOn, "2026-03-20");
    say(Item::LastCheckCounted, "2025-06-01");
    EXPECT_FALSE(dates().keepsDeadline);
    EXPECT_EQ(dates().next->date, civilDay("2027-03-20"));
}

TEST_F(CheckDatesTest, CountFromTheVisitAndFromInstallationWhereNothingElseIsSaid) {
    testing::takeOut(file, boiler, Item::CheckedOn);
    testing::takeOut(file, boiler, Item::LastCheckCounted);
    EXPECT_EQ(dates().checked, file.visit.date);
    EXPECT_EQ(dates().before, std::nullopt);
    EXPECT_EQ(dates().next->date, calendar::addMonths(file.visit.date, 12));
    file.appliances[0].installedOn = civilDay("2025-12-10");
    EXPECT_EQ(dates().before, civilDay("2026-12-10"));
    EXPECT_EQ(dates().next->date, civilDay("2027-12-10"));
}

/// The published example's checks as they are kept: 10 February 2018 is the first that is known.
std::vector<CheckHistory> keptChecks(const reg::VisitFile& file) {
    CheckHistory history;
    history.appliance = file.appliances[0].id;
    history.item.checks = {civilDay("2018-02-10"), civilDay("2019-01-05")};
    return {history};
}

TEST_F(CheckDatesTest, ComeFromTheChecksThatAreKept) {
    say(Item::CheckedOn, "2020-02-01");
    testing::takeOut(file, boiler, Item::LastCheckCounted);
    const auto said = checkDatesOf(file, file.appliances[0], keptChecks(file));
    EXPECT_EQ(said.before, civilDay("2020-02-10"));  // kept by the check of 5 January 2019
    EXPECT_TRUE(said.keepsDeadline);
    EXPECT_EQ(said.next->date, civilDay("2021-02-10"));
    EXPECT_FALSE(said.nextByEntry);
}

TEST_F(CheckDatesTest, AnEntryThatSaysAnotherDateIsShownBeside) {
    say(Item::CheckedOn, "2019-12-20");
    say(Item::LastCheckCounted, "2019-01-05");  // the check itself: its deadline was kept to 10 February
    auto said = checkDatesOf(file, file.appliances[0], keptChecks(file));
    EXPECT_EQ(said.before, civilDay("2020-02-10"));
    EXPECT_EQ(said.next->date, civilDay("2021-02-10"));
    ASSERT_TRUE(said.nextByEntry);
    EXPECT_EQ(said.nextByEntry->date, civilDay("2021-01-05"));
    say(Item::LastCheckCounted, "2019-02-10");  // what it counted for
    said = checkDatesOf(file, file.appliances[0], keptChecks(file));
    EXPECT_EQ(said.next->date, civilDay("2021-02-10"));
    EXPECT_FALSE(said.nextByEntry) << "both say the same";
}

TEST_F(CheckDatesTest, WithNothingKeptOfTheApplianceTheEntryDecides) {
    say(Item::CheckedOn, "2019-01-05");
    say(Item::LastCheckCounted, "2018-02-10");
    auto kept = keptChecks(file);
    kept[0].item.checks.clear();
    EXPECT_EQ(checkDatesOf(file, file.appliances[0], kept).next->date, civilDay("2020-02-10"));
    kept[0].item.checks = {civilDay("2018-06-01")};
    kept[0].appliance = {};
    EXPECT_EQ(checkDatesOf(file, file.appliances[0], kept).next->date, civilDay("2020-02-10"));
}

TEST_F(CheckDatesTest, OnlyLookedAtIsNoCheckAndLeavesTheDeadline) {
    say(Item::LastCheckCounted, "2026-01-10");
    say(Item::ApplianceInspected, "visual_only");
    EXPECT_EQ(dates().next->date, civilDay("2027-01-10"));
    file.appliances[0].owner = reg::Owner::Tenant;
    EXPECT_EQ(dates().next, std::nullopt);
    EXPECT_TRUE(dates().checked.has_value());
    say(Item::ApplianceInspected, "not_inspected");
    EXPECT_EQ(dates().checked, std::nullopt);
}

TEST_F(CheckDatesTest, NorthernIrelandHasNoWindow) {
    EXPECT_EQ(checkLawOf(reg::Country::Wales), calendar::CheckLaw::GreatBritain);
    file.premises.country = reg::Country::NorthernIreland;
    say(Item::CheckedOn, "2019-01-05");
    say(Item::LastCheckCounted, "2018-02-10");
    EXPECT_FALSE(dates().keepsDeadline);
    EXPECT_EQ(dates().next->date, civilDay("2020-01-05"));
}

// Regulation 36(3)(c)(i): the date on which each appliance was checked.
TEST_F(CheckDatesTest, AreStatedOfEachApplianceThatWasInspected) {
    say(Item::ApplianceInspected, "inspected");
    say(Item::CheckedOn, "2026-04-15");
    say(Item::LastCheckCounted, "2025-06-01");
    const auto stated = [&](RecordKind kind) {
        std::vector<MadeCheck> ofBoiler;
        for (const auto& check : checksStatedBy(kind, file)) {
            if (check.appliance == file.appliances[0].id) {
                ofBoiler.push_back(check);
            }
        }
        return ofBoiler;
    };
    const MadeCheck made{file.appliances[0].id, civilDay("2026-04-15"), civilDay("2025-06-01")};
    EXPECT_EQ(stated(RecordKind::LandlordSafety), std::vector{made});
    EXPECT_EQ(stated(RecordKind::OwnerSafety), std::vector{made});
    EXPECT_TRUE(stated(RecordKind::TightnessAndPurge).empty());
    EXPECT_TRUE(stated(RecordKind::ReminderLetter).empty());
    say(Item::ApplianceInspected, "visual_only");
    EXPECT_TRUE(stated(RecordKind::LandlordSafety).empty());
}

}  // namespace
}  // namespace hearth::record

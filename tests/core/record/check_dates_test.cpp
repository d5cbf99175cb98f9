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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/worksheet.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using reg::Item;

const calendar::Date kToday{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

TEST(Worksheet, keepsWhatWasTypedToTheLetter) {
    Worksheet sheet(Question::GasRate, kToday);
    EXPECT_TRUE(sheet.isEmpty());
    sheet.put(Group::Once, 0, Item::RateTime, "12o");
    ASSERT_NE(sheet.find(Group::Once, 0, Item::RateTime), nullptr);
    EXPECT_EQ(sheet.find(Group::Once, 0, Item::RateTime)->text, "12o");
    EXPECT_TRUE(sheet.readings(Group::Once).duration(Item::RateTime).unreadable);
    sheet.put(Group::Once, 0, Item::RateTime, "2,0", quantity::UnitCode::Minute);
    const auto time = sheet.readings(Group::Once).duration(Item::RateTime);
    ASSERT_TRUE(time);
    EXPECT_DOUBLE_EQ(time->value.in(quantity::kSecond), 120.0);
    EXPECT_DOUBLE_EQ(time->digit.in(quantity::kSecond), 6.0);
    sheet.put(Group::Once, 0, Item::RateTime, "  ");
    EXPECT_TRUE(sheet.isEmpty());
}

TEST(Worksheet, rowsAreKeptApart) {
    Worksheet sheet(Question::RoomCo, kToday);
    EXPECT_EQ(sheet.rows(Group::Reading), 0);
    sheet.put(Group::Reading, 0, Item::RoomCo, "3");
    sheet.put(Group::Reading, 2, Item::RoomCo, "9");
    EXPECT_EQ(sheet.rows(Group::Reading), 3);
    EXPECT_EQ(sheet.rows(Group::Once), 0);
    EXPECT_TRUE(sheet.holdsAny(Group::Reading, 2));
    EXPECT_FALSE(sheet.holdsAny(Group::Reading, 1));
    EXPECT_FALSE(sheet.holdsAny(Group::Once, 2));
    EXPECT_FALSE(sheet.readings(Group::Reading, 1).share(Item::RoomCo).isEntered());
    EXPECT_DOUBLE_EQ(sheet.readings(Group::Reading, 2).share(Item::RoomCo)->value.in(quantity::kPpm), 9.0);
}

TEST(Worksheet, asksOnlyWhatTheChoiceNeeds) {
    Worksheet sheet(Question::GasRate, kToday);
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::RateIndexStart));
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::RateDial));
    sheet.put(Group::Once, 0, Item::RateMeter, std::string(reg::choice::kImperial));
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::RateIndexStart));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::RateDial));
    sheet.put(Group::Once, 0, Item::RateIndexStart, "1.2");
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::RateIndexStart)) << "what was typed never vanishes";
}

TEST(Worksheet, asksForAMixtureOnlyWhereOneIsTyped) {
    Worksheet sheet(Question::Gas, kToday);
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::GasMethane));
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::GasLpgShare));
    sheet.put(Group::Once, 0, Item::GasMix, std::string(reg::choice::kTyped));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::GasMethane));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::GasOxygen));
    sheet.put(Group::Once, 0, Item::GasFamily, std::string(reg::choice::kLpgAir));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::GasLpgShare));
}

TEST(Worksheet, asksWhyOnlyWhereNeitherPressureNorHeatInputWasTaken) {
    Worksheet sheet(Question::Regulation26, kToday);
    const std::string notTaken(reg::choice::kNotTaken);
    sheet.put(Group::Once, 0, Item::ExaminedPressure, notTaken);
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::WhyNeither));
    sheet.put(Group::Once, 0, Item::ExaminedHeatInput, notTaken);
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::WhyNeither));
    EXPECT_FALSE(sheet.isAsked(Group::Once, 0, Item::WhyNeitherTaken));
    sheet.put(Group::Once, 0, Item::WhyNeither, std::string(reg::choice::kOther));
    EXPECT_TRUE(sheet.isAsked(Group::Once, 0, Item::WhyNeitherTaken));
}

// Source: ideal gas; 1.164 mg/m3 a ppm at 20 degrees C (facts' derivation; EH40's 23 and 117 mg/m3 for 20 and
// 100 ppm).
TEST(Worksheet, takesAMassOfCarbonMonoxideAtTwentyDegrees) {
    Worksheet sheet(Question::RoomCo, kToday);
    sheet.put(Group::Reading, 0, Item::RoomCo, "117", quantity::UnitCode::MilligramPerCubicMetre);
    EXPECT_NEAR(sheet.readings(Group::Reading, 0).trace(Item::RoomCo)->value.in(quantity::kPpm), 100.0, 0.6);
    EXPECT_TRUE(sheet.readings(Group::Reading, 0).share(Item::RoomCo).unreadable);
}

}  // namespace
}  // namespace hearth::judging

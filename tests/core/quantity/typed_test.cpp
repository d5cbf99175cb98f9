// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/typed.h"

#include <array>
#include <gtest/gtest.h>
#include <random>

namespace hearth::quantity {
namespace {

TEST(ParseTyped, splitsNumberAndUnit) {
    struct Case {
        std::string_view typed;
        UnitFamily family;
        std::string_view text;
        UnitCode unit;
    };
    using enum UnitFamily;
    for (const auto& [typed, family, text, unit] : {
             Case{"20,7 mbar", Pressure, "20,7", UnitCode::Millibar},
             Case{"20.70", Pressure, "20.70", UnitCode::Millibar},  // the family's default
             Case{" 20.70 ", Pressure, "20.70", UnitCode::Millibar},
             Case{"8.3in wg", Pressure, "8.3", UnitCode::InchWater},
             Case{"8.3 In. W.G.", Pressure, "8.3", UnitCode::InchWater},
             Case{"8.3\"", Pressure, "8.3", UnitCode::InchWater},
             Case{"8.3 inH2O", Pressure, "8.3", UnitCode::InchWater},
             Case{"211mm wg", Pressure, "211", UnitCode::MillimetreWater},
             Case{"2 KPA", Pressure, "2", UnitCode::Kilopascal},
             Case{"2100 pa", Pressure, "2100", UnitCode::Pascal},
             Case{"0.02bar", Pressure, "0.02", UnitCode::Bar},
             Case{"\u22120.04\u00A0mbar", Pressure, "\u22120.04", UnitCode::Millibar},
             Case{"+0.04mb", Pressure, "+0.04", UnitCode::Millibar},
             Case{"9.4 L", Volume, "9.4", UnitCode::Litre},
             Case{"9.4 litres", Volume, "9.4", UnitCode::Litre},
             Case{"0.008 m3", Volume, "0.008", UnitCode::CubicMetre},
             Case{"0.008 m\u00B3", Volume, "0.008", UnitCode::CubicMetre},
             Case{"0.35 cu ft", Volume, "0.35", UnitCode::CubicFoot},
             Case{"9 m", Length, "9", UnitCode::Metre},
             Case{"450mm", Length, "450", UnitCode::Millimetre},
             Case{"30 ft", Length, "30", UnitCode::Foot},
             Case{"2 min", Time, "2", UnitCode::Minute},
             Case{"120", Time, "120", UnitCode::Second},
             Case{"90 secs", Time, "90", UnitCode::Second},
             Case{"6 m3/h", Flow, "6", UnitCode::CubicMetrePerHour},
             Case{"1.5 l/h", Flow, "1.5", UnitCode::LitrePerHour},
             Case{"21 C", Temperature, "21", UnitCode::Celsius},
             Case{"21\u00B0", Temperature, "21", UnitCode::Celsius},
             Case{"21 \u00B0C", Temperature, "21", UnitCode::Celsius},
             Case{"294 K", Temperature, "294", UnitCode::Kelvin},
             Case{"0.07", TemperatureChange, "0.07", UnitCode::Kelvin},
             Case{"3", None, "3", UnitCode::None},
         }) {
        const auto read = parseTyped(typed, family);
        ASSERT_TRUE(read) << typed << ": " << codeText(read.error().code);
        EXPECT_EQ(read->text, text) << typed;
        EXPECT_EQ(unitText(read->unit), unitText(unit)) << typed;
        EXPECT_TRUE(read->value()) << typed;
    }
}

TEST(ParseTyped, saysWhatIsWrong) {
    struct Case {
        std::string_view typed;
        UnitFamily family;
        Error error;
    };
    using enum UnitFamily;
    for (const auto& [typed, family, error] : {
             Case{"", Pressure, {ErrorCode::NumberMissing}},
             Case{"  ", Pressure, {ErrorCode::NumberMissing}},
             Case{"mbar", Pressure, {ErrorCode::NumberMissing}},
             Case{"abc", Pressure, {ErrorCode::NumberUnreadable, {"abc"}}},
             Case{"20 psi", Pressure, {ErrorCode::UnitUnknown, {"psi"}}},
             Case{"20 l", Pressure, {ErrorCode::UnitUnknown, {"l"}}},  // a unit of another family
             Case{"20 mbar x", Pressure, {ErrorCode::UnitUnknown, {"mbar x"}}},
             Case{"20 mbar 3", Pressure, {ErrorCode::UnitUnknown, {"mbar 3"}}},
             Case{"3 m", None, {ErrorCode::UnitUnknown, {"m"}}},
             Case{"1e3", Pressure, {ErrorCode::UnitUnknown, {"e3"}}},
             Case{"1 234 mbar", Pressure, {ErrorCode::NumberAmbiguous, {"1 234"}}},
             Case{"1,234.5 mbar", Pressure, {ErrorCode::NumberAmbiguous, {"1,234.5"}}},
             Case{"20-21 mbar", Pressure, {ErrorCode::NumberUnreadable, {"20-21"}}},
             Case{"- mbar", Pressure, {ErrorCode::NumberUnreadable, {"-"}}},
             Case{"1234567890123456 Pa", Pressure, {ErrorCode::NumberTooLong, {"1234567890123456"}}},
         }) {
        const auto read = parseTyped(typed, family);
        ASSERT_FALSE(read) << typed;
        EXPECT_EQ(codeText(read.error().code), codeText(error.code)) << typed;
        EXPECT_EQ(read.error().details, error.details) << typed;
    }
}

TEST(Typed, keepsWhatItCannotRead) {
    const Typed typed{"about 20", UnitCode::Millibar};
    EXPECT_EQ(typed.text, "about 20");
    EXPECT_FALSE(typed.value());
    EXPECT_EQ((Typed{"20,70", UnitCode::Millibar}.value()), Decimal(2070, 2));
}

TEST(Show, isOneFormForAllPlaces) {
    EXPECT_EQ(show({Decimal(2070, 2), UnitCode::Millibar}), "20.70\u00A0mbar");
    EXPECT_EQ(show({Decimal(-3, 2), UnitCode::Millibar}), "\u22120.03\u00A0mbar");
    EXPECT_EQ(show({Decimal(9386, 6), UnitCode::CubicMetre}), "0.009386\u00A0m\u00B3");
    EXPECT_EQ(show({Decimal(2070, 2), UnitCode::Millibar}, DecimalMark::Comma), "20,70\u00A0mbar");
    EXPECT_EQ(show({Decimal(4, 2), UnitCode::Millibar}, DecimalMark::Point, Sign::Always), "+0.04\u00A0mbar");
    EXPECT_EQ(show({Decimal(-4, 2), UnitCode::Millibar}, DecimalMark::Point, Sign::Always),
              "\u22120.04\u00A0mbar");
    EXPECT_EQ(show({Decimal(3, 0), UnitCode::None}), "3");
}

/// What the program shows can be typed back, in every unit, with either mark and either sign.
TEST(TypedProperty, whatIsShownCanBeTyped) {
    std::mt19937_64 random(20);
    for (const UnitFamily family :
         {UnitFamily::None, UnitFamily::Pressure, UnitFamily::Volume, UnitFamily::Length, UnitFamily::Time,
          UnitFamily::Flow, UnitFamily::Temperature, UnitFamily::TemperatureChange}) {
        for (const UnitCode unit : unitsOf(family)) {
            for (int i = 0; i < 500; ++i) {
                const auto mantissa = static_cast<std::int64_t>(random() % 2'000'000) - 1'000'000;
                const Figure figure{Decimal(mantissa, static_cast<int>(random() % 7)), unit};
                const auto mark = random() % 2 == 0 ? DecimalMark::Point : DecimalMark::Comma;
                const auto sign = random() % 2 == 0 ? Sign::WhenNegative : Sign::Always;
                const std::string shown = show(figure, mark, sign);
                const auto read = parseTyped(shown, family);
                ASSERT_TRUE(read) << shown;
                ASSERT_EQ(read->unit, unit) << shown;
                ASSERT_EQ(read->value().value().text(), figure.value.text()) << shown;
            }
        }
    }
}

/// Stable texts, as files and exports hold them, are understood too.
TEST(TypedProperty, everyStableTextIsUnderstood) {
    for (const UnitFamily family :
         {UnitFamily::Pressure, UnitFamily::Volume, UnitFamily::Length, UnitFamily::Time, UnitFamily::Flow,
          UnitFamily::Temperature, UnitFamily::TemperatureChange}) {
        for (const UnitCode unit : unitsOf(family)) {
            const auto read = parseTyped("1.5 " + std::string(unitText(unit)), family);
            ASSERT_TRUE(read) << unitText(unit);
            EXPECT_EQ(read->unit, unit);
        }
    }
}

}  // namespace
}  // namespace hearth::quantity

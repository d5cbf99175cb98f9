// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/decimal.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>
#include <limits>
#include <ostream>
#include <random>

namespace hearth::quantity {

void PrintTo(const Decimal& number, std::ostream* out) {
    *out << number.text();
}

namespace {

Decimal decimal(std::string_view text) {
    return Decimal::parse(text).value();
}

TEST(DecimalParse, readsWhatPeopleType) {
    struct Case {
        std::string_view typed;
        std::int64_t mantissa;
        int decimals;
    };
    for (const auto& [typed, mantissa, decimals] : {
             Case{"20.70", 2070, 2},  // the last zero says how finely the gauge reads
             Case{"20,70", 2070, 2},
             Case{"  20.7\t", 207, 1},
             Case{"\u00A020.7\u202F", 207, 1},
             Case{"-0.04", -4, 2},
             Case{"\u22120,04", -4, 2},
             Case{"+0.04", 4, 2},
             Case{".5", 5, 1},
             Case{"5.", 5, 0},
             Case{"1,234", 1234, 3},  // a comma is a decimal mark, never a thousands separator
             Case{"007", 7, 0},
             Case{"-0", 0, 0},
             Case{"0000000000000000000001", 1, 0},
             Case{"123456789012345", 123456789012345, 0},
             Case{"0.123456789012345", 123456789012345, 15},
             Case{"999999999999999", 999999999999999, 0},
         }) {
        const auto number = Decimal::parse(typed);
        ASSERT_TRUE(number) << typed;
        EXPECT_EQ(number->mantissa(), mantissa) << typed;
        EXPECT_EQ(number->decimals(), decimals) << typed;
    }
}

TEST(DecimalParse, saysWhatIsWrong) {
    struct Case {
        std::string_view typed;
        ErrorCode code;
    };
    for (const auto& [typed, code] : {
             Case{"", ErrorCode::NumberMissing},
             Case{" \u00A0\t", ErrorCode::NumberMissing},
             Case{"-", ErrorCode::NumberUnreadable},
             Case{".", ErrorCode::NumberUnreadable},
             Case{",,", ErrorCode::NumberUnreadable},
             Case{"abc", ErrorCode::NumberUnreadable},
             Case{"20.7x", ErrorCode::NumberUnreadable},
             Case{"1e3", ErrorCode::NumberUnreadable},
             Case{"0x1F", ErrorCode::NumberUnreadable},
             Case{"--1", ErrorCode::NumberUnreadable},
             Case{"- 1", ErrorCode::NumberUnreadable},
             Case{"1-", ErrorCode::NumberUnreadable},
             Case{"nan", ErrorCode::NumberUnreadable},
             Case{"inf", ErrorCode::NumberUnreadable},
             Case{"\u0662\u0660", ErrorCode::NumberUnreadable},  // digits of another script
             Case{"\xFF", ErrorCode::NumberUnreadable},          // not UTF-8
             Case{"1,234.5", ErrorCode::NumberAmbiguous},
             Case{"1.234,5", ErrorCode::NumberAmbiguous},
             Case{"1.2.3", ErrorCode::NumberAmbiguous},
             Case{"1 234", ErrorCode::NumberAmbiguous},
             Case{"1\u202F234", ErrorCode::NumberAmbiguous},
             Case{"20 .7", ErrorCode::NumberAmbiguous},
             Case{"1234567890123456", ErrorCode::NumberTooLong},
             Case{"1.234567890123456", ErrorCode::NumberTooLong},
             Case{"0.0000000000000001", ErrorCode::NumberTooLong},
         }) {
        const auto number = Decimal::parse(typed);
        ASSERT_FALSE(number) << typed;
        EXPECT_EQ(codeText(number.error().code), codeText(code)) << typed;
        if (code != ErrorCode::NumberMissing) {
            EXPECT_EQ(number.error().details, std::vector{std::string(typed)});
        }
    }
}

TEST(DecimalText, isCanonical) {
    EXPECT_EQ(Decimal().text(), "0");
    EXPECT_EQ(Decimal(2070, 2).text(), "20.70");
    EXPECT_EQ(Decimal(-4, 2).text(), "-0.04");
    EXPECT_EQ(Decimal(-4, 0).text(), "-4");
    EXPECT_EQ(Decimal(5, 15).text(), "0.000000000000005");
    EXPECT_EQ(decimal("-0.00").text(), "0.00");
}

std::int64_t anyMantissa(std::mt19937_64& random) {
    constexpr std::int64_t kMost = 999'999'999'999'999;
    std::int64_t mantissa = std::uniform_int_distribution<std::int64_t>(-kMost, kMost)(random);
    for (auto cuts = random() % 15; cuts > 0; --cuts) {  // numbers of every length, not only long ones
        mantissa /= 10;
    }
    return mantissa;
}

/// Text -> number -> text gives the text again, for every number of up to 15 digits.
TEST(DecimalProperty, roundTrips) {
    std::mt19937_64 random(15);
    for (int i = 0; i < 20'000; ++i) {
        const std::int64_t mantissa = anyMantissa(random);
        const int decimals = static_cast<int>(random() % 16);
        const std::string text = Decimal(mantissa, decimals).text();
        const auto read = Decimal::parse(text);
        ASSERT_TRUE(read) << text;
        ASSERT_EQ(read->text(), text);
        ASSERT_EQ(read->mantissa(), mantissa) << text;
        ASSERT_EQ(read->decimals(), decimals) << text;
        ASSERT_EQ(read->toDouble(), std::strtod(text.c_str(), nullptr))
            << text;  // the C library as the reference
    }
}

TEST(DecimalProperty, roundingWhatADoubleCarriesGivesTheDecimalBack) {
    std::mt19937_64 random(754);
    for (int i = 0; i < 20'000; ++i) {
        const Decimal number(anyMantissa(random), static_cast<int>(random() % 10));
        ASSERT_EQ(Decimal::rounded(number.toDouble(), number.decimals()).text(), number.text());
    }
}

// Against the C library's own decimal conversion; where the two may differ, at halves, the cases below
// decide.
TEST(DecimalRounded, agreesWithTheCLibraryAwayFromHalves) {
    std::mt19937_64 random(20261125);
    for (int round = 0; round < 20000; ++round) {
        const double magnitude = std::pow(10.0, std::uniform_real_distribution<double>(-6, 11)(random));
        const double value = round % 2 == 0 ? magnitude : -magnitude;
        const int decimals = std::uniform_int_distribution<int>(0, 6)(random);
        const double scaled = magnitude * std::pow(10.0, decimals);
        if (scaled > 1e11 || std::fabs(scaled - std::floor(scaled) - 0.5) < 1e-3) {
            continue;
        }
        std::array<char, 64> expected{};
        std::snprintf(expected.data(), expected.size(), "%.*f", decimals, value);
        const auto rounded = Decimal::rounded(value, decimals);
        const std::string text = rounded.mantissa() == 0 && value < 0 ? "-" + rounded.text() : rounded.text();
        ASSERT_EQ(text, expected.data());
    }
}

TEST(DecimalRounded, takesHalvesAwayFromZero) {
    struct Case {
        double value;
        int decimals;
        std::string_view expected;
    };
    for (const auto& [value, decimals, expected] : {
             Case{0.5, 0, "1"},
             Case{-0.5, 0, "-1"},
             Case{1.5, 0, "2"},
             Case{2.5, 0, "3"},  // not to the even one
             Case{0.045, 2, "0.05"},
             Case{1.005, 2, "1.01"},  // the double nearest to 1.005 is a little below it
             Case{-1.005, 2, "-1.01"},
             Case{2.675, 2, "2.68"},
             Case{0.0449, 2, "0.04"},
             Case{0.004, 2, "0.00"},
             Case{-0.004, 2, "0.00"},  // no minus before nothing
             Case{0.1 + 0.2, 2, "0.30"},
             Case{20.71 - 20.67, 2, "0.04"},
             Case{0.009386, 6, "0.009386"},
             Case{1e-300, 6, "0.000000"},
             Case{0.0, 3, "0.000"},
             Case{123456.0, 0, "123456"},
             Case{1e15, 2, "1000000000000000.00"},
             Case{99.995, 2, "100.00"},
         }) {
        EXPECT_EQ(Decimal::rounded(value, decimals).text(), expected) << value;
    }
}

#ifdef NDEBUG
TEST(DecimalRounded, whatIsPastAllReasonNeverLooksPlausible) {
    for (const double value :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        EXPECT_EQ(Decimal::rounded(value, 2).text(), "9999999999999999.99");
    }
}
#else
TEST(DecimalRoundedDeathTest, whatIsNotANumberIsABug) {
    EXPECT_DEATH((void)Decimal::rounded(std::numeric_limits<double>::quiet_NaN(), 2), "isfinite");
}
#endif

TEST(DecimalRounded, aValueTooLargeToHoldIsShownAsNines) {
    EXPECT_EQ(Decimal::rounded(1e30, 2).text(), "9999999999999999.99");
    EXPECT_EQ(Decimal::rounded(-1e30, 0).text(), "-999999999999999999");
}

TEST(DecimalDifference, isExact) {
    struct Case {
        std::string_view a;
        std::string_view b;
        std::string_view expected;
    };
    for (const auto& [a, b, expected] : {
             Case{"20.71", "20.67", "0.04"},  // in doubles it is 0.03999999999999915
             Case{"20.67", "20.71", "-0.04"}, Case{"9.02", "9.00", "0.02"},
             Case{"20.7", "20.70", "0.00"},  // as fine as the finer of the two
             Case{"1", "0.999999999999999", "0.000000000000001"},
             Case{"-999999999999999", "999999999999999", "-1999999999999998"},
             Case{"999999999999999", "0.000000000000001", "999999999999999.000"},  // 30 digits do not fit
         }) {
        EXPECT_EQ((decimal(a) - decimal(b)).text(), expected) << a << " - " << b;
    }
}

TEST(DecimalOrder, isByValue) {
    EXPECT_EQ(decimal("20.7"), decimal("20.70"));
    EXPECT_EQ(decimal("-0.0"), decimal("0"));
    EXPECT_LT(decimal("20.69"), decimal("20.7"));
    EXPECT_LT(decimal("-1"), decimal("0.000000000000001"));
    EXPECT_GT(decimal("999999999999999"), decimal("0.999999999999999"));
    EXPECT_LT(decimal("-999999999999999"), decimal("-999999999999998"));
}

TEST(DecimalLastDigit, isOneStepOfTheDisplay) {
    EXPECT_EQ(decimal("20.70").lastDigit(), 0.01);
    EXPECT_EQ(decimal("20").lastDigit(), 1.0);
    EXPECT_EQ(decimal("0.0001").lastDigit(), 0.0001);
}

}  // namespace
}  // namespace hearth::quantity

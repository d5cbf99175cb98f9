// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/checks.h"

#include "core/register/forms.h"

#include <array>
#include <gtest/gtest.h>

namespace hearth::reg {
namespace {

using rulebook::Gas;
using Code = std::optional<std::string>;
using Doubted = std::optional<Doubt>;

// "Meter Point Reference Number" (public encyclopaedia's page): 3938424403; the second number stands in a
// public repository's tests, unconnected with the first. The wrong ones by hand with the published rule.
TEST(DoubtOfMprn, warnsOfWhatDoesNotCheck) {
    EXPECT_EQ(doubtOfMprn("3938424403", Gas::NaturalGas), Doubted());
    EXPECT_EQ(doubtOfMprn(" 3226 987202 ", Gas::NaturalGas), Doubted());
    EXPECT_EQ(doubtOfMprn("", Gas::NaturalGas), Doubted());
    EXPECT_EQ(doubtOfMprn("", Gas::Propane), Doubted());
    EXPECT_EQ(doubtOfMprn("1234567890", Gas::NaturalGas), Doubted(Doubt::MprnCheckDigits));
    EXPECT_EQ(doubtOfMprn("3938424430", Gas::NaturalGas), Doubted(Doubt::MprnCheckDigits));
    EXPECT_EQ(doubtOfMprn("3938424304", Gas::NaturalGas), Doubted(Doubt::MprnCheckDigits));
    EXPECT_EQ(doubtOfMprn("39384O4403", Gas::NaturalGas), Doubted(Doubt::MprnForm));
    EXPECT_EQ(doubtOfMprn("12345", Gas::NaturalGas), Doubted(Doubt::MprnLength));
    EXPECT_EQ(doubtOfMprn("393842440312", Gas::NaturalGas), Doubted(Doubt::MprnLength));
    EXPECT_EQ(doubtOfMprn("3938424403", Gas::Propane), Doubted(Doubt::MprnOfLpg));
}

// A law of the formula for ten digits: the weights 8 to 1 have no factor in common with 11, so each wrong
// digit of the body shows.
TEST(DoubtOfMprn, findsEveryWrongDigit) {
    const std::string good = "3938424403";
    for (std::size_t at = 0; at < good.size(); ++at) {
        for (char digit = '0'; digit <= '9'; ++digit) {
            std::string wrong = good;
            wrong[at] = digit;
            EXPECT_EQ(doubtOfMprn(wrong, Gas::NaturalGas).has_value(), wrong != good) << wrong;
        }
    }
}

TEST(DoubtOfPostcode, warnsOfWhatHasNoneOfItsForms) {
    for (const auto* code : {"EC1A 1BB", "ec1a1bb", " M1 1AA ", "GIR 0AA", "BFPO 57", ""}) {
        EXPECT_EQ(doubtOfPostcode(code), Doubted()) << code;
    }
    for (const auto* code : {"Q1 1AA", "EC1C 1BB", "M1 1CA", "M1", "BFPO", "the farm"}) {
        EXPECT_EQ(doubtOfPostcode(code), Doubted(Doubt::PostcodeForm)) << code;
    }
}

struct Number {
    const char* typed;
    const char* e164;
    const char* national;
};
// Ranges that the regulator keeps for drama, so that nobody is rung (from memory), in each layout.
constexpr std::array kNumbers{
    Number{"01632 960123", "+441632960123", "01632 960123"},
    Number{"(01632) 960-123", "+441632960123", "01632 960123"},
    Number{"+44 (0)1632 960123", "+441632960123", "01632 960123"},
    Number{"0044 1632 960 123", "+441632960123", "01632 960123"},
    Number{"02079460123", "+442079460123", "020 7946 0123"},
    Number{"01134960123", "+441134960123", "0113 496 0123"},
    Number{"01214960123", "+441214960123", "0121 496 0123"},
    Number{"07700 900123", "+447700900123", "07700 900123"},
    Number{"08081570123", "+448081570123", "0808 157 0123"},
    Number{"0800 123456", "+44800123456", "0800 123456"},  // nine digits
    Number{"016977 2345", "+44169772345", "016977 2345"},  // five and four
    Number{"+353 1 234 5678", "+35312345678", "+35312345678"},
};

TEST(Telephones, areKeptAsE164AndShownAsAtHome) {
    for (const auto& number : kNumbers) {
        EXPECT_EQ(telephoneE164(number.typed), Code(number.e164)) << number.typed;
        EXPECT_EQ(telephoneNational(number.e164), number.national);
        EXPECT_EQ(telephoneE164(telephoneNational(number.e164)), Code(number.e164));
        EXPECT_EQ(doubtOfTelephone(number.typed), Doubted());
    }
    EXPECT_EQ(doubtOfTelephone(""), Doubted());
    for (const auto* typed : {"1632 960123", "01632 960123 ext 4", "ring the office", "+44", "0"}) {
        EXPECT_EQ(doubtOfTelephone(typed), Doubted(Doubt::TelephoneForm)) << typed;
        EXPECT_EQ(telephoneNational(typed), typed);
    }
}

TEST(GcNumbers, haveSevenDigits) {
    EXPECT_EQ(gcNumberOf("4712345"), Code("47-123-45"));
    EXPECT_EQ(gcNumberOf("47-123-45"), Code("47-123-45"));
    EXPECT_EQ(gcNumberOf("47 123 45"), Code("47-123-45"));
    EXPECT_EQ(doubtOfGcNumber(""), Doubted());
    EXPECT_EQ(doubtOfGcNumber("47-123-45"), Doubted());
    EXPECT_EQ(doubtOfGcNumber("47-123-456"), Doubted(Doubt::GcNumberForm));
    EXPECT_EQ(doubtOfGcNumber("47-12A-45"), Doubted(Doubt::GcNumberForm));
}

// 100023336956 is the number that "Unique Property Reference Number" (public encyclopaedia's page) shows.
TEST(Uprns, haveUpToTwelveDigits) {
    EXPECT_EQ(doubtOfUprn("100023336956"), Doubted());
    EXPECT_EQ(doubtOfUprn("1"), Doubted());
    EXPECT_EQ(doubtOfUprn(""), Doubted());
    EXPECT_EQ(doubtOfUprn("1000233369561"), Doubted(Doubt::UprnForm));
    EXPECT_EQ(doubtOfUprn("10002333695X"), Doubted(Doubt::UprnForm));
}

}  // namespace
}  // namespace hearth::reg

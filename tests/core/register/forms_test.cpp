// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/forms.h"

#include <gtest/gtest.h>
#include <vector>

namespace hearth::reg {
namespace {

/// Forms: BS 7666 PostCodeType schema; each sample is a district that its rule is explained by.
TEST(Forms, knowPostcodes) {
    for (const auto& [typed, read] :
         std::vector<std::pair<std::string, std::string>>{{"m1 1aa", "M1 1AA"},
                                                          {"M60 1NW", "M60 1NW"},
                                                          {"CR26XH", "CR2 6XH"},
                                                          {"dn55 1pt", "DN55 1PT"},
                                                          {"W1A 1HQ", "W1A 1HQ"},
                                                          {"N1P 1AA", "N1P 1AA"},
                                                          {"ec1a1bb", "EC1A 1BB"},
                                                          {"GIR 0AA", "GIR 0AA"},
                                                          {"LS1-4AB", "LS1 4AB"}}) {
        EXPECT_EQ(postcodeIn(typed), read) << typed;
    }
    for (const std::string typed : {"", "LS1", "QS1 4AB", "LI1 4AB", "LS1 4CB", "LS1 4AK", "W1Z 1HQ",
                                    "EC1C 1BB", "LS123 4AB", "LS1 44B", "12345", "LS1 4AB, UK"}) {
        EXPECT_EQ(postcodeIn(typed), std::nullopt) << typed;
    }
}

/// ITU-T E.164; UK numbering plan: 10 digits after the 0, in some places 9 (016977 1234; 0800 1111 has 7 and
/// is no number to reach a customer by). The numbers are those kept for drama by the regulator.
TEST(Forms, knowTelephoneNumbers) {
    for (const auto& [typed, read] :
         std::vector<std::pair<std::string, std::string>>{{"0113 496 0000", "+441134960000"},
                                                          {"(0113) 496-0000", "+441134960000"},
                                                          {"+44 (0)113 496 0000", "+441134960000"},
                                                          {"+44 113 496 0000", "+441134960000"},
                                                          {"0044 113 496 0000", "+441134960000"},
                                                          {"07700 900123", "+447700900123"},
                                                          {"016977 1234", "+44169771234"},
                                                          {"+353 1 496 0000", "+35314960000"},
                                                          {"+48 22 123 45 67", "+48221234567"}}) {
        EXPECT_EQ(telephoneE164(typed), read) << typed;
    }
    for (const std::string typed :
         {"", "496 0000", "0113 496", "0113 496 00000", "ask at office", "0113 496 0000 ext 4",
          "+44 0113 496 0000", "+", "+1234567890123456", "7700900123"}) {
        EXPECT_EQ(telephoneE164(typed), std::nullopt) << typed;
    }
}

/// UPRN guidance: up to 12 digits; its own example.
TEST(Forms, knowUprns) {
    EXPECT_TRUE(isUprn("100023336956"));
    EXPECT_TRUE(isUprn("1"));
    EXPECT_FALSE(isUprn("1000233369561"));
    EXPECT_FALSE(isUprn("1.00023E+11"));
    EXPECT_FALSE(isUprn(""));
}

/// Two published numbers and the published rule; the wrong ones are computed from it by hand.
TEST(Forms, knowMeterPointNumbers) {
    EXPECT_TRUE(isMprn("3938424403"));
    EXPECT_TRUE(isMprn("3226987202"));
    EXPECT_TRUE(isMprn("12345601"));
    for (const char* wrong :
         {"1234567890", "3938424430", "3938424304", "", "12345", "39384244030", "393842440x"}) {
        EXPECT_FALSE(isMprn(wrong)) << wrong;
    }
}

}  // namespace
}  // namespace hearth::reg

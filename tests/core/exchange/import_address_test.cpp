// SPDX-License-Identifier: GPL-3.0-or-later
// Invented addresses, split as a person reads them: common practice, no source.
#include "core/exchange/import_address.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

struct Split {
    const char* cell;
    reg::Address address;
};

TEST(ImportAddress, splitsAsAPersonReads) {
    const std::vector<Split> splits{
        {"14 Larch Row, Leeds, LS1 4AB", {"14 Larch Row", "", "Leeds", "LS1 4AB"}},
        {"14 Larch Row, Leeds LS1 4AB", {"14 Larch Row", "", "Leeds", "LS1 4AB"}},
        {"14 Larch Row, Headingley, Leeds, West Yorkshire, ls14ab, UK",
         {"14 Larch Row", "Headingley", "Leeds", "LS1 4AB"}},
        {"Flat 2, 14 Larch Row, Leeds, LS1 4AB", {"Flat 2, 14 Larch Row", "", "Leeds", "LS1 4AB"}},
        {"Flat 2, 14, Larch Row, Leeds, LS1 4AB", {"Flat 2, 14 Larch Row", "", "Leeds", "LS1 4AB"}},
        {"14A, Larch Row, Leeds", {"14A Larch Row", "", "Leeds", ""}},
        {"The Old Mill\nMill Lane\nLlanfair\nLL1 1AA", {"The Old Mill", "Mill Lane", "Llanfair", "LL1 1AA"}},
        {"14 Larch Row Leeds LS1 4AB", {"14 Larch Row Leeds", "", "", "LS1 4AB"}},
        {"14 Larch Row", {"14 Larch Row", "", "", ""}},
        {"14 Larch Row,, ,Leeds,", {"14 Larch Row", "", "Leeds", ""}},
        {"LS1 4AB", {"", "", "", "LS1 4AB"}},
        {"", {}},
    };
    for (const auto& one : splits) {
        const auto split = splitAddress(one.cell);
        EXPECT_EQ(split.address, one.address)
            << one.cell << ": " << split.address.line1 << '|' << split.address.line2 << '|'
            << split.address.town << '|' << split.address.postcode;
    }
}

TEST(ImportAddress, leavesTheTownToItsOwnCell) {
    EXPECT_EQ(splitAddress("14, Larch Row, Headingley", TownStands::Elsewhere).address,
              (reg::Address{"14 Larch Row", "Headingley", "", ""}));
}

TEST(ImportAddress, findsTheCountry) {
    EXPECT_EQ(splitAddress("1 A St, Cardiff, CF10 1AA, Wales").country, reg::Country::Wales);
    EXPECT_EQ(splitAddress("1 A St, Belfast, Northern Ireland").country, reg::Country::NorthernIreland);
    EXPECT_EQ(splitAddress("1 A St, Leeds").country, std::nullopt);
    EXPECT_EQ(countryCalled("CYMRU"), reg::Country::Wales);
    EXPECT_EQ(countryCalled("Yr Alban"), reg::Country::Scotland);
    EXPECT_EQ(countryCalled("France"), std::nullopt);
}

TEST(ImportAddress, knowsTheSamePremises) {
    const auto key = [](const char* line1, const char* postcode) {
        return premisesKey({line1, "", "", postcode});
    };
    EXPECT_EQ(key("14 Larch Row", "LS1 4AB"), key("14, LARCH ROW", "ls14ab"));
    EXPECT_EQ(key("14 Larch Rd", "LS1 4AB"), key("14 Larch Road", "LS1 4AB"));
    EXPECT_EQ(key("Flat 2, 14 Larch Row", "LS1 4AB"), key("Apt 2 14 Larch Row", "LS1 4AB"));
    EXPECT_NE(key("Flat 2, 14 Larch Row", "LS1 4AB"), key("Flat 1, 14 Larch Row", "LS1 4AB"));
    EXPECT_NE(key("14 Larch Row", "LS1 4AB"), key("14a Larch Row", "LS1 4AB"));
    EXPECT_NE(key("14 Larch Row", "LS1 4AB"), key("14 Larch Row", "LS1 4AD"));
    EXPECT_EQ(key("The Mill", "LS1 4AB"), key("the mill", "LS1 4AB"));
    EXPECT_NE(key("The Mill", "LS1 4AB"), key("The Barn", "LS1 4AB"));
    EXPECT_EQ(key("14 Larch Row", ""), "");
    EXPECT_EQ(key("14 Larch Row", "QW7 4AB"), key("14 Larch Row", "qw74ab"))
        << "of no known form, and yet the same";
}

}  // namespace
}  // namespace hearth::exchange

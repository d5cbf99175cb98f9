// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/rule_book.h"

#include <gtest/gtest.h>
#include <set>
#include <string_view>

namespace hearth::rulebook {
namespace {

using quantity::Decimal;

Band band(const char* upTo, const char* allowed) {
    return {*Decimal::parse(upTo), *Decimal::parse(allowed)};
}

// Invented volumes and drops, of no standard: only their order is under test.
TEST(CheckBands, FindsNothingInAWellOrderedTable) {
    const Band bands[] = {band("0.005", "8"), band("0.010", "4"), band("0.020", "2"), band("0.035", "1")};
    EXPECT_TRUE(checkBands(bands).empty());
    const Band flat[] = {band("0.010", "4"), band("0.012", "4")};
    EXPECT_TRUE(checkBands(flat).empty()) << "a drop may stay";
}

struct SlipCase {
    const char* name;
    std::vector<Band> bands;
    BandDoubt expected;
};

TEST(CheckBands, NamesEachSlipAndItsBand) {
    const SlipCase cases[] = {
        {"none", {}, {BandSlip::NoBands, 0}},
        {"volume repeats", {band("0.01", "4"), band("0.010", "3")}, {BandSlip::VolumeNotRising, 1}},
        {"volume falls", {band("0.010", "4"), band("0.009", "3")}, {BandSlip::VolumeNotRising, 1}},
        {"drop grows", {band("0.010", "4"), band("0.012", "4.5")}, {BandSlip::DropNotShrinking, 1}},
        {"nought", {band("0.010", "4"), band("0.012", "0")}, {BandSlip::NotPositive, 1}},
        {"negative", {band("-0.010", "4"), band("0.012", "3")}, {BandSlip::NotPositive, 0}},
        {"a decimal place lost",
         {band("0.005", "8"), band("0.010", "4"), band("0.20", "2")},
         {BandSlip::LeakRateOutOfOrder, 2}},
        {"a decimal point lost",
         {band("0.005", "80"), band("0.010", "4"), band("0.020", "2")},
         {BandSlip::LeakRateOutOfOrder, 0}},
    };
    for (const auto& c : cases) {
        const auto doubts = checkBands(c.bands);
        ASSERT_FALSE(doubts.empty()) << c.name;
        EXPECT_NE(std::find(doubts.begin(), doubts.end(), c.expected), doubts.end()) << c.name;
    }
}

TEST(CheckBands, SlipTextsAreDifferent) {
    std::set<std::string_view> texts;
    for (const auto slip : {BandSlip::NoBands, BandSlip::VolumeNotRising, BandSlip::DropNotShrinking,
                            BandSlip::NotPositive, BandSlip::LeakRateOutOfOrder}) {
        EXPECT_TRUE(texts.insert(slipText(slip)).second);
    }
}

}  // namespace
}  // namespace hearth::rulebook

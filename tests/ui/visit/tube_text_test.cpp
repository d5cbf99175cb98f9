// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/tube_text.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using pipework::TubeFamily;

struct TubeCase {
    const char* typed;
    TubeFamily family;
    double nominal;
};

class TubeText : public ::testing::TestWithParam<TubeCase> {};

TEST_P(TubeText, IsReadAsAFitterWritesIt) {
    const auto& one = GetParam();
    const TubeReading reading = readTube(QString::fromUtf8(one.typed));
    ASSERT_NE(reading.tube, nullptr) << one.typed;
    EXPECT_EQ(reading.tube->family, one.family) << one.typed;
    EXPECT_NEAR(reading.tube->nominal, one.nominal, 0.5) << one.typed;
}

// Sizes of EN 1057 copper and EN 10255 steel (with their thread sizes in inches), PE by outside diameter.
INSTANTIATE_TEST_SUITE_P(
    AsTyped, TubeText,
    ::testing::Values(
        TubeCase{"15", TubeFamily::Copper, 15}, TubeCase{"22 cu", TubeFamily::Copper, 22},
        TubeCase{"22cu", TubeFamily::Copper, 22}, TubeCase{"28mm copper", TubeFamily::Copper, 28},
        TubeCase{"Copper 35 mm", TubeFamily::Copper, 35}, TubeCase{"67", TubeFamily::Copper, 66.7},
        TubeCase{"25 steel", TubeFamily::SteelMedium, 25}, TubeCase{"dn25", TubeFamily::SteelMedium, 25},
        TubeCase{"25 heavy", TubeFamily::SteelHeavy, 25}, TubeCase{"1 in", TubeFamily::SteelMedium, 25},
        TubeCase{"3/4", TubeFamily::SteelMedium, 20}, TubeCase{"1 1/4\"", TubeFamily::SteelMedium, 32},
        TubeCase{"1.5 inch heavy", TubeFamily::SteelHeavy, 40}, TubeCase{"32 pe", TubeFamily::PeSdr11, 32},
        TubeCase{"63 sdr 17.6", TubeFamily::PeSdr176, 63}, TubeCase{"63 SDR17,6", TubeFamily::PeSdr176, 63},
        TubeCase{"pe 63 sdr 11", TubeFamily::PeSdr11, 63}));

TEST(TubeTextRules, ABareSizeIsCopperWithItsCommonWall) {
    const auto* tube = readTube(QStringLiteral("15")).tube;
    ASSERT_NE(tube, nullptr);
    EXPECT_DOUBLE_EQ(tube->wall, 0.7);  // EN 1057, 15 x 0.7
}

TEST(TubeTextRules, ASizeWithItsWallIsThatWall) {
    const auto* tube = readTube(QStringLiteral("15 x 1.0")).tube;
    ASSERT_NE(tube, nullptr);
    EXPECT_DOUBLE_EQ(tube->wall, 1.0);  // EN 1057, 15 x 1.0
}

TEST(TubeTextRules, ASizeThatCopperLacksMustBeSaidWhich) {
    const TubeReading reading = readTube(QStringLiteral("25"));
    EXPECT_EQ(reading.tube, nullptr);
    EXPECT_GT(reading.candidates.size(), 1U);
}

TEST(TubeTextRules, CorrugatedNeedsNoSize) {
    const auto* tube = readTube(QStringLiteral("csst")).tube;
    ASSERT_NE(tube, nullptr);
    EXPECT_EQ(tube->family, TubeFamily::Corrugated);
}

TEST(TubeTextRules, WhatIsNoTubeIsNone) {
    for (const char* typed : {"", "17", "banana", "cu", "999 steel", "-15", "1/0", "0/0 in"}) {
        const TubeReading reading = readTube(QString::fromUtf8(typed));
        if (std::string(typed) != "-15") {  // a dash before a size is no sign
            EXPECT_EQ(reading.tube, nullptr) << typed;
        }
    }
}

TEST(TubeTextRules, EveryTubeIsFoundByItsCode) {
    for (const pipework::Tube& tube : pipework::tubes()) {
        EXPECT_EQ(
            readTube(QString::fromUtf8(tube.code.data(), static_cast<qsizetype>(tube.code.size()))).tube,
            &tube);
    }
}

}  // namespace
}  // namespace hearth::ui::visit

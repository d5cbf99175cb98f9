// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/hand_signature.h"

#include <gtest/gtest.h>

namespace hearth::reg {
namespace {

TEST(PenStrokes, areReadBackAsTheyWere) {
    for (const PenStrokes& strokes : {PenStrokes{}, PenStrokes{{{0, 0}}},
                                      PenStrokes{{{123, 45}, {129, 47}}, {{800, 240}, {7, 10}, {7, 10}}}}) {
        EXPECT_EQ(strokesFromText(strokesText(strokes)), strokes);
    }
    EXPECT_EQ(strokesText({{{123, 45}, {129, 47}}, {{200, 50}}}), "12.3,4.5 12.9,4.7;20.0,5.0");
    EXPECT_EQ(strokesText({{}, {{1, 2}}, {}}), "0.1,0.2");
}

TEST(PenStrokes, refuseWhatIsNone) {
    for (const char* text : {";", "1.0,2.0;", ";1.0,2.0", "1.0", "1,2", "1.0,2.0 ", "1.0,2.0  3.0,4.0",
                             "a.b,c.d", "-1.0,2.0", "1.0,-2.0", "1.00,2.0", ".5,1.0", "80.1,1.0", "1.0,24.1",
                             "1.0,2.0,3.0", "1e1.0,2.0", "99999999999999999999.0,1.0"}) {
        EXPECT_FALSE(strokesFromText(text).has_value()) << text;
    }
}

TEST(PenStrokes, areNoMoreThanAName) {
    PenStrokes strokes{PenStroke(kMostPenPoints, PenPoint{1, 1})};
    EXPECT_TRUE(strokesFromText(strokesText(strokes)).has_value());
    strokes.push_back({{2, 2}});
    EXPECT_FALSE(strokesFromText(strokesText(strokes)).has_value());
}

TEST(HandSignature, standsForOneOnlyWhenSomethingWasGiven) {
    HandSignature signature;
    signature.name = "R. Alder";
    EXPECT_FALSE(isSigned(signature));
    signature.way = SignedWay::Drawn;
    EXPECT_FALSE(isSigned(signature));
    signature.strokes = "1.0,2.0";
    EXPECT_TRUE(isSigned(signature));
    signature.way = SignedWay::OnPaper;
    EXPECT_TRUE(isSigned(signature));
    signature.name.clear();
    EXPECT_FALSE(isSigned(signature));
    signature.way = SignedWay::NotPresent;
    EXPECT_TRUE(isSigned(signature));
}

TEST(HandSignature, hasCodesThatAreReadBack) {
    for (const auto signer : {Signer::Engineer, Signer::Receiver}) {
        EXPECT_EQ(signerFromCode(codeOf(signer)), signer);
    }
    for (const auto way : {SignedWay::NotSaid, SignedWay::Drawn, SignedWay::OnPaper, SignedWay::NotPresent}) {
        EXPECT_EQ(signedWayFromCode(codeOf(way)), way);
    }
    EXPECT_FALSE(signerFromCode("nobody").has_value());
    EXPECT_FALSE(signedWayFromCode("").has_value());
}

}  // namespace
}  // namespace hearth::reg

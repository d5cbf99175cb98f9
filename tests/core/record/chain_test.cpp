// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/snapshot.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

// FIPS 180-4's examples for SHA-256 (NIST, "Examples with Intermediate Values": one block, two blocks); the
// empty message from the same authority's test vectors. From memory; tests/core/record/snapshot_test.cpp
// holds the digest of a snapshot against sha256sum.
TEST(Sha256, givesThePublishedDigests) {
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

std::vector<ChainHeader> chainOf(int length, const std::string& firstPrevious = {}) {
    std::vector<ChainHeader> headers;
    std::string previous = firstPrevious;
    for (int number = 1; number <= length; ++number) {
        ChainHeader header;
        header.series = "KTR";
        header.number = number;
        header.record = recordNumber(header.series, number);
        header.kind = "kind";
        header.issuedAt = "2026-11-25T09:46:00.000Z";
        header.snapshotDigest = sha256("snapshot " + std::to_string(number));
        header.pdfDigest = sha256("pdf " + std::to_string(number));
        header.previous = previous;
        previous = headerDigest(header);
        headers.push_back(header);
    }
    return headers;
}

ErrorCode verdict(const std::vector<ChainHeader>& headers, const std::string& firstPrevious = {}) {
    const auto result = verifyChain(headers, firstPrevious);
    return result ? ErrorCode::NotFound : result.error().code;
}

TEST(Chain, isWholeAsItWasMade) {
    EXPECT_TRUE(verifyChain({}));
    EXPECT_TRUE(verifyChain(chainOf(5)));
    EXPECT_TRUE(verifyChain(chainOf(5, "feed"), "feed"));
}

TEST(Chain, beginsWithWhatItFollows) {
    EXPECT_EQ(verdict(chainOf(2, "feed")), ErrorCode::RecordChainBroken);
    EXPECT_EQ(verdict(chainOf(2), "feed"), ErrorCode::RecordChainBroken);
}

TEST(Chain, namesTheFirstRecordThatDoesNotFollow) {
    auto headers = chainOf(5);
    headers[1].pdfDigest = sha256("another");
    EXPECT_EQ(verifyChain(headers).error(), (Error{ErrorCode::RecordChainBroken, {"KTR-000003"}}));
}

TEST(Chain, isBrokenByWhatIsTakenOutPutInOrSwapped) {
    auto gap = chainOf(5);
    gap.erase(gap.begin() + 2);
    EXPECT_EQ(verdict(gap), ErrorCode::RecordChainBroken);
    auto twice = chainOf(5);
    twice.insert(twice.begin() + 2, twice[1]);
    EXPECT_EQ(verdict(twice), ErrorCode::RecordChainBroken);
    auto swapped = chainOf(5);
    std::swap(swapped[1], swapped[2]);
    EXPECT_EQ(verdict(swapped), ErrorCode::RecordChainBroken);
    auto foreign = chainOf(5);
    foreign[4].series = "BCD";
    EXPECT_EQ(verdict(foreign), ErrorCode::RecordChainBroken);
}

TEST(HeaderDigest, dependsOnEveryField) {
    const ChainHeader header = chainOf(1).front();
    std::vector<ChainHeader> others(9, header);
    others[0].series += "x";
    others[1].number += 1;
    others[2].record += "x";
    others[3].revision += 1;
    others[4].kind += "x";
    others[5].issuedAt += "x";
    others[6].snapshotDigest += "x";
    others[7].pdfDigest += "x";
    others[8].previous += "x";
    for (const auto& other : others) {
        EXPECT_NE(headerDigest(other), headerDigest(header));
    }
}

TEST(RecordNumber, hasSixDigitsOrMore) {
    EXPECT_EQ(recordNumber("KTR", 17), "KTR-000017");
    EXPECT_EQ(recordNumber("KTR", 1234567), "KTR-1234567");
}

}  // namespace
}  // namespace hearth::record

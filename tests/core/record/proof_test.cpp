// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/proof.h"

#include <gmock/gmock.h>

namespace hearth::record {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

const std::string kDigest(64, 'a');
const std::string kOther(64, 'b');

TEST(RecordNumber, isReadAsSomebodyTypesIt) {
    struct Case {
        const char* typed;
        std::optional<std::string> number;
    };
    const Case cases[] = {
        {"BCD-000017", "BCD-000017"},
        {" bcd-17 ", "BCD-17"},
        {"HL.2-BCD-00017", "HL.2-BCD-00017"},
        {"hlbcd-1234567", "HLBCD-1234567"},
        {"BCD-", std::nullopt},
        {"-17", std::nullopt},
        {"17", std::nullopt},
        {"BCD 17", std::nullopt},
        {"2-17", std::nullopt},
        {"BCD-1x", std::nullopt},
        {"", std::nullopt},
        {"BCD--5", std::nullopt},
        {"BCD_5-17", std::nullopt},
    };
    for (const auto& c : cases) {
        EXPECT_EQ(numberTyped(c.typed), c.number) << c.typed;
    }
}

TEST(RecordNumber, isMeantWithoutZerosAndPrefix) {
    EXPECT_TRUE(meansNumber("BCD-17", "BCD-000017"));
    EXPECT_TRUE(meansNumber("BCD-17", "HL-BCD-00017"));
    EXPECT_TRUE(meansNumber("HL-BCD-17", "HL-BCD-00017"));
    EXPECT_FALSE(meansNumber("BCD-17", "BCD-000170"));
    EXPECT_FALSE(meansNumber("BCD-17", "BCF-000017"));
    EXPECT_FALSE(meansNumber("D-17", "BCD-000017")) << "several series end so";
    EXPECT_FALSE(meansNumber("XX-BCD-17", "BCD-000017"));
    EXPECT_FALSE(meansNumber("", ""));
}

TEST(CodeOfAPage, isReadWithAnyBlanks) {
    const Claim claim{Claim::By::Code, {"BCD-000017", 2}, kDigest};
    EXPECT_EQ(claimOfCode("BCD-000017 2 " + kDigest), claim);
    EXPECT_EQ(claimOfCode("\n bcd-000017\t2\u00a0 " + std::string(64, 'A') + "\r\n"), claim);
    for (const std::string& text :
         {std::string(), std::string("BCD-000017"), "BCD-000017 " + kDigest, "BCD-000017 0 " + kDigest,
          "BCD-000017 -1 " + kDigest, "BCD-000017 2 " + kDigest + "0", "BCD-000017 2 " + std::string(64, 'g'),
          "BCD-000017 2 " + kDigest + " more", "https://example.org 2 " + kDigest}) {
        EXPECT_EQ(claimOfCode(text), std::nullopt) << text;
    }
}

TEST(NumbersNamed, areFoundAsPdfTitlesHaveThem) {
    using namespace std::string_literals;
    EXPECT_THAT(numbersNamedIn("<dc:title>BCD-000017 and HL-XZB-1234567, BCD-000017</dc:title>"),
                ElementsAre("BCD-000017", "HL-XZB-1234567"));
    EXPECT_THAT(numbersNamedIn("/Title (\xfe\xff\0B\0C\0D\0-\0000\0000\0000\0000\0001\0007\0 \0\xb7)"s),
                ElementsAre("BCD-000017"));
    EXPECT_THAT(numbersNamedIn("UTF-8, ISO-15, PDF-1.4, bcd-000017, " + std::string(40, 'X') + "-000017"),
                IsEmpty());
    EXPECT_THAT(numbersNamedIn(""), IsEmpty());
}

TEST(Likeness, isTheShareThatIsTheSame) {
    EXPECT_EQ(likeness("", ""), 1.0);
    EXPECT_EQ(likeness("abcd", "abcd"), 1.0);
    EXPECT_EQ(likeness("abcd", "abxd"), 0.75);
    EXPECT_EQ(likeness("abcd", "abxxxxcd"), 0.5);
    EXPECT_EQ(likeness("aaaa", "aa"), 0.5) << "what stands once counts once";
    EXPECT_EQ(likeness("abcd", ""), 0.0);
}

TEST(FirstDifference, isItsPlace) {
    EXPECT_EQ(firstDifference("abc", "abc"), std::nullopt);
    EXPECT_EQ(firstDifference("abc", "axc"), 1U);
    EXPECT_EQ(firstDifference("abc", "ab"), 2U);
    EXPECT_EQ(firstDifference("", "a"), 0U);
}

KeptFacts facts() {
    KeptFacts kept;
    kept.header.record = "BCD-000017";
    kept.header.revision = 1;
    kept.header.pdfDigest = kDigest;
    kept.header.snapshotDigest = kDigest;
    return kept;
}
const Claim kFile{Claim::By::Pdf, {"BCD-000017", 1}, kDigest};
const Claim kChangedFile{Claim::By::Pdf, {"BCD-000017", 1}, kOther};
const Claim kCode{Claim::By::Code, {"BCD-000017", 1}, kDigest};
const Claim kForgedCode{Claim::By::Code, {"BCD-000017", 1}, kOther};
const Claim kNumber{Claim::By::Number, {"BCD-000017", 0}, {}};

KeptFacts superseded() {
    auto kept = facts();
    kept.supersededBy = LaterRevision{{"BCD-000017", 3}, "2026-11-25T09:46:00.000Z"};
    return kept;
}
KeptFacts voided() {
    auto kept = facts();
    kept.voided = VoidMark{"R. Ashdown", "2026-11-25T09:46:00.000Z", "wrong house"};
    return kept;
}
KeptFacts with(bool KeptFacts::*part) {
    auto kept = facts();
    kept.*part = false;
    return kept;
}
KeptFacts signedBy(bool holds) {
    auto kept = facts();
    kept.signature = KeyWord{kOther, {}, {}, {}, holds};
    return kept;
}

struct ProofCase {
    const char* name;
    Claim claim;
    std::optional<KeptFacts> kept;
    Verdict verdict;
    std::vector<Mismatch> mismatches;
};
class ProofOf : public ::testing::TestWithParam<ProofCase> {};

TEST_P(ProofOf, saysWhatItIsAndWhatDiffers) {
    const auto& c = GetParam();
    const auto proof = proofOf(c.claim, c.kept);
    EXPECT_EQ(proof.verdict, c.verdict);
    EXPECT_EQ(proof.mismatches, c.mismatches);
    EXPECT_EQ(proof.claim, c.claim);
    EXPECT_EQ(proof.kept, c.kept);
}

INSTANTIATE_TEST_SUITE_P(
    All, ProofOf,
    ::testing::Values(
        ProofCase{"file", kFile, facts(), Verdict::Ours, {}},
        ProofCase{"code", kCode, facts(), Verdict::Ours, {}},
        ProofCase{"number", kNumber, facts(), Verdict::Ours, {}},
        ProofCase{"old_file", kFile, superseded(), Verdict::Superseded, {}},
        ProofCase{"void_file", kFile, voided(), Verdict::Void, {}},
        ProofCase{"void_number", kNumber, voided(), Verdict::Void, {}},
        ProofCase{"changed_file", kChangedFile, facts(), Verdict::Changed, {Mismatch::PdfDigest}},
        ProofCase{"changed_old_file", kChangedFile, superseded(), Verdict::Changed, {Mismatch::PdfDigest}},
        ProofCase{"forged_code", kForgedCode, facts(), Verdict::Changed, {Mismatch::CodeDigest}},
        ProofCase{"foreign", kFile, std::nullopt, Verdict::NotOurs, {}},
        ProofCase{
            "good_file_lost_copy", kFile, with(&KeptFacts::pdfHolds), Verdict::Ours, {Mismatch::KeptPdf}},
        ProofCase{
            "number_lost_pdf", kNumber, with(&KeptFacts::pdfHolds), Verdict::Changed, {Mismatch::KeptPdf}},
        ProofCase{"number_lost_snapshot",
                  kNumber,
                  with(&KeptFacts::snapshotHolds),
                  Verdict::Changed,
                  {Mismatch::KeptSnapshot}},
        ProofCase{
            "broken_chain", kFile, with(&KeptFacts::chainHolds), Verdict::Unprovable, {Mismatch::Chain}},
        ProofCase{"changed_file_broken_chain",
                  kChangedFile,
                  with(&KeptFacts::chainHolds),
                  Verdict::Unprovable,
                  {Mismatch::PdfDigest, Mismatch::Chain}},
        ProofCase{"signed", kFile, signedBy(true), Verdict::Ours, {}},
        ProofCase{"signature_wrong", kFile, signedBy(false), Verdict::Ours, {Mismatch::Signature}}),
    [](const auto& instance) { return std::string(instance.param.name); });

}  // namespace
}  // namespace hearth::record

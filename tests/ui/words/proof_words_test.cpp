// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/proof_words.h"

#include "tests/ui/words/languages.h"

namespace hearth::ui::words {
namespace {

using record::Claim;
using record::Mismatch;
using record::Verdict;
using ::testing::HasSubstr;

record::Proof proof(Verdict verdict, std::vector<Mismatch> mismatches = {}) {
    record::Proof made;
    made.verdict = verdict;
    made.mismatches = std::move(mismatches);
    made.claim = {Claim::By::Pdf, {"BCD-000017", 2}, std::string(64, 'c')};
    record::KeptFacts kept;
    kept.header.record = "BCD-000017";
    kept.header.revision = 2;
    kept.header.issuedAt = "2026-11-25T09:46:00.000Z";
    kept.header.pdfDigest = std::string(64, 'd');
    kept.header.snapshotDigest = std::string(64, 'e');
    made.kept = kept;
    return made;
}

std::string all(const ProofText& text) {
    return (text.headline + u'\n' + text.details.join(u'\n')).toStdString();
}

TEST(ProofWords, EachVerdictAndMismatchIsSaidInEachLanguage) {
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        for (const auto verdict : {Verdict::Ours, Verdict::Superseded, Verdict::Void, Verdict::Changed,
                                   Verdict::Unprovable, Verdict::NotOurs}) {
            auto shown = proof(verdict, {Mismatch::PdfDigest, Mismatch::CodeDigest, Mismatch::KeptPdf,
                                         Mismatch::KeptSnapshot, Mismatch::Chain, Mismatch::Signature});
            shown.kept->supersededBy = record::LaterRevision{{"BCD-000017", 3}, "2026-11-26T09:46:00.000Z"};
            shown.kept->voided = record::VoidMark{"", "2026-11-26T09:46:00.000Z", "%1 per cent"};
            shown.kept->differsAt = 0;
            const auto text = proofText(words, shown);
            EXPECT_TRUE(hearth::testing::isTranslated(text.headline, words)) << text.headline;
            EXPECT_TRUE(hearth::testing::isFilled(text.headline)) << text.headline;
            for (const auto& line : text.details) {
                EXPECT_TRUE(hearth::testing::isTranslated(line, words)) << line;
            }
        }
    }
}

TEST(ProofWords, ASupersededOneNamesWhatToGoBy) {
    auto shown = proof(Verdict::Superseded);
    shown.kept->supersededBy = record::LaterRevision{{"BCD-000017", 3}, "2026-11-26T09:46:00.000Z"};
    const auto text = proofText(Words(), shown);
    EXPECT_EQ(text.headline,
              QStringLiteral("Ours and unchanged, but superseded: BCD-000017 revision 2. Go by "
                             "BCD-000017 revision 3 instead."));
    EXPECT_THAT(all(text), HasSubstr("issued on 26 November 2026"));
}

TEST(ProofWords, AChangedFileSaysWhichDigestDiffersAndWhere) {
    auto shown = proof(Verdict::Changed, {Mismatch::PdfDigest});
    shown.kept->differsAt = 41;
    const auto text = all(proofText(Words(), shown));
    EXPECT_THAT(text, HasSubstr("not BCD-000017 revision 2 as it was issued"));
    EXPECT_THAT(text, HasSubstr("cccc cccc"));
    EXPECT_THAT(text, HasSubstr("dddd dddd"));
    EXPECT_THAT(text, HasSubstr("number 42"));
}

TEST(ProofWords, ACodesDigestIsHeldAgainstTheSnapshots) {
    auto shown = proof(Verdict::Changed, {Mismatch::CodeDigest});
    EXPECT_THAT(all(proofText(Words(), shown)), HasSubstr("eeee eeee"));
}

TEST(ProofWords, AVoidOneSaysWhoWhenAndWhy) {
    auto shown = proof(Verdict::Void);
    shown.kept->voided = record::VoidMark{"R. Ashdown", "2026-11-26T09:46:00.000Z", "wrong house"};
    EXPECT_THAT(all(proofText(Words(), shown)),
                HasSubstr("Declared void on 26 November 2026 by R. Ashdown: wrong house"));
}

TEST(ProofWords, TheSignatureIsNamedByItsKey) {
    auto shown = proof(Verdict::Ours);
    EXPECT_THAT(all(proofText(Words(), shown)), HasSubstr("has not been signed"));
    shown.kept->signature = record::KeyWord{
        std::string(64, 'f'), "2026-01-02T09:00:00.000Z", {}, "2026-11-25T09:46:00.000Z", true};
    const auto inUse = all(proofText(Words(), shown));
    EXPECT_THAT(inUse,
                HasSubstr("Signed on 25 November 2026 with the firm's key, in use since 2 January 2026"));
    EXPECT_THAT(inUse, HasSubstr("ffff ffff"));
    shown.kept->signature->until = "2026-12-01T09:00:00.000Z";
    EXPECT_THAT(all(proofText(Words(), shown)), HasSubstr("from 2 January 2026 to 1 December 2026"));
    shown.kept->signature->holds = false;
    shown.mismatches = {Mismatch::Signature};
    const auto broken = all(proofText(Words(), shown));
    EXPECT_THAT(broken, HasSubstr("signature does not hold"));
    EXPECT_THAT(broken, ::testing::Not(HasSubstr("Signed on")));
}

}  // namespace
}  // namespace hearth::ui::words

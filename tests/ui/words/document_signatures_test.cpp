// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/words/document_of_kind.h"

#include <gtest/gtest.h>

namespace hearth::ui::words {
namespace {

using record::RecordKind;
using reg::SignedWay;
using reg::Signer;

class DocumentSignatures : public ::testing::Test {
  protected:
    static reg::VisitFile fileOf(RecordKind kind) { return testing::visitOfKind(kind); }
    static reg::HandSignature given(RecordKind kind, Signer signer, SignedWay way) {
        reg::HandSignature signature;
        signature.recordKind = record::kindCode(kind);
        signature.signer = signer;
        signature.way = way;
        signature.name = "Nell Harrow";
        signature.role = "tenant";
        signature.strokes = way == SignedWay::Drawn ? "1.0,2.0 3.0,4.0" : "";
        // British Summer Time: 16:12 there.
        static_cast<void>(parseInstant("2026-07-01T15:12:00.000Z", signature.at));
        return signature;
    }
    static std::vector<record::Signature> signaturesOf(RecordKind kind, const reg::VisitFile& file) {
        return std::get<record::Signatures>(testing::documentOfKind(kind, file).blocks.back()).signatures;
    }
};

TEST_F(DocumentSignatures, showWhatWasDrawnWithNameRoleAndTime) {
    const auto kind = RecordKind::LandlordSafety;
    auto file = fileOf(kind);
    file.signatures = {given(kind, Signer::Engineer, SignedWay::Drawn),
                       given(kind, Signer::Receiver, SignedWay::Drawn)};
    const auto signatures = signaturesOf(kind, file);
    ASSERT_EQ(signatures.size(), 2U);
    EXPECT_EQ(signatures[0].caption, "(viii) Checked and signed by");
    EXPECT_EQ(signatures[0].strokes, "1.0,2.0 3.0,4.0");
    EXPECT_NE(signatures[0].detail.find("card 0000001, "), std::string::npos);
    EXPECT_EQ(signatures[1].name, "Nell Harrow");
    EXPECT_EQ(signatures[1].detail, "tenant, 1 July 2026, 16:12");
}

TEST_F(DocumentSignatures, sayThatNobodyWasThereAndWhereTheCopyLies) {
    const auto kind = RecordKind::WarningNotice;
    auto file = fileOf(kind);
    auto left = given(kind, Signer::Receiver, SignedWay::NotPresent);
    left.name.clear();
    left.role.clear();
    left.copyLeft = "on the kitchen table";
    file.signatures = {left};
    const auto signatures = signaturesOf(kind, file);
    EXPECT_EQ(signatures[1].name, "—");
    EXPECT_EQ(signatures[1].detail, "not present, copy left: on the kitchen table, 1 July 2026, 16:12");
    EXPECT_TRUE(signatures[1].strokes.empty());
}

TEST_F(DocumentSignatures, sayThatThePaperCopyWasSigned) {
    const auto kind = RecordKind::Service;
    auto file = fileOf(kind);
    file.signatures = {given(kind, Signer::Engineer, SignedWay::OnPaper)};
    file.signatures[0].role.clear();
    const auto signatures = signaturesOf(kind, file);
    EXPECT_EQ(signatures[0].caption, "Signed by the engineer");
    EXPECT_NE(signatures[0].detail.find("signed on the paper copy, 1 July 2026, 16:12"), std::string::npos);
}

// Another record's, or one that nothing was drawn for, signs nothing.
TEST_F(DocumentSignatures, standOnlyForTheirOwnRecord) {
    const auto kind = RecordKind::LandlordSafety;
    auto file = fileOf(kind);
    const auto before = signaturesOf(kind, file);
    EXPECT_EQ(before[0].caption, "(viii) Checked and signed by (name typed)");
    auto empty = given(kind, Signer::Engineer, SignedWay::Drawn);
    empty.strokes.clear();
    file.signatures = {given(RecordKind::WarningNotice, Signer::Engineer, SignedWay::Drawn), empty};
    EXPECT_EQ(signaturesOf(kind, file), before);
}

TEST_F(DocumentSignatures, leaveTheFirmsOwnEntriesToTheEngineer) {
    EXPECT_EQ(signaturesOf(RecordKind::ReportableEntry, fileOf(RecordKind::ReportableEntry)).size(), 1U);
}

class DocumentPictures : public ::testing::Test {
  protected:
    static record::Document made(RecordKind kind, const reg::VisitFile& file,
                                 std::vector<record::PictureOf> pictures) {
        const auto book = rulebook::RuleBook::shipped();
        const auto findings = judging::judge(file, book);
        const auto volume = judging::volumeOf(file, book);
        return documentFor({kind, file, findings, volume, file.visit.date, {}, std::move(pictures)}, Words());
    }
    static std::vector<record::Picture> picturesIn(const record::Document& document) {
        for (const auto& block : document.blocks) {
            if (const auto* pictures = std::get_if<record::Pictures>(&block)) {
                return pictures->pictures;
            }
        }
        return {};
    }
};

TEST_F(DocumentPictures, areThoseOfWhatTheRecordSpeaksOf) {
    const auto file = testing::visitOfKind(RecordKind::LandlordSafety);
    const std::vector<record::PictureOf> given{
        {reg::subject(file.appliances[0].id), {{}, "the flue", "d1", "image/jpeg", "one"}},
        {reg::subject(file.situations[0].id), {{}, "the void", "d2", "image/jpeg", "two"}},
        {reg::subject(reg::ApplianceId{testing::sampleBytes(99)}),
         {{}, "another's", "d3", "image/jpeg", "x"}}};
    const auto pictures = picturesIn(made(RecordKind::LandlordSafety, file, given));
    ASSERT_EQ(pictures.size(), 2U);
    EXPECT_NE(pictures[0].of.find("kitchen cupboard"), std::string::npos);
    EXPECT_EQ(pictures[0].caption, "the flue");
    EXPECT_EQ(pictures[0].bytes, "one");
    EXPECT_EQ(pictures[1].of, "flue in a void without hatches");
    EXPECT_TRUE(picturesIn(made(RecordKind::LandlordSafety, file, {})).empty());
    EXPECT_TRUE(picturesIn(made(RecordKind::CalibrationLog, file, given)).empty());
}

}  // namespace
}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/signers.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

TEST(Signers, areTheEngineerAndWhoeverReceivesIt) {
    for (const auto kind : allKinds()) {
        const auto signers = signersOf(kind);
        ASSERT_FALSE(signers.empty());
        EXPECT_EQ(signers[0], reg::Signer::Engineer);
        const bool isReceived =
            !isLetter(kind) && kind != RecordKind::ReportableEntry && kind != RecordKind::CalibrationLog;
        EXPECT_EQ(signers.size(), isReceived ? 2U : 1U) << kindCode(kind);
    }
}

TEST(Signers, findWhatWasGivenForThatRecordAlone) {
    reg::VisitFile file;
    reg::HandSignature signature;
    signature.recordKind = "warning_notice";
    signature.signer = reg::Signer::Receiver;
    file.signatures = {signature};
    EXPECT_EQ(signatureOf(file, RecordKind::WarningNotice, reg::Signer::Receiver), &file.signatures[0]);
    EXPECT_EQ(signatureOf(file, RecordKind::WarningNotice, reg::Signer::Engineer), nullptr);
    EXPECT_EQ(signatureOf(file, RecordKind::LandlordSafety, reg::Signer::Receiver), nullptr);
}

}  // namespace
}  // namespace hearth::record

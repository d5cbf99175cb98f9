// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/signers.h"

#include <algorithm>
#include <array>

namespace hearth::record {

namespace {

constexpr std::array kBothSign{reg::Signer::Engineer, reg::Signer::Receiver};

}  // namespace

std::span<const reg::Signer> signersOf(RecordKind kind) {
    const bool isOwnEntry = kind == RecordKind::ReportableEntry || kind == RecordKind::CalibrationLog;
    return std::span(kBothSign).first(isOwnEntry || isLetter(kind) ? 1 : 2);
}

const reg::HandSignature* signatureOf(const reg::VisitFile& file, RecordKind kind, reg::Signer signer) {
    const auto found = std::find_if(
        file.signatures.begin(), file.signatures.end(), [&](const reg::HandSignature& signature) {
            return signature.recordKind == kindCode(kind) && signature.signer == signer;
        });
    return found == file.signatures.end() ? nullptr : &*found;
}

}  // namespace hearth::record

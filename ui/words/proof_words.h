// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/proof.h"
#include "ui/words/words.h"

/// What is said of a record that somebody shows.
namespace hearth::ui::words {

struct ProofText {
    QString headline;     // one sentence: the answer
    QStringList details;  // each a sentence
};
[[nodiscard]] ProofText proofText(const Words& words, const record::Proof& proof);

/// "BCD-000017 revision 2".
[[nodiscard]] QString recordName(const Words& words, const record::RecordName& name);
/// The civil day of an instant as records note it, where the firm works: "25 November 2026". The text itself
/// where it is none.
[[nodiscard]] QString dayOfInstant(const Words& words, const std::string& instant);
/// Letters of a digest or fingerprint in groups of four.
[[nodiscard]] QString groupedDigest(const std::string& digest);

}  // namespace hearth::ui::words

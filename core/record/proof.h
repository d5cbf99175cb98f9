// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/record/snapshot.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Whether something that somebody shows is a record of the firm's: a file, the text of a page's square code,
/// or a number. Decided here from what the store knows; nothing is read or written.
namespace hearth::record {

/// What a record says of itself wherever it is named.
struct RecordName {
    std::string number;
    int revision = 0;  // 0: the newest
    bool operator==(const RecordName&) const = default;
};

/// What is held against the records.
struct Claim {
    enum class By { Pdf, Code, Number };
    By by = By::Number;
    RecordName name;     // of a file: as far as it can be told
    std::string digest;  // of a file: over its bytes; of a code: the snapshot's, as it says
    bool operator==(const Claim&) const = default;
};

/// What a square code holds: "BCD-000017 2 <digest>", with any blanks between and around.
[[nodiscard]] std::optional<Claim> claimOfCode(std::string_view text);
/// A number as somebody types it, in capitals; nothing for a text that is none (see number_form.h).
[[nodiscard]] std::optional<std::string> numberTyped(std::string_view text);
/// Whether what was typed, zeros or the firm's prefix left out, means that record: "BCD-17" means BCD-000017
/// and HL-BCD-00017.
[[nodiscard]] bool meansNumber(std::string_view typed, std::string_view number);
/// All record numbers that bytes name, as UTF-8 or as UTF-16 (as PDF titles are), each once.
[[nodiscard]] std::vector<std::string> numbersNamedIn(std::string_view bytes);
/// How alike two files are: the share of the first that stands at its place in the other, or, where the
/// lengths differ, at their beginnings and ends. 1 is the same.
[[nodiscard]] double likeness(std::string_view one, std::string_view other);
/// The first byte, from 0, in which they differ; nothing where they are the same.
[[nodiscard]] std::optional<std::size_t> firstDifference(std::string_view one, std::string_view other);

/// A record that no longer counts, though no other takes its place.
struct VoidMark {
    std::string by;
    std::string at;  // instantText
    std::string why;
    bool operator==(const VoidMark&) const = default;
};

struct LaterRevision {
    RecordName name;
    std::string issuedAt;
    bool operator==(const LaterRevision&) const = default;
};

/// What the firm's key says of a record.
struct KeyWord {
    std::string fingerprint;
    std::string from;   // instantText: since when it signs
    std::string until;  // until when; empty: it is the one in use
    std::string signedAt;
    bool holds = false;  // over the bytes that were shown; of a code or number, over those kept
    bool operator==(const KeyWord&) const = default;
};

/// What the store knows of the record that a claim names.
struct KeptFacts {
    UuidBytes id{};  // the store's, of the record
    ChainHeader header;
    bool chainHolds = true;
    bool snapshotHolds = true;
    bool pdfHolds = true;
    std::optional<LaterRevision> supersededBy;
    std::optional<VoidMark> voided;
    std::string erasedAt;  // instantText: what it said was let go then; empty: it is kept
    std::optional<KeyWord> signature;
    std::optional<std::size_t> differsAt;  // a file: the first byte that is another
    bool operator==(const KeptFacts&) const = default;
};

enum class Verdict {
    Ours,        // unchanged, and it counts
    Superseded,  // unchanged; a later revision counts
    Void,        // unchanged; it was declared void
    Changed,     // names a record of ours, and is not what was issued
    Unprovable,  // the firm's own chain of records is broken here
    NotOurs,
};
/// What is not what it should be.
enum class Mismatch {
    PdfDigest,     // the file's bytes are not those that were issued
    CodeDigest,    // the digest in the code is not the snapshot's
    KeptPdf,       // the PDF kept is not the one that was issued
    KeptSnapshot,  // nor the snapshot
    Chain,
    Signature,  // the firm's signature does not hold over it
};

struct Proof {
    Verdict verdict = Verdict::NotOurs;
    Claim claim;
    std::vector<Mismatch> mismatches;
    std::optional<KeptFacts> kept;  // nothing when no record of ours is meant
    bool operator==(const Proof&) const = default;
};
[[nodiscard]] Proof proofOf(const Claim& claim, const std::optional<KeptFacts>& kept);

}  // namespace hearth::record

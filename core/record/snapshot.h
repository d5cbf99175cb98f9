// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/judging/judge.h"
#include "core/record/document.h"
#include "core/register/visit_file.h"

#include <string>
#include <string_view>
#include <vector>

namespace hearth::record {

/// Everything that an issued record says and stands on, frozen: the document as printed, the visit's entries
/// and register fields as they were, the findings with the limits used.
struct Snapshot {
    Document document;
    reg::VisitFile file;
    std::vector<judging::Judged> findings;
    // The store fills these from the request when it issues.
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
    std::string supersedes;  // id of the record that this one replaces, as text; empty: none
    std::string reason;      // of the revision
};

/// Canonical JSON: UTF-8, keys sorted, no blanks, decimals as text, never doubles. Byte-equal for equal
/// snapshots. What is frozen is what the record stands on: of the firm's engineers and instruments those of
/// the visit; the access notes of the premises (where the key lies) stay out.
[[nodiscard]] std::string canonicalJson(const Snapshot& snapshot);
/// The document alone, read back from a snapshot's JSON (to show and print again what was handed over).
/// Error: RecordAltered with an empty number, which the caller knows.
[[nodiscard]] Result<Document> documentFromJson(std::string_view json);
[[nodiscard]] std::string documentJson(const Document& document);

/// What lists show of a record without its document. It is part of the snapshot, so that a list's columns can
/// be held against it.
struct Standing {
    reg::VisitId visit;
    reg::PremisesId premises;
    std::string address;   // in one line
    std::string customer;  // name of the customer, landlord or home owner, in this order
    rulebook::Outcome outcome = rulebook::Outcome::NoVerdict;
    std::string supersedes;
    std::string reason;
    bool operator==(const Standing&) const = default;
};
[[nodiscard]] Standing standingOf(const Snapshot& snapshot);
/// Error: as documentFromJson.
[[nodiscard]] Result<Standing> standingFromJson(std::string_view json);

/// Lower-case hexadecimal SHA-256 (FIPS 180-4) of the bytes, by libsodium.
[[nodiscard]] std::string sha256(std::string_view bytes);

/// The link of the chain that a record adds. Small, so that payloads can be erased when the law allows
/// without breaking it.
struct ChainHeader {
    std::string series;  // this store's letter series
    int number = 0;      // without a gap within the series, over all kinds and revisions
    std::string record;  // "A-000017"
    int revision = 1;
    std::string kind;
    std::string issuedAt;  // instantText
    std::string snapshotDigest;
    std::string pdfDigest;
    std::string
        previous;  // digest of the header before; for the first: empty, or the head of the series it follows
    bool operator==(const ChainHeader&) const = default;
};
[[nodiscard]] std::string headerDigest(const ChainHeader& header);

/// Checks numbers and links of one series' headers in order; nothing when whole, else the first record that
/// does not follow (RecordChainBroken).
[[nodiscard]] Result<void> verifyChain(const std::vector<ChainHeader>& headers,
                                       const std::string& firstPrevious = {});

/// "A-000017": in the form that the program has when the firm chose none (see number_form.h).
[[nodiscard]] std::string recordNumber(const std::string& series, int number);

}  // namespace hearth::record

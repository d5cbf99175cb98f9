// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/snapshot.h"

#include <array>
#include <nlohmann/json.hpp>
#include <sodium.h>

namespace hearth::record {

std::string sha256(std::string_view bytes) {
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
    // char and unsigned char may alias: the bytes are the same.
    crypto_hash_sha256(digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    std::array<char, crypto_hash_sha256_BYTES * 2 + 1> text{};
    sodium_bin2hex(text.data(), text.size(), digest.data(), digest.size());
    return text.data();
}

std::string headerDigest(const ChainHeader& header) {
    const nlohmann::json json = {
        {"series", header.series},
        {"number", std::to_string(header.number)},
        {"record", header.record},
        {"revision", std::to_string(header.revision)},
        {"kind", header.kind},
        {"issued_at", header.issuedAt},
        {"snapshot_digest", header.snapshotDigest},
        {"pdf_digest", header.pdfDigest},
        {"previous", header.previous},
    };
    return sha256(json.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace));
}

Result<void> verifyChain(const std::vector<ChainHeader>& headers, const std::string& firstPrevious) {
    std::string previous = firstPrevious;
    int number = 1;
    for (const auto& header : headers) {
        const bool follows =
            header.number == number && header.previous == previous && header.series == headers.front().series;
        if (!follows) {
            return fail(ErrorCode::RecordChainBroken, {header.record});
        }
        previous = headerDigest(header);
        ++number;
    }
    return {};
}

}  // namespace hearth::record

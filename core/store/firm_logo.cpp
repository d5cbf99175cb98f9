// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/firm_logo.h"

#include "core/record/snapshot.h"

namespace hearth::store {

Result<std::optional<record::Logo>> logoOf(const Store& store, const reg::Firm& firm) {
    if (!firm.logo) {
        return std::optional<record::Logo>();
    }
    auto bytes = store.attachmentBytes(*firm.logo);
    if (!bytes) {
        return tl::unexpected<Error>(bytes.error());
    }
    // A firm's pictures are PNG or JPEG, and the first bytes say which. Source: PNG specification, clause 5.2
    // (137 80 78 71 …).
    const bool isPng = bytes->compare(0, 4, "\x89PNG") == 0;
    std::string digest = record::sha256(*bytes);
    return record::Logo{std::move(digest), isPng ? "image/png" : "image/jpeg", std::move(*bytes)};
}

}  // namespace hearth::store

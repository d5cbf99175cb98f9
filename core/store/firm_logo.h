// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/store/store.h"

#include <optional>

namespace hearth::store {

/// The firm's logo for the head of a document; nothing where it has none. Errors: AttachmentAltered and the
/// store's.
[[nodiscard]] Result<std::optional<record::Logo>> logoOf(const Store& store, const reg::Firm& firm);

}  // namespace hearth::store

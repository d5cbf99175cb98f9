// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/picture_of.h"
#include "core/store/store.h"

#include <vector>

namespace hearth::store {

/// The pictures of a visit's appliances and unsafe situations that its records are to show, in the order of
/// the sheet and in which they came. Errors: AttachmentAltered and the store's.
[[nodiscard]] Result<std::vector<record::PictureOf>> picturesOf(const Store& store,
                                                                const reg::VisitFile& file);

/// Whether an attachment can be printed: a paper can't.
[[nodiscard]] bool isPicture(const reg::Attachment& attachment);

}  // namespace hearth::store

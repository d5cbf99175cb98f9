// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"
#include "ui/words/evidence_words.h"

namespace hearth::ui::due {

/// All that is kept of what was done for one premises to have the check made, at any time, for the landlord.
/// Access notes are left out. Errors: NotFound; AttachmentAltered for a photograph that is not what was kept.
[[nodiscard]] Result<words::Evidence> gatherEvidence(const store::Store& store, reg::PremisesId premises,
                                                     calendar::Date today);

}  // namespace hearth::ui::due

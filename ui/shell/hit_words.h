// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/finding.h"
#include "ui/shell/line_list.h"
#include "ui/words/words.h"

namespace hearth::ui::shell {

/// "Premises", "People": over the hits of one kind.
[[nodiscard]] QString hitKindTitle(store::HitKind kind);
/// What was found, and by what where that does not show.
[[nodiscard]] Line hitLine(const store::Hit& hit, const words::Words& words);

}  // namespace hearth::ui::shell

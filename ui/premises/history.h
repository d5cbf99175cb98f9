// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/line_list.h"
#include "ui/shell/place.h"

#include <vector>

namespace hearth::ui::premises {

/// What was changed at a premises, its installations and its people, newest first: what, from what, by whom
/// and when.
[[nodiscard]] std::vector<shell::Line> historyOf(const reg::Premises& premises,
                                                 const shell::Context& context);

}  // namespace hearth::ui::premises

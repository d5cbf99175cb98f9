// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/sentence.h"

namespace hearth::ui::words {

/// The English text of what a finding can say, with its arguments as %1, %2 … in the order of
/// core/rulebook/sentence.h; null when there is none (a test holds that there is one for each).
[[nodiscard]] const char* sentenceText(rulebook::Say say);

}  // namespace hearth::ui::words

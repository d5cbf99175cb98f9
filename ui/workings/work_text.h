// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/answer.h"
#include "ui/words/words.h"

namespace hearth::ui::workings {

/// A question as plain text, in the language of `words`: what was typed, what was worked out, what is found
/// with why, limit and source. For the clipboard and for a visit's remarks.
[[nodiscard]] QString workText(const judging::Worksheet& sheet, const judging::Answer& answer,
                               const words::Words& words);

}  // namespace hearth::ui::workings

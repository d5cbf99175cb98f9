// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/letter_text.h"
#include "ui/words/words.h"

/// Words for letters: the texts that the program ships, and what their placeholders mean.
namespace hearth::ui::words {

[[nodiscard]] QString letterKind(const Words& words, reg::LetterKind kind);     // "Reminder"
[[nodiscard]] QString placeholder(const Words& words, reg::Placeholder which);  // "to whom it goes"
/// In the words' language, with its placeholders.
[[nodiscard]] QString shippedLetter(const Words& words, reg::LetterKind kind);

}  // namespace hearth::ui::words

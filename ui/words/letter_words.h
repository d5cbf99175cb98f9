// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/letter_text.h"
#include "ui/words/words.h"

/// Words for letters: the texts that the program ships, and what their placeholders mean.
namespace hearth::ui::words {

[[nodiscard]] QString letterKind(const Words& words, reg::LetterKind kind);     // "Reminder"
[[nodiscard]] QString placeholder(const Words& words, reg::Placeholder which);  // "to whom it goes"
/// What is known of the day by which the check is due.
enum class ReminderDay { ToCome, Past, NotKnown };
/// In the words' language, with its placeholders; without a day only where none is known.
[[nodiscard]] QString shippedReminder(const Words& words, ReminderDay day);
/// The same of each kind; a reminder's is that of a day to come.
[[nodiscard]] QString shippedLetter(const Words& words, reg::LetterKind kind);

}  // namespace hearth::ui::words

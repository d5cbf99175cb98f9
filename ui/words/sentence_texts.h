// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/say.h"
#include "ui/words/text_table.h"

#include <span>

namespace hearth::ui::words {

/// The English text of what a finding can say, with its arguments as %1, %2 … in the order of
/// core/rulebook/say.h; null when there is none (a test holds that there is one for each).
[[nodiscard]] const char* sentenceText(rulebook::Say say);

using SayText = Text<rulebook::Say>;

/// One group each, in a file of its own.
[[nodiscard]] std::span<const SayText> gasTexts();
[[nodiscard]] std::span<const SayText> pipeworkTexts();
[[nodiscard]] std::span<const SayText> largerTexts();
[[nodiscard]] std::span<const SayText> burnerTexts();
[[nodiscard]] std::span<const SayText> combustionTexts();
[[nodiscard]] std::span<const SayText> airTexts();
[[nodiscard]] std::span<const SayText> deadlinesTexts();
[[nodiscard]] std::span<const SayText> competenceTexts();

}  // namespace hearth::ui::words

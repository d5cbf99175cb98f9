// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <array>

namespace hearth::ui::words {

std::span<const SayText> gasTexts() {
    return {};
}

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/answer.h"
#include "ui/words/words.h"

/// Words of what can be worked out without a visit.
namespace hearth::ui::words {

/// "What does this gas rate mean?"
[[nodiscard]] QString question(const Words& words, judging::Question question);
/// One line below the question: what it is for, what it does not do.
[[nodiscard]] QString questionHelp(const Words& words, judging::Question question);
/// Which fields a finding waits for: "Still empty: Meter, Tube."; nothing where none is.
[[nodiscard]] QString lacking(const Words& words, const std::vector<reg::Item>& items);
/// A row's name: "Reading 3".
[[nodiscard]] QString rowName(const Words& words, judging::Group group, int row);
/// "Heat input, gross".
[[nodiscard]] QString derived(const Words& words, judging::Derived derived);

}  // namespace hearth::ui::words

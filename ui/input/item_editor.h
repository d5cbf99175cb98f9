// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/register/item.h"
#include "ui/input/editor.h"
#include "ui/words/words.h"

namespace hearth::ui::input {

/// "n" in a time and "t" in a date, by the program's clock.
[[nodiscard]] Now nowOf(const Clock& clock);
[[nodiscard]] Today todayOf(const Clock& clock);

/// An item's choices with their labels, in the order of the catalogue.
[[nodiscard]] std::vector<ChoiceItem> choicesOf(reg::Item item, const words::Words& words);

/// A few choices side by side, or as a list like the many: in a narrow column.
enum class FewChoices { Buttons, List };

/// The editor that an item's kind, units and choices call for. A list of instruments is the caller's: it is
/// the firm's, not the item's.
[[nodiscard]] Editor* makeItemEditor(QWidget* parent, reg::Item item, const words::Words& words,
                                     const Clock& clock, FewChoices few = FewChoices::Buttons);

}  // namespace hearth::ui::input

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/item.h"

#include <QtGlobal>

#include <span>

namespace hearth::ui::words {

/// A label, and one line of help where it is not plain from the label.
struct ItemText {
    reg::Item code;
    const char* label;
    const char* help;
};

/// What is worked out away from a visit.
[[nodiscard]] std::span<const ItemText> workItemTexts();
/// What a visit asks beyond the pipework.
[[nodiscard]] std::span<const ItemText> visitItemTexts();
/// What only some kinds of appliance are asked.
[[nodiscard]] std::span<const ItemText> kindItemTexts();

}  // namespace hearth::ui::words

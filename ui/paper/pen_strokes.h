// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/page.h"

#include <string>
#include <vector>

namespace hearth::ui::paper {

/// A signature as lines, from its text (reg::strokesText): on the foot of the box, from its left end, as
/// large as there is room, but not larger than a hand writes. Nothing for a text that is none.
[[nodiscard]] std::vector<Item> drawnStrokes(const std::string& strokes, const QRectF& box);

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace hearth::ui::paper {

/// Shares `width` out by weight; then columns whose longest word does not fit take from those with room to
/// spare, as far as that goes. The sum stays `width`; millimetres.
[[nodiscard]] std::vector<double> shareWidths(const std::vector<double>& weights,
                                              const std::vector<double>& least, double width);

}  // namespace hearth::ui::paper

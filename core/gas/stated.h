// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth::gas {

/// A figure of an analysis or a bill and what its last digit is worth (nought: exact).
template <class T>
struct Stated {
    T value;
    T digit{};
};

}  // namespace hearth::gas

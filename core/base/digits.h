// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth {

/// One of the ten ASCII digits, whatever the locale.
[[nodiscard]] constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

}  // namespace hearth

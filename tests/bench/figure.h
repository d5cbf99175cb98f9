// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>

namespace hearth::bench {

/// Says a measured figure beside the most that it may be; tests/run repeats these lines at its end. A missed
/// figure fails nothing: the machine's mood is in it.
inline void figure(const char* what, double measured, double most) {
    std::printf("figure: %s: %.2f, at most %.2f: ratio %.2f%s\n", what, measured, most, measured / most,
                measured <= most ? "" : "  MISSED");
}

}  // namespace hearth::bench

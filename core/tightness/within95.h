// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth::tightness {

/// A figure with what it is between, 95 times in a hundred.
template <class Quantity>
struct Within95 {
    Quantity best;
    Quantity least;
    Quantity most;
};

}  // namespace hearth::tightness

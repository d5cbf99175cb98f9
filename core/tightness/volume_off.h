// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/units.h"
#include "core/tightness/within95.h"

/// A leak is told by the volume that it empties. Where somebody says how far that volume may be off, this is
/// what becomes of the leak's interval. Nobody says: the volume is taken as exact, and that is said.
namespace hearth::tightness {

/// A volume that may be off by all of it is none.
inline constexpr quantity::Share kVolumeOffBelow(1.0, quantity::kOne);

/// The interval of V k, where the volume V may be off by a part `off` of it either way (rectangular, standard
/// deviation s = off / sqrt(3)), independent of the decay k; `exact` is the interval with V taken as exact.
/// The variance of a product, for each side of it, with its second order doubled: the tails of a product
/// reach further than a normal distribution's, and with the plain half^2 s^2 drawn products lie outside in up
/// to 6.6 of 100 (with this in 5.3 at most).
///
///     half'^2 = half^2 (1 + 2 s^2) + (1.96 s best)^2
///
/// and no further out than the end itself at the largest or the smallest volume there may be: end (1 +- off).
/// So an end never crosses nought: a volume is above nought, and makes no leak of what is none, nor none of
/// what is one. Wider for a larger `off` and for a wider `exact`. Off by nothing gives `exact`.
/// `off` from nought to below kVolumeOffBelow; anything else gives `exact`.
/// Source: JCGM 100:2008 (GUM) 4.3.7 and 5.1.2 with its note on the second order, from memory. Not rounded.
/// Checked: volume_off_test.cpp, against drawn products too.
[[nodiscard]] Within95<quantity::Flow> widenedByVolume(const Within95<quantity::Flow>& exact,
                                                       quantity::Share off);

/// What a limit of detection is multiplied by: sqrt(1 + 2 off^2/3), by the same variance about k = 0.
/// Source: textbook (variance of a product of independent quantities). Checked: volume_off_test.cpp.
[[nodiscard]] double volumeFactor(quantity::Share off);

}  // namespace hearth::tightness

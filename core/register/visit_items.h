// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/item.h"

namespace hearth::reg {

/// The rows of the catalogue for what a visit asks beyond the pipework: kinds of visit, appliances, rooms,
/// unsafe situations, hand-over. item.cpp puts them at its end.
[[nodiscard]] std::span<const ItemInfo> visitItems();

}  // namespace hearth::reg

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/item.h"

namespace hearth::reg {

/// The rows of the catalogue that only some kinds of appliance have: an LPG system of a vehicle or boat,
/// catering, an unvented cylinder, what is decommissioned and capped. item.cpp puts them at its end.
[[nodiscard]] std::span<const ItemInfo> kindItems();

}  // namespace hearth::reg

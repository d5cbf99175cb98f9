// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/item.h"

namespace hearth::reg {

/// The rows of the catalogue for what is worked out away from a visit: item.cpp puts them at its end.
[[nodiscard]] std::span<const ItemInfo> workItems();

}  // namespace hearth::reg

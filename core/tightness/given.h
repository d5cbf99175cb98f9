// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/given.h"

namespace hearth::tightness {

using rulebook::absence;
using rulebook::Given;

}  // namespace hearth::tightness

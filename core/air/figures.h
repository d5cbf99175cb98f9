// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/typed.h"

/// Computed quantities as figures for findings, with as many decimals as they deserve.
namespace hearth::air {}  // namespace hearth::air

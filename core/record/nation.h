// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/notices.h"
#include "core/register/model.h"

namespace hearth::record {

/// Whose bank holidays and notices hold in the premises' country.
[[nodiscard]] calendar::Nation nationOf(reg::Country country);

}  // namespace hearth::record

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error_code.h"

namespace hearth::ui::words {

/// The English sentence of an error, marked for translation: what happened, what was kept, what to do. Null
/// for a code without one.
[[nodiscard]] const char* errorText(ErrorCode code);

}  // namespace hearth::ui::words

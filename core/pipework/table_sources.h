// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace hearth::pipework {

// Where several volume tables were read.
inline constexpr std::string_view kGuide =
    "Certification body's pocket guide Gas 2, reproducing IGEM/UP/1B Edition 3 (its worked example)";
inline constexpr std::string_view kRevisionPage =
    "An exam revision page, reproducing the volume table of IGEM/UP/1B";

}  // namespace hearth::pipework

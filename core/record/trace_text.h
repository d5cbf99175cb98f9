// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/trace.h"

#include <optional>
#include <string>
#include <string_view>

/// A trace's readings as text, which is what is kept, and what its digest is of: one point a line, commas
/// between; time in seconds (to 0.001), gauge pressure in mbar (to 0.00001), and where measured barometer in
/// mbar and temperature in degrees Celsius (to 0.0001). Readable without the program, and the same on every
/// machine.
namespace hearth::record {

[[nodiscard]] std::string traceText(const tightness::Trace& trace);
/// Nothing for what is not such a text, or whose times go back.
[[nodiscard]] std::optional<tightness::Trace> traceFromText(std::string_view text);

}  // namespace hearth::record

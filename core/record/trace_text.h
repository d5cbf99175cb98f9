// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/co_series.h"
#include "core/register/gauge_trace.h"
#include "core/tightness/trace.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A trace's readings as text, which is what is kept, and what its digest is of: one point a line, commas
/// between; time in seconds (to 0.001), gauge pressure in mbar (to 0.00001), and where measured barometer in
/// mbar and temperature in degrees Celsius (to 0.0001). Readable without the program, and the same on every
/// machine.
namespace hearth::record {

[[nodiscard]] std::string traceText(const tightness::Trace& trace);
/// Nothing for what is not such a text, or whose times go back.
[[nodiscard]] std::optional<tightness::Trace> traceFromText(std::string_view text);

/// What an instrument that was watched saw of the carbon monoxide in rooms.
struct RoomTrace {
    reg::TraceSource source;
    std::vector<air::CoReading> readings;
};

/// Where a probe was, by the code that a visit's reading has for it.
[[nodiscard]] std::string_view codeOf(air::CoPlace place);
[[nodiscard]] std::optional<air::CoPlace> coPlaceFromCode(std::string_view code);

/// The same of carbon monoxide in rooms: time in seconds, ppm (both to 0.001), and the place's code.
[[nodiscard]] std::string roomTraceText(const std::vector<air::CoReading>& readings);
[[nodiscard]] std::optional<std::vector<air::CoReading>> roomTraceFromText(std::string_view text);

}  // namespace hearth::record

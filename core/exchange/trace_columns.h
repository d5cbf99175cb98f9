// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Which column of a logger's table is what.
namespace hearth::exchange {

struct TraceColumn {
    std::size_t at = 0;                      // from 0
    std::string heading;                     // empty: the table has none
    std::optional<quantity::UnitCode> unit;  // that the heading names
};

struct TraceColumns {
    std::optional<TraceColumn> time;
    std::optional<TraceColumn> pressure;  // gauge pressure
    std::optional<TraceColumn> barometer;
    std::optional<TraceColumn> temperature;
    bool headed = false;  // the first row is headings
};

/// The unit that a heading names, in brackets or at its end: "Pressure (mbar)", "p / kPa", "elapsed s".
/// hPa is taken as mbar, which it is. Nothing where it names none of that family.
/// Source: common practice, no source. Checked: trace_file_test.cpp.
[[nodiscard]] std::optional<quantity::UnitCode> headingUnit(std::string_view heading,
                                                            quantity::UnitFamily family);

/// By the headings' words and units. A first row with a figure in it is no heading: then the first column is
/// taken for the times and the second for the pressures. Each column is taken for one thing, the first that
/// fits. Source: common practice, no source. Checked: trace_file_test.cpp.
[[nodiscard]] TraceColumns guessTraceColumns(const std::vector<std::string>& firstRow);

}  // namespace hearth::exchange

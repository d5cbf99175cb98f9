// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/exchange/trace_columns.h"
#include "core/tightness/trace.h"

#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

/// A gauge's or logger's table of times and pressures.
namespace hearth::exchange {

enum class TraceFault {
    NoTimes,        // no column of times, or none that can be read
    NoPressures,    // no column of gauge pressures
    NoUnit,         // nothing says what the pressures are in: 0.2 may be mbar or kPa
    ClockGoesBack,  // the times fall: what lies between two readings can't be told
    TooFew,         // fewer than two readings
    TooLong,        // more lines than a day at ten a second
};

struct TraceRefusal {
    TraceFault fault;
    int line = 0;  // of the file; 0: no line by itself
    bool operator==(const TraceRefusal&) const = default;
};

/// What is not left to guessing.
struct TraceForm {
    std::optional<quantity::UnitCode> unit;              // of the pressures, where the file doesn't say
    std::optional<TraceColumns> columns = std::nullopt;  // in place of the guess, said by hand
};

struct TraceFile {
    tightness::Trace trace;
    TraceColumns columns;
    quantity::UnitCode unit = quantity::UnitCode::Millibar;  // of the pressures
    bool timesSaid = true;  // false: plain figures without a unit, taken as seconds
    std::optional<calendar::Date> beganOn = std::nullopt;  // where the times have dates
    std::optional<int> beganAt = std::nullopt;  // the second of the day, where they are clock times
    int leftOut = 0;                            // lines whose time or reading can't be read: a gap
    int firstLeftOut = 0;                       // the line of the first of them
};

/// Reads a table as readCsv() does. Times are figures (seconds, or minutes where the heading says so), clock
/// times or dates with clock times; a clock without dates that falls from evening to morning has passed
/// midnight. Pressures may carry their unit in their heading or in each cell. Lines that can't be read are
/// left out and counted, never guessed; where the times fall, or the unit of the pressures is not said,
/// nothing is taken.
/// Source: common practice, no source; RFC 4180 for the table. Checked: trace_file_test.cpp.
[[nodiscard]] tl::expected<TraceFile, TraceRefusal> readTrace(std::string_view bytes,
                                                              const TraceForm& form = {});

}  // namespace hearth::exchange

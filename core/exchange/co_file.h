// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/co_series.h"
#include "core/exchange/trace_clock.h"

#include <optional>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

/// A logger's table of times and carbon monoxide in a room.
namespace hearth::exchange {

struct CoColumns {
    std::optional<TraceColumn> time;
    std::optional<TraceColumn> level;  // its unit: ppm, or nothing
    bool headed = false;               // the first row is headings
    /// The heading of the levels names another unit ("mg/m3", "ppb"), or another gas.
    bool isOtherwise = false;
};

/// By the headings' words: "CO", "carbon monoxide", "ppm". A column of CO2 is none, whatever its unit. A
/// first row with a figure in it is no heading: then the first column is taken for the times and the second
/// for the levels. Source: common practice, no source. Checked: co_file_test.cpp.
[[nodiscard]] CoColumns guessCoColumns(const std::vector<std::string>& firstRow);

/// The heading of a column of levels names another unit, or another gas.
/// Source: common practice, no source. Checked: co_file_test.cpp.
[[nodiscard]] bool saysOtherwise(std::string_view heading);

enum class CoFault {
    NoTimes,        // no column of times, or none that can be read
    NoLevels,       // no column of carbon monoxide
    NoUnit,         // nothing says that the levels are in ppm
    OtherUnit,      // they are in another unit, which is never converted
    ClockGoesBack,  // the times fall: what lies between two readings can't be told
    TooFew,         // fewer than two readings
    TooLong,        // more lines than a day at ten a second
};

struct CoRefusal {
    CoFault fault;
    int line = 0;  // of the file; 0: no line by itself
    bool operator==(const CoRefusal&) const = default;
};

struct CoFile {
    std::vector<air::CoReading> readings;  // where the probe was is not in the file
    CoColumns columns;
    int decimals = 0;       // the most that a reading has
    bool timesSaid = true;  // false: plain figures without a unit, taken as seconds
    std::optional<calendar::Date> beganOn = std::nullopt;
    std::optional<int> beganAt = std::nullopt;  // the second of the day
    int leftOut = 0;                            // lines whose time or reading can't be read: a gap
    int firstLeftOut = 0;                       // the line of the first of them
};

/// Reads a table as readTrace() does; `said` in place of the guess, by hand. Levels are taken in ppm alone,
/// and only where heading, cell or hand says so.
/// Source: common practice, no source; RFC 4180 for the table. Checked: co_file_test.cpp.
[[nodiscard]] tl::expected<CoFile, CoRefusal> readCoFile(std::string_view bytes,
                                                         const std::optional<CoColumns>& said = std::nullopt);

}  // namespace hearth::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/trace_columns.h"

#include "core/exchange/folded.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace hearth::exchange {
namespace {

using quantity::UnitCode;
using quantity::UnitFamily;

struct UnitName {
    std::string_view word;
    UnitFamily family;
    UnitCode unit;
};
constexpr std::array kUnitNames{
    UnitName{"mbar", UnitFamily::Pressure, UnitCode::Millibar},
    UnitName{"millibar", UnitFamily::Pressure, UnitCode::Millibar},
    UnitName{"mb", UnitFamily::Pressure, UnitCode::Millibar},
    UnitName{"hpa", UnitFamily::Pressure, UnitCode::Millibar},
    UnitName{"pa", UnitFamily::Pressure, UnitCode::Pascal},
    UnitName{"kpa", UnitFamily::Pressure, UnitCode::Kilopascal},
    UnitName{"bar", UnitFamily::Pressure, UnitCode::Bar},
    UnitName{"inwg", UnitFamily::Pressure, UnitCode::InchWater},
    UnitName{"inh2o", UnitFamily::Pressure, UnitCode::InchWater},
    UnitName{"mmwg", UnitFamily::Pressure, UnitCode::MillimetreWater},
    UnitName{"mmh2o", UnitFamily::Pressure, UnitCode::MillimetreWater},
    UnitName{"s", UnitFamily::Time, UnitCode::Second},
    UnitName{"sec", UnitFamily::Time, UnitCode::Second},
    UnitName{"secs", UnitFamily::Time, UnitCode::Second},
    UnitName{"second", UnitFamily::Time, UnitCode::Second},
    UnitName{"seconds", UnitFamily::Time, UnitCode::Second},
    UnitName{"min", UnitFamily::Time, UnitCode::Minute},
    UnitName{"mins", UnitFamily::Time, UnitCode::Minute},
    UnitName{"minute", UnitFamily::Time, UnitCode::Minute},
    UnitName{"minutes", UnitFamily::Time, UnitCode::Minute},
    UnitName{"c", UnitFamily::Temperature, UnitCode::Celsius},
    UnitName{"degc", UnitFamily::Temperature, UnitCode::Celsius},
    UnitName{"celsius", UnitFamily::Temperature, UnitCode::Celsius},
    UnitName{"k", UnitFamily::Temperature, UnitCode::Kelvin},
    UnitName{"kelvin", UnitFamily::Temperature, UnitCode::Kelvin},
    UnitName{"ppm", UnitFamily::Trace, UnitCode::Ppm},
};

bool holdsAny(const std::vector<std::string>& words, std::initializer_list<std::string_view> wanted) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::any_of(wanted.begin(), wanted.end(),
                           [&](std::string_view one) { return word.substr(0, one.size()) == one; });
    });
}

/// A heading has no figure that stands by itself: not "20.51", "09:40", "2026-11-25 09:40:12" or "20.5 mbar".
bool isFigure(const std::string& cell) {
    const auto first = cell.find_first_not_of(" +-\t");
    return first != std::string::npos && std::isdigit(static_cast<unsigned char>(cell[first])) != 0;
}

}  // namespace

std::optional<UnitCode> headingUnit(std::string_view heading, UnitFamily family) {
    auto words = foldedWords(heading);
    std::reverse(words.begin(), words.end());  // the unit stands at the end
    for (const auto& word : words) {
        const auto* found = std::find_if(kUnitNames.begin(), kUnitNames.end(), [&](const UnitName& name) {
            return name.family == family && name.word == word;
        });
        if (found != kUnitNames.end()) {
            return found->unit;
        }
    }
    return std::nullopt;
}

TraceColumns guessTraceColumns(const std::vector<std::string>& firstRow) {
    TraceColumns columns;
    columns.headed = std::none_of(firstRow.begin(), firstRow.end(), isFigure);
    if (!columns.headed) {
        if (firstRow.size() > 1) {
            columns.time = TraceColumn{0, {}, {}};
            columns.pressure = TraceColumn{1, {}, {}};
        }
        return columns;
    }
    std::optional<TraceColumn> day;
    for (std::size_t at = 0; at < firstRow.size(); ++at) {
        const auto& heading = firstRow[at];
        const auto words = foldedWords(heading);
        const auto take = [&](std::optional<TraceColumn>& column, UnitFamily family) {
            if (!column) {
                column = TraceColumn{at, heading, headingUnit(heading, family)};
            }
        };
        // What is outside of the pipe first: "ambient pressure, hPa" and "pipe temperature" hold other words.
        const bool isPressure = holdsAny(words, {"press"}) || headingUnit(heading, UnitFamily::Pressure);
        if (holdsAny(words, {"baro", "atmos"}) || (isPressure && holdsAny(words, {"ambient", "air"}))) {
            take(columns.barometer, UnitFamily::Pressure);
        } else if (holdsAny(words, {"temp", "celsius", "degc"}) ||
                   heading.find("\u00B0") != std::string::npos) {
            take(columns.temperature, UnitFamily::Temperature);
        } else if (isPressure || holdsAny(words, {"gauge", "reading"})) {
            take(columns.pressure, UnitFamily::Pressure);
        } else if (holdsAny(words, {"time", "elapsed", "clock"}) || headingUnit(heading, UnitFamily::Time)) {
            take(columns.time, UnitFamily::Time);
        } else if (holdsAny(words, {"date"})) {
            take(day, UnitFamily::Time);
        }
    }
    // Where day and clock stand in two columns the clock is enough: a midnight is seen from it.
    columns.time = columns.time ? columns.time : day;
    return columns;
}

}  // namespace hearth::exchange

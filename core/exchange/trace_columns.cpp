// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/trace_columns.h"

#include "core/quantity/typed.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace hearth::exchange {
namespace {

using quantity::UnitCode;
using quantity::UnitFamily;

std::string lower(std::string_view text) {
    std::string small(text);
    std::transform(small.begin(), small.end(), small.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
    return small;
}

/// Words of letters, the degree sign too; everything else parts them.
std::vector<std::string> wordsOf(std::string_view heading) {
    std::vector<std::string> words(1);
    for (const char letter : lower(heading)) {
        const auto code = static_cast<unsigned char>(letter);
        if (std::isalnum(code) != 0 || code >= 0x80) {
            words.back() += letter;
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    return words;
}

std::optional<UnitCode> pressureNamed(const std::string& word) {
    constexpr std::array<std::pair<std::string_view, UnitCode>, 11> kNames{
        {{"mbar", UnitCode::Millibar},
         {"millibar", UnitCode::Millibar},
         {"mb", UnitCode::Millibar},
         {"hpa", UnitCode::Millibar},
         {"pa", UnitCode::Pascal},
         {"kpa", UnitCode::Kilopascal},
         {"bar", UnitCode::Bar},
         {"inwg", UnitCode::InchWater},
         {"inh2o", UnitCode::InchWater},
         {"mmwg", UnitCode::MillimetreWater},
         {"mmh2o", UnitCode::MillimetreWater}}};
    const auto* found =
        std::find_if(kNames.begin(), kNames.end(), [&](const auto& name) { return name.first == word; });
    return found == kNames.end() ? std::nullopt : std::optional(found->second);
}

std::optional<UnitCode> timeNamed(const std::string& word) {
    constexpr std::array<std::pair<std::string_view, UnitCode>, 9> kNames{{{"s", UnitCode::Second},
                                                                           {"sec", UnitCode::Second},
                                                                           {"secs", UnitCode::Second},
                                                                           {"second", UnitCode::Second},
                                                                           {"seconds", UnitCode::Second},
                                                                           {"min", UnitCode::Minute},
                                                                           {"mins", UnitCode::Minute},
                                                                           {"minute", UnitCode::Minute},
                                                                           {"minutes", UnitCode::Minute}}};
    const auto* found =
        std::find_if(kNames.begin(), kNames.end(), [&](const auto& name) { return name.first == word; });
    return found == kNames.end() ? std::nullopt : std::optional(found->second);
}

std::optional<UnitCode> temperatureNamed(const std::string& word) {
    if (word == "\u00B0c" || word == "c" || word == "degc" || word == "celsius") {
        return UnitCode::Celsius;
    }
    return word == "k" || word == "kelvin" ? std::optional(UnitCode::Kelvin) : std::nullopt;
}

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
    auto words = wordsOf(heading);
    std::reverse(words.begin(), words.end());  // the unit stands at the end
    for (const auto& word : words) {
        const auto unit = family == UnitFamily::Pressure      ? pressureNamed(word)
                          : family == UnitFamily::Time        ? timeNamed(word)
                          : family == UnitFamily::Temperature ? temperatureNamed(word)
                                                              : std::nullopt;
        if (unit) {
            return unit;
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
        const auto words = wordsOf(heading);
        const auto take = [&](std::optional<TraceColumn>& column, UnitFamily family) {
            if (!column) {
                column = TraceColumn{at, heading, headingUnit(heading, family)};
            }
        };
        // What is outside of the pipe first: "ambient pressure, hPa" and "pipe temperature" hold other words.
        const bool isPressure = holdsAny(words, {"press"}) || headingUnit(heading, UnitFamily::Pressure);
        if (holdsAny(words, {"baro", "atmos"}) || (isPressure && holdsAny(words, {"ambient", "air"}))) {
            take(columns.barometer, UnitFamily::Pressure);
        } else if (holdsAny(words, {"temp", "celsius", "\u00B0c", "degc"})) {
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/trace_text.h"

#include "core/quantity/decimal.h"
#include "core/quantity/units.h"
#include "core/register/item.h"

#include <algorithm>
#include <array>

namespace hearth::record {

namespace {

using quantity::Decimal;

/// Rounded, without noughts at its end.
void addFigure(std::string& text, double value, int decimals) {
    text += Decimal::rounded(value, decimals).text();
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') {
        text.pop_back();
    }
}

/// An empty cell is nothing; what is no figure spoils the line.
struct TraceCell {
    bool isGood = true;
    std::optional<double> value;
};

TraceCell traceCell(std::string_view text) {
    if (text.empty()) {
        return {};
    }
    const auto figure = Decimal::parse(text);
    return figure ? TraceCell{true, figure->toDouble()} : TraceCell{false, {}};
}

std::optional<tightness::TracePoint> pointFrom(std::string_view line) {
    std::array<TraceCell, 4> cells;
    for (auto& cell : cells) {
        const auto comma = line.find(',');
        const bool isLast = &cell == &cells.back();
        if ((comma == std::string_view::npos) != isLast) {
            return std::nullopt;
        }
        cell = traceCell(line.substr(0, comma));
        if (!cell.isGood) {
            return std::nullopt;
        }
        line = isLast ? std::string_view() : line.substr(comma + 1);
    }
    const auto& [at, pressure, barometer, temperature] = cells;
    if (!at.value || !pressure.value) {
        return std::nullopt;
    }
    tightness::TracePoint point{quantity::Duration(*at.value, quantity::kSecond),
                                quantity::GaugePressure(*pressure.value, quantity::kMillibar)};
    if (barometer.value) {
        point.barometer = quantity::AbsolutePressure(*barometer.value, quantity::kMillibar);
    }
    if (temperature.value) {
        point.temperature = quantity::Temperature(*temperature.value, quantity::kCelsius);
    }
    return point;
}

struct PlaceCode {
    air::CoPlace place;
    std::string_view code;
};
constexpr std::array kPlaceCodes{PlaceCode{air::CoPlace::Outside, reg::choice::kOutdoors},
                                 PlaceCode{air::CoPlace::Room, reg::choice::kRoom},
                                 PlaceCode{air::CoPlace::AtAppliance, reg::choice::kAppliance},
                                 PlaceCode{air::CoPlace::NextRoom, reg::choice::kElsewhere}};

std::optional<air::CoReading> roomReadingFrom(std::string_view line) {
    const auto first = line.find(',');
    const auto second = first == std::string_view::npos ? first : line.find(',', first + 1);
    if (second == std::string_view::npos) {
        return std::nullopt;
    }
    const auto at = traceCell(line.substr(0, first));
    const auto level = traceCell(line.substr(first + 1, second - first - 1));
    const auto place = coPlaceFromCode(line.substr(second + 1));
    if (!at.value || !level.value || !place) {
        return std::nullopt;
    }
    return air::CoReading{quantity::Duration(*at.value, quantity::kSecond),
                          quantity::Share(*level.value, quantity::kPpm), *place};
}

/// Lines with their ends, each read by `read`; nothing where one can't be, or the times go back.
template <class Point, class Read>
std::optional<std::vector<Point>> pointsFromText(std::string_view text, const Read& read) {
    std::vector<Point> points;
    while (!text.empty()) {
        const auto end = text.find('\n');
        const auto point = end == std::string_view::npos ? std::nullopt : read(text.substr(0, end));
        if (!point || (!points.empty() && point->at < points.back().at)) {
            return std::nullopt;
        }
        points.push_back(*point);
        text.remove_prefix(end + 1);
    }
    return points;
}

}  // namespace

std::string traceText(const tightness::Trace& trace) {
    std::string text;
    for (const auto& point : trace) {
        addFigure(text, point.at.in(quantity::kSecond), 3);
        text += ',';
        addFigure(text, point.pressure.in(quantity::kMillibar), 5);
        text += ',';
        if (point.barometer) {
            addFigure(text, point.barometer->in(quantity::kMillibar), 4);
        }
        text += ',';
        if (point.temperature) {
            addFigure(text, point.temperature->in(quantity::kCelsius), 4);
        }
        text += '\n';
    }
    return text;
}

std::optional<tightness::Trace> traceFromText(std::string_view text) {
    return pointsFromText<tightness::TracePoint>(text, pointFrom);
}

std::string_view codeOf(air::CoPlace place) {
    return std::find_if(kPlaceCodes.begin(), kPlaceCodes.end(),
                        [place](const PlaceCode& one) { return one.place == place; })
        ->code;
}

std::optional<air::CoPlace> coPlaceFromCode(std::string_view code) {
    const auto* found = std::find_if(kPlaceCodes.begin(), kPlaceCodes.end(),
                                     [code](const PlaceCode& one) { return one.code == code; });
    return found == kPlaceCodes.end() ? std::nullopt : std::optional(found->place);
}

std::string roomTraceText(const std::vector<air::CoReading>& readings) {
    std::string text;
    for (const auto& reading : readings) {
        addFigure(text, reading.at.in(quantity::kSecond), 3);
        text += ',';
        addFigure(text, reading.level.in(quantity::kPpm), 3);
        text += ',';
        text += codeOf(reading.place);
        text += '\n';
    }
    return text;
}

std::optional<std::vector<air::CoReading>> roomTraceFromText(std::string_view text) {
    return pointsFromText<air::CoReading>(text, roomReadingFrom);
}

}  // namespace hearth::record

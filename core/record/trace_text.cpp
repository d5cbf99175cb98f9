// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/trace_text.h"

#include "core/quantity/decimal.h"

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
    tightness::Trace trace;
    while (!text.empty()) {
        const auto end = text.find('\n');
        const auto point = end == std::string_view::npos ? std::nullopt : pointFrom(text.substr(0, end));
        if (!point || (!trace.empty() && point->at < trace.back().at)) {
            return std::nullopt;
        }
        trace.push_back(*point);
        text.remove_prefix(end + 1);
    }
    return trace;
}

}  // namespace hearth::record

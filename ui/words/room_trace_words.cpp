// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/room_trace_words.h"

#include "core/air/co_watch.h"
#include "core/quantity/units.h"

#include <algorithm>
#include <iterator>

namespace hearth::ui::words {

namespace {

using air::CoReading;
using quantity::Decimal;
using quantity::Duration;
using quantity::UnitCode;
using tightness::Span;

/// Two points of each: about what a screen, and paper, can show.
constexpr std::size_t kRoomStretches = 200;
constexpr int kDecimalsOfMinutes = 3;
constexpr int kDecimalsOfLevel = 3;

/// The numbers of the readings behind which the line breaks.
std::vector<bool> breaksIn(const std::vector<CoReading>& readings, const std::vector<Span>& lost) {
    std::vector<Duration> times;
    times.reserve(readings.size());
    for (const auto& reading : readings) {
        times.push_back(reading.at);
    }
    auto gaps = tightness::silencesIn(times);
    gaps.insert(gaps.end(), lost.begin(), lost.end());
    std::vector<bool> breaks(readings.size(), false);
    for (const auto& gap : gaps) {
        const auto next = std::lower_bound(times.begin(), times.end(), gap.to);
        if (next != times.begin() && next != times.end()) {
            breaks[static_cast<std::size_t>(next - times.begin()) - 1] = true;
        }
    }
    return breaks;
}

/// Not a decimal more than it needs: a point's figure may stand beside it.
Decimal levelOf(const CoReading& reading) {
    return Decimal::rounded(reading.level.in(quantity::kPpm), kDecimalsOfLevel);
}

record::PlotSeries lineThrough(const std::vector<CoReading>& readings, const std::vector<Span>& lost) {
    record::PlotSeries series;
    series.hasMarks = false;
    const auto minutes = [&](const CoReading& reading) {
        return Decimal::rounded((reading.at - readings.front().at).in(quantity::kMinute), kDecimalsOfMinutes);
    };
    const auto breaks = breaksIn(readings, lost);
    const auto add = [&](const CoReading& reading) {
        series.points.push_back({minutes(reading), levelOf(reading), std::nullopt, {}});
    };
    const std::size_t each = std::max<std::size_t>(1, readings.size() / kRoomStretches);
    for (std::size_t from = 0; from < readings.size();) {
        std::size_t to = from + 1;
        while (to < readings.size() && to - from < each && !breaks[to - 1]) {
            ++to;
        }
        const auto begin = readings.begin() + static_cast<std::ptrdiff_t>(from);
        const auto end = readings.begin() + static_cast<std::ptrdiff_t>(to);
        const auto [least, most] =
            std::minmax_element(begin, end, [](const auto& a, const auto& b) { return a.level < b.level; });
        add(*std::min(least, most));
        if (least != most) {
            add(*std::max(least, most));
        }
        if (breaks[to - 1]) {
            series.points.push_back({minutes(readings[to - 1]), std::nullopt, std::nullopt, {}});
        }
        from = to;
    }
    return series;
}

}  // namespace

record::Plots roomTracePlots(const record::RoomTrace& trace, const std::vector<Span>& lost,
                             const std::vector<record::PlotLimit>& limits, const Words& words) {
    record::Plots plots;
    if (trace.readings.empty()) {
        return plots;
    }
    const auto said = [&](const char* english) { return words.say(english).toStdString(); };
    record::Plot plot;
    plot.title = said(QT_TRANSLATE_NOOP("Words", "Carbon monoxide as it was watched"));
    plot.x.title = said(QT_TRANSLATE_NOOP("Words", "minutes since the watch began"));
    plot.y.title = said(QT_TRANSLATE_NOOP("Words", "ppm"));
    plot.x.fromNought = true;
    plot.y.fromNought = true;
    plot.series.push_back(lineThrough(trace.readings, lost));
    plot.series.back().name = trace.source.name;
    plot.limits = limits;
    plots.plots.push_back(std::move(plot));
    return plots;
}

QString roomTraceSource(const record::RoomTrace& trace, const Words& words) {
    const auto highest = air::highestOf(trace.readings);
    if (!highest) {
        return qstring(trace.source.name);
    }
    const auto step = trace.source.resolution.value();
    const auto lasts = trace.readings.back().at - trace.readings.front().at;
    const auto level = trace.readings[*highest].level.in(quantity::kPpm);
    return words.say(QT_TRANSLATE_NOOP("Words", "%1: %2 readings over %3, the highest %4."),
                     {qstring(trace.source.name), QString::number(trace.readings.size()),
                      words.figure({Decimal::rounded(lasts.in(quantity::kMinute), 1), UnitCode::Minute}),
                      words.figure({Decimal::rounded(level, step ? step->decimals() : 0), UnitCode::Ppm})});
}

QString roomTraceBesideFindings(const Words& words) {
    return words.say(QT_TRANSLATE_NOOP(
        "Words", "What was watched decides nothing: the findings rest on the readings in the series."));
}

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/live_plot.h"

#include "ui/gauge/gauge_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace hearth::ui::gauge {

namespace {

using quantity::Decimal;
using quantity::Duration;
using quantity::kMillibar;
using quantity::kSecond;

constexpr std::size_t kStretches = 200;  // two points of each: about what a screen can show

class LivePlotWords {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::gauge::LivePlot)
};

record::PlotPoint pointOf(const tightness::TracePoint& point, Duration nought) {
    record::PlotPoint drawn;
    drawn.x = Decimal::rounded((point.at - nought).in(kSecond), 2);
    drawn.y = Decimal::rounded(point.pressure.in(kMillibar), 3);
    return drawn;
}

/// Where the line breaks: a point of nothing.
record::PlotPoint breakAt(Duration at, Duration nought) {
    record::PlotPoint none;
    none.x = Decimal::rounded((at - nought).in(kSecond), 2);
    return none;
}

bool isLower(const tightness::TracePoint& a, const tightness::TracePoint& b) {
    return a.pressure < b.pressure;
}

std::vector<record::PlotPoint> drawnPoints(const tightness::Trace& trace,
                                           const std::vector<tightness::Span>& lost, Duration nought) {
    auto gaps = tightness::gapsOf(trace);
    gaps.insert(gaps.end(), lost.begin(), lost.end());
    const auto isGapAfter = [&](std::size_t i) {
        return i + 1 < trace.size() && std::any_of(gaps.begin(), gaps.end(), [&](const tightness::Span& gap) {
                   return gap.from < trace[i + 1].at && gap.to > trace[i].at;
               });
    };
    const std::size_t each = std::max<std::size_t>(1, trace.size() / kStretches);
    std::vector<record::PlotPoint> points;
    for (std::size_t from = 0; from < trace.size();) {
        std::size_t to = from + 1;
        while (to < trace.size() && to - from < each && !isGapAfter(to - 1)) {
            ++to;
        }
        const auto begin = trace.begin() + static_cast<std::ptrdiff_t>(from);
        const auto end = trace.begin() + static_cast<std::ptrdiff_t>(to);
        auto [least, most] = std::minmax_element(begin, end, isLower);
        if (most < least) {
            std::swap(least, most);  // in the order of time
        }
        points.push_back(pointOf(*least, nought));
        if (most != least) {
            points.push_back(pointOf(*most, nought));
        }
        if (isGapAfter(to - 1)) {
            points.push_back(breakAt(trace[to - 1].at, nought));
        }
        from = to;
    }
    return points;
}

record::PlotSeries seriesOf(const QString& name, const tightness::Trace& trace,
                            const std::vector<tightness::Span>& gaps, Duration nought) {
    record::PlotSeries series;
    series.name = name.toStdString();
    series.hasMarks = false;
    series.points = drawnPoints(trace, gaps, nought);
    return series;
}

}  // namespace

record::Plots livePlot(const TakenTrace& taken, const PlotBeside& beside, const words::Words& words) {
    record::Plots plots;
    if (taken.trace.empty()) {
        return plots;
    }
    // Marks count from the trace's beginning; what merely is watched begins with what is seen of it.
    Duration nought(0.0, kSecond);
    if (taken.marks.empty()) {
        nought = taken.trace.front().at;
        if (!beside.trace.empty() && beside.trace.front().at < nought) {
            nought = beside.trace.front().at;
        }
    }
    record::Plot plot;
    plot.title = LivePlotWords::tr("What the gauge shows").toStdString();
    plot.x.title = LivePlotWords::tr("seconds").toStdString();
    plot.y.title = words.unit(quantity::UnitCode::Millibar).toStdString();
    const QString name = QString::fromStdString(taken.origin.name);
    plot.series.push_back(seriesOf(name, taken.trace, taken.gaps, nought));
    if (!beside.trace.empty()) {
        auto second = seriesOf(beside.name, beside.trace, {}, nought);
        second.shape = record::PlotShape::Ring;
        second.hasMarks = second.points.size() < kStretches;
        plot.series.push_back(std::move(second));
    }
    for (const auto& mark : taken.marks) {
        const double at = static_cast<double>(mark.at.count()) / 1000.0 - nought.in(kSecond);
        plot.marks.push_back({Decimal::rounded(at, 1), GaugeWords::event(mark.event).toStdString()});
    }
    plots.plots.push_back(std::move(plot));
    return plots;
}

}  // namespace hearth::ui::gauge

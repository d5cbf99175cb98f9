// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/units.h"
#include "ui/words/trace_words.h"

#include <algorithm>

namespace hearth::ui::words {

namespace {

using quantity::Decimal;
using quantity::Duration;
using quantity::kMillibar;
using record::Plot;
using record::PlotPoint;
using record::PlotSeries;
using tightness::Span;
using tightness::Trace;

/// Stretches of time for which a line goes through its least and its greatest reading: finer than a line is
/// wide.
constexpr std::size_t kStretches = 150;
constexpr int kCurvePoints = 60;

std::string traceSaid(const Words& words, const char* english) {
    return words.say(english).toStdString();
}

Decimal secondsOf(Duration time) {
    return Decimal::rounded(time.in(quantity::kSecond), 1);
}

Decimal millibarsOf(quantity::GaugePressure pressure) {
    return Decimal::rounded(pressure.in(kMillibar), 3);
}

bool isSilentBetween(const std::vector<Span>& gaps, Duration from, Duration to) {
    return std::any_of(gaps.begin(), gaps.end(),
                       [&](const Span& gap) { return gap.from >= from && gap.to <= to; });
}

/// As it was read, or of many readings in a stretch the least and the greatest, in the order they came; a gap
/// stays a gap.
PlotSeries lineOf(const Trace& trace, const std::vector<Span>& gaps, const std::string& name) {
    PlotSeries series;
    series.name = name;
    series.hasMarks = false;
    const std::size_t each = std::max<std::size_t>(1, trace.size() / kStretches);
    const tightness::TracePoint* last = nullptr;
    const auto add = [&](const tightness::TracePoint& point) {
        if (last != nullptr && isSilentBetween(gaps, last->at, point.at)) {
            series.points.push_back({secondsOf(last->at), std::nullopt, std::nullopt, {}});
        }
        series.points.push_back({secondsOf(point.at), millibarsOf(point.pressure), std::nullopt, {}});
        last = &point;
    };
    for (std::size_t from = 0; from < trace.size(); from += each) {
        const auto begin = trace.begin() + static_cast<std::ptrdiff_t>(from);
        const auto end = trace.begin() + static_cast<std::ptrdiff_t>(std::min(from + each, trace.size()));
        const auto [least, most] = std::minmax_element(
            begin, end, [](const auto& a, const auto& b) { return a.pressure < b.pressure; });
        add(*std::min(least, most));
        if (least != most) {
            add(*std::max(least, most));
        }
    }
    return series;
}

void addAxes(const Words& words, Plot& plot) {
    plot.y.title = traceSaid(words, QT_TRANSLATE_NOOP("Words", "pressure, mbar"));
    plot.x.title = traceSaid(words, QT_TRANSLATE_NOOP("Words", "seconds since the trace began"));
}

void addStretch(const std::optional<Span>& span, const std::string& name, Plot& plot) {
    if (span) {
        plot.stretches.push_back({secondsOf(span->from), secondsOf(span->to), name});
    }
}

bool isHappening(reg::TraceEvent event) {
    return event == reg::TraceEvent::ValveShut || event == reg::TraceEvent::PumpRemoved ||
           event == reg::TraceEvent::DoorOpened;
}

void addSecond(const judging::TraceSeen& seen, const std::optional<Span>& span, Plot& plot) {
    if (const auto& second = seen.given.second) {
        const Trace part = span ? tightness::stretchOf(second->trace, *span) : second->trace;
        plot.series.push_back(lineOf(part, tightness::gapsOf(part), second->source.name));
    }
}

Plot wholePlot(const PlotSource& source, const judging::TraceSeen& seen) {
    Plot plot;
    plot.title = traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "The whole trace"));
    addAxes(source.words, plot);
    const auto& second = seen.given.second;
    plot.series.push_back(
        lineOf(seen.given.trace, seen.gaps, second ? seen.given.source.name : std::string()));
    addSecond(seen, std::nullopt, plot);
    addStretch(seen.stages.letBy, traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "Let-by")), plot);
    addStretch(seen.stages.settling, traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "Settling")), plot);
    addStretch(seen.stages.timing, traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "Tightness")), plot);
    for (const auto& mark : seen.given.marks) {
        if (isHappening(mark.event)) {
            plot.marks.push_back({Decimal::rounded(mark.milliseconds / 1000.0, 1),
                                  traceEvent(mark.event, source.words).toStdString()});
        }
    }
    return plot;
}

void addCurve(const Words& words, const tightness::TraceFit& fit, const Span& span, Plot& plot) {
    PlotSeries curve;
    curve.name = traceSaid(words, QT_TRANSLATE_NOOP("Words", "fitted: leak and settling together"));
    curve.hasMarks = false;
    const Duration from = std::max(span.from, fit.begin);
    const Duration to = std::min(span.to, fit.end);
    for (int i = 0; i <= kCurvePoints && to > from; ++i) {
        const Duration at = from + (to - from) * (static_cast<double>(i) / kCurvePoints);
        curve.points.push_back({secondsOf(at), millibarsOf(fit.pressureAt(at).best), std::nullopt, {}});
    }
    plot.series.push_back(std::move(curve));
}

/// The reading that the limits are laid from: the first of the timed minutes.
void addTraceLimits(const PlotSource& source, const judging::TraceSeen& seen, const Decimal& start,
                    Plot& plot) {
    for (const auto& judged : source.findings) {
        if (judged.subject == reg::subject(seen.test) &&
            judged.finding.kind == rulebook::FindingKind::Tightness) {
            addMovementLimits(source, judged.finding, start, false, plot);
        }
    }
}

std::optional<Plot> testPlot(const PlotSource& source, const judging::TraceSeen& seen) {
    const auto span = seen.stages.timing ? seen.stages.timing : seen.stages.settling;
    const Trace part = span ? tightness::stretchOf(seen.given.trace, *span) : Trace();
    if (part.empty()) {
        return std::nullopt;
    }
    Plot plot;
    plot.title = seen.stages.timing ? traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "The timed minutes"))
                                    : traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "Settling"));
    addAxes(source.words, plot);
    plot.series.push_back(
        lineOf(part, seen.gaps,
               seen.given.second ? seen.given.source.name
                                 : traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "read by the gauge"))));
    addSecond(seen, span, plot);
    if (seen.told.test && seen.told.test->isIdentified) {
        addCurve(source.words, *seen.told.test, *span, plot);
    }
    if (seen.stages.timing) {
        addTraceLimits(source, seen, millibarsOf(part.front().pressure), plot);
    }
    return plot;
}

}  // namespace

record::Plots tracePlots(const PlotSource& source, const judging::TraceSeen& seen) {
    record::Plots plots;
    if (seen.given.trace.empty()) {
        return plots;
    }
    plots.title = traceSaid(source.words, QT_TRANSLATE_NOOP("Words", "What the gauge saw"));
    plots.plots.push_back(wholePlot(source, seen));
    if (auto test = testPlot(source, seen)) {
        plots.plots.push_back(std::move(*test));
    }
    plots.note = traceBesideVerdict(source.words).toStdString();
    return plots;
}

}  // namespace hearth::ui::words

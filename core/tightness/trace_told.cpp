// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace_told.h"

#include "core/quantity/units.h"
#include "core/tightness/gas_law.h"
#include "core/tightness/trace_meaning.h"

#include <algorithm>
#include <cmath>

namespace hearth::tightness {

using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::kSecond;

namespace {

constexpr double kFastRise = 0.5;    // mbar
constexpr double kRiseWithin = 2.0;  // s
constexpr double kFollows = 1.0;     // s

double mbarAt(const Trace& trace, std::size_t at) {
    return trace[at].pressure.in(kMillibar);
}

/// Does the pressure rise fast from there on, or up to there?
bool risesAfter(const Trace& trace, std::size_t at) {
    const Duration until = trace[at].at + Duration(kRiseWithin, kSecond);
    for (std::size_t i = at + 1; i < trace.size() && trace[i].at <= until; ++i) {
        if (mbarAt(trace, i) - mbarAt(trace, at) > kFastRise) {
            return true;
        }
    }
    return false;
}

bool rosePriorTo(const Trace& trace, std::size_t at) {
    const Duration since = trace[at].at - Duration(kRiseWithin, kSecond);
    for (std::size_t i = at; i-- > 0 && trace[i].at >= since;) {
        if (mbarAt(trace, at) - mbarAt(trace, i) > kFastRise) {
            return true;
        }
    }
    return false;
}

/// The point at which the pressure last came up through `level`.
std::optional<std::size_t> lastRaise(const Trace& trace, double level) {
    for (std::size_t i = trace.size(); i-- > 1;) {
        if (mbarAt(trace, i - 1) < level && mbarAt(trace, i) >= level) {
            return i;
        }
    }
    return std::nullopt;
}

/// Before the raise, and at its level; no longer than the pressure was there.
std::optional<Span> letByBefore(const Trace& trace, std::size_t end, const StageBands& bands) {
    while (end > 0 && (rosePriorTo(trace, end) || risesAfter(trace, end))) {
        --end;
    }
    const double least = bands.letByLeast.in(kMillibar);
    std::size_t begin = end;
    while (begin > 0 && mbarAt(trace, begin - 1) >= least && !rosePriorTo(trace, begin - 1)) {
        --begin;
    }
    const Duration to = trace[end].at;
    const Duration from = std::max(trace[begin].at, to - bands.letByTime);
    return mbarAt(trace, end) >= least && to > from ? std::optional(Span{from, to}) : std::nullopt;
}

void addTest(const Trace& trace, std::size_t begin, const StageBands& bands, TraceStages& stages) {
    while (begin + 1 < trace.size() && risesAfter(trace, begin)) {
        ++begin;
    }
    const Duration from = trace[begin].at;
    const Duration end = trace.back().at;
    if (end <= from) {
        return;
    }
    // A second is allowed for where the first and the last reading lie.
    const Duration slack(1.0, kSecond);
    if (end + slack >= from + bands.settleTime + bands.testTime) {
        const Duration start = std::min(from + bands.settleTime, end - bands.testTime);
        stages.settling = Span{from, std::max(from, start)};
        stages.timing = Span{stages.settling->to, std::min(end, stages.settling->to + bands.testTime)};
    } else if (end + slack >= from + bands.testTime && end + slack < from + bands.settleTime) {
        stages.settling = Span{from, end};
    } else {
        stages.settling = Span{from, std::min(end, from + bands.settleTime)};
    }
}

std::optional<TraceFit> fitOf(const Trace& trace, const Span& span, const TellInput& input) {
    const Trace part = compensated(stretchOf(trace, span));
    if (part.empty() || !input.volume) {
        return std::nullopt;
    }
    FitInput fit;
    fit.volume = *input.volume;
    fit.at = part.front().pressure;
    fit.step = input.step;
    fit.volumeOff = input.volumeOff.value_or(quantity::Share{});
    fit.drift = input.drift.value_or(quantity::PressureChange{});
    return fitTrace(part, fit);
}

std::optional<Span> testSpan(const TraceStages& stages) {
    if (!stages.timing) {
        return stages.settling;
    }
    const bool follows =
        stages.settling && stages.timing->from - stages.settling->to <= Duration(kFollows, kSecond);
    return follows ? Span{stages.settling->from, stages.timing->to} : *stages.timing;
}

/// Less than one step of the display, over the whole fit.
bool isBelowAStep(const TraceFit& fit, const TellInput& input) {
    const auto step = input.step ? input.step : fit.step;
    const auto at = fit.pressureAt(fit.begin).best;
    const auto decay = input.volume ? decayOf(fit.leak.best, at, *input.volume) : std::nullopt;
    return step && decay &&
           std::abs(*decay) * (fit.end - fit.begin).in(kSecond)*at.in(kMillibar) < step->in(kMillibar);
}

TraceSays saysOf(const TraceFit& fit, const TellInput& input) {
    auto meaning = meaningOf(fit);
    const bool moves = meaning == TraceMeaning::Leak || meaning == TraceMeaning::GasComesIn;
    if (moves && isBelowAStep(fit, input)) {
        meaning = settlingMeaning(fit);
    }
    switch (meaning) {
        case TraceMeaning::Leak:
            return fit.settlingSize().most < quantity::PressureChange{} ? TraceSays::HiddenLeak
                                                                        : TraceSays::Leak;
        case TraceMeaning::GasComesIn:
            return TraceSays::GasComesIn;
        case TraceMeaning::Cooling:
            return TraceSays::Cooling;
        case TraceMeaning::Warming:
            return TraceSays::Warming;
        case TraceMeaning::Still:
            return TraceSays::Still;
        case TraceMeaning::MostIsGone:
            return TraceSays::MostIsGone;
        case TraceMeaning::CantTell:
            break;
    }
    return TraceSays::CantTell;
}

double meanOf(const Trace& trace, std::size_t from, std::size_t to) {
    double sum = 0.0;
    for (std::size_t i = from; i < to; ++i) {
        sum += mbarAt(trace, i);
    }
    return sum / static_cast<double>(to - from);
}

std::optional<quantity::PressureChange> riseOver(const Trace& trace, const std::optional<Span>& span) {
    const Trace part = span ? compensated(stretchOf(trace, *span)) : Trace();
    if (part.size() < 2) {
        return std::nullopt;
    }
    constexpr std::size_t kTenth = 10;
    const std::size_t few = std::max<std::size_t>(1, part.size() / kTenth);
    return quantity::PressureChange(meanOf(part, part.size() - few, part.size()) - meanOf(part, 0, few),
                                    kMillibar);
}

bool letsBy(const TraceTold& told, const TellInput& input) {
    const bool rose = told.letByRise && input.threshold && *told.letByRise >= *input.threshold;
    return rose || (told.letBy && saysOf(*told.letBy, input) == TraceSays::GasComesIn);
}

bool standsStill(const Trace& trace, const TraceStages& stages) {
    const auto test = testSpan(stages);
    return stages.letBy && test && isStuck(stretchOf(trace, *stages.letBy), stretchOf(trace, *test));
}

}  // namespace

TraceStages guessStages(const Trace& trace, const StageBands& bands) {
    TraceStages stages;
    if (trace.size() < 2) {
        return stages;
    }
    const double middle = (bands.letByMost.in(kMillibar) + bands.testLeast.in(kMillibar)) / 2.0;
    if (const auto raise = lastRaise(trace, middle)) {
        stages.letBy = letByBefore(trace, *raise - 1, bands);
        addTest(trace, *raise, bands, stages);
    } else if (mbarAt(trace, 0) >= middle) {
        addTest(trace, 0, bands, stages);
    } else {
        stages.letBy = letByBefore(trace, trace.size() - 1, bands);
    }
    return stages;
}

TraceTold tellTrace(const Trace& trace, const TraceStages& stages, const TellInput& input) {
    TraceTold told;
    if (standsStill(trace, stages)) {
        told.says = TraceSays::StuckGauge;
        return told;
    }
    told.letByRise = riseOver(trace, stages.letBy);
    if (stages.letBy) {
        told.letBy = fitOf(trace, *stages.letBy, input);
    }
    if (const auto span = testSpan(stages)) {
        told.test = fitOf(trace, *span, input);
        if (told.test && input.threshold && input.testTime > Duration{}) {
            told.outlook = settlingOutlook(*told.test, stages.timing ? stages.timing->from : span->to,
                                           input.testTime, *input.threshold);
        }
    }
    if (letsBy(told, input)) {
        told.says = TraceSays::LetsBy;
    } else if (told.test) {
        told.says = saysOf(*told.test, input);
    } else if (told.letBy) {
        told.says = saysOf(*told.letBy, input);
    }
    return told;
}

}  // namespace hearth::tightness

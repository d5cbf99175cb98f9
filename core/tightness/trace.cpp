// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace.h"

#include "core/quantity/units.h"
#include "core/tightness/gas_law.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace hearth::tightness {

using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::PressureChange;

namespace {

/// What two readings may differ by and still be one: binary fractions, in mbar.
constexpr double kSameReading = 1e-7;

bool isMultiple(double millibar, double step) {
    const double steps = millibar / step;
    return std::abs(steps - std::round(steps)) * step < kSameReading * 10.0;
}

/// The fewest different readings that a step can be told from.
constexpr std::size_t kFewestReadings = 3;

/// The point of `trace` that is nearest to `at`; the trace has one.
const TracePoint& nearestPoint(const Trace& trace, Duration at) {
    auto after = std::lower_bound(trace.begin(), trace.end(), at,
                                  [](const TracePoint& point, Duration time) { return point.at < time; });
    if (after == trace.end()) {
        return trace.back();
    }
    if (after != trace.begin() && at - std::prev(after)->at < after->at - at) {
        --after;
    }
    return *after;
}

}  // namespace

Trace stretchOf(const Trace& trace, const Span& span) {
    Trace part;
    std::copy_if(trace.begin(), trace.end(), std::back_inserter(part),
                 [&](const TracePoint& point) { return point.at >= span.from && point.at <= span.to; });
    return part;
}

std::vector<Span> silencesIn(const std::vector<Duration>& times) {
    if (times.size() < 3) {
        return {};
    }
    std::vector<Duration> steps;
    steps.reserve(times.size());
    for (std::size_t i = 1; i < times.size(); ++i) {
        steps.push_back(times[i] - times[i - 1]);
    }
    auto sorted = steps;
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::nth_element(sorted.begin(), middle, sorted.end());
    const auto silent = std::max(*middle * 3.0, Duration(2.0, kSecond));
    std::vector<Span> gaps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (steps[i] > silent) {
            gaps.push_back({times[i], times[i + 1]});
        }
    }
    return gaps;
}

std::vector<Span> gapsOf(const Trace& trace) {
    std::vector<Duration> times;
    times.reserve(trace.size());
    for (const auto& point : trace) {
        times.push_back(point.at);
    }
    return silencesIn(times);
}

std::optional<PressureChange> stepOf(const Trace& trace) {
    std::set<double> different;
    for (const auto& point : trace) {
        const double value = point.pressure.in(kMillibar);
        const auto near = different.lower_bound(value - kSameReading);
        if (near == different.end() || *near > value + kSameReading) {
            different.insert(value);
        }
    }
    if (different.size() < kFewestReadings) {
        return std::nullopt;
    }
    static constexpr std::array<double, 13> kSteps{1.0,   0.5,   0.2,   0.1,    0.05,   0.02,  0.01,
                                                   0.005, 0.002, 0.001, 0.0005, 0.0002, 0.0001};
    for (const double step : kSteps) {
        if (std::all_of(different.begin(), different.end(),
                        [step](double value) { return isMultiple(value, step); })) {
            return PressureChange(step, kMillibar);
        }
    }
    return std::nullopt;
}

Trace compensated(const Trace& trace) {
    if (trace.empty()) {
        return {};
    }
    const bool hasBarometer = std::all_of(
        trace.begin(), trace.end(), [](const TracePoint& point) { return point.barometer.has_value(); });
    const bool hasTemperature = std::all_of(
        trace.begin(), trace.end(), [](const TracePoint& point) { return point.temperature.has_value(); });
    const auto first = hasBarometer ? *trace.front().barometer : referenceState().pressure;
    Trace result = trace;
    for (auto& point : result) {
        const auto barometer = hasBarometer ? *point.barometer : first;
        double pascal = absolute(point.pressure, barometer).in(quantity::kPascal);
        if (hasTemperature) {
            pascal *=
                trace.front().temperature->in(quantity::kKelvin) / point.temperature->in(quantity::kKelvin);
        }
        point.pressure = GaugePressure(pascal - first.in(quantity::kPascal), quantity::kPascal);
    }
    return result;
}

bool isStuck(const Trace& before, const Trace& after) {
    if (before.empty() || after.empty()) {
        return false;
    }
    const double last = before.back().pressure.in(kMillibar);
    return std::all_of(after.begin(), after.end(), [last](const TracePoint& point) {
        return std::abs(point.pressure.in(kMillibar)-last) < kSameReading;
    });
}

std::optional<ZeroCheck> zeroCheck(const Trace& open, PressureChange step) {
    if (open.empty()) {
        return std::nullopt;
    }
    double sum = 0.0;
    for (const auto& point : open) {
        sum += point.pressure.in(kMillibar);
    }
    const PressureChange mean(sum / static_cast<double>(open.size()), kMillibar);
    const double off = std::abs(mean.in(kMillibar));
    return ZeroCheck{mean, off <= step.in(kMillibar) + kSameReading};
}

std::optional<GaugesCompared> compareGauges(const Trace& first, PressureChange firstStep, const Trace& second,
                                            PressureChange secondStep) {
    const Duration near(1.0, kSecond);
    double sum = 0.0;
    GaugesCompared result;
    for (const auto& point : second) {
        if (first.empty()) {
            break;
        }
        const auto& other = nearestPoint(first, point.at);
        const auto apart = other.at < point.at ? point.at - other.at : other.at - point.at;
        if (apart <= near) {
            sum += other.pressure.in(kMillibar)-point.pressure.in(kMillibar);
            ++result.points;
        }
    }
    if (result.points == 0) {
        return std::nullopt;
    }
    result.difference = PressureChange(sum / result.points, kMillibar);
    result.allowed = (firstStep + secondStep) / 2.0;
    result.agrees = std::abs(result.difference.in(kMillibar)) <= result.allowed.in(kMillibar) + kSameReading;
    return result;
}

}  // namespace hearth::tightness

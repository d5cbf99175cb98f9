// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/gauges_over_test.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace hearth::tightness {

using quantity::Duration;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::PressureChange;

namespace {

constexpr double kLooked = 2.0;         // s that a difference is looked at for
constexpr double kApart = 2.0;          // s between the readings that a value lies between
constexpr double kNoDifference = 1e-7;  // mbar: binary fractions

struct Difference {
    double at = 0.0;  // s
    double millibar = 0.0;
};

/// The first gauge's pressure at that time.
std::optional<double> between(const Trace& trace, Duration at) {
    const auto after =
        std::lower_bound(trace.begin(), trace.end(), at,
                         [](const TracePoint& point, Duration time) { return point.at < time; });
    if (after == trace.end()) {
        return std::nullopt;
    }
    const double value = after->pressure.in(kMillibar);
    if (after->at == at) {
        return value;
    }
    if (after == trace.begin()) {
        return std::nullopt;
    }
    const auto before = std::prev(after);
    const double apart = (after->at - before->at).in(kSecond);
    if (apart > kApart) {
        return std::nullopt;
    }
    const double part = (at - before->at).in(kSecond) / apart;
    return before->pressure.in(kMillibar) + part * (value - before->pressure.in(kMillibar));
}

std::vector<Difference> differencesIn(const Trace& first, const Trace& second, const Span& span) {
    std::vector<Difference> all;
    for (const auto& point : stretchOf(second, span)) {
        if (const auto value = between(first, point.at)) {
            all.push_back({point.at.in(kSecond), *value - point.pressure.in(kMillibar)});
        }
    }
    return all;
}

/// Of those from `from` on, for two seconds.
Difference meanFrom(const std::vector<Difference>& all, std::size_t from) {
    double sum = 0.0;
    std::size_t to = from;
    while (to < all.size() && all[to].at <= all[from].at + kLooked) {
        sum += all[to++].millibar;
    }
    return {all[from].at, sum / static_cast<double>(to - from)};
}

/// Where the last two seconds begin.
std::size_t lastLook(const std::vector<Difference>& all) {
    std::size_t from = all.size() - 1;
    while (from > 0 && all[from - 1].at >= all.back().at - kLooked) {
        --from;
    }
    return from;
}

/// The mean furthest from nought. A look that ends early would let one reading speak: it begins no later than
/// the last whole one.
Difference furthest(const std::vector<Difference>& all) {
    Difference most = meanFrom(all, 0);
    const std::size_t last = lastLook(all);
    for (std::size_t i = 1; i <= last; ++i) {
        const auto one = meanFrom(all, i);
        if (std::abs(one.millibar) > std::abs(most.millibar)) {
            most = one;
        }
    }
    return most;
}

std::vector<Span> spansOf(const TraceStages& stages, const Trace& trace) {
    std::vector<Span> spans;
    for (const auto& stage : {stages.letBy, stages.settling, stages.timing}) {
        if (stage) {
            spans.push_back(*stage);
        }
    }
    if (spans.empty() && !trace.empty()) {
        spans.push_back({trace.front().at, trace.back().at});
    }
    return spans;
}

}  // namespace

bool GaugesOverTest::allows(PressureChange difference) const {
    return std::abs(difference.in(kMillibar)) <= allowed.in(kMillibar) + kNoDifference;
}

std::optional<GaugesOverTest> compareOverTest(const GaugeSaw& first, const GaugeSaw& second,
                                              const TraceStages& stages) {
    std::vector<std::vector<Difference>> seen;
    for (const auto& span : spansOf(stages, first.trace)) {
        if (auto differences = differencesIn(first.trace, second.trace, span); !differences.empty()) {
            seen.push_back(std::move(differences));
        }
    }
    if (seen.empty()) {
        return std::nullopt;
    }
    GaugesOverTest result;
    result.allowed = (first.step + second.step) / 2.0;
    const auto timed =
        stages.timing ? differencesIn(first.trace, second.trace, *stages.timing) : std::vector<Difference>();
    result.isTimed = !timed.empty();
    const auto& start = result.isTimed ? timed : seen.front();
    const auto& end = result.isTimed ? timed : seen.back();
    result.atStart = PressureChange(meanFrom(start, 0).millibar, kMillibar);
    result.atEnd = PressureChange(meanFrom(end, lastLook(end)).millibar, kMillibar);
    Difference most = furthest(seen.front());
    for (const auto& stage : seen) {
        if (const auto one = furthest(stage); std::abs(one.millibar) > std::abs(most.millibar)) {
            most = one;
        }
    }
    result.greatest = PressureChange(most.millibar, kMillibar);
    result.greatestAt = Duration(most.at, kSecond);
    result.over = {Duration(seen.front().front().at, kSecond), Duration(seen.back().back().at, kSecond)};
    return result;
}

}  // namespace hearth::tightness

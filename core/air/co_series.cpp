// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_series.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace hearth::air {

using quantity::Duration;
using quantity::kPpm;
using quantity::kSecond;
using quantity::Share;

namespace {

/// A reading as plain numbers: seconds and ppm.
struct CoPoint {
    double t;
    double x;
};

std::vector<CoPoint> pointsOf(const std::vector<CoReading>& readings) {
    std::vector<CoPoint> points;
    points.reserve(readings.size());
    for (const auto& reading : readings) {
        points.push_back({reading.at.in(kSecond), reading.level.in(kPpm)});
    }
    return points;
}

double levelBetween(const CoPoint& a, const CoPoint& b, double t) {
    return b.t > a.t ? a.x + (b.x - a.x) * (t - a.t) / (b.t - a.t) : a.x;
}

/// Area under the lines up to t, within the readings.
double areaUpTo(const std::vector<CoPoint>& points, double t) {
    double area = 0.0;
    for (std::size_t i = 1; i < points.size() && points[i - 1].t < t; ++i) {
        const auto& a = points[i - 1];
        const auto& b = points[i];
        const double end = std::min(b.t, t);
        area += (a.x + levelBetween(a, b, end)) / 2.0 * (end - a.t);
    }
    return area;
}

/// Height of the lines at an instant that is none of a reading.
double levelAt(const std::vector<CoPoint>& points, double t) {
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (t <= points[i].t) {
            return levelBetween(points[i - 1], points[i], t);
        }
    }
    return points.back().x;
}

double longestGapIn(const std::vector<CoPoint>& points, double from, double to) {
    double longest = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].t > from && points[i - 1].t < to) {
            longest = std::max(longest, points[i].t - points[i - 1].t);
        }
    }
    return longest;
}

/// Where stretches of length w may begin so that they begin or end at a reading, in order.
std::vector<double> beginnings(const std::vector<CoPoint>& points, double w) {
    const double first = points.front().t;
    const double last = points.back().t - w;
    std::vector<double> begins{first, last};
    for (const auto& point : points) {
        for (const double t : {point.t, point.t - w}) {
            if (t > first && t < last) {
                begins.push_back(t);
            }
        }
    }
    std::sort(begins.begin(), begins.end());
    begins.erase(std::unique(begins.begin(), begins.end()), begins.end());
    return begins;
}

/// Between two such beginnings the height at the end less the height at the beginning is a straight line;
/// where it falls through nought the mean is at its highest.
std::optional<double> summitBetween(const std::vector<CoPoint>& points, double a, double b, double w) {
    constexpr double kNear = 0.25;  // inside, so that two readings at one instant are no matter
    constexpr double kFar = 0.75;
    const auto gain = [&](double t) { return levelAt(points, t + w) - levelAt(points, t); };
    const double near = gain(a + kNear * (b - a));
    const double far = gain(a + kFar * (b - a));
    const double slope = (far - near) / ((kFar - kNear) * (b - a));
    if (!(slope < 0.0)) {
        return std::nullopt;
    }
    const double t = a + kNear * (b - a) - near / slope;
    return t > a && t < b ? std::optional(t) : std::nullopt;
}

CoMean meanOver(const std::vector<CoPoint>& points, double from, double to) {
    const double area = areaUpTo(points, to) - areaUpTo(points, from);
    return {Share(area / (to - from), kPpm), Duration(to - from, kSecond),
            Duration(longestGapIn(points, from, to), kSecond)};
}

}  // namespace

std::optional<rulebook::Say> gapIn(const CoSeries& series) {
    if (series.someUnreadable) {
        return rulebook::Say::ReadingUnusable;
    }
    return series.someMissing ? std::optional(rulebook::Say::ReadingMissing) : std::nullopt;
}

std::vector<CoReading> readingsAt(const CoSeries& series, CoPlace place) {
    std::vector<CoReading> found;
    std::copy_if(series.readings.begin(), series.readings.end(), std::back_inserter(found),
                 [&](const CoReading& reading) { return reading.place == place; });
    std::stable_sort(found.begin(), found.end(),
                     [](const CoReading& a, const CoReading& b) { return a.at < b.at; });
    return found;
}

std::optional<Share> peakOf(const CoSeries& series) {
    std::optional<Share> peak;
    for (const auto& reading : series.readings) {
        peak = std::max(peak.value_or(reading.level), reading.level);
    }
    return peak;
}

std::optional<CoMean> meanOf(const std::vector<CoReading>& readings) {
    const auto points = pointsOf(readings);
    if (points.empty() || points.back().t <= points.front().t) {
        return std::nullopt;
    }
    return meanOver(points, points.front().t, points.back().t);
}

std::optional<CoMean> highestMean(const std::vector<CoReading>& readings, Duration window) {
    const auto whole = meanOf(readings);
    if (!whole || whole->measured <= window || window <= Duration()) {
        return whole;
    }
    const auto points = pointsOf(readings);
    const double w = window.in(kSecond);
    auto candidates = beginnings(points, w);
    const auto begins = candidates;
    for (std::size_t i = 1; i < begins.size(); ++i) {
        if (const auto summit = summitBetween(points, begins[i - 1], begins[i], w)) {
            candidates.push_back(*summit);
        }
    }
    std::optional<CoMean> highest;
    for (const double from : candidates) {
        const auto mean = meanOver(points, from, from + w);
        if (!highest || mean.mean > highest->mean) {
            highest = mean;
        }
    }
    highest->measured = window;
    return highest;
}

CoTrend trendOf(const std::vector<CoReading>& readings, Share digit, Duration window) {
    CoTrend trend;
    auto points = pointsOf(readings);
    if (points.empty()) {
        return trend;
    }
    const double from = points.back().t - window.in(kSecond);
    points.erase(points.begin(), std::find_if(points.begin(), points.end(),
                                              [&](const CoPoint& point) { return point.t >= from; }));
    const auto n = static_cast<double>(points.size());
    double meanT = 0.0;
    double meanX = 0.0;
    int instants = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        meanT += points[i].t / n;
        meanX += points[i].x / n;
        instants += i == 0 || points[i].t > points[i - 1].t ? 1 : 0;
    }
    if (instants < 3) {
        return trend;
    }
    double spread = 0.0;
    double together = 0.0;
    for (const auto& point : points) {
        spread += (point.t - meanT) * (point.t - meanT);
        together += (point.t - meanT) * (point.x - meanX);
    }
    const double slope = together / spread;
    double residual = 0.0;
    for (const auto& point : points) {
        const double off = point.x - meanX - slope * (point.t - meanT);
        residual += off * off / (n - 2.0);
    }
    const double over = points.back().t - points.front().t;
    const double d = digit.in(kPpm);
    constexpr double kDigitVariance = 12.0;
    const double u = std::sqrt((residual + d * d / kDigitVariance) / spread);
    const double change = slope * over;
    const double expanded = quantity::kCoverage * u * over;
    trend.change = Share(change, kPpm);
    trend.uncertainty = Share(expanded, kPpm);
    trend.over = Duration(over, kSecond);
    if (std::abs(change) > expanded) {
        trend.trend = change > 0.0 ? Trend::Rising : Trend::Falling;
    } else if (std::abs(change) + expanded <= 2.0 * d || (change == 0.0 && expanded == 0.0)) {
        trend.trend = Trend::Steady;
    }
    return trend;
}

}  // namespace hearth::air

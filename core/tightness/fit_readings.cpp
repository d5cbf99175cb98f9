// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/fit_readings.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>

namespace hearth::tightness {

namespace {

/// The median of the size of a normal deviate, upside down.
constexpr double kMedianToStandard = 1.4826;
constexpr double kStretch = 0.5;        // s
constexpr double kStretchGrows = 0.01;  // of the time since the beginning

double medianOf(std::vector<double> values) {
    if (values.empty()) {
        return 0.0;
    }
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

FitTerm gathered(const std::vector<double>& times, double reads) {
    FitTerm term;
    term.count = static_cast<double>(times.size());
    term.reads = reads;
    for (const double at : times) {
        term.at += at / term.count;
    }
    for (const double at : times) {
        term.spread += (at - term.at) * (at - term.at) / term.count;
    }
    return term;
}

}  // namespace

FitReadings::FitReadings(const Trace& trace) {
    m_readings.reserve(trace.size());
    for (const auto& point : trace) {
        m_readings.push_back(
            {(point.at - trace.front().at).in(quantity::kSecond), point.pressure.in(quantity::kMillibar)});
    }
}

double FitReadings::roughScatter() const {
    std::vector<double> bends;
    for (std::size_t i = 2; i < m_readings.size(); ++i) {
        bends.push_back(
            std::abs(m_readings[i].reads - 2.0 * m_readings[i - 1].reads + m_readings[i - 2].reads));
    }
    return kMedianToStandard * medianOf(std::move(bends)) / std::sqrt(6.0);
}

double FitReadings::scatterAbout(const FitComponent& curve) const {
    std::vector<double> off;
    double squares = 0.0;
    for (const auto& reading : m_readings) {
        if (!reading.isAside) {
            off.push_back(
                std::abs(reading.reads - SettleLeak::at(reading.at, curve.logTime, curve.mean).value));
        }
    }
    const double robust = kMedianToStandard * medianOf(off);
    for (const double one : off) {
        const double kept = std::min(one, 4.0 * std::max(robust, 1e-6));
        squares += kept * kept;
    }
    const double plain = off.size() > 4 ? std::sqrt(squares / static_cast<double>(off.size() - 4)) : robust;
    double ofMeans = 0.0;
    const auto terms = means();
    for (const auto& term : terms) {
        const double rest = std::min(
            std::abs(term.reads - SettleLeak::at(term.at, curve.logTime, curve.mean, term.spread).value),
            4.0 * plain);
        ofMeans += rest * rest * term.count;
    }
    const double together =
        terms.size() > 4 ? std::sqrt(ofMeans / static_cast<double>(terms.size() - 4)) : plain;
    return std::max(plain, together);
}

void FitReadings::setAside(const FitComponent& curve, double distance) {
    for (auto& reading : m_readings) {
        const double expected = SettleLeak::at(reading.at, curve.logTime, curve.mean).value;
        reading.isAside = std::abs(reading.reads - expected) > distance;
    }
}

int FitReadings::outliers() const {
    return static_cast<int>(std::count_if(m_readings.begin(), m_readings.end(),
                                          [](const Reading& reading) { return reading.isAside; }));
}

FitPlace FitReadings::firstGuess() const {
    const std::size_t part = std::max<std::size_t>(1, m_readings.size() / 10);
    std::vector<double> first;
    std::vector<double> last;
    for (std::size_t i = 0; i < part; ++i) {
        first.push_back(m_readings[i].reads);
        last.push_back(m_readings[m_readings.size() - 1 - i].reads);
    }
    const double from = medianOf(std::move(first));
    const double to = medianOf(std::move(last));
    const double length = std::max(1.0, m_readings.back().at);
    const double ratio = from > 0.0 && to > 0.0 ? std::log(from / to) / length : 0.0;
    return {from, 0.0, ratio};
}

std::vector<std::vector<FitReadings::Reading>> FitReadings::stretches() const {
    std::vector<std::vector<Reading>> result;
    double end = -1.0;
    for (const auto& reading : m_readings) {
        if (reading.isAside) {
            continue;
        }
        if (result.empty() || reading.at >= end) {
            result.emplace_back();
            end = reading.at + std::max(kStretch, kStretchGrows * reading.at) - 1e-9;
        }
        result.back().push_back(reading);
    }
    return result;
}

std::vector<FitTerm> FitReadings::means() const {
    std::vector<FitTerm> terms;
    std::vector<double> times;
    for (const auto& stretch : stretches()) {
        times.clear();
        double sum = 0.0;
        for (const auto& reading : stretch) {
            times.push_back(reading.at);
            sum += reading.reads;
        }
        terms.push_back(gathered(times, sum / static_cast<double>(stretch.size())));
    }
    return terms;
}

std::vector<FitTerm> FitReadings::levels() const {
    std::vector<FitTerm> terms;
    for (auto stretch : stretches()) {
        std::sort(stretch.begin(), stretch.end(),
                  [](const Reading& a, const Reading& b) { return a.reads < b.reads; });
        std::vector<double> times;
        for (std::size_t i = 0; i < stretch.size(); ++i) {
            times.push_back(stretch[i].at);
            if (i + 1 == stretch.size() || stretch[i + 1].reads - stretch[i].reads > 1e-7) {
                terms.push_back(gathered(times, stretch[i].reads));
                times.clear();
            }
        }
    }
    return terms;
}

}  // namespace hearth::tightness

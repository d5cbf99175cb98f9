// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/cohb.h"

#include "core/air/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace hearth::air {

using quantity::Duration;
using quantity::kHour;
using quantity::kMinute;
using quantity::kOne;
using quantity::kPercent;
using quantity::kPpm;
using quantity::Share;

namespace {

constexpr double kCohbCapacity = 0.2;      // ml CO in a ml of blood
constexpr double kCohbBlood = 5500.0;      // ml
constexpr double kCohbProduction = 0.007;  // ml/min, the body's own
constexpr double kCohbAffinity = 218.0;
constexpr double kCohbOxygen = 100.0;      // mmHg
constexpr double kCohbDryAir = 713.0;      // mmHg: 760 less 47 of water
constexpr double kCohbStep = 0.1;          // min
constexpr double kCohbMostPpm = 2000.0;    // most of the two laws' use
constexpr double kCohbLightWork = 20.0;    // litres breathed a minute
constexpr double kCohbRegressionMost = 8;  // h

/// One step: oxygen in the blood held, the rest solved exactly. Bound CO in ml per ml before and after.
double cohbStep(double bound, double inhaled, double resistance, double minutes) {
    const double a = kCohbOxygen / (kCohbAffinity * (kCohbCapacity - bound));
    const double rest = (kCohbProduction * resistance + inhaled) / a;
    return rest + (bound - rest) * std::exp(-minutes * a / (kCohbBlood * resistance));
}

struct CohbCourse {
    double last = 0.0;
    double highest = 0.0;
};

/// Through the readings, ml per ml; levels are in range.
CohbCourse cohbCourse(const std::vector<CoReading>& readings, const Breathing& breathing, double start) {
    const double resistance = 1.0 / breathing.diffusion + kCohbDryAir / breathing.ventilation;
    CohbCourse course{start, start};
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const double span = (readings[i].at - readings[i - 1].at).in(kMinute);
        const auto steps = static_cast<int>(std::ceil(span / kCohbStep));
        const double from = readings[i - 1].level.in(kOne);
        const double to = readings[i].level.in(kOne);
        for (int k = 0; k < steps; ++k) {
            const double level = from + (to - from) * (k + 0.5) / steps;  // in the middle of the step
            course.last = cohbStep(course.last, level * kCohbDryAir, resistance, span / steps);
            course.highest = std::max(course.highest, course.last);
        }
    }
    return course;
}

/// What keeps the equation from being used; nothing when nothing does.
std::optional<Error> cohbUnusable(const std::vector<CoReading>& readings) {
    if (readings.empty() || readings.back().at <= readings.front().at) {
        return Error{ErrorCode::OutOfRange, {std::to_string(readings.size()), "2", ""}};
    }
    for (const auto& reading : readings) {
        if (!(reading.level >= Share() && reading.level <= Share(kCohbMostPpm, kPpm))) {
            return Error{ErrorCode::OutOfRange, {std::to_string(reading.level.in(kPpm)), "0", "2000"}};
        }
    }
    return std::nullopt;
}

/// Half of the share, in per cent, that an endless exposure would end in.
/// Formula: Haldane, COHb / O2Hb = M PCO / PO2.
double halfOfTheEnd(Share level) {
    const double ratio = kCohbAffinity * level.in(kOne)*kCohbDryAir / kCohbOxygen;
    constexpr double kHalf = 50.0;  // of 100 %
    return kHalf * ratio / (1.0 + ratio);
}

double stewartRise(Share level, Duration time, double litresPerMinute) {
    constexpr double kFactor = 3.317e-5;
    constexpr double kExponent = 1.036;
    return kFactor * std::pow(level.in(kPpm), kExponent) * litresPerMinute * time.in(kMinute);
}

/// The highest that any estimate gives for a level held over a time, in per cent. Where the linear law ends
/// what it had reached there counts, so that more is never less.
double highestEstimate(Share level, Duration time) {
    const double start = kCohbAtStart.in(kPercent);
    double highest = start + std::min(stewartRise(level, time, kCohbLightWork), halfOfTheEnd(level));
    const Duration told = std::min(time, Duration(kCohbRegressionMost, kHour));
    if (const auto reached = cohbByRegression(level, told)) {
        highest = std::max(highest, reached->in(kPercent));
    }
    for (const auto& breathing : {kAtRest, kLightWork}) {
        const std::vector<CoReading> held{{Duration(), level}, {time, level}};
        const auto course = cohbCourse(held, breathing, kCohbAtStart.in(kOne)*kCohbCapacity);
        highest = std::max(highest, course.highest / kCohbCapacity / kPercent.factor);
    }
    return highest;
}

}  // namespace

Result<Share> cohbByCfk(const std::vector<CoReading>& readings, const Breathing& breathing, Share start) {
    if (const auto unusable = cohbUnusable(readings)) {
        return tl::unexpected(*unusable);
    }
    const auto course = cohbCourse(readings, breathing, start.in(kOne)*kCohbCapacity);
    return Share(course.last / kCohbCapacity, kOne);
}

Result<Share> cohbRiseLinear(Share level, Duration time, double litresPerMinute) {
    const double rise = stewartRise(level, time, litresPerMinute);
    const double most = halfOfTheEnd(level);
    if (!(rise <= most)) {
        return fail(ErrorCode::OutOfRange, {std::to_string(rise), "0", std::to_string(most)});
    }
    return Share(rise, kPercent);
}

Result<Share> cohbByRegression(Share level, Duration time) {
    const double ppm = level.in(kPpm);
    if (!(ppm >= 1.0)) {
        return fail(ErrorCode::OutOfRange, {std::to_string(ppm), "1", ""});
    }
    if (time < Duration(1.0, kMinute) || time > Duration(kCohbRegressionMost, kHour)) {
        return fail(ErrorCode::OutOfRange, {std::to_string(time.in(kMinute)), "1", "480"});
    }
    constexpr double kByLevel = 0.85753;
    constexpr double kByTime = 0.62995;
    constexpr double kConstant = -2.29519;
    constexpr double kTen = 10.0;
    const double exponent = kByLevel * std::log10(ppm) + kByTime * std::log10(time.in(kMinute)) + kConstant;
    return Share(std::pow(kTen, exponent), kPercent);
}

CohbWarning cohbWarning(const std::vector<CoReading>& readings, Share limit) {
    Share peak;
    for (const auto& reading : readings) {
        peak = std::max(peak, reading.level);
    }
    if (peak > Share(kCohbMostPpm, kPpm)) {
        return CohbWarning::Dangerous;  // beyond what any estimate is for
    }
    const double most = limit.in(kPercent);
    auto rising = readings;
    for (auto& reading : rising) {
        reading.level = std::max(reading.level, Share());  // an instrument's reading below nought is nought
    }
    if (const auto mean = meanOf(rising)) {
        double highest = highestEstimate(mean->mean, mean->measured);
        for (const auto& breathing : {kAtRest, kLightWork}) {
            const auto course = cohbCourse(rising, breathing, kCohbAtStart.in(kOne)*kCohbCapacity);
            highest = std::max(highest, course.highest / kCohbCapacity / kPercent.factor);
        }
        if (highest >= most) {
            return CohbWarning::Dangerous;
        }
    }
    return peak > Share() && highestEstimate(peak, Duration(1.0, kHour)) >= most ? CohbWarning::WithinAnHour
                                                                                 : CohbWarning::NoConclusion;
}

rulebook::Finding bloodWarning(const std::vector<CoReading>& readings, const rulebook::RulesInForce& rules) {
    rulebook::Finding finding{rulebook::FindingKind::RoomCoBlood};
    const auto* entry = rules.known(rulebook::Rule::RoomCoBloodLimit);
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    if (!figure || readings.empty()) {
        rulebook::concludeOpen(finding, {rulebook::Say::CohbNotAnAllClear});
        return finding;
    }
    rulebook::restOn(finding, *entry);
    Share peak;
    for (const auto& reading : readings) {
        peak = std::max(peak, reading.level);
    }
    const Share limit(figure->value.toDouble(), quantity::shareUnit(figure->unit));
    switch (cohbWarning(readings, limit)) {
        case CohbWarning::NoConclusion:
            rulebook::concludeOpen(finding, {rulebook::Say::CohbNotAnAllClear});
            break;
        case CohbWarning::WithinAnHour:
            rulebook::concludeAtLimit(finding, {rulebook::Say::CohbWithinAnHour, {ppmFigure(peak), *figure}});
            break;
        case CohbWarning::Dangerous:
            finding.outcome = rulebook::Outcome::Fail;
            finding.why = {rulebook::Say::CohbDangerous, {*figure}};
            break;
    }
    finding.notes.push_back({rulebook::Say::CohbSensitive});
    return finding;
}

}  // namespace hearth::air

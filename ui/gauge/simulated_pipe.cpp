// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/simulated_pipe.h"

#include <cmath>

namespace hearth::ui::gauge {

namespace {

constexpr double kLetByPressure = 10.0;
constexpr double kTestPressure = 20.5;
constexpr double kMillibarPerKelvin = 1013.25 / 288.15;
constexpr double kPracticeVolume = 12.0;  // litres
constexpr double kPracticeStep = 0.01;

/// Litres an hour at test pressure, mbar a second.
double fallOf(double litresPerHour) {
    return litresPerHour / kPracticeVolume * 1013.25 / 3600.0;
}

/// What is left of a difference of temperature.
double settling(double kelvin, double timeConstant, double seconds) {
    return kMillibarPerKelvin * kelvin * std::exp(-seconds / timeConstant);
}

}  // namespace

double practicePressure(PracticePipe pipe, double seconds) {
    if (seconds < kPracticeLetBy) {
        return 0.0;
    }
    if (seconds < kPracticeTest || pipe == PracticePipe::StuckGauge) {
        const double rise = pipe == PracticePipe::LetBy ? 0.02 : 0.0;
        return kLetByPressure + rise * (seconds - kPracticeLetBy);
    }
    const double since = seconds - kPracticeTest;
    switch (pipe) {
        case PracticePipe::TightCooling:
            return kTestPressure + settling(0.3, 40.0, since);
        case PracticePipe::LeakUnderWarming:
            return kTestPressure * std::exp(-fallOf(0.6) / kTestPressure * since) + kMillibarPerKelvin * 0.5 -
                   settling(0.5, 60.0, since);
        case PracticePipe::LetBy:
        case PracticePipe::StuckGauge:
            break;
    }
    return kTestPressure;
}

double practiceReading(PracticePipe pipe, double seconds, std::uint32_t count) {
    const double pressure = practicePressure(pipe, seconds);
    if (seconds < kPracticeLetBy || pipe == PracticePipe::StuckGauge) {
        return std::round(pressure / kPracticeStep) * kPracticeStep;
    }
    // An even spread by a multiplicative sequence: steps of the golden section.
    const double part = std::fmod(count * 0.618033988749895, 1.0);
    return std::round(pressure / kPracticeStep + (part - 0.5)) * kPracticeStep;
}

std::string_view codeOf(PracticePipe pipe) {
    switch (pipe) {
        case PracticePipe::TightCooling:
            return "tight_cooling";
        case PracticePipe::LeakUnderWarming:
            return "leak_under_warming";
        case PracticePipe::LetBy:
            return "let_by";
        case PracticePipe::StuckGauge:
            break;
    }
    return "stuck_gauge";
}

}  // namespace hearth::ui::gauge

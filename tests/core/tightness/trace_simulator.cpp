// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/tightness/trace_simulator.h"

#include "core/quantity/units.h"

#include <cmath>

namespace hearth::tightness::simulator {

Random::Random(std::uint64_t seed) : m_state(seed * 0x9E3779B97F4A7C15ULL + 0xD1B54A32D192ED03ULL) {
    for (int i = 0; i < 8; ++i) {
        static_cast<void>(share());
    }
}

double Random::share() {
    m_state ^= m_state >> 12U;
    m_state ^= m_state << 25U;
    m_state ^= m_state >> 27U;
    const std::uint64_t mixed = m_state * 0x2545F4914F6CDD1DULL;
    return (static_cast<double>(mixed >> 11U) + 0.5) / 9007199254740992.0;
}

double Random::from(double least, double most) {
    return least + (most - least) * share();
}

double Random::logFrom(double least, double most) {
    return least * std::pow(most / least, share());
}

double Random::normal() {
    const double size = std::sqrt(-2.0 * std::log(share()));
    return size * std::cos(6.283185307179586 * share());
}

std::vector<double> pressures(const Installation& installation) {
    constexpr double kGas = 8.314462618;
    constexpr double kAtmosphere = 101325.0;
    constexpr double kRoom = 288.15;
    const double volume = installation.litres / 1000.0;
    const auto temperature = [&](double t) {
        return kRoom + installation.kelvin * std::exp(-t / installation.settles);
    };
    double moles = (kAtmosphere + installation.start * 100.0) * volume / (kGas * temperature(0.0));
    // moles a second and pascal
    const double leak = installation.leak / 1000.0 / 3600.0 * kAtmosphere / (kGas * kRoom) / (20.0 * 100.0);
    const auto gauge = [&](double n, double t) { return n * kGas * temperature(t) / volume - kAtmosphere; };
    const int inner = std::max(1, static_cast<int>(std::ceil(installation.every / 0.1)));
    const double h = installation.every / inner;
    const int count = static_cast<int>(installation.length / installation.every + 0.5);
    std::vector<double> result;
    for (int i = 0; i <= count; ++i) {
        double t = i * installation.every;
        result.push_back(gauge(moles, t) / 100.0);
        for (int j = 0; j < inner; ++j, t += h) {  // Runge and Kutta's fourth order
            const double a = -leak * gauge(moles, t);
            const double b = -leak * gauge(moles + a * h / 2, t + h / 2);
            const double c = -leak * gauge(moles + b * h / 2, t + h / 2);
            const double d = -leak * gauge(moles + c * h, t + h);
            moles += h * (a + 2 * b + 2 * c + d) / 6;
        }
    }
    return result;
}

Trace watch(const Installation& installation, Random& random) {
    const auto truth = pressures(installation);
    Trace trace;
    for (std::size_t i = 0; i < truth.size(); ++i) {
        const double t = static_cast<double>(i) * installation.every;
        double seen = truth[i] + installation.noise * random.normal() + installation.drift * t / 60.0;
        if (installation.outliers > 0.0 && random.share() < installation.outliers) {
            seen += random.from(-5.0, 5.0);
        }
        const double shown = std::round(seen / installation.step) * installation.step;
        trace.push_back(
            {quantity::Duration(t, quantity::kSecond), quantity::GaugePressure(shown, quantity::kMillibar)});
    }
    return trace;
}

Installation someInstallation(Random& random) {
    Installation one;
    one.litres = random.from(2.0, 35.0);
    one.leak = random.share() < 1.0 / 3.0 ? 0.0 : random.from(0.0, 5.0);
    one.kelvin = random.from(-2.0, 2.0);
    one.settles = random.from(5.0, 120.0);
    one.start = random.from(20.0, 21.0);
    const double which = random.share() * 3.0;
    one.step = which < 1.0 ? 0.01 : which < 2.0 ? 0.1 : 0.5;
    one.noise = one.step * random.logFrom(0.1, 1.5);
    one.every = random.logFrom(0.1, 1.0);
    one.outliers = random.share() < 0.25 ? 0.01 : 0.0;
    return one;
}

}  // namespace hearth::tightness::simulator

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/trace.h"

#include <cstdint>
#include <vector>

/// Installations that do not exist, for holding the fit against what is known. Nothing of the fit is used:
/// the gas is integrated step by step (moles and temperature), the random numbers are its own.
namespace hearth::tightness::simulator {

/// xorshift64*, Vigna 2016 (from memory); the same numbers on every machine.
class Random {
  public:
    explicit Random(std::uint64_t seed);
    [[nodiscard]] double share();  // 0 to 1
    [[nodiscard]] double from(double least, double most);
    [[nodiscard]] double logFrom(double least, double most);
    [[nodiscard]] double normal();

  private:
    std::uint64_t m_state;
};

struct Installation {
    double litres = 10.0;
    double leak = 0.0;      // l/h at 20 mbar, 1013.25 mbar and 15 degrees Celsius
    double kelvin = 0.0;    // how much warmer the gas is when the valve is shut
    double settles = 30.0;  // s
    double start = 20.5;    // mbar
    double noise = 0.01;    // mbar
    double step = 0.01;     // mbar
    double drift = 0.0;     // mbar a minute
    double every = 0.1;     // s
    double length = 180.0;  // s
    double outliers = 0.0;  // share of readings
};

/// The pressure without a gauge, every `every` seconds, mbar.
[[nodiscard]] std::vector<double> pressures(const Installation& installation);
/// As the gauge shows it.
[[nodiscard]] Trace watch(const Installation& installation, Random& random);
/// What the issue of random installations is: 2 to 35 litres, 0 to 5 l/h (a third of them tight), 0 to 2 K
/// either way, 5 to 120 s, steps of 0.01, 0.1 and 0.5 mbar, noise of a tenth to one and a half steps.
[[nodiscard]] Installation someInstallation(Random& random);

}  // namespace hearth::tightness::simulator

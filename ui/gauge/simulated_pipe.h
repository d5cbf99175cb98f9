// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

/// What a gauge on a pipe would show, for practice: no reading of anything.
namespace hearth::ui::gauge {

enum class PracticePipe {
    TightCooling,      // holds; the gas cools after it was pumped
    LeakUnderWarming,  // leaks, and warms as much
    LetBy,             // the valve lets by
    StuckGauge,        // the gauge stays at let-by pressure
};

inline constexpr std::array kPracticePipes{PracticePipe::TightCooling, PracticePipe::LeakUnderWarming,
                                           PracticePipe::LetBy, PracticePipe::StuckGauge};

/// When a practice test does what, in seconds from its start: open to the air, let-by pressure, test
/// pressure.
inline constexpr double kPracticeLetBy = 8.0;
inline constexpr double kPracticeTest = 90.0;

/// The pressure in the pipe, in mbar. A pipe of 12 l at 15 degrees C: a leak of q litres an hour lowers it by
/// q / V of an atmosphere an hour, in proportion to the gauge pressure; a change of its temperature by
/// 1013.25 / 288.15 mbar for each kelvin, dying out exponentially.
/// Source: textbook (ideal gas; laminar leak). Not rounded. Checked: simulated_pipe_test.cpp.
[[nodiscard]] double practicePressure(PracticePipe pipe, double seconds);

/// As a gauge of 0.01 mbar with a noise of half a step shows it. `count` numbers the readings, so that the
/// same practice test looks the same again.
[[nodiscard]] double practiceReading(PracticePipe pipe, double seconds, std::uint32_t count);

[[nodiscard]] std::string_view codeOf(PracticePipe pipe);

}  // namespace hearth::ui::gauge

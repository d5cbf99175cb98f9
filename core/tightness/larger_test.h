// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/permitted_leak.h"
#include "core/tightness/readable_movement.h"

#include <optional>

/// A tightness test to IGE/UP/1 or IGE/UP/1A, whole: from what was read to findings.
///
/// - Any smell of gas fails, whatever the gauge says.
/// - A leak rate beyond what is permitted fails, however the test was made.
/// - Nothing passes before gauge, volume, place, medium, let-by, settling, pressure and time are known and
/// right.
/// - The permitted rate, the factors and the readable movement all count towards what may be decided: one
///   figure that nobody has confirmed, and the test is to be looked at again.
namespace hearth::tightness {

struct LargerTest {
    std::optional<LargerGauge> gauge;
    Given<quantity::Volume> volume;
    Surroundings place;
    std::optional<TestMedium> medium;
    Given<quantity::GaugePressure> operating;
    Stage letBy;
    Stage settle;
    Stage test;
    std::optional<bool> smell;
};

/// How long the test must be, with the entries that say so; nothing when something is missing, and `lack`
/// says what.
struct NeededTime {
    std::optional<quantity::Duration> time;
    std::vector<const rulebook::Entry*> entries;
    rulebook::Sentence lack;
};
/// Source: IGE/UP/1 Edition 2, from memory (larger_method.h). Rounding: up to whole minutes. Checked:
/// tests/core/tightness/larger_test_test.cpp.
[[nodiscard]] NeededTime neededTime(const LargerTest& test, const rulebook::RulesInForce& rules);

/// Let-by from about half of the operating pressure; a readable rise fails. The time is not known and asked
/// for. Source: IGE/UP/1, from memory (pressure); what counts as a rise: the gauge's readable movement,
/// common practice, no source. Checked: tests/core/tightness/larger_test_test.cpp.
[[nodiscard]] rulebook::Finding largerLetBy(const LargerTest& test, const rulebook::RulesInForce& rules);
/// Long enough to settle, and steady at its end (no readable movement: common practice, no source)?
/// Source: none read; the time is asked for. Checked: tests/core/tightness/larger_test_test.cpp.
[[nodiscard]] rulebook::Finding largerSettling(const LargerTest& test, const rulebook::RulesInForce& rules);
/// Timed from the operating pressure: below it there is no verdict, above it the regulator may have locked
/// up. Source: a maintenance firm's policy page on IGE/UP/1A Edition 2. Checked:
/// tests/core/tightness/larger_test_test.cpp.
[[nodiscard]] rulebook::Finding largerTestPressure(const LargerTest& test,
                                                   const rulebook::RulesInForce& rules);
/// Timed for as long as the gauge needs to show the leak that is not permitted?
/// Source: IGE/UP/1 Edition 2, from memory. Checked: tests/core/tightness/larger_test_test.cpp.
[[nodiscard]] rulebook::Finding largerTestTime(const LargerTest& test, const rulebook::RulesInForce& rules);

struct LargerFindings {
    rulebook::Finding readable;
    rulebook::Finding letBy;
    rulebook::Finding settling;
    rulebook::Finding pressure;
    rulebook::Finding time;
    rulebook::Finding longest;
    rulebook::Finding permitted;
    rulebook::Finding tightness;
};

/// Source: IGE/UP/1 and IGE/UP/1A Edition 2 as far as they are known (the functions above). Checked:
/// tests/core/tightness/larger_test_test.cpp.
[[nodiscard]] LargerFindings largerTightness(const LargerTest& test, const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness

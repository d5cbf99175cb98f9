// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/drop_class.h"
#include "core/tightness/gauge.h"

#include <optional>

/// The single grounds on which a test may pass or fail; verdict.cpp puts them together.
///
/// Source: IGEM/UP/1B Editions 3 and 4 as reproduced by trainees' revision cards (drops by class), a training
/// centre's article (short-cut) and the gas register's bulletin (bands); each limit is an entry that names
/// where it was read. Checked: grounds_test.cpp, verdict_test.cpp.
namespace hearth::tightness {

/// A fall with the threshold that it is held against.
struct Movement {
    Change change;
    const rulebook::Entry* threshold;  // never null
};

[[nodiscard]] Standing standing(const Movement& movement);

/// "fall, threshold" and "fall, threshold, uncertainty" for sentences.
[[nodiscard]] rulebook::Sentence fallSentence(rulebook::Say say, const Movement& movement);
[[nodiscard]] rulebook::Sentence atLimitSentence(const Change& change, const quantity::Figure& limit);

/// No perceptible movement; `beyond` is what a movement is.
[[nodiscard]] rulebook::Finding byNoMovement(const Movement& movement, rulebook::Say beyond);
/// Edition 3, natural gas: the drop of the meter's and pipe's class.
[[nodiscard]] rulebook::Finding byDropClass(const Change& change, const TestedPart& part,
                                            const rulebook::RulesInForce& rules);
/// Edition 4: a fall below the short-cut. Nothing beyond it: then the volume decides, which is no failure
/// yet.
[[nodiscard]] std::optional<rulebook::Finding> byShortCut(const Change& change,
                                                          const rulebook::RulesInForce& rules);
/// The band of the volume; empty bands give no verdict, and say what Edition 3 would have allowed, for
/// information.
[[nodiscard]] rulebook::Finding byBands(const Change& change, const TestedPart& part,
                                        const rulebook::RulesInForce& rules);
/// The finding about the table of bands itself: which band holds, or what is missing.
[[nodiscard]] rulebook::Finding bandLookUp(const TestedPart& part, const rulebook::RulesInForce& rules);

/// A rise beyond the threshold, or too near to it to tell: "look again". Nothing when none was read (that a
/// coarse gauge can't exclude one is said of the movement itself).
[[nodiscard]] std::optional<rulebook::Finding> byRise(rulebook::FindingKind kind, const Movement& movement);

/// The less grave of the two; the first when they are equal.
[[nodiscard]] rulebook::Finding better(rulebook::Finding first, rulebook::Finding second);

}  // namespace hearth::tightness

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/drop_class.h"
#include "core/tightness/gauge.h"

#include <optional>

/// The verdict of a tightness test to IGEM/UP/1B, Edition 3 or 4.
///
/// - Any smell of gas fails, whatever the gauge says.
/// - What was tested and how must be said: new or existing, whole or part, appliances, pilots, smell.
/// - A stage before it that has no verdict, a valve that lets by, or an installation outside the scope: no
/// verdict.
/// - A perceptible rise is looked at again: its cause must be found.
/// - New work, and existing pipework with appliances isolated or none connected: no perceptible movement.
/// - Existing with appliances connected: no perceptible movement passes. Otherwise
///   Edition 3: the drop permitted for meter and pipe (natural gas) or volume (LPG);
///   Edition 4: the movement must be shown not to come from the pipework (the repeat with appliances
///   isolated); then a fall below the short-cut passes, or the band of the volume decides.
/// A larger fall never fares better; nothing passes on a limit that nobody has confirmed.
namespace hearth::tightness {

enum class Work { New, Existing };
enum class Extent { Whole, Part };
enum class Appliances { Connected, Isolated, NoneConnected };
enum class Pilots { Out, NoneFitted, LeftLit };

/// What was tested and how; each is nothing until it is said.
struct Conduct {
    std::optional<Work> work;
    std::optional<Extent> extent;
    std::optional<Appliances> appliances;
    std::optional<Pilots> pilots;  // asked when appliances are connected
    std::optional<bool> smell;
};

struct TightnessInput {
    Conduct conduct;
    TestedPart part;
    std::optional<Gauge> gauge;
    Stage test;
    Stage retest;  // the repeat with appliances isolated
    bool lowPressureExplained = false;
    quantity::TemperatureChange assumed;                      // for the note on what cooling could explain
    std::optional<quantity::Share> volumeOff = std::nullopt;  // for the note on the leak
    std::optional<Change> settled;                            // of the settling minute
};

/// The findings that the verdict waits for.
struct Preceding {
    const rulebook::Finding* scope = nullptr;
    const rulebook::Finding* letBy = nullptr;
    const rulebook::Finding* settling = nullptr;
    const rulebook::Finding* pressure = nullptr;
    const rulebook::Finding* time = nullptr;
};

struct TightnessFindings {
    rulebook::Finding tightness{rulebook::FindingKind::Tightness};
    std::optional<rulebook::Finding> retest;  // when it was done or is needed
    std::optional<rulebook::Finding> bands;   // when the bands by volume are what decides
};

/// The verdict as told above.
/// Source: IGEM/UP/1B Edition 3 as two sets of trainees' revision cards give it; Edition 4 as the gas
/// register's magazine and bulletin (second edition) give it; each limit is an entry that names its own.
/// Checked: verdict_test.cpp.
[[nodiscard]] TightnessFindings tightness(const TightnessInput& input, const Preceding& before,
                                          const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/drop_class.h"
#include "core/tightness/given.h"
#include "core/tightness/verdict.h"

#include <optional>

namespace hearth::tightness {

enum class PurgeDone { Yes, No, NotNeeded };
enum class PurgeMethod { OpenBurner, VentilatedPlace };

struct PurgeInput {
    std::optional<PurgeDone> done;
    std::optional<PurgeMethod> method;
    Given<quantity::Volume> passed;   // on the meter's index
    std::optional<bool> steadyFlame;  // at every appliance
    Conduct conduct;
    TestedPart part;
};

/// How much gas a purge must pass, with the entry that says so.
struct PurgeNeed {
    std::optional<quantity::Volume> volume;
    const rulebook::Entry* entry = nullptr;
};
/// The small fixed volume for a meter to 6 m3/h with pipe to 28 mm, else the factor times the installation
/// volume. Source: trainees' revision cards on IGEM/UP/1B Edition 3 (two sets; the factor one). Checked:
/// purge_test.cpp.
[[nodiscard]] PurgeNeed purgeNeed(const TestedPart& part, const rulebook::RulesInForce& rules);

/// Was it purged as it must be: enough gas, by an open burner above the volume that asks for one, till every
/// appliance burns with a steady flame?
/// Source: certification body's pocket guide Gas 2, reproducing IGEM/UP/1B Edition 3 (open burner above 0.02
/// m3); the steady flame common practice, no source. Checked: purge_test.cpp.
[[nodiscard]] rulebook::Finding purge(const PurgeInput& input, const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/burner/gas_rate.h"
#include "core/judging/readings.h"

namespace hearth::judging {

/// The gas rate of one appliance as it was timed, for the question after it and for the pipes that feed it.
struct TimedRate {
    burner::RateInput input;
    burner::JudgedRate judged;
};
[[nodiscard]] TimedRate timedRate(const Readings& readings, const rulebook::RulesInForce& rules);

}  // namespace hearth::judging

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/co_series.h"
#include "core/base/result.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

/// How high an exposure could drive carboxyhaemoglobin (COHb), as an order of magnitude, for a warning. The
/// estimates differ by a factor of two. There is no value here that means safe.
namespace hearth::air {

/// What the CFK equation wants to know of a person.
struct Breathing {
    double ventilation;  // alveolar, ml/min
    double diffusion;    // of the lung for CO, ml/(min mmHg)
};
/// 4 l/min; 40 ml/(min mmHg). Ventilation and diffusion are from memory (medium).
inline constexpr Breathing kAtRest{4000.0, 40.0};
/// 10 l/min.
inline constexpr Breathing kLightWork{10000.0, 40.0};

/// A non-smoker's share to begin with: 0.8 % (toxicology page on the CFK equation).
inline constexpr quantity::Share kCohbAtStart{0.8, {0.01}};

/// Coburn-Forster-Kane equation, stepped through a series (straight lines between readings).
/// Formula: Vb dC/dt = VCO + (PI - C PO2/(M (B0 - C))) / B; B = 1/DL + (pb - 47)/VA; PI = x (pb - 47);
/// C: ml CO per ml blood, B0 = 0.2 ml/ml its capacity (O2Hb = 0.2 - C), Vb = 5500 ml, VCO = 0.007 ml/min,
/// M = 218, PO2 = 100 mmHg, pb = 760 mmHg. COHb = C / B0. Each step of at most 6 s holds O2Hb and solves the
/// rest exactly.
/// Valid for: 0 to 2000 ppm, at least two instants; else OutOfRange.
/// Source: two toxicology pages (CFK, constants); Vb, DL, VA from memory. Checked: cohb_test.cpp (against an
/// independent integration, cfk_check.py).
[[nodiscard]] Result<quantity::Share> cohbByCfk(const std::vector<CoReading>& readings,
                                                const Breathing& breathing,
                                                quantity::Share start = kCohbAtStart);

/// Linear law for short high exposures: the rise of COHb.
/// Formula: rise % = 3.317e-5 ppm^1.036 RMV t; RMV: litres breathed a minute, t: minutes.
/// Valid for: far from saturation: up to half of the share that the exposure would end in (Haldane, M PCO /
/// PO2); beyond: OutOfRange with the rise and that half in %.
/// Source: Stewart 1973 (toxicology page). Checked: cohb_test.cpp.
[[nodiscard]] Result<quantity::Share> cohbRiseLinear(quantity::Share level, quantity::Duration time,
                                                     double litresPerMinute);

/// Regression for people at rest without background: the COHb reached.
/// Formula: log10 % = 0.85753 log10 ppm + 0.62995 log10 t - 2.29519; t: minutes.
/// Valid for: t from 1 minute to 8 hours, at least 1 ppm; else OutOfRange.
/// Source: Peterson and Stewart 1970, from memory (medium). Checked: cohb_test.cpp.
[[nodiscard]] Result<quantity::Share> cohbByRegression(quantity::Share level, quantity::Duration time);

/// Milder first. There is no value for safe: the mildest says that nothing can be concluded.
enum class CohbWarning { NoConclusion, WithinAnHour, Dangerous };

/// The strongest warning that any of the estimates gives: Dangerous when one of them passes `limit` in the
/// course of the readings; WithinAnHour when an hour at their highest level would.
/// Source: facts' own use of the estimates (order of magnitude); limit: WHO Europe, 2nd edition, 2.5 %.
/// Checked: cohb_test.cpp.
[[nodiscard]] CohbWarning cohbWarning(const std::vector<CoReading>& readings, quantity::Share limit);

/// The warning as a finding: fails, asks to look again, or has no verdict; it never passes.
/// Source: as cohbWarning. Checked: cohb_test.cpp.
[[nodiscard]] rulebook::Finding bloodWarning(const std::vector<CoReading>& readings,
                                             const rulebook::RulesInForce& rules);

}  // namespace hearth::air

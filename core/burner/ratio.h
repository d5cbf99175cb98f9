// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/analyser.h"
#include "core/rulebook/finding.h"

/// The ratio of CO to CO2 in the products of combustion.
namespace hearth::burner {

/// What: CO over CO2, both by volume, dry; a bare number, shown to four decimals and judged as it is.
/// Formula: (CO ppm / 10 000) / CO2 %.
/// Valid for: CO >= 0, CO2 > 0. Air that thins the products thins both alike: the ratio stays.
/// Source: training worked examples; BS 7967, from memory (facts: combustion 2.1).
/// Rounding: none. Checked: tests/core/burner/ratio_test.cpp.
[[nodiscard]] Result<double> ratioOf(quantity::Share carbonMonoxide, quantity::Share carbonDioxide);

/// What: the same from readings, with its standard uncertainty.
/// Formula: u(r)^2 = (u(CO)/CO2)^2 + (u(CO2) CO/CO2^2)^2.
/// Valid for: as above. A CO2 that the analyser works out from O2 is taken as if it were measured.
/// Source: GUM 5.1.2, from memory. Rounding: none. Checked: tests/core/burner/ratio_test.cpp.
[[nodiscard]] Result<quantity::Uncertain> ratioRead(const ShareReading& carbonMonoxide,
                                                    const ShareReading& carbonDioxide,
                                                    const Analyser& analyser);

/// The ratio held against a limit (an entry without a unit; null: no verdict). Readings that are missing,
/// unreadable or below nought, and a CO2 of nought, have no verdict; a CO of nought is a ratio of nought.
/// Source: none of its own: the entry's. Checked: tests/core/burner/ratio_test.cpp.
[[nodiscard]] rulebook::Finding ratioFinding(rulebook::FindingKind kind, const FlueReadings& readings,
                                             const Analyser& analyser, const rulebook::Entry* limit);

}  // namespace hearth::burner

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>
#include <span>

/// What others say of carbon monoxide in air, for comparison: none of it decides anything.
namespace hearth::air {

/// A guideline of the World Health Organization: a mean that should not be exceeded over that time.
struct CoGuideline {
    const char* document;
    double milligramsPerCubicMetre;
    double ppm;  // as the document prints it; nought where it prints none
    quantity::Duration over;
    bool fromMemory;
};
/// Source: WHO Air Quality Guidelines for Europe, 2nd edition (a journal's table); WHO indoor air 2010 (from
/// memory); WHO 2021 (an air-quality body's table). Checked: co_guidelines_test.cpp.
[[nodiscard]] std::span<const CoGuideline> coGuidelines();

/// When an alarm must sound at a level: not before `notBefore`, by `by` (absent: it need not).
struct CoAlarmRow {
    double ppm;
    quantity::Duration notBefore;
    std::optional<quantity::Duration> by;
};
/// Thresholds for saving lives, not safe levels.
/// Source: BS EN 50291 (a carbon monoxide charity's page). Checked: co_guidelines_test.cpp.
[[nodiscard]] std::span<const CoAlarmRow> coAlarmRows();

}  // namespace hearth::air

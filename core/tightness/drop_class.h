// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tube.h"
#include "core/pipework/volume.h"
#include "core/rulebook/entry.h"

#include <optional>

namespace hearth::tightness {

/// The part under test, as far as limits go by it.
struct TestedPart {
    const pipework::Meter* meter = nullptr;  // none: not said yet
    double largestNominal = 0.0;             // mm
    bool nominalKnown = false;
    std::optional<quantity::Volume> volume;
};

/// Which of Edition 3's permissible drops for natural gas belongs to a meter and the largest pipe. Nothing
/// when meter or pipe is not said, or lies outside the table: ultrasonic to 6 m3/h, diaphragm to 16 m3/h,
/// pipe to 35 mm. Source: two sets of trainees' revision cards on IGEM/UP/1B Edition 3; the column above 28
/// mm from memory. Checked: drop_class_test.cpp.
[[nodiscard]] std::optional<rulebook::Rule> edition3DropRule(const TestedPart& part);

}  // namespace hearth::tightness

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/burner/analyser.h"
#include "core/gas/properties.h"
#include "core/gas/stoichiometry.h"
#include "core/rulebook/sentence.h"

#include <vector>

/// What the readings come to, in words, for the notes of a finding.
namespace hearth::burner {

/// Excess air exact and simple, CO free of air and at 3 % O2, CO per kilowatt-hour net and gross. From O2;
/// each as far as its readings are there and lie within what its formula holds for. Decides nothing.
/// Source: as the formulas (flue_gas.h, core/gas/stoichiometry.h).
/// Checked: tests/core/burner/flue_notes_test.cpp.
[[nodiscard]] std::vector<rulebook::Sentence> flueGasNotes(const FlueReadings& readings,
                                                           const gas::Stoichiometry& burning,
                                                           const gas::Properties& properties);

}  // namespace hearth::burner

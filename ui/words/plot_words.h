// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/record/plot.h"
#include "core/register/visit_file.h"
#include "ui/words/words.h"

#include <vector>

/// What was read on a visit as plots, worded: for the record and for the sheet alike. What was not read, or
/// can't be, is not there: no plot stands for it.
namespace hearth::ui::words {

/// What a plot is made of: the findings are those that the record, or the sheet, shows.
struct PlotSource {
    const reg::VisitFile& file;
    const std::vector<judging::Judged>& findings;
    const Words& words;
};

/// The limits of movement that a finding rests on, as pressures from `start` on: below it, or above it where
/// a rise is held against them.
void addMovementLimits(const PlotSource& source, const rulebook::Finding& finding,
                       const quantity::Decimal& start, bool rises, record::Plot& plot);

/// Let-by, tightness and retest of a test: start and end with their uncertainty, and the limits that the
/// findings rest on, as pressures. A stage with one reading has no plot.
[[nodiscard]] record::Plots testPlots(const PlotSource& source, reg::TestId test);

/// Carbon monoxide in rooms over time, a line for each place, with the levels that the findings rest on.
[[nodiscard]] record::Plots roomPlots(const PlotSource& source);

/// Those levels of the rule book's entries, worded; what is not in ppm is left out.
[[nodiscard]] std::vector<record::PlotLimit> roomLimits(const std::vector<rulebook::Entry>& entries,
                                                        const Words& words);

/// Combustion of an appliance at the highest and the lowest rate, before and after it was adjusted: ratio, CO
/// and CO2, each against the limit or the maker's range that its findings rest on. What was not read at
/// either rate has no plot.
[[nodiscard]] record::Plots combustionPlots(const PlotSource& source, reg::ApplianceId appliance);

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/plot.h"
#include "core/record/trace_text.h"
#include "core/tightness/trace.h"
#include "ui/words/words.h"

#include <vector>

/// Carbon monoxide in a room as an instrument saw it that was watched, worded: for the panel, the sheet and
/// the record alike.
namespace hearth::ui::words {

/// The levels over time with the rule book's. However many there are, a few hundred points are drawn: the
/// least and the greatest of each stretch, so that no peak is left out. Silences, and where the connection
/// was `lost`, are gaps. Nothing without a reading.
[[nodiscard]] record::Plots roomTracePlots(const record::RoomTrace& trace,
                                           const std::vector<tightness::Span>& lost,
                                           const std::vector<record::PlotLimit>& limits, const Words& words);
/// "Room monitor: 432 readings over 36.0 min, the highest 9 ppm."
[[nodiscard]] QString roomTraceSource(const record::RoomTrace& trace, const Words& words);
/// That nothing is decided by it. Stands wherever such a trace is shown.
[[nodiscard]] QString roomTraceBesideFindings(const Words& words);

}  // namespace hearth::ui::words

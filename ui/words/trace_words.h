// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/trace_seen.h"
#include "ui/words/plot_words.h"

#include <QStringList>

/// What a gauge's trace tells, worded: for the record and for the sheet alike.
namespace hearth::ui::words {

/// The one sentence that says what it means.
[[nodiscard]] QString traceMeaning(const judging::TraceSeen& seen, const Words& words);
/// What it rests on, each a sentence: the leak with its interval, settled or how long to wait, the smallest
/// leak that could have been shown, the gauge's zero, where it was silent.
[[nodiscard]] QStringList traceGrounds(const judging::TraceSeen& seen, const Words& words);
/// "logger.csv: 2700 readings over 270 s, one step 0.01 mbar".
[[nodiscard]] QString traceSource(const judging::TraceSeen& seen, const Words& words);
/// That the verdict is by the standard's rule. Stands wherever a trace is shown.
[[nodiscard]] QString traceBesideVerdict(const Words& words);
/// "valve shut", "timing begins".
[[nodiscard]] QString traceEvent(reg::TraceEvent event, const Words& words);

/// The whole trace with its stages and what happened; and the timed minutes (or what there is of the test)
/// with the curve that was laid through them and the limits that the test's finding rests on. The sentence
/// that the verdict is by the standard's rule is their note.
[[nodiscard]] record::Plots tracePlots(const PlotSource& source, const judging::TraceSeen& seen);

}  // namespace hearth::ui::words

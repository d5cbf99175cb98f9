// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/plot.h"
#include "ui/gauge/taken.h"
#include "ui/words/words.h"

#include <QString>

namespace hearth::ui::gauge {

/// Another gauge beside it, in the same times.
struct PlotBeside {
    QString name;
    tightness::Trace trace;
};

/// The pressures over time, with what happened. However many there are, a few hundred points are drawn: the
/// least and the greatest of each stretch, so that no spike is left out. Gaps are gaps. Nothing without a
/// reading.
[[nodiscard]] record::Plots livePlot(const TakenTrace& taken, const PlotBeside& beside,
                                     const words::Words& words);

}  // namespace hearth::ui::gauge

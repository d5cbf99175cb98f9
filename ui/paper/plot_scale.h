// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/plot.h"

#include <QString>

#include <vector>

/// From figures to places along an axis: pure arithmetic, knows nothing of fonts.
namespace hearth::ui::paper {

struct ScaleTick {
    double at = 0;
    QString text;
};

/// What an axis covers, and its ticks in rising order.
struct Scale {
    double least = 0;
    double most = 1;
    std::vector<ScaleTick> ticks;

    /// 0 at the least, 1 at the most.
    [[nodiscard]] double share(double value) const { return (value - least) / (most - least); }
    [[nodiscard]] double share(const quantity::Decimal& value) const { return share(value.toDouble()); }
};

/// Round steps (1, 2 or 5 times a power of ten), at most `mostSteps` of them; the axis begins and ends on
/// one. A single figure is given room of one step to either side. `fromNought`: nought is on the axis.
[[nodiscard]] Scale roundScale(double least, double most, int mostSteps, bool fromNought);

/// The axes of a plot: by its given ticks, or round. Nothing for a plot without figures.
[[nodiscard]] Scale xScale(const record::Plot& plot, int mostSteps);
[[nodiscard]] Scale yScale(const record::Plot& plot, int mostSteps);

}  // namespace hearth::ui::paper

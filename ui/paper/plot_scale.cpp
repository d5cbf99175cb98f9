// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/plot_scale.h"

#include "core/quantity/typed.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace hearth::ui::paper {

namespace {

using quantity::Decimal;

constexpr double kMostDecimals = 9;
/// Beside given ticks, of the way from the first to the last.
constexpr double kTickMargin = 0.18;
/// Beyond the least and the most on the y axis, of the way between them.
constexpr double kFrameMargin = 0.05;
/// A figure on a step is not pushed to the next by the last bit of a double.
constexpr double kBitSlack = 1e-9;

/// The least and the most of what has been taken in.
class Extent {
  public:
    void take(double value) {
        m_least = std::min(m_least.value_or(value), value);
        m_most = std::max(m_most.value_or(value), value);
    }
    void take(const Decimal& value) { take(value.toDouble()); }
    [[nodiscard]] double least() const { return m_least.value_or(0); }
    [[nodiscard]] double most() const { return m_most.value_or(1); }

  private:
    std::optional<double> m_least;
    std::optional<double> m_most;
};

/// The smallest of 1, 2, 5 times a power of ten that is `wanted` at least.
struct Step {
    double value = 1;
    int decimals = 0;
};
Step roundStep(double wanted) {
    const double power = std::floor(std::log10(wanted) + kBitSlack);
    for (const double digit : {1.0, 2.0, 5.0}) {
        const double step = digit * std::pow(10.0, power);
        if (step >= wanted * (1 - kBitSlack)) {
            return {step, static_cast<int>(std::clamp(-power, 0.0, kMostDecimals))};
        }
    }
    return {std::pow(10.0, power + 1), static_cast<int>(std::clamp(-power - 1, 0.0, kMostDecimals))};
}

Scale scaleBy(const Step& step, double first, double last) {
    Scale scale{first * step.value, last * step.value, {}};
    for (double k = first; k <= last + kBitSlack; ++k) {
        const double at = k * step.value;
        const quantity::Figure figure{Decimal::rounded(at, step.decimals)};
        scale.ticks.push_back({at, QString::fromStdString(quantity::show(figure))});
    }
    return scale;
}

Scale givenScale(const record::PlotAxis& axis, Extent extent) {
    Scale scale;
    for (const record::PlotTick& tick : axis.ticks) {
        extent.take(tick.at);
        scale.ticks.push_back({tick.at.toDouble(), QString::fromStdString(tick.text)});
    }
    const double across = extent.most() - extent.least();
    const double margin = across > 0 ? kTickMargin * across : 1;
    scale.least = extent.least() - margin;
    scale.most = extent.most() + margin;
    return scale;
}

Extent xExtent(const record::Plot& plot) {
    Extent extent;
    for (const record::PlotSeries& series : plot.series) {
        for (const record::PlotPoint& point : series.points) {
            extent.take(point.x);
        }
    }
    for (const record::PlotMark& mark : plot.marks) {
        extent.take(mark.x);
    }
    for (const record::PlotStretch& stretch : plot.stretches) {
        extent.take(stretch.from);
        extent.take(stretch.to);
    }
    return extent;
}

Extent yExtent(const record::Plot& plot) {
    Extent extent;
    for (const record::PlotSeries& series : plot.series) {
        for (const record::PlotPoint& point : series.points) {
            if (point.y) {
                const double spread = point.spread ? point.spread->toDouble() : 0;
                extent.take(point.y->toDouble() - spread);
                extent.take(point.y->toDouble() + spread);
            }
        }
    }
    for (const record::PlotLimit& limit : plot.limits) {
        extent.take(limit.y);
    }
    for (const record::PlotBand& band : plot.bands) {
        extent.take(band.least);
        extent.take(band.most);
    }
    return extent;
}

}  // namespace

Scale roundScale(double least, double most, int mostSteps, bool fromNought) {
    if (fromNought) {
        least = std::min(least, 0.0);
        most = std::max(most, 0.0);
    }
    if (!(most > least)) {
        const double room = most == 0 ? 1 : std::abs(most) / 10;
        most += room;
        least -= fromNought && least == 0 ? 0 : room;
    }
    const int steps = std::max(mostSteps, 1);
    Step step = roundStep((most - least) / steps);
    for (;;) {
        const double first = std::floor(least / step.value + kBitSlack);
        const double last = std::ceil(most / step.value - kBitSlack);
        if (last - first <= steps) {
            return scaleBy(step, first, last);
        }
        // Both ends fell between steps: the next wider one holds them.
        step = roundStep(step.value * 1.5);
    }
}

Scale xScale(const record::Plot& plot, int mostSteps) {
    const Extent extent = xExtent(plot);
    Scale scale = plot.x.ticks.empty()
                      ? roundScale(extent.least(), extent.most(), mostSteps, plot.x.fromNought)
                      : givenScale(plot.x, extent);
    constexpr double kBesideBar = 0.5;  // a bar is one x wide, with the gap to the next
    const bool hasBars =
        std::any_of(plot.series.begin(), plot.series.end(), [](const record::PlotSeries& series) {
            return series.shape == record::PlotShape::Bar || series.shape == record::PlotShape::OpenBar;
        });
    if (hasBars) {
        scale.least = std::min(scale.least, extent.least() - kBesideBar);
        scale.most = std::max(scale.most, extent.most() + kBesideBar);
    }
    return scale;
}

Scale yScale(const record::Plot& plot, int mostSteps) {
    const Extent extent = yExtent(plot);
    if (!plot.y.ticks.empty()) {
        return givenScale(plot.y, extent);
    }
    // A limit or a reading does not lie on the frame, where it would not be seen; nought may.
    const double room = kFrameMargin * (extent.most() - extent.least());
    const bool isNought = plot.y.fromNought && extent.least() >= 0;
    return roundScale(isNought ? extent.least() : extent.least() - room, extent.most() + room, mostSteps,
                      plot.y.fromNought);
}

}  // namespace hearth::ui::paper

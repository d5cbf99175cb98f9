// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/plot_scale.h"

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

using Texts = std::vector<std::string>;

Texts textsOf(const Scale& scale) {
    Texts texts;
    for (const ScaleTick& tick : scale.ticks) {
        texts.push_back(tick.text.toStdString());
    }
    return texts;
}

struct ScaleCase {
    double least;
    double most;
    int steps;
    bool fromNought;
    Texts texts;
};

// Worked by hand: the smallest step of 1, 2, 5 times a power of ten with which both ends lie on a tick.
TEST(PlotScale, hasRoundTicksFromEndToEnd) {
    const std::vector<ScaleCase> cases{
        {19.7, 20.72, 5, false, {"19.5", "20.0", "20.5", "21.0"}},
        {0, 36, 4, true, {"0", "10", "20", "30", "40"}},
        {3, 36, 4, true, {"0", "10", "20", "30", "40"}},
        {0.0006, 0.0009, 3, false, {"0.0006", "0.0007", "0.0008", "0.0009"}},
        {-0.04, 0.04, 4, false, {"−0.04", "−0.02", "0.00", "0.02", "0.04"}},
        {0.3, 0.3, 4, false, {"0.26", "0.28", "0.30", "0.32", "0.34"}},
        {0, 0, 4, true, {"0.0", "0.5", "1.0"}},
        {-3, -1, 4, true, {"−3", "−2", "−1", "0"}},
        {0, 240, 3, true, {"0", "100", "200", "300"}},
    };
    for (const ScaleCase& one : cases) {
        const Scale scale = roundScale(one.least, one.most, one.steps, one.fromNought);
        EXPECT_EQ(textsOf(scale), one.texts) << one.least << " to " << one.most;
        EXPECT_LE(scale.least, one.least + 1e-12);  // the last bit of a double
        EXPECT_GE(scale.most, one.most - 1e-12);
    }
}

// Whatever is read, both ends are on the axis, and there are no more steps than asked for.
TEST(PlotScale, holdsEveryRange) {
    for (const double least : {-1e6, -731.4, -0.0071, 0.0, 1e-5, 0.3, 19.87, 65.5, 1013.25, 4e8}) {
        for (const double across : {1e-6, 0.013, 0.2, 1.0, 3.7, 9.99, 61.0, 1e5}) {
            const Scale scale = roundScale(least, least + across, 5, false);
            EXPECT_LE(scale.ticks.size(), 6U);
            EXPECT_GE(scale.ticks.size(), 2U);
            EXPECT_LE(scale.least, least + across * 1e-6);
            EXPECT_GE(scale.most, least + across * (1 - 1e-6));
        }
    }
}

TEST(PlotScale, takesUncertaintyLimitsAndBandsIn) {
    using quantity::Decimal;
    record::Plot plot;
    plot.series = {
        {"", record::PlotShape::Disc, true, true, {{Decimal(0, 0), Decimal(10, 0), Decimal(3, 0), ""}}}};
    EXPECT_LE(yScale(plot, 5).least, 7);
    EXPECT_GE(yScale(plot, 5).most, 13);
    plot.limits = {{Decimal(40, 0), "limit", true}};
    EXPECT_GE(yScale(plot, 5).most, 40);
    plot.bands = {{Decimal(-20, 0), Decimal(5, 0), "band"}};
    EXPECT_LE(yScale(plot, 5).least, -20);
}

TEST(PlotScale, leavesRoomBesideGivenTicks) {
    using quantity::Decimal;
    record::Plot plot;
    plot.x.ticks = {{Decimal(0, 0), "start"}, {Decimal(1, 0), "end"}};
    const Scale scale = xScale(plot, 5);
    EXPECT_GT(scale.share(0.0), 0.05);
    EXPECT_LT(scale.share(1.0), 0.95);
    EXPECT_EQ(textsOf(scale), Texts({"start", "end"}));
}

}  // namespace
}  // namespace hearth::ui::paper

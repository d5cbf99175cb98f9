// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/plot.h"
#include "core/record/snapshot.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using quantity::Decimal;

Plots fullPlots() {
    Plot plot;
    plot.title = "Tightness";
    plot.x = {"minutes", {{Decimal(0, 0), "start"}, {Decimal(25, 1), "end"}}, true};
    plot.y = {"pressure, mbar", {}, false};
    plot.series = {{"read",
                    PlotShape::Diamond,
                    false,
                    true,
                    {{Decimal(0, 0), Decimal(2070, 2), Decimal(2, 2), "20.70"},
                     {Decimal(1, 0), std::nullopt, std::nullopt, ""}}},
                   {"", PlotShape::Ring, true, false, {}}};
    plot.limits = {{Decimal(-4, 2), "limit", true}, {Decimal(4, 2), "advice", false}};
    plot.bands = {{Decimal(1, 0), Decimal(2, 0), "range"}};
    plot.marks = {{Decimal(3, 0), "lit"}};
    plot.stretches = {{Decimal(5, 1), Decimal(20, 1), "settling"}};
    return {"Readings", {plot, Plot{}}, "note"};
}

std::string wrapped(const std::string& document) {
    return "{\"document\":" + document + "}";
}

TEST(PlotJson, isReadBackAsItWas) {
    Document document;
    document.blocks = {fullPlots(), Plots{}};
    EXPECT_EQ(documentFromJson(wrapped(documentJson(document))), document);
}

// 20.70 was read to a hundredth: equality by value would not see a lost nought.
TEST(PlotJson, keepsFiguresAsDecimalsToTheLastNought) {
    Document document;
    document.blocks = {fullPlots()};
    const std::string json = documentJson(document);
    EXPECT_NE(json.find("\"y\":\"20.70\""), std::string::npos) << json;
    EXPECT_NE(json.find("\"spread\":\"0.02\""), std::string::npos) << json;
    EXPECT_EQ(json.find(":20.7"), std::string::npos) << json;
}

TEST(PlotJson, refusesWhatIsNoPlot) {
    Document document;
    document.blocks = {fullPlots()};
    const std::string json = documentJson(document);
    for (const auto& [good, bad] : std::vector<std::pair<std::string, std::string>>{
             {"\"20.70\"", "\"twenty\""}, {"\"diamond\"", "\"heart\""}, {"\"20.70\"", "20.70"}}) {
        std::string broken = json;
        const auto at = broken.find(good);
        ASSERT_NE(at, std::string::npos) << good;
        // The label is the same text as the figure; the figure comes after it.
        const auto last = broken.rfind(good);
        broken.replace(last, good.size(), bad);
        EXPECT_FALSE(documentFromJson(wrapped(broken)).has_value()) << bad;
    }
}

TEST(Plot, isEmptyUntilSomethingWasRead) {
    Plot plot;
    EXPECT_TRUE(plot.isEmpty());
    plot.series = {{"", PlotShape::Disc, true, true, {{Decimal(1, 0), std::nullopt, std::nullopt, ""}}}};
    plot.limits = {{Decimal(1, 0), "limit", true}};
    EXPECT_TRUE(plot.isEmpty());
    plot.series[0].points[0].y = Decimal(0, 0);
    EXPECT_FALSE(plot.isEmpty());
}

}  // namespace
}  // namespace hearth::record

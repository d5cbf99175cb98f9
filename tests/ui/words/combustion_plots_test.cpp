// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/record/sample_kinds.h"
#include "ui/words/plot_words.h"

#include <gtest/gtest.h>

namespace hearth::ui::words {
namespace {

using quantity::UnitCode;
using reg::Item;

class CombustionPlots : public ::testing::Test {
  protected:
    CombustionPlots() { file.appliances = {testing::sampleAppliance(file)}; }
    [[nodiscard]] reg::SubjectRef boiler() const { return reg::subject(file.appliances[0].id); }
    void read(Item item, const char* text, UnitCode unit) {
        testing::enter(file, boiler(), item, text);
        file.entries.back().unit = unit;
    }
    [[nodiscard]] std::vector<record::Plot> made() const {
        const auto findings = judging::judge(file, rulebook::RuleBook::shipped());
        const Words words;
        return combustionPlots({file, findings, words}, file.appliances[0].id).plots;
    }

    reg::VisitFile file = testing::sampleVisit();
};

// 90 ppm over 9.0 % is a ratio of 0.001, 30 ppm over 8.0 % one of 0.0004 (rounded as findings are), by hand.
TEST_F(CombustionPlots, drawRatioAndGasesAtBothRates) {
    read(Item::FlueCoHigh, "90", UnitCode::Ppm);
    read(Item::FlueCo2High, "9.0", UnitCode::Percent);
    read(Item::FlueCoLow, "30", UnitCode::Ppm);
    read(Item::FlueCo2Low, "8.0", UnitCode::Percent);
    const auto plots = made();
    ASSERT_EQ(plots.size(), 3U);
    EXPECT_EQ(plots[0].title, "Ratio CO/CO₂");
    EXPECT_NEAR(plots[0].series[0].points[0].y->toDouble(), 0.001, 5e-5);
    EXPECT_NEAR(plots[0].series[0].points[1].y->toDouble(), 0.000375, 5e-5);
    EXPECT_EQ(plots[1].series[0].points[0].y->text(), "90");
    EXPECT_EQ(plots[2].series[0].points[1].y->text(), "8.0");
    EXPECT_EQ(plots[1].x.ticks[0].text, "highest rate");
    // The condensing boiler's published figures where the maker gives none: ratio 0.004, CO 350 ppm.
    ASSERT_EQ(plots[0].limits.size(), 1U);
    EXPECT_NEAR(plots[0].limits[0].y.toDouble(), 0.004, 1e-9);
    ASSERT_EQ(plots[1].limits.size(), 1U);
    EXPECT_EQ(plots[1].limits[0].y.text(), "350");
}

TEST_F(CombustionPlots, leaveAGapWhereOneRateWasNotRead) {
    read(Item::FlueCoHigh, "90", UnitCode::Ppm);
    const auto plots = made();
    ASSERT_EQ(plots.size(), 1U);
    EXPECT_EQ(plots[0].title, "CO");
    EXPECT_FALSE(plots[0].series[0].points[1].y.has_value());
}

TEST_F(CombustionPlots, tellWhatWasReadBeforeFromWhatWasLeft) {
    read(Item::FlueCoHigh, "90", UnitCode::Ppm);
    read(Item::BeforeCoHigh, "410", UnitCode::Ppm);
    const auto plots = made();
    ASSERT_EQ(plots[0].series.size(), 2U);
    EXPECT_NE(plots[0].series[0].shape, plots[0].series[1].shape);
    EXPECT_EQ(plots[0].series[1].points[0].y->text(), "410");
}

TEST_F(CombustionPlots, areNoneWithoutReadings) {
    EXPECT_TRUE(made().empty());
    read(Item::FlueCoHigh, "a lot", UnitCode::Ppm);
    EXPECT_TRUE(made().empty());
}

}  // namespace
}  // namespace hearth::ui::words

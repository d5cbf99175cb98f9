// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/plot_words.h"

#include "tests/core/record/sample_kinds.h"

#include <gtest/gtest.h>

namespace hearth::ui::words {
namespace {

using record::Plots;
using reg::Item;

class PlotWords : public ::testing::Test {
  protected:
    Plots test() {
        return made([&](const PlotSource& source) { return testPlots(source, file.tests[0].id); });
    }
    Plots room() { return made(roomPlots); }
    void read(std::uint8_t id, const char* at, const char* place, const char* level,
              quantity::UnitCode unit = quantity::UnitCode::Ppm) {
        const auto on = reg::subject(reg::RoomId{testing::sampleBytes(id)});
        const auto put = [&](Item item, const char* text, quantity::UnitCode of) {
            if (*text != 0) {
                testing::enter(file, on, item, text);
                file.entries.back().unit = of;
            }
        };
        put(Item::RoomCoAt, at, quantity::UnitCode::Minute);
        put(Item::RoomCoPlace, place, quantity::UnitCode::None);
        put(Item::RoomCo, level, unit);
    }

    reg::VisitFile file = testing::sampleVisit();
    std::optional<std::vector<judging::Judged>> instead;  // of the findings of the visit

  private:
    template <class Make>
    Plots made(Make make) {
        const auto findings = instead ? *instead : judging::judge(file, rulebook::RuleBook::shipped());
        const Words words;
        return make(PlotSource{file, findings, words});
    }
};

std::vector<std::string> limitsOf(const record::Plot& plot) {
    std::vector<std::string> texts;
    for (const auto& limit : plot.limits) {
        texts.push_back(limit.y.text() + " " + limit.name);
    }
    return texts;
}

// The sample's readings: 9.03 and 9.01 mbar, 20.50 and 20.46 mbar, on a display of 0.01 mbar, whose
// uncertainty by GUM 4.3.7 is 0.018 mbar (worked out at changeBetween). No perceptible movement on an
// electronic gauge is 0.2 mbar (the rule book's entry): a rise to 9.23, a fall to 20.30.
TEST_F(PlotWords, drawsEachStageAgainstTheLimitsThatItsFindingRestsOn) {
    const auto plots = test().plots;
    ASSERT_EQ(plots.size(), 2U);
    const auto& letBy = plots[0];
    EXPECT_EQ(letBy.title, "Let-by");
    EXPECT_EQ(letBy.y.title, "pressure, mbar");
    ASSERT_EQ(letBy.series.size(), 1U);
    EXPECT_EQ(letBy.series[0].points[0].y->text(), "9.03");
    EXPECT_EQ(letBy.series[0].points[1].y->text(), "9.01");
    EXPECT_EQ(letBy.series[0].points[1].spread->text(), "0.018");
    EXPECT_EQ(limitsOf(letBy),
              (std::vector<std::string>{"9.23 No perceptible movement, electronic gauge: 0.2\u00A0mbar"}));
    EXPECT_FALSE(letBy.limits[0].isHard);
    EXPECT_EQ(letBy.x.ticks[0].text, "start, 09:40");
    const auto& tight = plots[1];
    EXPECT_EQ(tight.title, "Tightness");
    EXPECT_EQ(limitsOf(tight),
              (std::vector<std::string>{"20.30 No perceptible movement, electronic gauge: 0.2\u00A0mbar"}));
}

TEST_F(PlotWords, drawsNoStageThatWasNotReadToItsEnd) {
    const auto on = reg::subject(file.tests[0].id);
    testing::enter(file, on, Item::TightEnd, "not a number");
    ASSERT_EQ(test().plots.size(), 1U);
    testing::enter(file, on, Item::LetByEnd, "");
    EXPECT_TRUE(test().plots.empty());
}

TEST_F(PlotWords, drawsALargerFallAgainstTheDropAllowedToo) {
    const auto on = reg::subject(file.tests[0].id);
    testing::enter(file, on, Item::TightEnd, "19.90");
    testing::enter(file, on, Item::RetestStart, "20.50");
    testing::enter(file, on, Item::RetestEnd, "20.50");
    testing::enter(file, on, Item::RetestStartedAt, "10:00");
    testing::enter(file, on, Item::RetestEndedAt, "10:02");
    const auto plots = test().plots;
    ASSERT_EQ(plots.size(), 3U);
    EXPECT_EQ(plots[2].title, "Retest, appliances isolated");
    // Edition 4's short cut: below 1 mbar.
    EXPECT_TRUE(std::any_of(plots[1].limits.begin(), plots[1].limits.end(), [](const auto& limit) {
        return limit.isHard && limit.y.text().substr(0, 5) == "19.50";
    }));
}

TEST_F(PlotWords, drawsRoomsByPlaceInTheOrderOfTime) {
    read(60, "", "outdoors", "0");
    read(61, "10", "room", "12");
    read(62, "5", "room", "4.5");
    read(63, "15", "room", "");
    read(64, "20", "room", "30");
    read(65, "", "room", "99");  // without its time it stands nowhere
    const auto plots = room().plots;
    ASSERT_EQ(plots.size(), 1U);
    ASSERT_EQ(plots[0].series.size(), 2U);
    EXPECT_NE(plots[0].series[0].shape, plots[0].series[1].shape);
    EXPECT_EQ(plots[0].series[0].points[0].x.text(), "0");
    const auto& points = plots[0].series[1].points;
    ASSERT_EQ(points.size(), 4U);
    EXPECT_EQ(points[0].y->text(), "4.5");
    EXPECT_EQ(points[1].y->text(), "12");
    EXPECT_FALSE(points[2].y.has_value());
    EXPECT_EQ(points[3].y->text(), "30");
}

// 1.164 mg/m3 is 1 ppm of CO at 20 degrees C and 1013.25 mbar.
TEST_F(PlotWords, drawsAMassInAirAsPartsPerMillion) {
    read(60, "0", "room", "23.28", quantity::UnitCode::MilligramPerCubicMetre);
    EXPECT_EQ(room().plots[0].series[0].points[0].y->text(), "20.0");
}

TEST_F(PlotWords, drawsRoomLimitsOnlyThatAFindingRestsOn) {
    read(60, "0", "room", "12");
    // Judged by the level at which a home's CO is raised.
    EXPECT_EQ(room().plots[0].limits.at(0).y.text(), "10");
    instead.emplace();
    EXPECT_TRUE(room().plots[0].limits.empty());
    const auto book = rulebook::RuleBook::shipped();
    const auto* raised = book.find({rulebook::Rule::RoomCoRaisedFrom});
    const auto* empty = book.find({rulebook::Rule::RoomCoNoActionMost});
    ASSERT_TRUE(raised != nullptr && empty != nullptr);
    rulebook::Finding level{rulebook::FindingKind::RoomCoLevel};
    level.limits = {*raised, *empty, *raised};
    instead = {{level, reg::subject(file.visit.id), {Item::RoomCo}}};
    const auto limits = room().plots[0].limits;
    ASSERT_EQ(limits.size(), 1U);  // each once, and none for an entry without a value
    EXPECT_EQ(limits[0].y.text(), "10");
}

TEST_F(PlotWords, hasNoPlotOfRoomsWithoutReadings) {
    EXPECT_TRUE(room().plots.empty());
    read(60, "0", "room", "");
    EXPECT_TRUE(room().plots.empty());
}

}  // namespace
}  // namespace hearth::ui::words

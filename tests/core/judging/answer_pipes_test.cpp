// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/answer.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;

const calendar::Date kPipesDay{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

struct PipeRow {
    const char* tube;
    const char* length;
    const char* after;
    const char* demand;  // kW gross
};

Answer pipesAnswer(const std::vector<PipeRow>& rows) {
    Worksheet sheet(Question::Pipes, kPipesDay);
    sheet.put(Group::Once, 0, Item::PurgeMeter, "u6_g4");
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const int row = static_cast<int>(i);
        sheet.put(Group::Section, row, Item::SectionTube, rows[i].tube);
        sheet.put(Group::Section, row, Item::SectionLength, rows[i].length);
        sheet.put(Group::Section, row, Item::SectionAfter, rows[i].after);
        sheet.put(Group::Section, row, Item::SectionDemand, rows[i].demand);
    }
    return answer(sheet, rulebook::RuleBook::shipped());
}

double pipesFigure(const Answer& got, Derived what) {
    for (const auto& worked : got.figures) {
        if (worked.what == what) {
            return worked.figure.value.toDouble();
        }
    }
    ADD_FAILURE() << derivedText(what);
    return -1.0;
}

// Source: certification body's pocket guide Gas 2: G4 and 9 m of 15 mm are 0.009386 m3.
TEST(PipesAnswer, volumeIsTheWorkedExample) {
    const auto got = pipesAnswer({{"copper_15", "9", "", "3"}});
    EXPECT_NEAR(pipesFigure(got, Derived::VolumeWhole), 0.009386, 1e-9);
    EXPECT_NEAR(pipesFigure(got, Derived::VolumeTested), 0.009386, 1e-9);
}

// Source: BS 6891's discharge table (handout): 22 mm passes 4.6 m3/h over 9 m at 1 mbar, 15 mm 1.5; 30 kW
// gross is 2.79 m3/h at 38.76 MJ/m3, so 22 mm does and 15 mm does not.
TEST(PipesAnswer, saysWhetherThePipeWillDoAndWhichToTake) {
    const auto good = pipesAnswer({{"copper_22", "9", "", "30"}});
    EXPECT_EQ(good.findings.front().finding.kind, FindingKind::PressureDropDesign);
    EXPECT_EQ(good.findings.front().finding.outcome, Outcome::Pass);
    const auto bad = pipesAnswer({{"copper_15", "9", "", "30"}});
    EXPECT_EQ(bad.findings.front().finding.outcome, Outcome::Fail);
    bool enlarged = false;
    for (const auto& note : bad.notes) {
        enlarged = enlarged || note.say == rulebook::Say::PipeEnlarge;
    }
    EXPECT_TRUE(enlarged);
    EXPECT_GT(pipesFigure(bad, Derived::CopperMore), 0.0);
}

TEST(PipesAnswer, aSectionThatFollowsNoneIsAnErrorAndNothingPasses) {
    const auto got = pipesAnswer({{"copper_22", "9", "7", "30"}});
    ASSERT_FALSE(got.errors.empty());
    EXPECT_EQ(got.errors.front().code, ErrorCode::PipeFeederMissing);
    for (const auto& judged : got.findings) {
        EXPECT_EQ(judged.finding.outcome, Outcome::NoVerdict);
    }
}

Answer purgeAnswer(const std::vector<std::pair<Item, std::string>>& typed, int month) {
    Worksheet sheet(
        Question::Purge,
        {std::chrono::year(2026), std::chrono::month(static_cast<unsigned>(month)), std::chrono::day(10)});
    for (const auto& [item, text] : typed) {
        sheet.put(Group::Once, 0, item, text);
    }
    return answer(sheet, rulebook::RuleBook::shipped());
}

// Source: trainees' revision cards on IGEM/UP/1B Edition 3: 0.010 m3 for U6 and pipe to 28 mm; Edition 4's is
// not known.
TEST(PurgeAnswer, smallInstallationsByTheEditionInForce) {
    const std::vector<std::pair<Item, std::string>> typed{{Item::PurgeSize, "small"},
                                                          {Item::PurgeMeter, "u6_g4"},
                                                          {Item::SectionTube, "copper_22"},
                                                          {Item::PurgeFlow, "1.2"}};
    const auto third = purgeAnswer(typed, 2);
    EXPECT_NEAR(pipesFigure(third, Derived::PurgeVolume), 0.010, 1e-9);
    EXPECT_NEAR(pipesFigure(third, Derived::PurgeTime), 30.0, 1e-9);
    const auto fourth = purgeAnswer(typed, 11);
    EXPECT_TRUE(fourth.figures.empty());
    EXPECT_EQ(fourth.findings.front().finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(fourth.findings.front().finding.why.say, rulebook::Say::LimitMissing);
    const auto bare = purgeAnswer({{Item::PurgeSize, "small"}, {Item::PurgeMeter, "u6_g4"}}, 2);
    EXPECT_EQ(bare.findings.front().finding.why.say, rulebook::Say::ReadingMissing);
    EXPECT_EQ(bare.findings.front().lacking, (std::vector{Item::SectionTube, Item::PurgeVolumeKnown}));
}

// Source: by hand: 0.297 m3 of DN 100 with fittings, 1.5 times is 0.4455 m3, at 20 m3/h 80.2 s (IGE/UP/1,
// from memory).
TEST(PurgeAnswer, largerInstallations) {
    const auto got = purgeAnswer({{Item::PurgeSize, "larger"},
                                  {Item::PurgeMeter, "none"},
                                  {Item::SectionTube, "steel_medium_100"},
                                  {Item::PurgePipes, "0.297"},
                                  {Item::PurgeFlow, "20"},
                                  {Item::PurgePassed, "0.5"}},
                                 11);
    EXPECT_NEAR(pipesFigure(got, Derived::PurgeVolume), 0.4455, 1e-9);
    EXPECT_NEAR(pipesFigure(got, Derived::PurgeFlowLeast), 20.0, 1e-9);
    EXPECT_NEAR(pipesFigure(got, Derived::PurgeTime), 81.0, 1e-9);  // whole seconds, upward
    for (const auto& judged : got.findings) {
        EXPECT_NE(judged.finding.outcome, Outcome::Pass) << "nothing passes on memory";
    }
}

}  // namespace
}  // namespace hearth::judging

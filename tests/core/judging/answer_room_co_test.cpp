// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/conclude.h"
#include "tests/core/judging/asked.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using quantity::UnitCode;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;
namespace choice = reg::choice;

struct CoTyped {
    std::string minutes;
    std::string level;
    std::string_view place = choice::kRoom;
    UnitCode unit = UnitCode::Ppm;
};

/// Nought outdoors first, its time left empty; then these.
asked::Sheet coSheet(const std::vector<CoTyped>& readings, int first = 1) {
    asked::Sheet sheet{{Item::RoomCoAppliance, choice::kFlued},
                       {Item::RoomCoHeight, "2.0", UnitCode::Metre},
                       {Item::RoomCoFromAppliance, "1.2", UnitCode::Metre}};
    sheet = asked::with(
        sheet, asked::inRow(Group::Reading, 0,
                            {{Item::RoomCoPlace, choice::kOutdoors}, {Item::RoomCo, "0", UnitCode::Ppm}}));
    int row = first;
    for (const auto& reading : readings) {
        sheet = asked::with(sheet, asked::inRow(Group::Reading, row++,
                                                {{Item::RoomCoAt, reading.minutes, UnitCode::Minute},
                                                 {Item::RoomCoPlace, reading.place},
                                                 {Item::RoomCo, reading.level, reading.unit}}));
    }
    return sheet;
}

std::vector<CoTyped> heldAt(const std::string& level, std::string_view place = choice::kRoom,
                            UnitCode unit = UnitCode::Ppm) {
    std::vector<CoTyped> readings;
    for (const char* time : {"2", "7", "12", "17", "18"}) {
        readings.push_back({time, level, place, unit});
    }
    return readings;
}

/// The confirmed book with what a firm may enter from its own copy of BS 7967.
const rulebook::RuleBook& bookWithOwnLevels() {
    static const auto book = [] {
        auto laid = asked::confirmedBook();
        const auto day = calendar::fromIso("2026-11-25").value();
        const std::pair<Rule, quantity::Figure> levels[] = {
            {Rule::RoomCoNoActionMost, {quantity::Decimal(10, 0), UnitCode::Ppm}},
            {Rule::RoomCoLeaveFrom, {quantity::Decimal(30, 0), UnitCode::Ppm}},
            {Rule::RoomCoSampleHeight, {quantity::Decimal(2, 0), UnitCode::Metre}},
            {Rule::RoomCoSampleDistance, {quantity::Decimal(1, 0), UnitCode::Metre}},
            {Rule::RoomCoTimeFlued, {quantity::Decimal(15, 0), UnitCode::Minute}},
            {Rule::RoomCoTimeFlueless, {quantity::Decimal(30, 0), UnitCode::Minute}}};
        for (const auto& [rule, figure] : levels) {
            EXPECT_TRUE(laid.lay({{rule}, figure, "Ada Marlow", day, "invented copy"}));
        }
        return laid;
    }();
    return book;
}

Answer coAnswer(const asked::Sheet& sheet, const rulebook::RuleBook& book = bookWithOwnLevels()) {
    return asked::answerTo(Question::RoomCo, sheet, book);
}

TEST(AnswerRoomCo, TheShippedBookHasNoActionLevelsAndSaysSo) {
    const auto found = coAnswer(coSheet(heldAt("3")), asked::shippedBook());
    EXPECT_EQ(asked::outcomeOf(found, FindingKind::RoomCoLevel), Outcome::NoVerdict);
    EXPECT_TRUE(asked::saysOf(found, FindingKind::RoomCoLevel, Say::CoLevelsMissing));
    EXPECT_EQ(asked::outcomeOf(found, FindingKind::RoomCoBackground), Outcome::Pass);
    EXPECT_NEAR(asked::valueOf(found, Derived::CoPeak), 3, 1e-9);
    EXPECT_NEAR(asked::valueOf(found, Derived::CoMeanAll), 3, 1e-9);
    EXPECT_NEAR(asked::valueOf(found, Derived::CoMeanQuarter), 3, 1e-9);
    EXPECT_FALSE(asked::figureOf(found, Derived::CoMeanLong));
}

TEST(AnswerRoomCo, ByTheFirmsOwnLevels) {
    const auto low = coAnswer(coSheet(heldAt("3")));
    EXPECT_EQ(asked::outcomeOf(low, FindingKind::RoomCoLevel), Outcome::Pass);
    EXPECT_EQ(asked::outcomeOf(low, FindingKind::RoomCoSampling), Outcome::Pass);
    EXPECT_EQ(asked::outcomeOf(coAnswer(coSheet(heldAt("14"))), FindingKind::RoomCoLevel), Outcome::Fail);
    const auto rising = coAnswer(coSheet({{"2", "2"}, {"7", "4"}, {"12", "6"}, {"17", "8"}}));
    EXPECT_TRUE(asked::saysOf(rising, FindingKind::RoomCoLevel, Say::CoStillRising));
    EXPECT_NEAR(asked::valueOf(rising, Derived::CoChange), 6, 1e-9);
}

// HSE EH40/2005: 20 ppm for 8 hours. Nobody knows how long people have been there.
TEST(AnswerRoomCo, DangerStandsFirstAndSaysWhatToDo) {
    for (const auto place : {choice::kRoom, choice::kAppliance, choice::kElsewhere}) {
        const auto found = coAnswer(coSheet(heldAt("20", place)), asked::shippedBook());
        ASSERT_FALSE(found.findings.empty());
        EXPECT_EQ(found.findings.front().finding.kind, FindingKind::RoomCoLevel) << place;
        EXPECT_EQ(found.findings.front().finding.outcome, Outcome::Fail);
        EXPECT_EQ(found.findings.front().finding.why.say, Say::CoDanger);
    }
    // Beside the reading that it is about: the highest, in the sheet's third row.
    const auto peak = coAnswer(coSheet({{"2", "3"}, {"5", "60"}, {"9", "4"}}));
    EXPECT_EQ(peak.findings.front().subject, Worksheet::subject(Group::Reading, 2));
}

TEST(AnswerRoomCo, ADangerousReadingWarnsWhateverElseIsMissing) {
    const auto whole = coSheet(heldAt("40"));
    for (const auto item : {Item::RoomCoAt, Item::RoomCoPlace, Item::RoomCoAppliance, Item::RoomCoHeight}) {
        EXPECT_TRUE(
            asked::saysOf(coAnswer(asked::without(whole, item)), FindingKind::RoomCoLevel, Say::CoDanger))
            << reg::infoOf(item).code;
    }
    const auto alone = asked::inRow(Group::Reading, 0, {{Item::RoomCo, "40", UnitCode::Ppm}});
    EXPECT_TRUE(asked::saysOf(coAnswer(alone), FindingKind::RoomCoLevel, Say::CoDanger));
    const auto unread =
        asked::with(whole, asked::inRow(Group::Reading, 3, {{Item::RoomCo, "4o", UnitCode::Ppm}}));
    EXPECT_EQ(asked::outcomeOf(coAnswer(unread), FindingKind::RoomCoLevel), Outcome::Fail);
}

TEST(AnswerRoomCo, NothingPassesOnAReadingThatIsNotWhole) {
    const auto whole = coSheet(heldAt("3"));
    struct Case {
        Item item;
        const char* text;
        Say say;
    };
    const Case cases[] = {
        {Item::RoomCoAt, "", Say::CoTimeMissing},     {Item::RoomCoAt, "1o", Say::CoTimeMissing},
        {Item::RoomCoPlace, "", Say::CoPlaceMissing}, {Item::RoomCoPlace, "attic", Say::CoPlaceMissing},
        {Item::RoomCo, "", Say::CoLevelMissing},      {Item::RoomCo, "3,,0", Say::CoLevelMissing},
    };
    for (const auto& c : cases) {
        const auto found =
            coAnswer(asked::with(whole, asked::inRow(Group::Reading, 3, {{c.item, c.text, UnitCode::None}})));
        EXPECT_EQ(asked::outcomeOf(found, FindingKind::RoomCoLevel), Outcome::NoVerdict) << c.text;
        ASSERT_EQ(found.notes.size(), 1U) << c.text;
        EXPECT_EQ(found.notes.front().say, c.say);
        EXPECT_EQ(found.notes.front().arguments, std::vector<rulebook::Argument>{std::string("4")});
    }
    const auto back = coAnswer(
        asked::with(whole, asked::inRow(Group::Reading, 3, {{Item::RoomCoAt, "6", UnitCode::Minute}})));
    EXPECT_EQ(back.notes.front().say, Say::CoTimesBackwards);
    const auto unsure = asked::with(whole, {{Item::RoomCoAccuracy, "x", UnitCode::Ppm}});
    EXPECT_NE(asked::outcomeOf(coAnswer(unsure), FindingKind::RoomCoLevel), Outcome::Pass);
    EXPECT_EQ(asked::outcomeOf(coAnswer({}), FindingKind::RoomCoLevel), Outcome::NoVerdict);
}

TEST(AnswerRoomCo, OutdoorsComesFirst) {
    const auto found = coAnswer(asked::without(coSheet(heldAt("3")), Item::RoomCoPlace));
    EXPECT_TRUE(asked::saysOf(found, FindingKind::RoomCoBackground, Say::CoBackgroundMissing));
    const auto late = asked::with(coSheet(heldAt("3")),
                                  asked::inRow(Group::Reading, 0, {{Item::RoomCoAt, "9", UnitCode::Minute}}));
    EXPECT_TRUE(asked::saysOf(coAnswer(late), FindingKind::RoomCoBackground, Say::CoBackgroundLate));
}

// HSE EH40/2005: means of 15 minutes and of 8 hours; the limits as printed and as mg/m3 (from memory).
TEST(AnswerRoomCo, MeansAgainstTheLimitsAtWork) {
    const auto brief = [](const asked::Sheet& sheet) {
        return asked::outcomeOf(coAnswer(sheet), FindingKind::RoomCoShortMean);
    };
    EXPECT_EQ(brief(coSheet(heldAt("99.0"))), Outcome::Pass);
    EXPECT_EQ(brief(coSheet(heldAt("101.0"))), Outcome::Fail);
    EXPECT_EQ(brief(coSheet(heldAt("100"))), Outcome::LookAgain);
    const auto mass = UnitCode::MilligramPerCubicMetre;
    EXPECT_EQ(brief(coSheet(heldAt("120", choice::kRoom, mass))), Outcome::Fail);
    EXPECT_EQ(brief(coSheet(heldAt("113", choice::kRoom, mass))), Outcome::Pass);
    const auto day = [](const char* level) {
        return coAnswer(coSheet({{"2", level}, {"250", level}, {"500", level}}));
    };
    EXPECT_EQ(asked::outcomeOf(day("18"), FindingKind::RoomCoLongMean), Outcome::Pass);
    EXPECT_EQ(asked::outcomeOf(day("22"), FindingKind::RoomCoLongMean), Outcome::Fail);
    EXPECT_NEAR(asked::valueOf(day("18"), Derived::CoMeanLong), 18, 1e-9);
    // WHO for 8 hours: 10 ppm (Europe, 2nd edition), 10 mg/m3 or 8.6 ppm (indoor air, from memory).
    EXPECT_TRUE(asked::saysOf(day("18"), FindingKind::RoomCoLongMean, Say::CoGuidelineAbove));
    EXPECT_FALSE(asked::saysOf(day("8"), FindingKind::RoomCoLongMean, Say::CoGuidelineAbove));
}

// A rise from 10 to 30 ppm in 10 minutes and back. By hand: 20 over all; the highest 15 minutes run from 2.5
// to 17.5 minutes, between 15 and 30 ppm: 22.5.
TEST(AnswerRoomCo, MeansByHand) {
    const auto found = coAnswer(coSheet({{"1", "10"}, {"11", "30"}, {"21", "10"}}));
    testing::Agreement agreement("Means of a triangle of readings, typed into the question",
                                 "trapezium rule by hand, textbook", "ppm", 0.05);
    agreement.hold("all", asked::valueOf(found, Derived::CoMeanAll), 20);
    agreement.hold("15 minutes", asked::valueOf(found, Derived::CoMeanQuarter), 22.5);
    const auto both =
        asked::with(coSheet({{"1", "10"}, {"11", "30"}, {"21", "10"}}),
                    coSheet({{"1", "50", choice::kElsewhere}, {"21", "50", choice::kElsewhere}}, 4));
    EXPECT_NEAR(asked::valueOf(coAnswer(both), Derived::CoMeanAll), 50, 1e-9) << "of the most exposed place";
}

TEST(AnswerRoomCo, ASeriesReadAtADistanceIsKeptWithIt) {
    const auto at = asked::with(coSheet(heldAt("3")), {{Item::RoomCoDistance, choice::kYes}});
    EXPECT_TRUE(asked::saysOf(coAnswer(at), FindingKind::RoomCoSampling, Say::CoReadAtDistance));
    const auto within = asked::with(coSheet(heldAt("3")), {{Item::RoomCoDistance, choice::kNo}});
    EXPECT_FALSE(asked::saysOf(coAnswer(within), FindingKind::RoomCoSampling, Say::CoReadAtDistance));
}

TEST(AnswerRoomCo, FluelessWantsTheLongerTime) {
    for (const auto burning : {choice::kFlueless, choice::kCooker, std::string_view()}) {
        const auto sheet = asked::with(coSheet(heldAt("3")), {{Item::RoomCoAppliance, burning}});
        EXPECT_TRUE(asked::saysOf(coAnswer(sheet), FindingKind::RoomCoSampling, Say::CoSamplingShort))
            << burning;
    }
}

// An analyser to +-3 ppm: 8 ppm can't be told from 10.
TEST(AnswerRoomCo, TheAnalysersAccuracyCounts) {
    const auto sheet = coSheet(heldAt("8"));
    EXPECT_EQ(asked::outcomeOf(coAnswer(sheet), FindingKind::RoomCoLevel), Outcome::Pass);
    const auto coarse = asked::with(sheet, {{Item::RoomCoAccuracy, "3", UnitCode::Ppm}});
    EXPECT_EQ(asked::outcomeOf(coAnswer(coarse), FindingKind::RoomCoLevel), Outcome::LookAgain);
}

TEST(AnswerRoomCo, NoReadingEverGivesAnAllClearForTheBlood) {
    for (const auto* book : {&asked::shippedBook(), &bookWithOwnLevels()}) {
        int before = 0;
        for (int level = 0; level < 600; level += 7) {
            const auto found = coAnswer(coSheet(heldAt(std::to_string(level))), *book);
            const auto outcome = asked::outcomeOf(found, FindingKind::RoomCoBlood);
            ASSERT_TRUE(outcome);
            EXPECT_NE(*outcome, Outcome::Pass) << level;
            const int rank = *outcome == Outcome::Fail ? 2 : *outcome == Outcome::LookAgain ? 1 : 0;
            EXPECT_GE(rank, before) << level;
            before = rank;
        }
        EXPECT_EQ(before, 2);
    }
}

}  // namespace
}  // namespace hearth::judging

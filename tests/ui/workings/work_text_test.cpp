// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/work_text.h"

#include "core/pipework/tube.h"
#include "ui/words/question_words.h"
#include "ui/workings/result_view.h"

#include <gtest/gtest.h>

namespace hearth::ui::workings {
namespace {

using judging::Answer;
using judging::Group;
using judging::Question;
using judging::Worksheet;
using quantity::Decimal;
using quantity::UnitCode;
using reg::Item;

const calendar::Date kDay = *calendar::fromIso("2026-11-25");

/// A finding with its limit: the rule book's first entry that has a value; what it says does not matter here.
judging::Judged someFinding() {
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& entry : book.entries()) {
        if (entry.isKnown()) {
            rulebook::Finding finding{rulebook::FindingKind::WorkingPressure, rulebook::Outcome::Fail};
            finding.measured = quantity::Figure{*Decimal::parse("17.2"), UnitCode::Millibar};
            finding.why = {rulebook::Say::ReadingMissing};
            finding.limits.push_back(entry);
            return {finding, Worksheet::subject(Group::Once, 0), {Item::RateMeter}};
        }
    }
    throw std::runtime_error("the rule book is empty");
}

TEST(WorkText, SaysTheQuestionTheDayAndWhatWasTyped) {
    const words::Words words;
    Worksheet sheet(Question::RoomCo, kDay);
    sheet.put(Group::Reading, 0, Item::RoomCoAt, "5", UnitCode::Minute);
    sheet.put(Group::Reading, 0, Item::RoomCoPlace, "outdoors");
    sheet.put(Group::Reading, 2, Item::RoomCo, "nine", UnitCode::Ppm);
    const QString text = workText(sheet, {}, words);
    const QStringList lines = text.split(u'\n');
    ASSERT_GE(lines.size(), 5) << text.toStdString();
    EXPECT_EQ(lines[0], words::question(words, Question::RoomCo));
    EXPECT_EQ(lines[1], QStringLiteral("25 November 2026"));
    EXPECT_EQ(lines[2], QString());
    EXPECT_EQ(lines[3], QStringLiteral("Reading 1 · After: 5\u00a0min · Where: %1")
                            .arg(words.choice(Item::RoomCoPlace, "outdoors")));
    EXPECT_EQ(lines[4], QStringLiteral("Reading 3 · CO: nine (can't be read)")) << "never left out";
}

TEST(WorkText, AFindingHasItsOutcomeWordTheReasonTheLimitAndItsSource) {
    const words::Words words;
    Answer answer;
    answer.findings.push_back(someFinding());
    const auto& finding = answer.findings.front().finding;
    const QString text = workText(Worksheet(Question::GasRate, kDay), answer, words);
    EXPECT_TRUE(text.contains(words.findingTitle(finding.kind) + QStringLiteral(": fail")));
    EXPECT_TRUE(text.contains(words.measuredAgainst(finding)));
    EXPECT_TRUE(text.contains(words.sentence(finding.why)));
    EXPECT_TRUE(text.contains(words.ruleValue(finding.limits.front())));
    EXPECT_TRUE(text.contains(words.source(finding.limits.front())));
}

TEST(WorkText, AFigureHasItsUncertaintyAndItsSource) {
    const words::Words words;
    const judging::Worked worked{judging::Derived::GasFlow,
                                 {*Decimal::parse("2.31"), UnitCode::CubicMetrePerHour},
                                 quantity::Figure{*Decimal::parse("0.04"), UnitCode::CubicMetrePerHour},
                                 "a handbook"};
    EXPECT_EQ(figureText(worked, words), QStringLiteral("2.31 ± 0.04\u00a0m³/h"));
    Answer answer;
    answer.figures.push_back(worked);
    answer.errors.push_back({ErrorCode::NumberUnreadable, {"x"}});
    const QString text = workText(Worksheet(Question::GasRate, kDay), answer, words);
    EXPECT_TRUE(text.contains(QStringLiteral("2.31 ± 0.04\u00a0m³/h (a handbook)"))) << text.toStdString();
    EXPECT_TRUE(text.contains(words.error(answer.errors.front())));
}

TEST(WorkText, AFigureWithoutUncertaintyStandsAlone) {
    const words::Words words;
    const judging::Worked worked{
        judging::Derived::GasFlow, {*Decimal::parse("2.31"), UnitCode::CubicMetrePerHour}, std::nullopt, {}};
    EXPECT_EQ(figureText(worked, words), QStringLiteral("2.31\u00a0m³/h"));
}

TEST(WorkText, TubesAndMetersAreNamedNotCoded) {
    const words::Words words;
    Worksheet pipes(Question::Pipes, kDay);
    const auto& tube = pipework::tubes().front();
    pipes.put(Group::Section, 0, Item::SectionTube, std::string(tube.code));
    const QString text = workText(pipes, {}, words);
    EXPECT_TRUE(text.contains(words.tube(tube))) << text.toStdString();
    Worksheet purge(Question::Purge, kDay);
    const auto& meter = pipework::meters().back();
    purge.put(Group::Once, 0, Item::PurgeMeter, std::string(meter.code));
    EXPECT_TRUE(workText(purge, {}, words).contains(words.meter(meter)));
}

}  // namespace
}  // namespace hearth::ui::workings

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/answer.h"

#include <gtest/gtest.h>
#include <set>
#include <string>

namespace hearth::judging {
namespace {

TEST(Questions, haveCodesOfTheirOwnAndAreFoundByThem) {
    std::set<std::string_view> codes;
    for (const auto& info : questions()) {
        EXPECT_TRUE(codes.insert(info.code).second) << info.code;
        EXPECT_EQ(questionFromCode(info.code), info.question);
        EXPECT_EQ(infoOf(info.question).code, info.code);
    }
    EXPECT_EQ(questionFromCode("why"), std::nullopt);
}

TEST(Questions, askForEachThingOnceAndForOneRowAtLeast) {
    for (const auto& info : questions()) {
        ASSERT_FALSE(info.groups.empty()) << info.code;
        EXPECT_EQ(info.groups.front().group, Group::Once) << info.code;
        std::set<Group> groups;
        for (const auto& asked : info.groups) {
            EXPECT_TRUE(groups.insert(asked.group).second) << info.code;
            EXPECT_GE(asked.most, 1);
            std::set<reg::Item> items;
            for (const auto item : asked.items) {
                EXPECT_TRUE(items.insert(item).second) << info.code << ' ' << reg::infoOf(item).code;
            }
        }
    }
}

// Nothing passes by default: an empty sheet, and one full of what can't be read.
TEST(Answers, nothingPassesWithoutReadings) {
    const auto book = rulebook::RuleBook::shipped();
    const calendar::Date today{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};
    for (const auto& info : questions()) {
        for (const auto& text : {std::string(), std::string("x?")}) {
            Worksheet sheet(info.question, today);
            for (const auto& asked : info.groups) {
                for (const auto item : asked.items) {
                    sheet.put(asked.group, 0, item, text);
                }
            }
            for (const auto& judged : answer(sheet, book).findings) {
                EXPECT_NE(judged.finding.outcome, rulebook::Outcome::Pass)
                    << info.code << ' ' << rulebook::kindText(judged.finding.kind) << " of \"" << text << '"';
            }
        }
    }
}

TEST(Answers, everyFigureHasACodeOfItsOwn) {
    std::set<std::string_view> codes;
    for (const auto derived : allDerived()) {
        EXPECT_TRUE(codes.insert(derivedText(derived)).second) << derivedText(derived);
    }
}

}  // namespace
}  // namespace hearth::judging

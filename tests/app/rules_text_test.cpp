// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/rules_text.h"

#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hearth::app {
namespace {

using hearth::testing::Program;
using rulebook::Provenance;
using rulebook::Rule;
using rulebook::RuleBook;
using ::testing::HasSubstr;
using ::testing::Not;

rulebook::Entry letBy(Provenance provenance) {
    rulebook::Entry entry;
    entry.key = {Rule::LetByTime, rulebook::Edition::Up1bEd4, rulebook::Gas::NaturalGas};
    entry.value = quantity::Figure{quantity::Decimal(60, 0), quantity::UnitCode::Second};
    entry.comparison = rulebook::Comparison::AtLeast;
    entry.provenance = provenance;
    entry.standard = "A standard";
    entry.source = "A page";
    entry.doubt = "A doubt.";
    return entry;
}

rulebook::Entry emptyPurge() {
    rulebook::Entry entry;
    entry.key = {Rule::PurgeVolumeFactor, rulebook::Edition::General};
    entry.doubt = "Not read.";
    return entry;
}

QStringList linesOf(const RuleBook& book, RulesShown shown, const QStringList& narrowing = {}) {
    const ui::words::Words words;
    return rulesText(book, shown, narrowing, words).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

TEST(RulesText, WhatIsUnconfirmed) {
    for (const auto provenance : {Provenance::Secondary, Provenance::Memory, Provenance::CommonPractice}) {
        EXPECT_TRUE(isUnconfirmed(letBy(provenance)));
    }
    for (const auto provenance : {Provenance::Published, Provenance::Firm, Provenance::Maker}) {
        EXPECT_FALSE(isUnconfirmed(letBy(provenance)));
        auto empty = letBy(provenance);
        empty.value = std::monostate{};
        EXPECT_TRUE(isUnconfirmed(empty)) << "a value that nobody has";
    }
}

TEST(RulesText, EachLineHasRuleEditionGasValueProvenanceAndSource) {
    const auto lines = linesOf(RuleBook({letBy(Provenance::Memory), emptyPurge()}), RulesShown::All);
    ASSERT_EQ(lines.size(), 3);
    const auto cells = [&lines](int line) {
        return lines.at(line).split(QStringLiteral("  "), Qt::SkipEmptyParts);
    };
    EXPECT_EQ(cells(0).size(), 6) << "the heads";
    EXPECT_EQ(lines.at(0).indexOf(QStringLiteral("Value")),
              lines.at(2).indexOf(QStringLiteral("not entered")));
    for (const char* said : {"Let-by time", "IGEM/UP/1B Edition 4", "natural gas", "at least", "60",
                             "from memory", "A standard · A page · A doubt."}) {
        EXPECT_TRUE(lines.at(1).contains(QString::fromUtf8(said), Qt::CaseInsensitive)) << said;
    }
    for (const char* said : {"any edition", "any gas", "not entered", "to be entered", "Not read."}) {
        EXPECT_TRUE(lines.at(2).contains(QString::fromUtf8(said))) << said;
    }
    EXPECT_FALSE(lines.at(2).contains(QStringLiteral("published"))) << "nobody published what is empty";
}

TEST(RulesText, OfTheFirmSaysWhoAndFromWhat) {
    auto entry = letBy(Provenance::Firm);
    entry.confirmedBy = "J. Example";
    entry.fromCopy = "own copy, table 5";
    const auto lines = linesOf(RuleBook({entry}), RulesShown::All);
    ASSERT_EQ(lines.size(), 2);
    EXPECT_TRUE(lines.at(1).contains(QStringLiteral("J. Example")));
    EXPECT_TRUE(lines.at(1).contains(QStringLiteral("own copy, table 5")));
}

TEST(RulesText, WordsNarrow) {
    const RuleBook book({letBy(Provenance::Memory), emptyPurge()});
    EXPECT_EQ(linesOf(book, RulesShown::All, {QStringLiteral("PURGE")}).size(), 2);
    EXPECT_EQ(linesOf(book, RulesShown::All, {QStringLiteral("let"), QStringLiteral("memory")}).size(), 2);
    EXPECT_TRUE(
        linesOf(book, RulesShown::All, {QStringLiteral("let"), QStringLiteral("not read")}).isEmpty());
    EXPECT_TRUE(linesOf(RuleBook({letBy(Provenance::Published)}), RulesShown::Unconfirmed).isEmpty());
}

/// What a firm has to confirm before it can rely on a pass: every entry of the shipped book that is not
/// published, and no other.
TEST(RulesText, UnconfirmedOfTheShippedBookAreAllThatAreNotPublished) {
    const auto book = RuleBook::shipped();
    const auto all = linesOf(book, RulesShown::All);
    const auto open = linesOf(book, RulesShown::Unconfirmed);
    EXPECT_EQ(all.size(), static_cast<qsizetype>(book.entries().size()) + 1);
    qsizetype unpublished = 0;
    for (const auto& entry : book.entries()) {
        const bool isPublished =
            entry.provenance == Provenance::Published && !std::holds_alternative<std::monostate>(entry.value);
        unpublished += isPublished ? 0 : 1;
        EXPECT_FALSE(entry.isKnown() && entry.source.empty()) << rulebook::ruleText(entry.key.rule);
        EXPECT_FALSE(!entry.isKnown() && entry.doubt.empty()) << rulebook::ruleText(entry.key.rule);
    }
    EXPECT_EQ(open.size(), unpublished + 1);
    EXPECT_GT(unpublished, 10);
    std::cout << unpublished << " of " << book.entries().size()
              << " entries wait to be confirmed or entered\n";
}

TEST(RulesCommand, ListsTheShippedBookBeforeThereIsAStore) {
    const Program program;
    const auto all = program.run("rules");
    EXPECT_EQ(all.exitCode, 0) << all.error;
    EXPECT_THAT(all.out, HasSubstr("Let-by pressure"));
    EXPECT_THAT(all.out, HasSubstr("published"));
    EXPECT_THAT(all.error, HasSubstr("no store yet"));
    const auto open = program.run("rules --unconfirmed");
    EXPECT_THAT(open.out, HasSubstr("to be entered"));
    EXPECT_THAT(open.out, HasSubstr("read second-hand"));
    EXPECT_THAT(open.out, Not(HasSubstr("  published  ")));
    const auto none = program.run("rules nosuchrule");
    EXPECT_EQ(none.exitCode, 0);
    EXPECT_EQ(none.out, "");
    EXPECT_THAT(none.error, HasSubstr("No such rules"));
    EXPECT_EQ(program.run("rules --store nosuch.hearth").exitCode, 3);
}

TEST(RulesCommand, TheDemonstrationFirmsWordsStandInItsBook) {
    const Program program;
    ASSERT_EQ(program.run("demonstration --into " + program.home().path().string()).exitCode, 0);
    const std::string store = " --store " + (program.home() / "demonstration.hearth").string();
    const auto all = program.run("rules" + store);
    EXPECT_EQ(all.exitCode, 0) << all.error;
    EXPECT_THAT(all.out, HasSubstr("confirmed by"));
    EXPECT_THAT(program.run("rules --unconfirmed" + store).out, Not(HasSubstr("confirmed by")));
}

}  // namespace
}  // namespace hearth::app

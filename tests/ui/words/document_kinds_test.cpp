// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/record/sample_kinds.h"
#include "tests/ui/words/document_of_kind.h"
#include "tests/ui/words/document_text.h"
#include "tests/ui/words/languages.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace hearth::ui::words {
namespace {

using hearth::testing::blocksOf;
using hearth::testing::documentOfKind;
using hearth::testing::enter;
using hearth::testing::shows;
using hearth::testing::takeOut;
using hearth::testing::textsOf;
using hearth::testing::visitOfKind;
using record::RecordKind;
using record::Statement;
using record::Statements;
using record::Table;
using reg::Item;
using rulebook::Outcome;

class DocumentOfEachKind : public ::testing::TestWithParam<RecordKind> {
  protected:
    reg::VisitFile file = visitOfKind(GetParam());
};

/// What the document leaves out although it was entered: the matters of another place of the paper, or the
/// choice that another line says.
bool saidOtherwise(Item item) {
    switch (item) {
        case Item::ExaminedBoth:  // what was read of both stands in the table
        case Item::WhyNeither:    // with the combustion that was examined in their place
        case Item::WhyNeitherTaken:
        case Item::DefectsFound:      // "none found", or the defects themselves
        case Item::CheckCovered:      // a sentence of its own
        case Item::SafeToUse:         // the declaration
        case Item::LastCheckCounted:  // the deadline that follows from it
        case Item::NotInspectedWhy:
        case Item::DefectsText:
        case Item::ActionTaken:
            return true;
        default:
            return false;
    }
}

TEST_P(DocumentOfEachKind, ShowsEveryTextAndNumberThatWasTyped) {
    int number = 100;
    const Words words;
    for (const auto& entry : std::vector(file.entries)) {
        const auto kind = reg::infoOf(entry.item).kind;
        if (kind == reg::ItemKind::Text || kind == reg::ItemKind::LongText) {
            enter(file, entry.subject, entry.item, "text no. " + std::to_string(++number));
        } else if (kind == reg::ItemKind::Number) {
            enter(file, entry.subject, entry.item, std::to_string(++number) + ".25");
        }
    }
    const auto document = documentOfKind(GetParam(), file);
    for (const auto& wanted : record::requirementsOf(GetParam())) {
        for (const auto& entry : file.entries) {
            const auto kind = reg::infoOf(entry.item).kind;
            const bool typed = kind == reg::ItemKind::Text || kind == reg::ItemKind::LongText ||
                               kind == reg::ItemKind::Number;
            if (entry.item == wanted.item && typed && !saidOtherwise(entry.item)) {
                EXPECT_TRUE(shows(document, entry.text)) << reg::infoOf(entry.item).code;
            }
        }
    }
}

TEST_P(DocumentOfEachKind, LeavesNoPlaceholderAndNoWordUntranslated) {
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        const auto document = documentOfKind(GetParam(), file, language);
        EXPECT_TRUE(hearth::testing::isTranslated(qstring(document.title), words));
        for (const auto& text : textsOf(document)) {
            EXPECT_TRUE(hearth::testing::isFilled(qstring(text))) << text;
        }
        for (const auto& grid : blocksOf<record::FieldGrid>(document)) {
            for (const auto& field : grid.fields) {
                // The number of an item of the regulation stands before its caption.
                QString caption = qstring(field.caption);
                caption.remove(0, std::max<qsizetype>(caption.indexOf(u'['), 0));
                EXPECT_TRUE(hearth::testing::isTranslated(caption, words)) << field.caption;
            }
        }
    }
}

TEST_P(DocumentOfEachKind, EndsWithWhoSigned) {
    const auto document = documentOfKind(GetParam(), file);
    ASSERT_FALSE(document.blocks.empty());
    EXPECT_TRUE(std::holds_alternative<record::Signatures>(document.blocks.back()));
    EXPECT_EQ(document.kind, record::kindCode(GetParam()));
}

TEST_P(DocumentOfEachKind, SaysNothingOfAccessNotes) {
    file.premises.accessNotes = "key below the third pot";
    EXPECT_FALSE(shows(documentOfKind(GetParam(), file), "third pot"));
}

INSTANTIATE_TEST_SUITE_P(Records, DocumentOfEachKind,
                         ::testing::ValuesIn(record::allKinds().begin(), record::allKinds().end()),
                         [](const auto& kind) { return std::string(record::kindCode(kind.param)); });

struct LandlordDocument : ::testing::Test {
    reg::VisitFile file = visitOfKind(RecordKind::LandlordSafety);
    reg::SubjectRef boiler = reg::subject(file.appliances[0].id);

    void SetUp() override { file.situations.clear(); }
    record::Document made() const { return documentOfKind(RecordKind::LandlordSafety, file); }
    static std::string textOf(const record::Document& document, const std::string& caption) {
        for (const auto& block : blocksOf<Statements>(document)) {
            for (const auto& one : block.statements) {
                if (one.caption == caption) {
                    return one.text;
                }
            }
        }
        return "(no such statement)";
    }
    static Table tableHeaded(const record::Document& document, const std::string& head) {
        for (const auto& table : blocksOf<Table>(document)) {
            if (table.columns.front().title == head) {
                return table;
            }
        }
        return {};
    }
};

// The order of the nine: HSE "Gas safety check records and what to keep".
TEST_F(LandlordDocument, StandsInTheOrderOfTheRegulation) {
    std::string all;
    for (const auto& text : textsOf(made())) {
        all += text + '\n';
    }
    std::size_t from = 0;
    for (const char* number : {"(i) ", "(ii) ", "(iii) ", "(iv) ", "(v) ", "(vi) ", "(vii) ", "(viii) "}) {
        const auto at = all.find(std::string("\n") + number, from);
        ASSERT_NE(at, std::string::npos) << number;
        from = at;
    }
    EXPECT_NE(all.find("(ix) Registration number"), std::string::npos);
}

TEST_F(LandlordDocument, NoneFoundIsAnAnswerOfItsOwn) {
    enter(file, boiler, Item::DefectsFound, "none_found");
    EXPECT_EQ(textOf(made(), "(v) Safety defects"), "none found");
    EXPECT_EQ(textOf(made(), "(vi) Remedial action taken"), "as seen");
    takeOut(file, boiler, Item::ActionTaken);
    EXPECT_EQ(textOf(made(), "(vi) Remedial action taken"), "none needed");
    takeOut(file, boiler, Item::DefectsFound);
    EXPECT_EQ(textOf(made(), "(v) Safety defects"), "— not entered");
    enter(file, boiler, Item::DefectsFound, "found");
    enter(file, boiler, Item::DefectsText, "flue loose at the terminal");
    EXPECT_EQ(textOf(made(), "(v) Safety defects"), "flue loose at the terminal");
}

TEST_F(LandlordDocument, TheDeclarationIsTheEngineersAlone) {
    takeOut(file, boiler, Item::SafeToUse);
    EXPECT_EQ(textOf(made(), "Declared by the engineer"), "— not declared");
    enter(file, boiler, Item::SafeToUse, "no");
    EXPECT_EQ(textOf(made(), "Declared by the engineer"), "NOT safe to use");
    EXPECT_EQ(blocksOf<record::Headline>(made())[0].outcome, Outcome::Fail);
    enter(file, boiler, Item::SafeToUse, "yes");
    EXPECT_EQ(textOf(made(), "Declared by the engineer"), "Safe to use");
}

// Source: GB gas register, Industry Standard Update 092 (2019), in a training centre's summary.
TEST_F(LandlordDocument, VisualOnlyIsSaidAcrossTheMattersAndOfTheDeclaration) {
    enter(file, boiler, Item::ApplianceInspected, "visual_only");
    enter(file, boiler, Item::SafeToUse, "yes");
    EXPECT_EQ(textOf(made(), "Declared by the engineer"), "Safe to use, by a visual check only");
    const auto matters = tableHeaded(made(), "(vii) Matters of regulation 26(9)");
    ASSERT_GE(matters.rows.size(), 4U);
    for (const auto& row : matters.rows) {
        EXPECT_EQ(row[1], "visual check only");
        EXPECT_EQ(row[2], "—");
    }
    EXPECT_THAT(matters.note, ::testing::HasSubstr("Visual check only"));
}

TEST_F(LandlordDocument, MattersStandApartFromTheirResult) {
    enter(file, boiler, Item::ExaminedFlue, "wrong");
    enter(file, boiler, Item::ExaminedAir, "good");
    enter(file, boiler, Item::ExaminedPressure, "in_order");
    takeOut(file, boiler, Item::ExaminedHeatInput);
    const auto rows = tableHeaded(made(), "(vii) Matters of regulation 26(9)").rows;
    EXPECT_EQ(std::vector(rows[0].begin() + 1, rows[0].begin() + 3),
              (std::vector<std::string>{"yes", "not in order"}));
    EXPECT_EQ(std::vector(rows[1].begin() + 1, rows[1].begin() + 3),
              (std::vector<std::string>{"yes", "in order"}));
    EXPECT_EQ(std::vector(rows[3].begin() + 1, rows[3].begin() + 3), (std::vector<std::string>{"no", "—"}));
}

// 90 ppm over 9 % is a ratio of 0.001 (arithmetic).
TEST_F(LandlordDocument, CoAndCo2StandBesideTheirRatio) {
    enter(file, boiler, Item::FlueCoHigh, "90");
    enter(file, boiler, Item::FlueCo2High, "9.0");
    const auto table = tableHeaded(made(), "Combustion");
    ASSERT_FALSE(table.rows.empty());
    const auto row = std::find_if(table.rows.begin(), table.rows.end(),
                                  [](const auto& cells) { return cells[0] == "highest rate"; });
    ASSERT_NE(row, table.rows.end());
    EXPECT_EQ((*row)[1], "90\u00a0ppm");
    EXPECT_EQ((*row)[2], "9.0\u00a0%");
    EXPECT_EQ((*row)[4].substr(0, 5), "0.001");
}

// A check inside the two months keeps its date: the published example (10 February 2019, checked 5 January).
TEST_F(LandlordDocument, ShowsTheDateTheDeadlineKeptAndTheNext) {
    enter(file, boiler, Item::CheckedOn, "2019-01-05");
    enter(file, boiler, Item::LastCheckCounted, "2018-02-10");
    const auto table = tableHeaded(made(), "Appliance and its flue");
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_EQ(std::vector(table.rows[0].begin() + 1, table.rows[0].end()),
              (std::vector<std::string>{"5 Jan 2019", "10 Feb 2019", "yes", "10 Feb 2020"}));
    EXPECT_TRUE(shows(made(), "2 February 2019"));  // the tenant's copy: 28 days after the check itself
}

// The published example's checks as they are kept; the engineer entered the last check itself, whose deadline
// was kept.
TEST_F(LandlordDocument, ShowsTheChecksKeptBesideAnEntryThatDiffers) {
    enter(file, boiler, Item::CheckedOn, "2019-12-20");
    enter(file, boiler, Item::LastCheckCounted, "2019-01-05");
    record::CheckHistory history;
    history.appliance = file.appliances[0].id;
    history.item.checks = {*calendar::fromIso("2018-02-10"), *calendar::fromIso("2019-01-05")};
    const auto words = Words(QStringLiteral("en"));
    const std::vector<judging::Judged> findings;
    const pipework::VolumeReport volume;
    DocumentInput input{record::RecordKind::LandlordSafety, file, findings, volume, file.visit.date};
    input.checks = {history};
    const auto table = tableHeaded(documentFor(input, words), "Appliance and its flue");
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_EQ(table.rows[0][2], "10 Feb 2020");
    EXPECT_EQ(
        table.rows[0][4],
        "10 Feb 2021 by the checks kept here, 5 Jan 2021 by the last check as entered: look again, keep "
        "the earlier");
    file.entries.erase(
        std::remove_if(file.entries.begin(), file.entries.end(),
                       [](const reg::Entry& one) { return one.item == Item::LastCheckCounted; }),
        file.entries.end());
    EXPECT_EQ(tableHeaded(documentFor(input, words), "Appliance and its flue").rows[0][4], "10 Feb 2021");
}

TEST_F(LandlordDocument, WhatWasNotInspectedSaysWhyAndNothingElse) {
    enter(file, boiler, Item::ApplianceInspected, "not_inspected");
    enter(file, boiler, Item::NotInspectedWhy, "wardrobe before it");
    EXPECT_TRUE(shows(made(), "not inspected: wardrobe before it"));
    EXPECT_TRUE(blocksOf<Statements>(made()).empty());
}

}  // namespace
}  // namespace hearth::ui::words

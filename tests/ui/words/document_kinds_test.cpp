// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/record/sample_kinds.h"
#include "tests/ui/words/document_text.h"
#include "tests/ui/words/languages.h"
#include "ui/words/document_words.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace hearth::ui::words {
namespace {

using hearth::testing::blocksOf;
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

record::Document documentOfKind(RecordKind kind, const reg::VisitFile& file,
                                const QString& language = QStringLiteral("en")) {
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    return documentFor({kind, file, findings, volume, file.visit.date}, Words(language));
}

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

TEST_F(LandlordDocument, WhatWasNotInspectedSaysWhyAndNothingElse) {
    enter(file, boiler, Item::ApplianceInspected, "not_inspected");
    enter(file, boiler, Item::NotInspectedWhy, "wardrobe before it");
    EXPECT_TRUE(shows(made(), "not inspected: wardrobe before it"));
    EXPECT_TRUE(blocksOf<Statements>(made()).empty());
}

std::string captionedIn(const record::Document& document, const std::string& caption) {
    const auto field = hearth::testing::fieldOf(document, caption);
    return field ? field->lines.front() : "(no such field)";
}

// Building Regulations 2010 regulations 20 and 40 (30 and 5 days after completion) and RIDDOR 2013 regulation
// 11(2) (14 days): the worked dates of the facts (25 November to 25 December 2026; 20 November to 4 December
// 2026).
TEST(DocumentClocks, AreTheLastDaysThatTheLawSets) {
    auto file = visitOfKind(RecordKind::BuildingNotice);
    enter(file, reg::subject(file.visit.id), Item::WorkCompleted, "2026-11-25");
    auto document = documentOfKind(RecordKind::BuildingNotice, file);
    EXPECT_EQ(captionedIn(document, "Certificate to the occupier, notice to the council"),
              "25 December 2026");
    EXPECT_EQ(captionedIn(document, "Operating and maintaining information to the owner"),
              "30 November 2026");
    file.premises.country = reg::Country::Scotland;
    document = documentOfKind(RecordKind::BuildingNotice, file);
    EXPECT_EQ(captionedIn(document, "Certificate to the occupier, notice to the council"),
              "no such day in this country’s law");

    file = visitOfKind(RecordKind::ReportableEntry);
    enter(file, reg::subject(file.situations[0].id), Item::SituationKnownOn, "2026-11-20");
    EXPECT_EQ(captionedIn(documentOfKind(RecordKind::ReportableEntry, file), "Report to HSE"),
              "4 December 2026");
}

TEST(DocumentLetters, SpeakInTheFirmsWords) {
    auto file = visitOfKind(RecordKind::ReminderLetter);
    EXPECT_TRUE(shows(documentOfKind(RecordKind::ReminderLetter, file), "2 Thistle Row"));
    file.firm.reminderText = "Time for your check, as agreed.";
    EXPECT_TRUE(shows(documentOfKind(RecordKind::ReminderLetter, file), file.firm.reminderText));
    EXPECT_FALSE(shows(documentOfKind(RecordKind::NoAccessLetter, file), file.firm.reminderText));
}

TEST(DocumentLetters, AreFilledAndSayWhatIsNotKnown) {
    const Words words;
    auto file = visitOfKind(RecordKind::CoveringLetter);
    file.firm.telephone = "01632 960055";
    const std::vector<judging::Judged> none;
    const pipework::VolumeReport volume;
    const auto input = [&](RecordKind kind) {
        return DocumentInput{kind, file, none, volume, *calendar::fromIso("2026-11-25")};
    };
    for (const auto kind :
         {RecordKind::ReminderLetter, RecordKind::NoAccessLetter, RecordKind::CoveringLetter}) {
        EXPECT_TRUE(letterFault(input(kind), words).has_value());
        const auto document = documentFor(input(kind), words);
        EXPECT_TRUE(shows(document, "ring us on 01632 960055"));
        EXPECT_FALSE(shows(document, "{"));
    }
    file.firm.coverText = "From {email}, {today}";
    file.firm.email.clear();
    const auto fault = letterFault(input(RecordKind::CoveringLetter), words);
    ASSERT_FALSE(fault.has_value());
    EXPECT_EQ(fault.error(), (Error{ErrorCode::LetterLacks, {"email"}}));
    EXPECT_FALSE(shows(documentFor(input(RecordKind::CoveringLetter), words), "{email}"));
    file.firm.email = "office@pike.example";
    EXPECT_TRUE(shows(documentFor(input(RecordKind::CoveringLetter), words),
                      "From office@pike.example, 25 November 2026"));
    EXPECT_TRUE(letterFault(input(RecordKind::TightnessAndPurge), words).has_value());
}

TEST(BuildingNotice, NamesTheApplianceInFull) {
    const auto document = documentOfKind(RecordKind::BuildingNotice, visitOfKind(RecordKind::BuildingNotice));
    for (const char* text : {"Emberline Quiet 24", "EQ-000123", "kitchen cupboard"}) {
        EXPECT_TRUE(shows(document, text)) << text;
    }
    EXPECT_TRUE(blocksOf<record::Headline>(document).empty()) << "an entry of the books has no outcome";
}

TEST(CalibrationLog, ListsEveryInstrument) {
    const auto file = visitOfKind(RecordKind::CalibrationLog);
    const auto document = documentOfKind(RecordKind::CalibrationLog, file);
    for (const auto& instrument : file.instruments) {
        EXPECT_TRUE(shows(document, instrument.name)) << instrument.name;
    }
}

TEST(WarningNotice, IsSignedForOrSaysWhereTheCopyLies) {
    auto file = visitOfKind(RecordKind::WarningNotice);
    const auto on = reg::subject(file.situations[0].id);
    enter(file, on, Item::SituationReceivedBy, "E. Tenant");
    const auto receipt = [&] {
        return blocksOf<record::Signatures>(documentOfKind(RecordKind::WarningNotice, file))[0].signatures[1];
    };
    EXPECT_EQ(receipt().name, "E. Tenant");
    takeOut(file, on, Item::SituationReceivedBy);
    enter(file, on, Item::SituationCopyLeft, "on the table");
    EXPECT_EQ(receipt().name, "—");
    EXPECT_EQ(receipt().detail, "not present, copy left: on the table");
}

TEST(WarningNotice, SaysFirstWhatNotToDo) {
    auto file = visitOfKind(RecordKind::WarningNotice);
    auto head = blocksOf<record::Headline>(documentOfKind(RecordKind::WarningNotice, file))[0];
    EXPECT_EQ(head.outcome, Outcome::Fail);
    EXPECT_EQ(head.sentence, "DANGER – DO NOT USE. At risk.");
    file.situations[0].danger = reg::Danger::ImmediatelyDangerous;
    head = blocksOf<record::Headline>(documentOfKind(RecordKind::WarningNotice, file))[0];
    EXPECT_EQ(head.sentence, "DANGER – DO NOT USE. Immediately dangerous.");
}

}  // namespace
}  // namespace hearth::ui::words

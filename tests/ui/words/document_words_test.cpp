// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_words.h"

#include "tests/core/record/sample_visit.h"
#include "tests/ui/words/document_text.h"
#include "tests/ui/words/languages.h"
#include "ui/words/document_page.h"

namespace hearth::ui::words {
namespace {

using hearth::testing::blocksOf;
using hearth::testing::enter;
using hearth::testing::fieldOf;
using hearth::testing::shows;
using hearth::testing::tableOf;
using hearth::testing::takeOut;
using record::Document;
using record::FieldGrid;
using record::FindingList;
using record::Headline;
using record::Paragraph;
using record::Plots;
using record::Signatures;
using record::Table;
using reg::Item;
using rulebook::Outcome;

calendar::Date date(int year, unsigned month, unsigned day) {
    return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

/// A book whose every entry that has a value was confirmed, and whose scope of Edition 4 was entered.
rulebook::RuleBook confirmedBook() {
    auto book = rulebook::RuleBook::shipped();
    const auto shipped = book;
    for (const auto& entry : shipped.entries()) {
        auto value = entry.value;
        if (!entry.isKnown() && entry.key.edition == rulebook::Edition::Up1bEd4) {
            auto third = entry.key;
            third.edition = rulebook::Edition::Up1bEd3;
            const auto* stand = shipped.find(third);
            value = stand != nullptr ? stand->value : value;
        }
        if (!std::holds_alternative<std::monostate>(value)) {
            (void)book.lay({entry.key, value, "A. Sampleton", date(2026, 10, 3), "own copy"});
        }
    }
    return book;
}

struct DocumentTest : ::testing::Test {
    reg::VisitFile file = hearth::testing::sampleVisit();
    rulebook::RuleBook book = confirmedBook();
    reg::SubjectRef visit = reg::subject(file.visit.id);
    reg::SubjectRef test = reg::subject(file.tests[0].id);

    void SetUp() override {
        file.installation.operatingPressure = {"20.8", quantity::UnitCode::Millibar};
        file.installation.supplyPressure = {"75", quantity::UnitCode::Millibar};
        file.installation.meterSerial = "M-778";
        file.installation.meterPlace = "meter box";
        file.installation.controlValvePlace = "below the meter";
    }
    Document document(const QString& language = QStringLiteral("en")) const {
        const Words words(language);
        const auto findings = judging::judge(file, book);
        const auto volume = judging::volumeOf(file, book);
        return documentFor(
            {record::RecordKind::TightnessAndPurge, file, findings, volume, date(2026, 11, 26)}, words);
    }
    void put(const reg::SubjectRef& on, Item item, const std::string& text) { enter(file, on, item, text); }
    /// Everything that can be entered is.
    void fillIn() {
        const std::vector<hearth::testing::SampleEntry> more{
            {Item::TestPartDescription, "from the tee to the hob"},
            {Item::TestIsolatedWhat, "hob shut at its valve"},
            {Item::TestVolumeTyped, "0.00931"},
            {Item::TestPipesShut, "4711"},
            {Item::SecondDisplayStart, "20.53"},
            {Item::SecondDisplayEnd, "20.47"},
            {Item::LowPressureReason, "end of the main"},
            {Item::AssumedTemperatureChange, "0.11"},
            {Item::TestVolumeOff, "7.3"},
            {Item::RetestStart, "20.43"},
            {Item::RetestEnd, "20.41"},
            {Item::RetestStartedAt, "09:51"},
            {Item::RetestEndedAt, "09:53"},
            {Item::PurgeDone, "yes"},
            {Item::PurgeMethod, "open_burner"},
            {Item::PurgeVolumePassed, "0.0123"},
            {Item::PurgeSteadyFlame, "yes"},
            {Item::StandingPressure, "22.31"},
            {Item::WorkingPressure, "20.37"},
            {Item::WorkingLoad, "boiler at full"}};
        for (const auto& entry : more) {
            put(test, entry.item, entry.text);
        }
        for (const auto& [item, text] : {std::pair{Item::VisitReference, "JOB-81"},
                                         {Item::VisitPresent, "the lodger"},
                                         {Item::VisualNotes, "bracket loose"},
                                         {Item::VisitRemarks, "come again in May"},
                                         {Item::ReceivedBy, "C. Receiver"}}) {
            put(visit, item, text);
        }
    }
};

TEST_F(DocumentTest, EveryTypedValueStandsInIt) {
    fillIn();
    const Words words;
    const auto made = document();
    for (const auto& info : reg::sheetItems()) {
        const auto& on = info.subject == reg::SubjectKind::Visit ? visit : test;
        const auto* entry = file.find(on, info.item);
        ASSERT_NE(entry, nullptr) << info.code << " is not filled in by this test";
        QString shown = qstring(entry->text);
        if (!info.choices.empty()) {
            shown = words.choice(info.item, entry->text);
        } else if (info.kind == reg::ItemKind::Instrument) {
            shown = qstring(file.instruments[0].name);
        }
        EXPECT_TRUE(shows(made, shown.toStdString())) << info.code << ": " << shown;
    }
}

// Absent is a dash with its reason: a field marked absent that says why, or a table's dash with a note below.
TEST_F(DocumentTest, WhatIsAbsentIsADashWithItsReason) {
    const auto complete = file;
    const Words words;
    for (const auto& entry : complete.entries) {
        file = complete;
        takeOut(file, entry.subject, entry.item);
        const auto made = document();
        const auto field = fieldOf(made, recordCaption(words, entry.item).toStdString());
        if (field) {
            EXPECT_TRUE(field->absent) << field->caption;
            ASSERT_EQ(field->lines.size(), 1U);
            EXPECT_FALSE(field->lines[0].empty());
            continue;
        }
        if (entry.item == Item::SignedByEngineer) {
            EXPECT_EQ(blocksOf<Signatures>(made)[0].signatures[0].name, "—");
            continue;
        }
        const auto readings = tableOf(made, "Readings as taken");
        ASSERT_TRUE(readings.has_value());
        EXPECT_TRUE(shows(made, "—")) << reg::infoOf(entry.item).code;
        EXPECT_NE(readings->note.find("—: not entered."), std::string::npos) << readings->note;
    }
}

TEST_F(DocumentTest, TheReasonSuitsTheCase) {
    auto made = document();
    EXPECT_EQ(fieldOf(made, "Method, volume, flame")->lines[0], "no purge needed");
    EXPECT_FALSE(fieldOf(made, "Purged through"));  // one reason for all that hangs on it, said once
    EXPECT_EQ(fieldOf(made, "Standing pressure (meter)")->lines[0], "not taken");
    put(test, Item::PurgeDone, "no");
    made = document();
    EXPECT_EQ(fieldOf(made, "Method, volume, flame")->lines[0], "not purged");
    EXPECT_TRUE(fieldOf(made, "Method, volume, flame")->absent);
    put(test, Item::PurgeMethod, "open_burner");  // typed, and then found not to be so: nothing is hidden
    made = document();
    EXPECT_EQ(fieldOf(made, "Purged through")->lines[0], "an open burner");
    EXPECT_EQ(fieldOf(made, "All flames steady")->lines[0], "not purged");
    takeOut(file, test, Item::PurgeMethod);
    put(test, Item::PurgeDone, "yes");
    file.installation.meterCode = "none";
    EXPECT_EQ(fieldOf(document(), "Volume passed at meter")->lines[0], "no meter to read");
    put(test, Item::TestAppliances, "none_connected");
    takeOut(file, test, Item::TestPilots);
    made = document();
    EXPECT_EQ(fieldOf(made, "Pilot lights")->lines[0], "appliances not connected");
    EXPECT_EQ(fieldOf(made, "All flames steady")->lines[0], "no appliance connected");
}

TEST_F(DocumentTest, StandsInTheOrderOfTheWork) {
    const auto made = document();
    std::vector<std::string> titles;
    for (const auto& block : made.blocks) {
        if (std::holds_alternative<Headline>(block)) {
            titles.emplace_back("headline");
        } else if (const auto* grid = std::get_if<FieldGrid>(&block)) {
            titles.push_back(grid->title);
        } else if (const auto* table = std::get_if<Table>(&block)) {
            titles.push_back(table->title);
        } else if (const auto* list = std::get_if<FindingList>(&block)) {
            titles.push_back(list->title);
        } else if (const auto* paragraph = std::get_if<Paragraph>(&block)) {
            titles.push_back(paragraph->title);
        } else if (std::holds_alternative<Plots>(block)) {
            titles.emplace_back("plots");
        } else {
            titles.emplace_back("signatures");
        }
    }
    EXPECT_EQ(titles, (std::vector<std::string>{"headline", "Who and where", "Gauges", "Installation",
                                                "Pipework", "What was tested", "Readings as taken", "plots",
                                                "Smell and safe to touch", "Findings, with the limits used",
                                                "Purge", "Joints and pressures", "Remarks", "signatures"}));
    EXPECT_EQ(made.title, "Gas tightness and purge record");
    EXPECT_EQ(made.subtitle, "IGEM/UP/1B Edition 4");
    EXPECT_EQ(made.issued, "26 November 2026");
    EXPECT_EQ(made.kind, "tightness_and_purge");
    EXPECT_EQ(made.number, "");  // the store's
    EXPECT_EQ(made.pageWord, "page %1 of %2");
    EXPECT_FALSE(made.caution.empty());
}

TEST_F(DocumentTest, TheRegisterStandsInItButNeverTheAccessNotes) {
    file.premises.accessNotes = "key under the third pot";
    file.firm.telephone = "01632 960001";
    file.instruments[0].certificate = "CERT-9";
    file.instruments[0].calibratedOn = date(2026, 6, 1);
    const auto made = document();
    for (const char* text :
         {"Sampleton Gas", "1 Yard Lane",     "QX1 1AA",          "000001",
          "01632 960001",  "2 Thistle Row",   "QX1 1AB",          "B. Placeholder",
          "A. Sampleton",  "0000001",         "25 November 2026", "gauge no. 2",
          "S-0042",        "0.01\u00a0mbar",  "0.3\u00a0mbar",    "CERT-9",
          "1 Jun 2026",    "due 1 Jun 2027",  "Natural gas",      "M-778",
          "meter box",     "below the meter", "20.8\u00a0mbar",   "75\u00a0mbar",
          "Copper 15 mm",  "9\u00a0m",        "boiler",           "trade table, published"}) {
        EXPECT_TRUE(shows(made, text)) << text;
    }
    EXPECT_FALSE(shows(made, "third pot"));
}

// G4 meter and 9 m of 15 mm copper: 0.009386 m3, the worked example of the certification body's pocket guide
// Gas 2 (reproducing IGEM/UP/1B Edition 3).
TEST_F(DocumentTest, TheVolumeIsShownWithItsParts) {
    const auto made = document();
    const auto pipes = tableOf(made, "Pipework");
    ASSERT_TRUE(pipes.has_value());
    EXPECT_EQ(pipes->rows[0][5], "0.001260\u00a0m³");
    EXPECT_EQ(pipes->total[5], "0.009386\u00a0m³");
    EXPECT_EQ(pipes->note,
              "Installation volume: meter 0.008000\u00a0m³, pipes under test 0.001260\u00a0m³, fittings "
              "0.000126\u00a0m³.");
    const auto list = blocksOf<FindingList>(made)[0];
    const auto found = std::find_if(list.findings.begin(), list.findings.end(), [](const auto& line) {
        return line.title == "Installation volume: pass";
    });
    ASSERT_NE(found, list.findings.end());
    EXPECT_NE(found->why.find("0.009386\u00a0m³"), std::string::npos) << found->why;
    EXPECT_EQ(found->measured, "");  // its reason says it
    put(test, Item::TestVolumeTyped, "0.0095");
    EXPECT_NE(tableOf(document(), "Pipework")->note.find("typed in"), std::string::npos);
    takeOut(file, test, Item::TestVolumeTyped);
    file.pipes[0].length.text.clear();
    const auto unknown = tableOf(document(), "Pipework");
    EXPECT_EQ(unknown->total[5], "—");
    EXPECT_EQ(unknown->rows[0][4], "—");
    EXPECT_NE(unknown->note.find("—: not entered."), std::string::npos);
}

TEST_F(DocumentTest, ReadingsHaveTheirTimesAndChanges) {
    const auto readings = tableOf(document(), "Readings as taken");
    ASSERT_TRUE(readings.has_value());
    ASSERT_EQ(readings->rows.size(), 3U);
    EXPECT_EQ(readings->rows[2], (std::vector<std::string>{"Tightness", "09:43", "09:45", "20.50\u00a0mbar",
                                                           "20.46\u00a0mbar", "\u22120.04\u00a0mbar"}));
    EXPECT_NE(readings->note.find("No retest"), std::string::npos);
}

TEST_F(DocumentTest, AChangeBetweenDifferentUnitsIsConverted) {
    put(test, Item::TightEnd, "2.046");
    for (auto& entry : file.entries) {
        entry.unit = entry.item == Item::TightEnd ? quantity::UnitCode::Kilopascal : entry.unit;
    }
    const auto readings = tableOf(document(), "Readings as taken");
    EXPECT_EQ(readings->rows[2][4], "2.046\u00a0kPa");
    EXPECT_EQ(readings->rows[2][5], "\u22120.04\u00a0mbar");
}

TEST_F(DocumentTest, WhatCannotBeReadIsShownAndCalledSo) {
    put(test, Item::TightEnd, "twenty");
    const auto readings = tableOf(document(), "Readings as taken");
    EXPECT_EQ(readings->rows[2][4], "“twenty” (can't be read)");
    EXPECT_EQ(readings->rows[2][5], "—");
}

TEST_F(DocumentTest, AGoodTestIsAHeadlineOfOneSentence) {
    const auto head = blocksOf<Headline>(document())[0];
    EXPECT_EQ(head.outcome, Outcome::Pass);
    EXPECT_EQ(head.sentence, "The installation was found tight.");
    ASSERT_EQ(head.details.size(), 2U);
    EXPECT_EQ(head.details[0].rfind("Let-by: pass. ", 0), 0U) << head.details[0];
    EXPECT_EQ(head.details[1].rfind("Tightness: pass. ", 0), 0U) << head.details[1];
    EXPECT_FALSE(shows(document(), "What to do first"));
}

TEST_F(DocumentTest, ALeakSaysFirstWhatToDo) {
    put(test, Item::TestWork, "new");
    put(test, Item::TightEnd, "19.10");
    const auto made = document();
    EXPECT_EQ(blocksOf<Headline>(made)[0].outcome, Outcome::Fail);
    const auto& todo = std::get<Paragraph>(made.blocks[1]);
    EXPECT_EQ(todo.title, "What to do first");
    EXPECT_EQ(todo.text.rfind("1. Keep the gas off.\n2. ", 0), 0U) << todo.text;
    EXPECT_TRUE(todo.strong);
    put(test, Item::TestSmell, "yes");
    EXPECT_EQ(std::get<Paragraph>(document().blocks[1]).text.rfind("1. No flames", 0), 0U);
}

TEST_F(DocumentTest, LetByExplainsWhatIsNotThere) {
    put(test, Item::LetByEnd, "9.90");
    for (const auto item :
         {Item::SettleStart, Item::SettleEnd, Item::SettleStartedAt, Item::SettleEndedAt, Item::TightStart,
          Item::TightEnd, Item::TightStartedAt, Item::TightEndedAt, Item::PurgeDone}) {
        takeOut(file, test, item);
    }
    const auto made = document();
    EXPECT_EQ(blocksOf<Headline>(made)[0].sentence, "The valve lets by: no tightness test could be made.");
    const auto readings = tableOf(made, "Readings as taken");
    EXPECT_EQ(readings->rows[2][3], "—");
    EXPECT_NE(readings->note.find("let-by was found"), std::string::npos) << readings->note;
    EXPECT_EQ(fieldOf(made, "Purged")->lines[0], "the gas stays off");
    EXPECT_EQ(blocksOf<Headline>(made)[0].details.size(), 1U);  // not four times that nothing was entered
    EXPECT_TRUE(shows(made, "Not made, since let-by was found and stopped the test."));
    EXPECT_TRUE(shows(made, "Not purged, since the gas stays off."));
    EXPECT_FALSE(shows(made, "A reading that this needs has not been entered."));
}

TEST_F(DocumentTest, TwoTestsAreToldApartAndTheLastGivesTheHeadline) {
    const auto first = file.entries;
    reg::Test second;
    second.id = reg::TestId{hearth::testing::sampleBytes(9)};
    second.label = "after the repair";
    file.tests.push_back(second);
    EXPECT_FALSE(shows(document(), "after the repair"));  // added and left empty
    for (const auto& entry : first) {
        if (entry.subject == test) {
            put(reg::subject(second.id), entry.item, entry.text);
        }
    }
    put(test, Item::TightEnd, "18.00");
    put(test, Item::TestWork, "new");
    const auto made = document();
    const auto head = blocksOf<Headline>(made)[0];
    EXPECT_EQ(head.outcome, Outcome::Pass);
    EXPECT_EQ(head.sentence, "The installation was found tight at the last test.");
    EXPECT_TRUE(shows(made, "test 1 · Tightness: fail"));
    EXPECT_TRUE(shows(made, "after the repair · Tightness: pass"));
    EXPECT_TRUE(shows(made, "all tests · Scope of the standard: pass"));  // what both share, once
    EXPECT_FALSE(shows(made, "test 1 · Scope of the standard"));
    EXPECT_FALSE(shows(made, "after the repair · Scope of the standard"));
    EXPECT_FALSE(shows(made, "all tests · Tightness"));
    EXPECT_TRUE(tableOf(made, "Readings as taken: after the repair").has_value());
    EXPECT_TRUE(tableOf(made, "Readings as taken: test 1").has_value());
    EXPECT_FALSE(shows(made, "What to do first"));
}

TEST_F(DocumentTest, EveryFindingHasItsReasonAndItsSource) {
    const auto findings = judging::judge(file, book);
    const auto list = blocksOf<FindingList>(document())[0];
    const Words words;
    for (const auto& judged : findings) {
        const std::string why = words.sentence(judged.finding.why).toStdString();
        const auto line =
            std::find_if(list.findings.begin(), list.findings.end(), [&](const record::FindingLine& l) {
                return l.outcome == judged.finding.outcome && l.why.find(why) != std::string::npos;
            });
        ASSERT_NE(line, list.findings.end()) << why;
        std::string sources;
        for (const auto& source : line->sources) {
            sources += source + '\n';
        }
        for (const auto& limit : judged.finding.limits) {
            const QString source = words.source(limit).section(QStringLiteral(" by A. Sampleton, "), 0, 0);
            for (const auto& part : {words.rule(limit.key.rule), words.ruleValue(limit), source}) {
                EXPECT_NE(sources.find(part.toStdString()), std::string::npos)
                    << part << " is not in " << sources;
            }
        }
    }
}

// Each limit says that it is confirmed; who did it stands once where it is one person.
TEST_F(DocumentTest, WhoConfirmedTheLimitsIsSaidOnceWhereItIsOnePerson) {
    const std::string once =
        "Limits marked confirmed: by A. Sampleton from the firm's own copy, 3 October 2026.";
    auto list = blocksOf<FindingList>(document())[0];
    EXPECT_EQ(list.findings.back().sources.back(), once);
    EXPECT_FALSE(shows(document(), "confirmed by A. Sampleton, "));
    EXPECT_TRUE(shows(document(), "IGEM/UP/1B Edition 4 · confirmed"));

    const auto judged = judging::judge(file, book);
    const auto letBy = std::find_if(judged.begin(), judged.end(), [](const judging::Judged& j) {
        return j.finding.kind == rulebook::FindingKind::LetBy;
    });
    ASSERT_NE(letBy, judged.end());
    ASSERT_FALSE(letBy->finding.limits.empty());
    const auto limit = letBy->finding.limits.front();
    ASSERT_TRUE(book.lay({limit.key, limit.value, "A. Sampleton", date(2026, 10, 9), "own copy"}));
    auto made = document();
    EXPECT_TRUE(shows(made, "· confirmed 9 Oct 2026"));
    EXPECT_TRUE(shows(made, "· confirmed 3 Oct 2026"));
    list = blocksOf<FindingList>(made)[0];
    EXPECT_EQ(list.findings.back().sources.back(),
              "Limits marked confirmed: by A. Sampleton from the firm's own copy.");

    ASSERT_TRUE(book.lay({limit.key, limit.value, "B. Second", date(2026, 10, 9), "own copy"}));
    made = document();
    EXPECT_TRUE(shows(made, "confirmed by A. Sampleton, 3 Oct 2026"));
    EXPECT_TRUE(shows(made, "confirmed by B. Second, 9 Oct 2026"));
    EXPECT_FALSE(shows(made, "Limits marked confirmed"));
}

TEST_F(DocumentTest, FindingsThatSayTheSameAreToldTogetherInTheHeadline) {
    put(test, Item::TestEdition, "ed3");  // may not judge any more
    const auto head = blocksOf<Headline>(document())[0];
    EXPECT_EQ(head.outcome, Outcome::NoVerdict);
    ASSERT_EQ(head.details.size(), 1U);
    EXPECT_EQ(
        head.details[0].rfind(
            "Edition, Scope of the standard, Let-by, Test pressure, Test time, Tightness: no verdict. ", 0),
        0U)
        << head.details[0];
}

TEST_F(DocumentTest, ADemonstrationSaysSo) {
    EXPECT_EQ(document().banner, "");
    file.firm.demonstration = true;
    EXPECT_EQ(document().banner, "Demonstration: not a real record");
}

TEST_F(DocumentTest, ARecordSpeaksItsOwnLanguageThroughout) {
    fillIn();
    const auto made = document(QStringLiteral("en_XA"));
    EXPECT_EQ(made.language, "en_XA");
    for (const auto& grid : blocksOf<FieldGrid>(made)) {
        EXPECT_EQ(grid.title.front(), '[') << grid.title;
        for (const auto& field : grid.fields) {
            EXPECT_EQ(field.caption.front(), '[') << field.caption;
        }
    }
    for (const auto& table : blocksOf<Table>(made)) {
        EXPECT_EQ(table.title.front(), '[') << table.title;
        for (const auto& column : table.columns) {
            EXPECT_EQ(column.title.front(), '[') << column.title;
        }
    }
    const auto list = blocksOf<FindingList>(made)[0];
    for (const auto& finding : list.findings) {
        EXPECT_EQ(finding.title.front(), '[') << finding.title;
        EXPECT_EQ(finding.why.front(), '[') << finding.why;
    }
    EXPECT_EQ(made.title.front(), '[');
    EXPECT_EQ(made.caution.front(), '[');
}

// A visit of which nothing is known can still be shown: a draft's preview.
TEST(Document, OfAnEmptyVisitCanBeMade) {
    const Words words;
    reg::VisitFile file;
    file.tests.emplace_back();
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    const auto made = documentFor(
        {record::RecordKind::TightnessAndPurge, file, findings, volume, date(2026, 11, 26)}, words);
    EXPECT_EQ(blocksOf<Headline>(made)[0].outcome, Outcome::NoVerdict);
    EXPECT_TRUE(fieldOf(made, "Customer")->absent);
    EXPECT_TRUE(fieldOf(made, "Engineer")->absent);
}

}  // namespace
}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
// Notices, investigations, entries of the firm's books and letters: what each promises to whoever reads it.
#include "tests/core/record/sample_kinds.h"
#include "tests/ui/words/document_of_kind.h"
#include "tests/ui/words/document_text.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace hearth::ui::words {
namespace {

using hearth::testing::blocksOf;
using hearth::testing::documentOfKind;
using hearth::testing::enter;
using hearth::testing::shows;
using hearth::testing::takeOut;
using hearth::testing::visitOfKind;
using record::RecordKind;
using reg::Item;
using rulebook::Outcome;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

record::Statement statedIn(const record::Document& document, const std::string& caption) {
    for (const auto& block : blocksOf<record::Statements>(document)) {
        for (const auto& one : block.statements) {
            if (one.caption == caption) {
                return one;
            }
        }
    }
    return {caption, "(no such statement)", std::nullopt, {}};
}

// Building Regulations 2010 regulations 20 and 40 (30 and 5 days after completion) and RIDDOR 2013 regulation
// 11(2) (14 days): the worked dates of the facts (25 November to 25 December 2026; 20 November to 4 December
// 2026).
TEST(DocumentClocks, AreTheLastDaysThatTheLawSets) {
    constexpr const char* kNotice = "Certificate to the occupier, notice to the council";
    constexpr const char* kInformation = "Operating and maintaining information to the owner";
    auto file = visitOfKind(RecordKind::BuildingNotice);
    enter(file, reg::subject(file.visit.id), Item::WorkCompleted, "2026-11-25");
    auto document = documentOfKind(RecordKind::BuildingNotice, file);
    EXPECT_EQ(statedIn(document, kNotice).text, "25 December 2026");
    EXPECT_EQ(statedIn(document, kInformation).text, "30 November 2026");
    const auto commissioning = documentOfKind(RecordKind::Commissioning, file);
    EXPECT_EQ(hearth::testing::fieldOf(commissioning, kNotice)->lines.front(), "25 December 2026");
    file.premises.country = reg::Country::Scotland;
    document = documentOfKind(RecordKind::BuildingNotice, file);
    EXPECT_EQ(statedIn(document, kNotice).text, "— no such day in this country’s law");

    file = visitOfKind(RecordKind::ReportableEntry);
    enter(file, reg::subject(file.situations[0].id), Item::SituationKnownOn, "2026-11-20");
    EXPECT_EQ(statedIn(documentOfKind(RecordKind::ReportableEntry, file), "Report to HSE by").text,
              "4 December 2026");
}

TEST(ReportableEntry, SaysWhetherItWasReported) {
    auto file = visitOfKind(RecordKind::ReportableEntry);
    const auto on = reg::subject(file.situations[0].id);
    auto document = documentOfKind(RecordKind::ReportableEntry, file);
    EXPECT_EQ(statedIn(document, "Reported on").text, "20 November 2026");
    EXPECT_EQ(blocksOf<record::Headline>(document)[0].sentence, "A dangerous gas fitting, reported to HSE.");
    takeOut(file, on, Item::SituationReportedOn);
    document = documentOfKind(RecordKind::ReportableEntry, file);
    EXPECT_EQ(statedIn(document, "Reported on").outcome, Outcome::LookAgain);
    EXPECT_THAT(blocksOf<record::Headline>(document)[0].sentence, HasSubstr("within 14 days"));
}

TEST(ReportableEntry, SaysNothingOfWhatIsNotReportable) {
    auto file = visitOfKind(RecordKind::ReportableEntry);
    auto other = file.situations[0];
    other.id = reg::SituationId{hearth::testing::sampleBytes(71)};
    other.what = "vent blocked by a shelf";
    file.situations.push_back(other);
    enter(file, reg::subject(other.id), Item::SituationReportable, "no");
    EXPECT_FALSE(shows(documentOfKind(RecordKind::ReportableEntry, file), other.what));
    enter(file, reg::subject(other.id), Item::SituationReportable, "unknown");
    EXPECT_TRUE(shows(documentOfKind(RecordKind::ReportableEntry, file), other.what));
}

TEST(BuildingNotice, NamesTheApplianceInFull) {
    const auto document = documentOfKind(RecordKind::BuildingNotice, visitOfKind(RecordKind::BuildingNotice));
    for (const char* text : {"Emberline Quiet 24", "EQ-000123", "kitchen cupboard"}) {
        EXPECT_TRUE(shows(document, text)) << text;
    }
    EXPECT_TRUE(blocksOf<record::Headline>(document).empty()) << "an entry of the books has no outcome";
}

TEST(CalibrationLog, ListsEveryInstrumentByItsDate) {
    auto file = visitOfKind(RecordKind::CalibrationLog);
    file.visit.date = calendar::fromIso("2026-11-25").value();
    const auto add = [&](const char* name, const char* due) {
        reg::Instrument one;
        one.name = name;
        one.kind = reg::InstrumentKind::ElectronicGauge;
        one.calibrationDue = calendar::fromIso(due);
        file.instruments.push_back(one);
    };
    file.instruments = {{}};
    file.instruments.front().name = "Nodate";
    file.instruments.front().kind = reg::InstrumentKind::LeakDetector;
    add("Late", "2026-11-24");
    add("Today", "2026-11-25");
    add("Later", "2027-06-01");
    const auto document = documentOfKind(RecordKind::CalibrationLog, file);
    EXPECT_EQ(statedIn(document, "Past their date").text, "Late");
    EXPECT_EQ(statedIn(document, "Past their date").outcome, Outcome::Fail);
    EXPECT_EQ(statedIn(document, "Due within 30 days").text, "Today") << "on the day itself it still holds";
    EXPECT_EQ(statedIn(document, "Without a date").text, "Nodate");
    std::vector<std::string> names;
    const auto table = blocksOf<record::Table>(document).at(0);
    for (const auto& row : table.rows) {
        names.push_back(row[0].substr(0, row[0].find(',')));
    }
    EXPECT_THAT(names, ElementsAre("Late", "Today", "Later", "Nodate"));
    EXPECT_FALSE(shows(document, file.premises.address.line1)) << "the log is the firm's";
    file.instruments = {file.instruments[3]};
    EXPECT_EQ(statedIn(documentOfKind(RecordKind::CalibrationLog, file), "Past their date").text, "none");
}

TEST(RoomInvestigation, SaysFirstWhatCameOfIt) {
    auto file = visitOfKind(RecordKind::RoomInvestigation);
    enter(file, reg::subject(file.visit.id), Item::CauseFound, "a slipped flue joint");
    auto document = documentOfKind(RecordKind::RoomInvestigation, file);
    EXPECT_EQ(blocksOf<record::Headline>(document)[0].sentence, "An unsafe situation was found.");
    const auto* second = std::get_if<record::Statements>(&document.blocks[1]);
    ASSERT_NE(second, nullptr);
    EXPECT_EQ(second->statements[0].text, "a slipped flue joint");
    file.situations.clear();
    document = documentOfKind(RecordKind::RoomInvestigation, file);
    EXPECT_EQ(blocksOf<record::Headline>(document)[0].outcome, Outcome::LookAgain) << "no pass by default";
}

TEST(LargerPipework, HasATableOfStagesForEachTestThatWasMade) {
    auto file = visitOfKind(RecordKind::LargerPipework);
    const auto on = reg::subject(file.installation.id);
    const auto stages = [&] {
        std::vector<std::string> names;
        for (const auto& table : blocksOf<record::Table>(documentOfKind(RecordKind::LargerPipework, file))) {
            for (const auto& row : table.rows) {
                names.push_back(row[0]);
            }
        }
        return names;
    };
    EXPECT_THAT(stages(), ElementsAre("Settling", "Strength test", "Let-by", "Settling", "Tightness test"));
    for (const auto item :
         {Item::StrengthMedium, Item::StrengthGauge, Item::StrengthMostOperating, Item::StrengthPartsOff,
          Item::StrengthSettled, Item::StrengthTook, Item::StrengthStart, Item::StrengthEnd}) {
        takeOut(file, on, item);
    }
    EXPECT_THAT(stages(), ElementsAre("Let-by", "Settling", "Tightness test"));
    EXPECT_TRUE(shows(documentOfKind(RecordKind::LargerPipework, file), "— not made"));
}

struct WarningNoticeDocument : ::testing::Test {
    reg::VisitFile file = visitOfKind(RecordKind::WarningNotice);
    reg::SubjectRef on = reg::subject(file.situations[0].id);

    record::Document made() const { return documentOfKind(RecordKind::WarningNotice, file); }
};

TEST_F(WarningNoticeDocument, BeginsWithTheDangerAndWhatNotToDo) {
    auto document = made();
    const auto* alert = std::get_if<record::Alert>(&document.blocks[0]);
    ASSERT_NE(alert, nullptr);
    EXPECT_EQ(alert->outcome, Outcome::Fail);
    EXPECT_EQ(alert->word, "DANGER – DO NOT USE");
    EXPECT_EQ(alert->grade, "At Risk");
    const auto* second = std::get_if<record::Statements>(&document.blocks[1]);
    ASSERT_NE(second, nullptr);
    EXPECT_THAT(second->statements[0].text, HasSubstr("Do not use it"));
    file.situations[0].danger = reg::Danger::ImmediatelyDangerous;
    document = made();
    EXPECT_EQ(std::get<record::Alert>(document.blocks[0]).grade, "Immediately Dangerous");
}

TEST_F(WarningNoticeDocument, OfSeveralTheGravestStandsInTheFrame) {
    auto worse = file.situations[0];
    worse.id = reg::SituationId{hearth::testing::sampleBytes(72)};
    worse.danger = reg::Danger::ImmediatelyDangerous;
    worse.what = "open end on a live pipe";
    file.situations.push_back(worse);
    const auto document = made();
    EXPECT_EQ(std::get<record::Alert>(document.blocks[0]).grade, "Immediately Dangerous");
    EXPECT_TRUE(shows(document, "open end on a live pipe"));
    EXPECT_TRUE(shows(document, "flue in a void without hatches"));
}

TEST_F(WarningNoticeDocument, SaysLoudlyWhatWasNotMadeSafeAndWhoRefused) {
    enter(file, on, Item::SituationMadeSafe, "not_made_safe");
    enter(file, on, Item::SituationPermission, "refused");
    enter(file, on, Item::SituationRefusedBy, "F. Holder");
    enter(file, on, Item::SituationTold, "the emergency service");
    enter(file, on, Item::SituationToldReference, "NX-1");
    EXPECT_EQ(statedIn(made(), "Made safe").text, "NOT made safe");
    EXPECT_EQ(statedIn(made(), "Made safe").outcome, Outcome::Fail);
    EXPECT_EQ(statedIn(made(), "Permission to make it safe").text, "REFUSED");
    EXPECT_EQ(statedIn(made(), "Permission to make it safe").details[0], "Refused by: F. Holder");
    EXPECT_EQ(statedIn(made(), "Also told").text, "the emergency service");
    EXPECT_THAT(statedIn(made(), "Also told").details[0], HasSubstr("reference NX-1"));
    enter(file, on, Item::SituationMadeSafe, "turned_off");
    EXPECT_EQ(statedIn(made(), "Made safe").outcome, std::nullopt);
    takeOut(file, on, Item::SituationMadeSafe);
    EXPECT_EQ(statedIn(made(), "Made safe").text, "— not entered");
}

TEST_F(WarningNoticeDocument, ForbidsNothingOnceAllIsPutRight) {
    file.situations[0].danger = reg::Danger::ImmediatelyDangerous;
    enter(file, on, Item::SituationMadeSafe, "put_right");
    enter(file, on, Item::SituationMadeSafeHow, "hatches cut, the flue seen to be sound");
    const auto document = made();
    const auto alert = std::get<record::Alert>(document.blocks[0]);
    EXPECT_EQ(alert.word, "PUT RIGHT");
    EXPECT_EQ(alert.grade, "It was: Immediately Dangerous");
    EXPECT_NE(alert.outcome, Outcome::Fail);
    const std::string day = Words().date(file.visit.date).toStdString();
    const std::string name = file.engineer()->name;
    EXPECT_THAT(alert.meaning, HasSubstr("on " + day + ", by " + name));
    EXPECT_EQ(statedIn(document, "What was wrong").text, "flue in a void without hatches");
    EXPECT_EQ(statedIn(document, "Put right").text, "hatches cut, the flue seen to be sound");
    EXPECT_THAT(statedIn(document, "Put right").details[0], HasSubstr("On " + day + ", by " + name));
    EXPECT_THAT(statedIn(document, "What was wrong").details, ::testing::Contains("Gas was escaping."));
    EXPECT_FALSE(shows(document, "DO NOT USE"));
    EXPECT_FALSE(shows(document, "Do not use it"));
    EXPECT_FALSE(shows(document, "may commit an offence"));
}

TEST_F(WarningNoticeDocument, StillForbidsWhatIsOnlyMadeSafeBesideWhatWasPutRight) {
    enter(file, on, Item::SituationMadeSafe, "put_right");
    file.situations[0].danger = reg::Danger::ImmediatelyDangerous;
    auto left = file.situations[0];
    left.id = reg::SituationId{hearth::testing::sampleBytes(72)};
    left.danger = reg::Danger::AtRisk;
    left.what = "vent blocked";
    file.situations.push_back(left);
    enter(file, reg::subject(left.id), Item::SituationMadeSafe, "turned_off");
    const auto document = made();
    EXPECT_EQ(std::get<record::Alert>(document.blocks[0]).word, "DANGER – DO NOT USE");
    // of what is left, not of what is right again
    EXPECT_EQ(std::get<record::Alert>(document.blocks[0]).grade, "At Risk");
    EXPECT_TRUE(shows(document, "Do not use it"));
    EXPECT_EQ(statedIn(document, "What was wrong").text, "flue in a void without hatches");
    EXPECT_EQ(statedIn(document, "What is wrong").text, "vent blocked");
}

TEST_F(WarningNoticeDocument, IsSignedForOrSaysWhereTheCopyLies) {
    enter(file, on, Item::SituationReceipt, "signed");
    enter(file, on, Item::SituationReceivedBy, "E. Tenant");
    const auto receipt = [&] { return blocksOf<record::Signatures>(made())[0].signatures[1]; };
    EXPECT_EQ(receipt().name, "E. Tenant");
    EXPECT_EQ(statedIn(made(), "This notice").text, "signed for");
    takeOut(file, on, Item::SituationReceivedBy);
    enter(file, on, Item::SituationReceipt, "copy_left");
    enter(file, on, Item::SituationCopyLeft, "on the table");
    EXPECT_EQ(receipt().name, "—");
    EXPECT_EQ(receipt().detail, "not present, copy left: on the table");
    EXPECT_EQ(statedIn(made(), "This notice").text, "nobody signed for it, a copy was left");
    EXPECT_THAT(statedIn(made(), "This notice").details, ElementsAre("Copy left: on the table"));
}

struct LetterDocument : ::testing::Test {
    reg::VisitFile file = visitOfKind(RecordKind::ReminderLetter);

    void SetUp() override { file.firm.telephone = "01632 960000"; }
    Result<void> fault(RecordKind kind) const {
        const std::vector<judging::Judged> none;
        const auto volume = pipework::VolumeReport{};
        return letterFault({kind, file, none, volume, file.visit.date}, Words());
    }
    static record::LetterHead headOf(const record::Document& document) {
        return std::get<record::LetterHead>(document.blocks.front());
    }
};

TEST_F(LetterDocument, IsALetterAndNoRecord) {
    const auto document = documentOfKind(RecordKind::ReminderLetter, file);
    EXPECT_THAT(headOf(document).recipient,
                ElementsAre("C. Lettingham", "3 Larch End", "Nowhere Cross QX1 1AC"));
    EXPECT_EQ(headOf(document).sender.front(), file.firm.name);
    EXPECT_THAT(headOf(document).subject, HasSubstr(file.premises.address.line1));
    EXPECT_TRUE(blocksOf<record::FieldGrid>(document).empty());
    EXPECT_TRUE(blocksOf<record::Headline>(document).empty());
    EXPECT_EQ(document.subtitle, "");
    EXPECT_EQ(blocksOf<record::Signatures>(document)[0].signatures.size(), 1U);
}

TEST_F(LetterDocument, IsFilledAndSaysWhatIsNotKnown) {
    for (const auto kind :
         {RecordKind::ReminderLetter, RecordKind::NoAccessLetter, RecordKind::CoveringLetter}) {
        EXPECT_TRUE(fault(kind).has_value());
        const auto document = documentOfKind(kind, file);
        EXPECT_TRUE(shows(document, "ring us on 01632\u00a0960000"));
        EXPECT_FALSE(shows(document, "{"));
    }
    file.firm.coverText = "From {email}, {worked}";
    file.firm.email.clear();
    EXPECT_EQ(fault(RecordKind::CoveringLetter).error(), (Error{ErrorCode::LetterLacks, {"email"}}));
    EXPECT_FALSE(shows(documentOfKind(RecordKind::CoveringLetter, file), "{email}"));
    file.firm.email = "office@pike.example";
    EXPECT_TRUE(shows(documentOfKind(RecordKind::CoveringLetter, file), "From office@pike.example, "));
    EXPECT_TRUE(fault(RecordKind::TightnessAndPurge).has_value());
}

TEST_F(LetterDocument, NamesTheDayWhenTheCheckIsDueOnceItIsKnown) {
    file.firm.reminderText = "Dear {customer}, by {due}";
    EXPECT_EQ(fault(RecordKind::ReminderLetter).error(), (Error{ErrorCode::LetterLacks, {"due"}}));
    // A check counted for 4 December 2025 is due again twelve months later.
    enter(file, reg::subject(file.appliances[0].id), Item::LastCheckCounted, "2025-12-04");
    EXPECT_TRUE(shows(documentOfKind(RecordKind::ReminderLetter, file),
                      "Dear C. Lettingham, by 4\u00a0December\u00a02026"));
}

TEST_F(LetterDocument, SpeaksInTheFirmsWords) {
    EXPECT_TRUE(shows(documentOfKind(RecordKind::ReminderLetter, file), "2 Thistle Row"));
    file.firm.reminderText = "Time for your check, {customer}, as agreed.";
    EXPECT_TRUE(shows(documentOfKind(RecordKind::ReminderLetter, file),
                      "Time for your check, C. Lettingham, as agreed."));
    EXPECT_FALSE(shows(documentOfKind(RecordKind::NoAccessLetter, file), "as agreed"));
}

}  // namespace
}  // namespace hearth::ui::words

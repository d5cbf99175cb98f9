// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/issue.h"

#include "app/demo.h"
#include "core/record/language.h"
#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"
#include "ui/shell/paper_choice.h"
#include "ui/words/words.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

/// The one road from a visit to its record, on the demonstration firm.
namespace {

using namespace hearth;
using namespace hearth::app;
using ::testing::HasSubstr;
using ::testing::Not;

class IssueTest : public ::testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(makeDemonstration(m_path, Records::None));
        m_store = std::move(store::Store::open(m_path, store::Access::Write, m_clock).value());
        const auto visits = m_store->visits("").value();
        for (const auto& line : visits) {
            const bool isReady = judgeVisit(*m_store, line.visit.id)->missing.empty();
            (isReady ? m_ready : m_draft) = line.visit.id;
        }
        ASSERT_FALSE(m_ready.isNull());
        ASSERT_FALSE(m_draft.isNull());
    }

    hearth::testing::TempDir m_folder;
    std::filesystem::path m_path = m_folder / "demonstration.hearth";
    FixedClock m_clock = hearth::testing::fixedClock("2026-11-26");
    std::unique_ptr<store::Store> m_store;
    reg::VisitId m_ready;
    reg::VisitId m_draft;
};

TEST_F(IssueTest, ARecordFreezesWhatWasJudged) {
    const auto judged = judgeVisit(*m_store, m_ready).value();
    const auto id = issueRecord(*m_store, m_clock, m_ready, std::nullopt, {});
    ASSERT_TRUE(id);
    const auto record = m_store->record(*id).value();
    EXPECT_EQ(record.line.outcome, judged.outcome);
    EXPECT_EQ(record.line.visit, m_ready);
    EXPECT_EQ(record.document.number, record.line.header.record);
    EXPECT_THAT(record.document.issued, HasSubstr("26 November 2026"));
    EXPECT_THAT(record.document.banner, Not(::testing::IsEmpty())) << "a demonstration says so";
    EXPECT_EQ(record.pdf.substr(0, 5), "%PDF-");
    EXPECT_TRUE(m_store->verify());
}

TEST_F(IssueTest, ARecordStaysOnThePaperThatItWasIssuedOn) {
    const auto widthOf = [](const std::string& pdf) {
        const auto at = pdf.find("/MediaBox [");
        return at == std::string::npos ? std::string() : pdf.substr(at, 30);
    };
    const auto before = issueRecord(*m_store, m_clock, m_ready, std::nullopt, {}).value();
    ASSERT_TRUE(ui::shell::keepPaper(*m_store, record::Paper::Letter));
    const auto letter = issueRecord(*m_store, m_clock, m_ready, std::nullopt, {}).value();
    ASSERT_TRUE(ui::shell::keepPaper(*m_store, record::Paper::A4));
    EXPECT_EQ(m_store->record(before)->document.paper, record::Paper::A4);
    EXPECT_EQ(m_store->record(letter)->document.paper, record::Paper::Letter);
    EXPECT_THAT(widthOf(m_store->record(before)->pdf), HasSubstr("0 0 595"));
    EXPECT_THAT(widthOf(m_store->record(letter)->pdf), HasSubstr("0 0 612"));
    EXPECT_TRUE(m_store->verify());
}

TEST_F(IssueTest, WhatIsMissingIsNamedAndNothingIsIssued) {
    const auto refused = issueRecord(*m_store, m_clock, m_draft, std::nullopt, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(codeText(refused.error().code), codeText(ErrorCode::RecordIncomplete));
    EXPECT_EQ(refused.error().details.size(), judgeVisit(*m_store, m_draft)->missing.size());
    EXPECT_TRUE(m_store->records("").value().empty());
}

TEST_F(IssueTest, ARevisionSaysWhatItReplacesAndWhy) {
    const auto first = issueRecord(*m_store, m_clock, m_ready, std::nullopt, {}).value();
    const auto second = issueRecord(*m_store, m_clock, m_ready, first, QStringLiteral("wrong meter serial"));
    ASSERT_TRUE(second);
    const auto record = m_store->record(*second).value();
    EXPECT_EQ(record.line.header.revision, 2);
    EXPECT_EQ(record.document.supersedes,
              "Replaces revision 1 of " + record.line.header.record + ": wrong meter serial");
    EXPECT_EQ(m_store->record(first)->line.supersededBy, *second);
    const auto again = issueRecord(*m_store, m_clock, m_ready, first, QStringLiteral("once more"));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::RecordSuperseded);
}

TEST_F(IssueTest, AnUnknownVisitIsAnError) {
    const auto refused = issueRecord(*m_store, m_clock, reg::VisitId{m_store->newId()}, std::nullopt, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NotFound);
}

TEST_F(IssueTest, TheWindowsRoadIsTheSame) {
    const auto issue = issueThrough(*m_store, m_clock);
    const auto id = issue(m_ready, std::nullopt, {});
    ASSERT_TRUE(id);
    EXPECT_EQ(m_store->recordsOf(m_ready)->size(), 1U);
}

/// The demonstration's visit that marks a record of the kind, with everything that it needs.
reg::VisitId visitFor(const store::Store& store, record::RecordKind kind) {
    const auto visits = store.visits("").value();
    for (const auto& line : visits) {
        const auto file = store.visitFile(line.visit.id).value();
        const auto kinds = record::kindsOf(file);
        if (std::find(kinds.begin(), kinds.end(), kind) != kinds.end() &&
            judgeVisit(store, line.visit.id, kind)->missing.empty()) {
            return line.visit.id;
        }
    }
    return {};
}

TEST_F(IssueTest, EachKindOfTheDemonstrationIsIssuedAsItself) {
    using record::RecordKind;
    for (const auto kind :
         {RecordKind::LandlordSafety, RecordKind::OwnerSafety, RecordKind::Commissioning, RecordKind::Service,
          RecordKind::WarningNotice, RecordKind::RoomInvestigation, RecordKind::ReportableEntry,
          RecordKind::BuildingNotice, RecordKind::LargerPipework}) {
        const auto visit = visitFor(*m_store, kind);
        ASSERT_FALSE(visit.isNull()) << record::kindCode(kind);
        const auto id = issueRecord(*m_store, m_clock, kind, visit, std::nullopt, {});
        ASSERT_TRUE(id) << record::kindCode(kind);
        const auto record = m_store->record(*id).value();
        EXPECT_EQ(record.line.header.kind, record::kindCode(kind));
        EXPECT_EQ(record.document.kind, record::kindCode(kind));
        EXPECT_LT(record.pdf.size(), 150U * 1024) << "a normal record stays small";
        const auto revised = issueRecord(*m_store, m_clock, visit, *id, QStringLiteral("serial corrected"));
        ASSERT_TRUE(revised);
        EXPECT_EQ(m_store->record(*revised)->line.header.kind, record::kindCode(kind));
    }
    EXPECT_TRUE(m_store->verify());
}

TEST_F(IssueTest, ALetterIsIssuedAsALetterAndNoneWithAHole) {
    using record::RecordKind;
    const auto visit = visitFor(*m_store, RecordKind::OwnerSafety);
    const auto letter = issueRecord(*m_store, m_clock, RecordKind::CoveringLetter, visit, std::nullopt, {});
    ASSERT_TRUE(letter);
    const auto document = m_store->record(*letter)->document;
    ASSERT_TRUE(std::holds_alternative<record::LetterHead>(document.blocks.at(0)));
    auto firm = m_store->firm().value();
    firm.coverText = "Ring {email}";
    firm.email.clear();
    ASSERT_TRUE(m_store->saveFirm(firm));
    const auto refused = issueRecord(*m_store, m_clock, RecordKind::CoveringLetter, visit, std::nullopt, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::LetterLacks);
    EXPECT_EQ(refused.error().details, std::vector<std::string>{"email"});
}

TEST_F(IssueTest, ALandlordsRecordWithoutADeclarationIsRefusedByName) {
    const auto visit = visitFor(*m_store, record::RecordKind::LandlordSafety);
    const auto file = m_store->visitFile(visit).value();
    reg::Entry entry = *file.find(reg::subject(file.appliances[0].id), reg::Item::SafeToUse);
    entry.text.clear();
    ASSERT_TRUE(m_store->saveEntry(entry));
    const auto refused =
        issueRecord(*m_store, m_clock, record::RecordKind::LandlordSafety, visit, std::nullopt, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::RecordIncomplete);
    EXPECT_EQ(refused.error().details, std::vector<std::string>{"appliance.safe_to_use"});
}

/// Makes the customer of a visit prefer a language.
void prefer(store::Store& store, reg::VisitId visit, const std::string& language) {
    auto file = store.visitFile(visit).value();
    for (auto& holder : file.people) {
        holder.party.language = language;
        ASSERT_TRUE(store.save(holder.party));
    }
}

TEST_F(IssueTest, TheLanguageIsTheCustomersAndARevisionKeepsIt) {
    prefer(*m_store, m_ready, "en+cy");
    const auto first = issueRecord(*m_store, m_clock, m_ready, std::nullopt, {}).value();
    const auto record = m_store->record(first).value();
    EXPECT_EQ(record.document.language, "en+cy");
    EXPECT_THAT(record.document.title, HasSubstr("\x1F"));
    prefer(*m_store, m_ready, "pl");
    const auto second =
        issueRecord(*m_store, m_clock, m_ready, first, QStringLiteral("wrong serial")).value();
    const auto revised = m_store->record(second).value();
    EXPECT_EQ(revised.document.language, "en+cy");
    EXPECT_THAT(revised.document.supersedes, HasSubstr("Replaces revision 1"));
    EXPECT_THAT(revised.document.supersedes, HasSubstr("Yn disodli diwygiad 1"));
}

TEST_F(IssueTest, AnotherLanguageCanBeAskedFor) {
    prefer(*m_store, m_ready, "cy");
    const auto id = issueRecord(*m_store, m_clock, m_ready, std::nullopt, {}, QStringLiteral("pl")).value();
    EXPECT_EQ(m_store->record(id)->document.language, "pl");
    EXPECT_THAT(m_store->record(id)->document.issued, HasSubstr("26 listopada 2026"));
}

// ISO 19005-1 level B, as Apache PDFBox Preflight reads it: of a folder in one run.
TEST_F(IssueTest, EveryKindIsIssuedInEveryLanguageAsValidPdfA) {
    std::filesystem::create_directories(m_folder / "pdf");
    int issued = 0;
    for (const auto kind : record::allKinds()) {
        auto visit = visitFor(*m_store, kind);
        visit = visit.isNull() ? m_ready : visit;  // a letter or a log is of any visit
        for (const auto language : record::recordLanguages()) {
            const auto id = issueRecord(*m_store, m_clock, kind, visit, std::nullopt, {},
                                        ui::words::qstring(std::string(language)));
            ASSERT_TRUE(id) << record::kindCode(kind) << ' ' << language << ' ' << codeText(id.error().code);
            const auto record = m_store->record(*id).value();
            EXPECT_EQ(record.document.language, language);
            EXPECT_LT(record.pdf.size(), 200U * 1024);
            hearth::testing::writeFile(m_folder / ("pdf/" + std::to_string(++issued) + ".pdf"), record.pdf);
        }
    }
    std::string jars;
    for (const char* jar : {"preflight", "xmpbox", "pdfbox2", "fontbox2", "commons-logging", "commons-io",
                            "javax.activation", "jaxb-api"}) {
        jars += "/usr/share/java/" + std::string(jar) + ".jar:";
    }
    const auto said =
        hearth::testing::runCommand("java -cp " + jars + " org.apache.pdfbox.preflight.Validator_A1b group " +
                                    (m_folder / "pdf").string() + " 2>&1");
    int valid = 0;
    const std::string good = "is a valid PDF/A-1b file";
    for (auto at = said.text.find(good); at != std::string::npos; at = said.text.find(good, at + 1)) {
        ++valid;
    }
    EXPECT_EQ(valid, issued) << said.text.substr(0, 3000);
    EXPECT_EQ(issued, 14 * 5);
    EXPECT_TRUE(m_store->verify());
}

}  // namespace

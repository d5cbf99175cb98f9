// SPDX-License-Identifier: GPL-3.0-or-later
// No published form: what inspectors look for is HSE's (see the page named in the document).
#include "ui/words/evidence_words.h"

#include "tests/ui/words/languages.h"

#include <set>

namespace hearth::ui::words {
namespace {

using calendar::NextStep;

calendar::Date evidenceDay(const char* iso) {
    return *calendar::fromIso(iso);
}

Evidence sampleEvidence() {
    Evidence evidence;
    evidence.firm.name = "Ember & Daughter";
    evidence.today = evidenceDay("2026-11-25");
    evidence.address = {"7 Weir Bank", "", "Ashby", "QA9 9ZZ"};
    evidence.state = calendar::DueState::Overdue;
    evidence.isLandlordsDuty = true;
    evidence.step = NextStep::TryAgainAndRecord;
    return evidence;
}

const record::Table& timeTable(const record::Document& page) {
    return std::get<record::Table>(page.blocks[2]);
}

TEST(EvidenceWords, EverythingThatHappensIsSaidInEveryLanguage) {
    auto evidence = sampleEvidence();
    for (int i = 0; i <= static_cast<int>(Happened::Deadline); ++i) {
        EvidenceEvent one;
        one.what = static_cast<Happened>(i);
        one.number = "R-1";
        one.date = evidenceDay("2026-11-03");
        evidence.events.push_back(one);
    }
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        std::set<std::string> seen;
        const auto page = evidenceDocument(words, evidence);
        for (const auto& row : timeTable(page).rows) {
            const QString what = QString::fromStdString(row[3]);
            EXPECT_TRUE(hearth::testing::isTranslated(what, words)) << what;
            EXPECT_TRUE(hearth::testing::isFilled(what)) << what;
            seen.insert(row[3]);
        }
        EXPECT_EQ(seen.size(), evidence.events.size()) << "each in words of its own";
    }
}

TEST(EvidenceWords, EveryStepAndWayIsSaid) {
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        auto evidence = sampleEvidence();
        for (int i = 0; i <= static_cast<int>(NextStep::Attend); ++i) {
            evidence.step = static_cast<NextStep>(i);
            const auto page = evidenceDocument(words, evidence);
            const auto& said = std::get<record::Statements>(page.blocks[1]).statements.back();
            EXPECT_TRUE(hearth::testing::isTranslated(QString::fromStdString(said.text), words)) << said.text;
        }
        for (int i = 0; i <= static_cast<int>(reg::Channel::Other); ++i) {
            EvidenceEvent one;
            one.what = Happened::LetterSent;
            one.channel = static_cast<reg::Channel>(i);
            one.by = "Orla Quill";
            evidence.events = {one};
            const auto page = evidenceDocument(words, evidence);
            EXPECT_NE(timeTable(page).rows[0][4].find("Orla Quill"), std::string::npos);
            EXPECT_TRUE(
                hearth::testing::isTranslated(QString::fromStdString(timeTable(page).rows[0][4]), words));
        }
    }
}

TEST(EvidenceWords, ThreeAttemptsAreNoSafeHarbourAndTheNextStepStays) {
    const Words english;
    const auto page = evidenceDocument(english, sampleEvidence());
    const auto& statements = std::get<record::Statements>(page.blocks[1]).statements;
    ASSERT_EQ(statements.size(), 2U);
    EXPECT_NE(statements[0].text.find("no safe harbour"), std::string::npos) << statements[0].text;
    EXPECT_EQ(statements[1].text, "Try again and tell the landlord");
    auto own = sampleEvidence();
    own.isLandlordsDuty = false;
    EXPECT_EQ(std::get<record::Statements>(evidenceDocument(english, own).blocks[1]).statements.size(), 1U)
        << "regulation 36 alone asks for reasonable steps";
}

TEST(EvidenceWords, WhatIsToComeAndWhatCameOfItIsSaid) {
    auto evidence = sampleEvidence();
    EvidenceEvent call;
    call.what = Happened::Called;
    call.date = evidenceDay("2026-11-13");
    call.time = "11:30";
    call.channel = reg::Channel::Telephone;
    call.by = "01632 960111";
    call.result = "will ring back";
    call.text = "Asked for a Saturday.";
    EvidenceEvent deadline;
    deadline.what = Happened::Deadline;
    deadline.date = evidenceDay("2026-12-01");
    deadline.latest = evidenceDay("2026-12-05");
    evidence.events = {call, deadline};
    const auto page = evidenceDocument(Words(), evidence);
    const auto& rows = timeTable(page).rows;
    EXPECT_EQ(rows[0],
              (std::vector<std::string>{
                  "1", "13 Nov 2026", "11:30", "Telephone call",
                  "by telephone, to 01632 960111; came of it: will ring back; word for word below"}));
    EXPECT_EQ(rows[1][3], "Deadline of the next check (to come)");
    EXPECT_EQ(rows[1][4], "look again: perhaps only by 5 Dec 2026");
    const auto& words = std::get<record::Paragraph>(page.blocks[3]);
    EXPECT_EQ(words.title, "No. 1, word for word: Telephone call, 13 Nov 2026 at 11:30");
    EXPECT_EQ(words.text, "Asked for a Saturday.");
}

}  // namespace
}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_state.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using judging::Judged;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;

class PartStateTest : public ::testing::Test {
  protected:
    PartStateTest() {
        m_file.visit.id = {makeUuid7(1)};
        m_file.tests.push_back({{makeUuid7(2)}, m_file.visit.id, 0, {}});
    }
    [[nodiscard]] reg::SubjectRef test() const { return reg::subject(m_file.tests.front().id); }
    [[nodiscard]] PartState state(PartKind kind) const {
        return stateOf({kind}, {m_file, m_findings, m_missing, m_issued, m_running});
    }
    void find(FindingKind kind, Outcome outcome) {
        rulebook::Finding finding{kind};
        finding.outcome = outcome;
        m_findings.push_back({finding, test(), {Item::LetByEnd}});
    }
    void enter(Item item) {
        reg::Entry entry;
        entry.subject = test();
        entry.item = item;
        entry.text = "x";
        m_file.entries.push_back(entry);
    }

    reg::VisitFile m_file;
    std::vector<Judged> m_findings;
    std::vector<record::Missing> m_missing;
    int m_issued = 0;
    std::optional<std::size_t> m_running;
};

TEST_F(PartStateTest, NothingIsDoneByDefault) {
    for (const auto kind : {PartKind::BeforeYouStart, PartKind::Pipework, PartKind::Tightness,
                            PartKind::Restore, PartKind::HandOver}) {
        EXPECT_EQ(state(kind).word, PartWord::NotStarted);
        EXPECT_EQ(shapeOf(state(kind).word), Outcome::NoVerdict);
    }
}

TEST_F(PartStateTest, AFailureComesBeforeEverything) {
    enter(Item::LetByEnd);
    find(FindingKind::LetBy, Outcome::Pass);
    find(FindingKind::GaugeCalibration, Outcome::LookAgain);
    EXPECT_EQ(state(PartKind::Tightness), (PartState{PartWord::LookAgain, 1}));
    find(FindingKind::Tightness, Outcome::Fail);
    EXPECT_EQ(state(PartKind::Tightness), (PartState{PartWord::Fails, 1}));
    EXPECT_EQ(state(PartKind::Restore).word, PartWord::NotStarted);
}

TEST_F(PartStateTest, WhatIsMissingIsCountedWhereItStands) {
    enter(Item::LetByEnd);
    m_missing.push_back({Item::LetByStart, std::nullopt, test(), {}});
    m_missing.push_back({Item::PurgeDone, std::nullopt, test(), {}});
    EXPECT_EQ(state(PartKind::Tightness), (PartState{PartWord::ToFill, 1}));
    EXPECT_EQ(state(PartKind::Records), (PartState{PartWord::ToFill, 2}));
}

TEST_F(PartStateTest, AnOpenVerdictIsNotDone) {
    enter(Item::LetByEnd);
    find(FindingKind::LetBy, Outcome::NoVerdict);
    EXPECT_EQ(state(PartKind::Tightness), (PartState{PartWord::NoVerdict, 1}));
    m_findings.clear();
    EXPECT_EQ(state(PartKind::Tightness).word, PartWord::Done);
}

TEST_F(PartStateTest, WhatIsFilledInAndNotInOrderHasNoTick) {
    m_file.appliances.emplace_back().id.bytes[15] = 40;
    const auto on = reg::subject(m_file.appliances.front().id);
    const auto answer = [&](Item item, std::string_view code) {
        reg::Entry entry;
        entry.subject = on;
        entry.item = item;
        entry.text = entry.canonical = std::string(code);
        m_file.entries.push_back(entry);
    };
    answer(Item::DefectsFound, reg::choice::kNoneFound);
    EXPECT_EQ(state(PartKind::Appliance).word, PartWord::Done);
    m_file.entries.pop_back();
    answer(Item::DefectsFound, reg::choice::kFound);
    EXPECT_EQ(state(PartKind::Appliance).word, PartWord::Defects);
    m_file.entries.pop_back();
    answer(Item::SafeToUse, reg::choice::kNo);
    EXPECT_EQ(state(PartKind::Appliance).word, PartWord::Defects);
    EXPECT_EQ(shapeOf(PartWord::Defects), Outcome::Fail);
    m_file.situations.emplace_back();
    EXPECT_EQ(state(PartKind::Situation).word, PartWord::StillOpen);
    EXPECT_EQ(shapeOf(PartWord::StillOpen), Outcome::LookAgain);
    m_file.situations.front().closedAt = Instant{};
    EXPECT_EQ(state(PartKind::Situation).word, PartWord::Done);
}

TEST_F(PartStateTest, TheClockAndTheRecordsAreSaid) {
    m_running = 0;
    EXPECT_EQ(state(PartKind::Tightness).word, PartWord::Running);
    EXPECT_EQ(state(PartKind::Records).word, PartWord::ReadyToIssue);
    m_issued = 2;
    EXPECT_EQ(state(PartKind::Records), (PartState{PartWord::Issued, 2}));
}

TEST(Parts, EveryItemFieldAndFindingHasItsPart) {
    EXPECT_EQ(partOf(Item::VisitReference), PartKind::WhoAndWhere);
    EXPECT_EQ(partOf(Item::SmellOnArrival), PartKind::BeforeYouStart);
    EXPECT_EQ(partOf(Item::VisualNotes), PartKind::BeforeYouStart);
    EXPECT_EQ(partOf(Item::TestVolumeTyped), PartKind::Pipework);
    EXPECT_EQ(partOf(Item::TestEdition), PartKind::Tightness);
    EXPECT_EQ(partOf(Item::RetestEndedAt), PartKind::Tightness);
    EXPECT_EQ(partOf(Item::PurgeDone), PartKind::Restore);
    EXPECT_EQ(partOf(Item::WorkingLoad), PartKind::Restore);
    EXPECT_EQ(partOf(Item::ReceivedBy), PartKind::HandOver);
    EXPECT_EQ(partOf(record::Field::PipeOrVolume), PartKind::Pipework);
    EXPECT_EQ(partOf(record::Field::CustomerName), PartKind::WhoAndWhere);
    EXPECT_EQ(partOf(FindingKind::Scope), PartKind::Pipework);
    EXPECT_EQ(partOf(FindingKind::Tightness), PartKind::Tightness);
}

TEST(Parts, SeveralTestsHaveTheirPartsEach) {
    reg::VisitFile file;
    file.tests = {{{makeUuid7(1)}, {}, 0, "before"}, {{makeUuid7(2)}, {}, 1, "after"}};
    const auto parts = partsOf(file);
    EXPECT_EQ(
        std::count_if(parts.begin(), parts.end(), [](auto& p) { return p.kind == PartKind::Tightness; }), 2);
    EXPECT_EQ(partAt(PartKind::Restore, reg::subject(file.tests[1].id), file),
              (PartRef{PartKind::Restore, 1}));
}

}  // namespace
}  // namespace hearth::ui::visit

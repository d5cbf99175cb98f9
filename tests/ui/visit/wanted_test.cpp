// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/wanted.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using judging::Judged;
using reg::Item;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

class WantedTest : public ::testing::Test {
  protected:
    WantedTest() {
        m_file.visit.id = {makeUuid7(1)};
        m_file.visit.date = {std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)};
        m_file.tests.push_back({{makeUuid7(2)}, m_file.visit.id, 0, {}});
    }
    [[nodiscard]] reg::SubjectRef test() const { return reg::subject(m_file.tests.front().id); }
    [[nodiscard]] reg::SubjectRef visit() const { return reg::subject(m_file.visit.id); }
    void enter(const reg::SubjectRef& subject, Item item, const std::string& text) {
        reg::Entry entry;
        entry.subject = subject;
        entry.item = item;
        entry.text = text;
        entry.canonical = reg::canonicalOf(item, text).value_or("");
        m_file.entries.push_back(entry);
    }
    [[nodiscard]] Judged judged(FindingKind kind, Outcome outcome, Say why, std::vector<Item> about) const {
        Finding finding{kind};
        finding.outcome = outcome;
        finding.why = {why};
        return {finding, test(), std::move(about)};
    }
    [[nodiscard]] bool wanted(Item item, const std::vector<Judged>& findings = {}) const {
        const auto& subject = reg::infoOf(item).subject == reg::SubjectKind::Test ? test() : visit();
        return isWanted(item, subject, m_file, findings);
    }

    reg::VisitFile m_file;
};

TEST_F(WantedTest, TheEditionIsAskedForOnlyWhileBothAreAllowed) {
    EXPECT_FALSE(wanted(Item::TestEdition));
    m_file.visit.date = {std::chrono::year(2026), std::chrono::month(9), std::chrono::day(30)};
    EXPECT_TRUE(wanted(Item::TestEdition));
}

TEST_F(WantedTest, AnEditionThatIsNotAllowedIsSeen) {
    enter(test(), Item::TestEdition, "ed4");
    EXPECT_FALSE(wanted(Item::TestEdition));
    m_file.entries.front().text = m_file.entries.front().canonical = "ed3";
    EXPECT_TRUE(wanted(Item::TestEdition));
}

TEST_F(WantedTest, FieldsThatFollowFromAnAnswer) {
    EXPECT_FALSE(wanted(Item::TestPartDescription));
    enter(test(), Item::TestExtent, "part");
    EXPECT_TRUE(wanted(Item::TestPartDescription));
    EXPECT_FALSE(wanted(Item::VisualNotes));
    enter(visit(), Item::VisualInspection, "defects");
    EXPECT_TRUE(wanted(Item::VisualNotes));
    EXPECT_FALSE(wanted(Item::PurgeMethod));
    enter(test(), Item::PurgeDone, "yes");
    EXPECT_TRUE(wanted(Item::PurgeMethod));
    EXPECT_TRUE(wanted(Item::PurgeSteadyFlame));
}

TEST_F(WantedTest, TheReasonForALowPressureOnlyWhereItIsLow) {
    EXPECT_FALSE(wanted(Item::LowPressureReason));
    EXPECT_TRUE(
        wanted(Item::LowPressureReason, {judged(FindingKind::TestPressure, Outcome::NoVerdict,
                                                Say::TestPressureLowUnexplained, {Item::TightStart})}));
}

TEST_F(WantedTest, TheRepeatOnlyWhereTheGaugeMoved) {
    EXPECT_FALSE(wanted(Item::RetestStart));
    EXPECT_TRUE(wanted(Item::RetestStart,
                       {judged(FindingKind::Tightness, Outcome::NoVerdict, Say::RetestNeeded, {})}));
}

TEST_F(WantedTest, WhatHoldsSomethingIsAlwaysShown) {
    for (const reg::ItemInfo& info : reg::sheetItems()) {
        if (info.item == Item::TestEdition) {
            continue;  // the only one allowed is not shown: see above
        }
        m_file.entries.clear();
        enter(info.subject == reg::SubjectKind::Test ? test() : visit(), info.item, "anything");
        EXPECT_TRUE(wanted(info.item)) << info.code;
    }
}

TEST_F(WantedTest, AFindingThatOnlyMissesWhatNobodyBeganIsNotShown) {
    const auto open =
        judged(FindingKind::LetBy, Outcome::NoVerdict, Say::ReadingMissing,
               {Item::LetByEnd, Item::LetByStart, Item::LetByStartedAt, Item::LetByEndedAt, Item::TestGauge});
    EXPECT_FALSE(isWorthShowing(open, m_file));
    enter(test(), Item::TestGauge, "x");
    EXPECT_FALSE(isWorthShowing(open, m_file));
    enter(test(), Item::LetByStart, "9");
    EXPECT_TRUE(isWorthShowing(open, m_file));
}

TEST_F(WantedTest, AVerdictIsAlwaysShown) {
    for (const auto outcome : {Outcome::Pass, Outcome::Fail, Outcome::LookAgain}) {
        EXPECT_TRUE(isWorthShowing(judged(FindingKind::LetBy, outcome, Say::LetByNone, {}), m_file));
    }
}

}  // namespace
}  // namespace hearth::ui::visit

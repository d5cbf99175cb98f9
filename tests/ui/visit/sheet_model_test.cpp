// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet_model.h"

#include "tests/ui/support/firm_bench.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using testing::need;

class SheetModelTest : public ::testing::Test {
  protected:
    explicit SheetModelTest(const std::string& day = "2026-11-25") : m_firm(day) {
        m_premises = m_firm.addPremises("14 Kiln Lane");
        m_visit = m_firm.startVisit(m_premises);
        m_model = std::make_unique<VisitSheetModel>(*m_firm.store);
        need(m_model->open(m_visit));
    }
    [[nodiscard]] reg::SubjectRef test() const { return reg::subject(m_model->file().tests.front().id); }
    [[nodiscard]] reg::SubjectRef visit() const { return reg::subject(m_visit); }
    /// What another reader finds in the store.
    [[nodiscard]] reg::VisitFile stored() const { return need(m_firm.store->visitFile(m_visit)); }

    testing::FirmBench m_firm;
    reg::PremisesId m_premises;
    reg::VisitId m_visit;
    std::unique_ptr<VisitSheetModel> m_model;
};

/// A heating system's pressure gauge reads bar: common practice, no source.
TEST_F(SheetModelTest, AFigureHasTheUnitThatItIsReadInUntilAnotherIsSaid) {
    EXPECT_EQ(m_model->unitOf(visit(), Item::WaterPressure), quantity::UnitCode::Bar);
    EXPECT_EQ(m_model->unitOf(test(), Item::TightStart), quantity::UnitCode::Millibar);
    need(m_model->enter(test(), Item::TightStart, QStringLiteral("2"), quantity::UnitCode::Bar));
    EXPECT_EQ(m_model->unitOf(test(), Item::TightStart), quantity::UnitCode::Bar);
}

TEST_F(SheetModelTest, WhatIsEnteredIsInTheStoreAndJudgedWhenTheCallReturns) {
    QSignalSpy judged(m_model.get(), &VisitSheetModel::judged);
    need(m_model->enter(visit(), Item::SmellOnArrival, QStringLiteral("yes")));
    ASSERT_NE(stored().find(visit(), Item::SmellOnArrival), nullptr);
    EXPECT_EQ(judged.count(), 1);
    const auto& findings = m_model->findings();
    const auto smell = std::find_if(findings.begin(), findings.end(), [](const auto& one) {
        return one.finding.kind == FindingKind::SmellOnArrival;
    });
    ASSERT_NE(smell, findings.end());
    EXPECT_EQ(smell->finding.outcome, Outcome::Fail);
}

TEST_F(SheetModelTest, WhatIsHeldIsWhatTheStoreWouldRead) {
    need(m_model->enter(test(), Item::LetByStart, QStringLiteral("9,02"), quantity::UnitCode::Millibar));
    need(m_model->enter(test(), Item::LetByEnd, QStringLiteral("nine"), quantity::UnitCode::Millibar));
    need(m_model->enter(test(), Item::LetByStartedAt, QStringLiteral("09:41")));
    const auto file = stored();
    for (const Item item : {Item::LetByStart, Item::LetByEnd, Item::LetByStartedAt, Item::TestEdition}) {
        const auto* held = m_model->file().find(test(), item);
        const auto* kept = file.find(test(), item);
        ASSERT_NE(held, nullptr);
        ASSERT_NE(kept, nullptr);
        EXPECT_EQ(held->text, kept->text);
        EXPECT_EQ(held->canonical, kept->canonical);
        EXPECT_EQ(held->unit, kept->unit);
    }
    EXPECT_EQ(judging::judge(file, m_model->book()), m_model->findings());
}

TEST_F(SheetModelTest, AnEmptiedEntryIsGone) {
    need(m_model->enter(visit(), Item::VisitReference, QStringLiteral("PO 12")));
    need(m_model->enter(visit(), Item::VisitReference, {}));
    EXPECT_EQ(m_model->file().find(visit(), Item::VisitReference), nullptr);
    EXPECT_EQ(stored().find(visit(), Item::VisitReference), nullptr);
}

TEST_F(SheetModelTest, TheOnlyEditionAllowedIsKeptWithTheFirstEntryOfATest) {
    need(m_model->enter(test(), Item::TestWork, QStringLiteral("existing")));
    const auto file = stored();
    EXPECT_EQ(file.choiceOf(test(), Item::TestEdition), reg::choice::kEd4);
}

TEST_F(SheetModelTest, WhatTheStoreRefusesChangesNothing) {
    const auto before = m_model->file().entries.size();
    QSignalSpy judged(m_model.get(), &VisitSheetModel::judged);
    const auto path = m_firm.path();
    m_model.reset();
    m_firm.store.reset();
    auto reader = need(store::Store::open(path, store::Access::Read, m_firm.clock));
    VisitSheetModel model(*reader);
    need(model.open(m_visit));
    EXPECT_TRUE(model.isReadOnly());
    const auto kept = model.enter(reg::subject(m_visit), Item::VisitReference, QStringLiteral("PO 12"));
    ASSERT_FALSE(kept);
    EXPECT_EQ(model.file().entries.size(), before);
}

TEST_F(SheetModelTest, NamingACustomerMakesOneAndThenRenamesIt) {
    ASSERT_EQ(customerOf(m_model->file()), nullptr);
    need(m_model->nameCustomer(QStringLiteral("M. Okafor")));
    ASSERT_NE(customerOf(m_model->file()), nullptr);
    const auto id = customerOf(m_model->file())->id;
    need(m_model->nameCustomer(QStringLiteral("M. Okafor-Reed")));
    EXPECT_EQ(customerOf(m_model->file())->id, id);
    EXPECT_EQ(customerOf(stored())->name, "M. Okafor-Reed");
}

TEST_F(SheetModelTest, AClosedVisitIsReadOnly) {
    reg::Visit closed = m_model->file().visit;
    closed.closed = true;
    need(m_model->save(closed));
    EXPECT_TRUE(m_model->isReadOnly());
}

TEST_F(SheetModelTest, AnotherTestIsReadWithTheFile) {
    need(m_model->addTest(QStringLiteral("after the work")));
    ASSERT_EQ(m_model->file().tests.size(), 2U);
    EXPECT_EQ(m_model->file().tests.back().label, "after the work");
}

class WhileBothEditionsCount : public SheetModelTest {
  protected:
    WhileBothEditionsCount() : SheetModelTest("2026-09-30") {}
};

// Both editions may judge up to 30 September 2026: GB gas register, Industry Standard Update 133 Edition 2.
TEST_F(WhileBothEditionsCount, NoEditionIsChosenForAnybody) {
    need(m_model->enter(test(), Item::TestWork, QStringLiteral("existing")));
    EXPECT_EQ(m_model->file().find(test(), Item::TestEdition), nullptr);
}

}  // namespace
}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/appliances_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/line_list.h"
#include "ui/shell/plot_view.h"

#include <QCompleter>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::premises {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;

class AppliancesPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        premises.id = {bench.store->newId()};
        premises.address.line1 = "14 Tallow Lane";
        need(bench.store->save(premises));
        installation.id = {bench.store->newId()};
        installation.premises = premises.id;
        installation.gas = rulebook::Gas::Propane;
        need(bench.store->save(installation));
        part = std::make_unique<AppliancesPart>(bench.context(), nullptr);
        part->show(premises.id);
        hearth::testing::activate(part.get());
    }
    [[nodiscard]] std::vector<reg::Appliance> kept() const {
        return need(bench.store->appliancesOf(premises.id, store::Removed::Included));
    }
    [[nodiscard]] shell::LineList* list() const {
        return child<shell::LineList>(part.get(), "appliancesList");
    }
    void pressButton(const char* name) { child<QPushButton>(part.get(), name)->click(); }
    void addBoiler() {
        pressButton("addApplianceButton");
        fillField(editor(part.get(), "make"), QStringLiteral("Emberline"));
        fillField(editor(part.get(), "model"), QStringLiteral("24C"));
        fillField(editor(part.get(), "appliancePlace"), QStringLiteral("kitchen"));
        fillField(editor(part.get(), "applianceSerial"), QStringLiteral("EL-00412"));
        fillField(editor(part.get(), "makerRatio"), QStringLiteral("0.0035"));
        fillField(editor(part.get(), "netInput"), QStringLiteral("24.5"));
        fillField(editor(part.get(), "installedOn"), QStringLiteral("3/10/2024"));
    }

    FirmBench bench;
    reg::Premises premises;
    reg::Installation installation;
    std::unique_ptr<AppliancesPart> part;
};

TEST_F(AppliancesPartTest, keepsANewOneWithItsFirstField) {
    pressButton("addApplianceButton");
    EXPECT_TRUE(kept().empty()) << "nothing is kept before something is said";
    fillField(editor(part.get(), "make"), QStringLiteral("Emberline"));
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].make, "Emberline");
    EXPECT_EQ(kept()[0].installation, installation.id);
    EXPECT_EQ(kept()[0].gas, rulebook::Gas::Propane) << "what the installation carries";
    EXPECT_EQ(list()->count(), 1);
    EXPECT_EQ(list()->currentRow(), 0);
}

TEST_F(AppliancesPartTest, keepsNumbersAsTypedAndSaysWhatIsNone) {
    addBoiler();
    EXPECT_EQ(kept()[0].makerRatio.text, "0.0035");
    EXPECT_EQ(kept()[0].netInput, (quantity::Typed{"24.5", quantity::UnitCode::Kilowatt}));
    EXPECT_EQ(kept()[0].installedOn, (calendar::fromIso("2024-10-03")));
    auto* ratio = editor(part.get(), "makerRatio");
    fillField(ratio, QStringLiteral("about four"));
    EXPECT_EQ(kept()[0].makerRatio.text, "about four");
    EXPECT_TRUE(ratio->focusTarget()->accessibleDescription().contains(QStringLiteral("about four")));
}

TEST_F(AppliancesPartTest, makesAnotherLikeItWithoutWhatIsItsOwn) {
    addBoiler();
    pressButton("alikeApplianceButton");
    EXPECT_EQ(kept().size(), 1U);
    fillField(editor(part.get(), "applianceSerial"), QStringLiteral("EL-00413"));
    ASSERT_EQ(kept().size(), 2U);
    EXPECT_EQ(kept()[1].make, "Emberline");
    EXPECT_EQ(kept()[1].model, "24C");
    EXPECT_EQ(kept()[1].makerRatio.text, "0.0035");
    EXPECT_EQ(kept()[1].serial, "EL-00413");
    EXPECT_FALSE(kept()[1].installedOn.has_value());
    EXPECT_EQ(kept()[0].serial, "EL-00412");
}

TEST_F(AppliancesPartTest, goesIntoTheBinAndComesBackExactly) {
    addBoiler();
    const auto before = kept();
    pressButton("binApplianceButton");
    EXPECT_TRUE(kept().empty());
    EXPECT_EQ(list()->count(), 0);
    const auto bin = need(bench.store->bin());
    ASSERT_EQ(bin.size(), 1U);
    need(bench.store->bringBack(bin[0].id));
    EXPECT_EQ(kept(), before);
}

TEST_F(AppliancesPartTest, offersWhatWasUsedBefore) {
    addBoiler();
    pressButton("addApplianceButton");
    auto* make = editor(part.get(), "make");
    make->focusTarget()->setFocus();
    type(QStringLiteral("em"));
    auto* line = qobject_cast<QLineEdit*>(make->focusTarget());
    ASSERT_NE(line, nullptr);
    ASSERT_NE(line->completer(), nullptr);
    ASSERT_EQ(line->completer()->model()->rowCount(), 1);
    EXPECT_EQ(line->completer()->model()->index(0, 0).data().toString(), QStringLiteral("Emberline"));
    EXPECT_EQ(kept().size(), 1U) << "offered, not taken";
}

TEST_F(AppliancesPartTest, isWalkedThroughByTabWithUniqueNames) {
    addBoiler();
    hearth::testing::expectEveryStopOnce(part.get());
    hearth::testing::expectUniqueNames(part.get());
    hearth::testing::expectWheelChangesNothing(part.get());
}

/// Two visits a year apart, opened and put away by one key; with one visit it says that there is nothing yet.
TEST_F(AppliancesPartTest, whatWasReadOverTheYearsIsOpenedByAKey) {
    addBoiler();
    const auto readOn = [&](const char* day, const char* pressure) {
        reg::Visit visit;
        visit.id = {bench.store->newId()};
        visit.premises = premises.id;
        visit.installation = installation.id;
        visit.engineer = bench.engineer.id;
        visit.date = *calendar::fromIso(day);
        need(bench.store->save(visit));
        reg::Entry entry;
        entry.id = {bench.store->newId()};
        entry.visit = visit.id;
        entry.subject = reg::subject(kept()[0].id);
        entry.item = reg::Item::BurnerPressure;
        entry.text = pressure;
        entry.unit = quantity::UnitCode::Millibar;
        entry.canonical = pressure;
        entry.at = bench.clock.now();
        need(bench.store->saveEntry(entry));
    };
    readOn("2025-11-20", "10.8");
    list()->setFocus();
    auto* told = child<QLabel>(part.get(), "yearsText");
    EXPECT_FALSE(told->isVisible());
    press(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_TRUE(told->text().contains(QStringLiteral("two visits"))) << told->text().toStdString();
    press(Qt::Key_Y, Qt::ControlModifier);
    readOn("2026-11-20", "10.1");
    press(Qt::Key_Y, Qt::ControlModifier);
    auto* plots = part->findChild<shell::PlotView*>(QStringLiteral("plots"));
    ASSERT_NE(plots, nullptr);
    EXPECT_TRUE(plots->isVisible());
    ASSERT_EQ(plots->plots().plots.size(), 1U);
    EXPECT_FALSE(plots->accessibleName().isEmpty());
    EXPECT_EQ(plots->accessibleDescription(), told->text());
    EXPECT_TRUE(told->text().contains(QStringLiteral("0.7"))) << told->text().toStdString();
    press(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_FALSE(plots->isVisible());
    EXPECT_FALSE(told->isVisible());
}

}  // namespace
}  // namespace hearth::ui::premises

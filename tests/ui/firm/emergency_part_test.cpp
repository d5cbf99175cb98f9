// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/emergency_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/firm/firm_place.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::typeLine;
using rulebook::Gas;

class EmergencyPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        part = std::make_unique<EmergencyPart>(bench.context(), nullptr);
        part->refresh();
        hearth::testing::activate(part.get());
    }
    [[nodiscard]] std::vector<reg::EmergencyContact> kept() const {
        return need(bench.store->emergencyContacts());
    }
    /// Takes the country and gas offered, and types the number and whose it is.
    void add(const char* number, const char* name) {
        child<QPushButton>(part.get(), "addEmergencyContactButton")->setFocus();
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        typeLine(QString::fromLatin1(number));
        typeLine(QString::fromLatin1(name));
    }
    [[nodiscard]] QString told(int row = 0) const {
        return part->findChildren<QLabel*>(QStringLiteral("emergencyTold")).at(row)->text();
    }

    FirmBench bench;
    std::unique_ptr<EmergencyPart> part;
};

TEST_F(EmergencyPartTest, keepsASuppliersNumberAndSaysWhatIsToldWithIt) {
    add("01632 960001", "Penrose Bottled Gas");
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].country, reg::Country::England);
    EXPECT_EQ(kept()[0].gas, Gas::Propane);
    EXPECT_EQ(kept()[0].number, "01632 960001");
    EXPECT_EQ(kept()[0].name, "Penrose Bottled Gas");
    EXPECT_EQ(told(),
              QStringLiteral("What is said: ring 01632 960001 (Penrose Bottled Gas), or the number on the "
                             "cylinder or tank where it is another."));
}

TEST_F(EmergencyPartTest, keepsNothingWithoutANumberThatCanBeDialled) {
    add("", "Penrose Bottled Gas");
    EXPECT_TRUE(kept().empty());
    EXPECT_TRUE(told().contains(QStringLiteral("the LPG supplier's emergency number")));
    auto* number = editor(part.get(), "emergencyNumber");
    for (const char* wrong : {"O1632 960001", "ask the office", "12"}) {
        fillField(number, QString::fromLatin1(wrong));
        EXPECT_TRUE(kept().empty()) << wrong;
        EXPECT_TRUE(
            number->focusTarget()->accessibleDescription().contains(QStringLiteral("can't be dialled")))
            << number->focusTarget()->accessibleDescription().toStdString();
        EXPECT_EQ(number->text().toStdString(), wrong) << "what was typed stays in the field";
    }
    fillField(number, QStringLiteral("01632 960001"));
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].name, "Penrose Bottled Gas");
    fillField(number, QString());
    EXPECT_EQ(kept().at(0).number, "01632 960001") << "a contact is not left without its number";
}

TEST_F(EmergencyPartTest, offersTheNextGasAndNeverReplacesAnother) {
    add("01632 960001", "one");
    add("01632 960002", "two");
    ASSERT_EQ(kept().size(), 2U);
    const auto before = kept();
    auto* gas = part->findChildren<input::Editor*>(QStringLiteral("emergencyOfGas")).last();
    const QString own = gas->text();
    const QString other =
        part->findChildren<input::Editor*>(QStringLiteral("emergencyOfGas")).first()->text();
    ASSERT_NE(own, other);
    gas->setText(other);
    Q_EMIT gas->committed(other);
    EXPECT_EQ(kept(), before);
    EXPECT_TRUE(gas->focusTarget()->accessibleDescription().contains(QStringLiteral("is there already")))
        << gas->focusTarget()->accessibleDescription().toStdString();
}

TEST_F(EmergencyPartTest, takesOneAwayAndUndoBringsItBack) {
    add("01632 960001", "one");
    const auto before = kept();
    child<QPushButton>(part.get(), "removeEmergencyContactButton")->setFocus();
    press(Qt::Key_Space);
    EXPECT_TRUE(kept().empty());
    EXPECT_TRUE(part->findChildren<input::Editor*>().isEmpty());
    ASSERT_TRUE(need(bench.store->undo()).has_value());
    EXPECT_EQ(kept(), before);
}

TEST_F(EmergencyPartTest, hasUniqueNames) {
    add("01632 960001", "one");
    add("01632 960002", "two");
    hearth::testing::expectUniqueNames(part.get());
    hearth::testing::expectEveryStopOnce(part.get());
}

TEST_F(EmergencyPartTest, aRecordsFootNamesTheFirmsNumber) {
    const auto visit = bench.startVisit(bench.addPremises("1 Fell Row"));
    bench.issue()(visit, {}, {}).value();
    reg::EmergencyContact contact{
        {bench.store->newId()}, reg::Country::England, Gas::NaturalGas, "Duty engineer", "01632 960009"};
    need(bench.store->save(contact));
    bench.issue()(visit, {}, {}).value();
    const auto lines = need(bench.store->recordsOf(visit));
    ASSERT_EQ(lines.size(), 2U);
    const auto after = need(bench.store->record(lines[0].id)).document.caution;
    const auto before = need(bench.store->record(lines[1].id)).document.caution;
    EXPECT_NE(after.find("ring 0800 111 999, then 01632 960009."), std::string::npos) << after;
    EXPECT_EQ(before.find("01632"), std::string::npos) << "a record that was issued keeps what it said";
}

}  // namespace
}  // namespace hearth::ui::firm

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/quantity_editor.h"

#include "tests/ui/input/bed.h"

#include <QAction>
#include <QApplication>
#include <QMenu>

#include <gtest/gtest.h>

namespace hearth::ui::input {
namespace {

using quantity::UnitCode;
using quantity::UnitFamily;
using testing::Bed;

struct OneQuantity {
    Bed bed;
    Editor* editor;
    explicit OneQuantity(UnitFamily family)
        : editor(bed.add(makeQuantityEditor(nullptr, family), QStringLiteral("Start"))) {
        bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
        bed.show();
        bed.focus(editor);
    }
};

struct TypedQuantity {
    const char* typed;
    const char* text;
    UnitCode unit;
};

class QuantityTest : public ::testing::TestWithParam<TypedQuantity> {};

TEST_P(QuantityTest, keepsTheFigureAsTypedAndTakesItsUnit) {
    OneQuantity one(UnitFamily::Pressure);
    Bed::type(QString::fromUtf8(GetParam().typed));
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(one.editor->text(), QString::fromUtf8(GetParam().text));
    EXPECT_EQ(one.editor->unit(), GetParam().unit);
    EXPECT_EQ(one.bed.committed, QStringList{QString::fromUtf8(GetParam().text)});
}

INSTANTIATE_TEST_SUITE_P(TypedQuantity, QuantityTest,
                         ::testing::Values(TypedQuantity{"20.70", "20.70", UnitCode::Millibar},
                                           TypedQuantity{"20,7", "20,7", UnitCode::Millibar},
                                           TypedQuantity{"-0.03", "-0.03", UnitCode::Millibar},
                                           TypedQuantity{"8.3 inH2O", "8.3", UnitCode::InchWater},
                                           TypedQuantity{"2067 Pa", "2067", UnitCode::Pascal},
                                           TypedQuantity{"20.7mbar", "20.7", UnitCode::Millibar},
                                           // what can't be read stays as it is
                                           TypedQuantity{"1,234.5", "1,234.5", UnitCode::Millibar},
                                           TypedQuantity{"20.7 parsecs", "20.7 parsecs", UnitCode::Millibar},
                                           TypedQuantity{"about 20", "about 20", UnitCode::Millibar}));

TEST(QuantityEditor, aPlainFigureKeepsTheUnitThatWasSet) {
    OneQuantity one(UnitFamily::Pressure);
    one.editor->setText(QStringLiteral("8.0"));
    one.editor->setUnit(UnitCode::InchWater);
    one.editor->commit();
    one.bed.committed.clear();
    one.bed.focus(one.editor);
    Bed::press(Qt::Key_A, Qt::ControlModifier);
    Bed::type(QStringLiteral("8.3"));
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(one.editor->unit(), UnitCode::InchWater);
    EXPECT_EQ(one.bed.committed, QStringList{QStringLiteral("8.3")});
}

TEST(QuantityEditor, altAndDownOffersTheUnits) {
    OneQuantity one(UnitFamily::Pressure);
    Bed::type(QStringLiteral("8.3"));
    Bed::press(Qt::Key_Down, Qt::AltModifier);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_EQ(static_cast<std::size_t>(menu->actions().size()),
              quantity::unitsOf(UnitFamily::Pressure).size());
    EXPECT_TRUE(menu->actions().first()->isChecked());
    menu->actions().at(1)->trigger();
    menu->close();
    EXPECT_EQ(one.editor->text(), QStringLiteral("8.3"));
    EXPECT_EQ(one.editor->unit(), quantity::unitsOf(UnitFamily::Pressure)[1]);
    EXPECT_EQ(one.bed.committed.last(), QStringLiteral("8.3"));
}

TEST(QuantityEditor, anotherUnitAloneIsAChange) {
    OneQuantity one(UnitFamily::Pressure);
    one.editor->setText(QStringLiteral("8.3"));
    one.editor->setUnit(UnitCode::InchWater);
    one.editor->commit();
    EXPECT_EQ(one.bed.committed, QStringList{QStringLiteral("8.3")});
}

TEST(QuantityEditor, anEmptyFieldCommitsNoUnit) {
    OneQuantity one(UnitFamily::Pressure);
    one.editor->setUnit(UnitCode::InchWater);
    one.editor->commit();
    EXPECT_TRUE(one.bed.committed.isEmpty());
}

TEST(QuantityEditor, aFigureWithoutUnitsHasNone) {
    OneQuantity one(UnitFamily::None);
    Bed::type(QStringLiteral("3"));
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(one.editor->unit(), UnitCode::None);
    EXPECT_EQ(one.editor->focusTarget()->accessibleName(), QStringLiteral("Start"));
}

TEST(QuantityEditor, escapeBringsBackFigureAndUnit) {
    OneQuantity one(UnitFamily::Pressure);
    one.editor->setUnit(UnitCode::InchWater);
    one.editor->setText(QStringLiteral("8.0"));
    Bed::type(QStringLiteral("9"));
    one.editor->setUnit(UnitCode::Pascal);
    Bed::press(Qt::Key_Escape);
    EXPECT_EQ(one.editor->text(), QStringLiteral("8.0"));
    EXPECT_EQ(one.editor->unit(), UnitCode::InchWater);
}

}  // namespace
}  // namespace hearth::ui::input

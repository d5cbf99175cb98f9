// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/fields.h"

#include "ui/input/editor.h"
#include "ui/look/look.h"

#include <QApplication>
#include <QFontMetrics>
#include <QTest>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

TEST(FieldsInColumns, leaveNoHoleWhereOneIsNotAsked) {
    Fields fields(6, nullptr);
    std::vector<QWidget*> three;
    for (int i = 0; i < 3; ++i) {
        three.push_back(new QWidget(&fields));
        three.back()->setMinimumHeight(20);
        fields.add(three.back(), 2);
    }
    auto* below = new QWidget(&fields);
    below->setMinimumHeight(20);
    fields.add(below, 6);
    three[1]->hide();
    fields.resize(600, 100);
    fields.show();
    QApplication::processEvents();
    EXPECT_LT(three[2]->x(), 300) << "it moved up";
    EXPECT_EQ(three[2]->y(), three[0]->y());
    const int before = below->y();
    three[1]->show();
    QApplication::processEvents();
    EXPECT_LT(three[1]->x(), three[2]->x());
    EXPECT_GT(three[2]->x(), 300);
    EXPECT_EQ(below->y(), before);
    three[0]->hide();
    three[1]->hide();
    three[2]->hide();
    QApplication::processEvents();
    EXPECT_EQ(below->y(), 0) << "an empty row takes no room";
    delete three[1];
    three[0]->show();
    QApplication::processEvents();
    EXPECT_GT(below->y(), 0);
}

TEST(FieldsInColumns, standLevelBesideALabelOfTwoLines) {
    Fields fields(2, nullptr);
    auto* shortOne = input::makeTextEditor(&fields);
    auto* longOne = input::makeTextEditor(&fields);
    shortOne->setLabel(QStringLiteral("Short"));
    longOne->setLabel(QStringLiteral("A label of many words that takes two lines or more in this column"));
    fields.add(shortOne);
    fields.add(longOne);
    fields.resize(360, 200);
    fields.show();
    const auto top = [&](input::Editor* editor) {
        return editor->focusTarget()->mapTo(&fields, QPoint(0, 0)).y();
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return top(shortOne) == top(longOne) && top(longOne) > 0; }, 5000))
        << top(shortOne) << " " << top(longOne);
    // Wide enough for one line: no room is left over.
    fields.resize(1600, 200);
    const int oneLine = QFontMetrics(look::font(look::TypeRole::Label)).height() + 3 * look::kGap;
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return top(shortOne) == top(longOne) && top(longOne) < oneLine; }, 5000))
        << top(longOne) << " of " << oneLine;
}

}  // namespace
}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/signature_pad.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

class SignaturePadTest : public ::testing::Test {
  protected:
    void SetUp() override {
        pad.resize(pad.sizeHint());
        pad.show();
        pad.setFocus();
    }
    void stroke(QPoint from, QPoint to) {
        QTest::mousePress(&pad, Qt::LeftButton, Qt::NoModifier, from);
        // QTest's own moves hold no button.
        QMouseEvent move(QEvent::MouseMove, to, pad.mapToGlobal(to), Qt::LeftButton, Qt::LeftButton,
                         Qt::NoModifier);
        QApplication::sendEvent(&pad, &move);
        QTest::mouseRelease(&pad, Qt::LeftButton, Qt::NoModifier, to);
    }

    SignaturePad pad{nullptr};
    QSignalSpy changed{&pad, &SignaturePad::changed};
};

// The pad is 400 pixels for 80 mm: five to the millimetre, two pixels to four tenths.
TEST_F(SignaturePadTest, takesStrokesInTenthsOfAMillimetre) {
    ASSERT_EQ(pad.size(), QSize(400, 120));
    stroke({10, 20}, {110, 70});
    EXPECT_EQ(pad.strokes(), (reg::PenStrokes{{{20, 40}, {220, 140}}}));
    EXPECT_EQ(changed.count(), 1);
    QTest::mouseClick(&pad, Qt::LeftButton, Qt::NoModifier, {200, 60});
    EXPECT_EQ(pad.strokes().back(), (reg::PenStroke{{400, 120}}));  // a dot
}

TEST_F(SignaturePadTest, keepsWhatLeavesItAtItsEdge) {
    stroke({10, 20}, {900, 400});
    EXPECT_EQ(pad.strokes()[0].back(), (reg::PenPoint{800, 240}));
    EXPECT_TRUE(reg::strokesFromText(reg::strokesText(pad.strokes())).has_value());
}

TEST_F(SignaturePadTest, takesStrokesBackByKeys) {
    stroke({10, 20}, {50, 60});
    stroke({60, 20}, {90, 60});
    QTest::keyClick(&pad, Qt::Key_Backspace);
    EXPECT_EQ(pad.strokes().size(), 1U);
    stroke({60, 20}, {90, 60});
    QTest::keyClick(&pad, Qt::Key_Delete);
    EXPECT_TRUE(pad.strokes().empty());
    EXPECT_EQ(changed.count(), 5);
    QTest::keyClick(&pad, Qt::Key_Delete);
    EXPECT_EQ(changed.count(), 5);  // nothing to clear
}

TEST_F(SignaturePadTest, isNotDrawnOnWhileReadOnly) {
    stroke({10, 20}, {50, 60});
    pad.setReadOnly(true);
    stroke({60, 20}, {90, 60});
    QTest::keyClick(&pad, Qt::Key_Delete);
    EXPECT_EQ(pad.strokes().size(), 1U);
}

}  // namespace
}  // namespace hearth::ui::visit

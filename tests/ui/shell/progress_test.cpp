// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/progress.h"

#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include <gtest/gtest.h>
#include <optional>

namespace hearth::ui::shell {
namespace {

/// A window with two fields, the second of which has the keyboard, and work over it that shows at once.
class ProgressTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto* lines = new QVBoxLayout(&window);
        lines->addWidget(new QLineEdit(&window));
        field = new QLineEdit(&window);
        lines->addWidget(field);
        testing::activate(&window);
        field->setFocus();
        work.emplace(&window, "work", QStringLiteral("Doing it"), QStringLiteral("Stop"));
        dialog = testing::child<QProgressDialog>(&window, "work");
        dialog->setMinimumDuration(0);
    }
    [[nodiscard]] bool isShown() {
        int done = 0;
        return QTest::qWaitFor([&] { return (*work)(done++, 1000) && dialog->isVisible(); }, 20000);
    }

    QWidget window;
    QLineEdit* field = nullptr;
    std::optional<Progress> work;
    QProgressDialog* dialog = nullptr;
};

TEST_F(ProgressTest, GivesTheKeyboardBackWhereItWas) {
    ASSERT_TRUE(isShown());
    ASSERT_TRUE(QTest::qWaitForWindowActive(dialog));
    work.reset();
    EXPECT_TRUE(QTest::qWaitFor([&] { return field->hasFocus(); }, 20000));
}

TEST_F(ProgressTest, StopsByEscape) {
    ASSERT_TRUE(isShown());
    EXPECT_EQ(dialog->accessibleName(), QStringLiteral("Doing it"));
    QTest::keyClick(dialog, Qt::Key_Escape);
    EXPECT_FALSE((*work)(3, 1000));
}

TEST_F(ProgressTest, LeavesTheKeyboardAloneWhenNothingWasShown) {
    dialog->setMinimumDuration(60000);
    EXPECT_TRUE((*work)(1, 1000));
    auto* other = window.findChild<QLineEdit*>();
    other->setFocus();
    work.reset();
    EXPECT_TRUE(other->hasFocus());
}

}  // namespace
}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/question.h"

#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/system_dialogs.h"

#include <QApplication>
#include <QPushButton>
#include <QTimer>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::focus;
using hearth::testing::press;
using hearth::testing::type;

const QStringList kAnswers{QStringLiteral("Throw it away"), QStringLiteral("Keep it"),
                           QStringLiteral("Go back")};

TEST(Question, enterGivesTheSafeAnswer) {
    Question question(QStringLiteral("Leave?"), QStringLiteral("Something is not kept."), kAnswers, 1,
                      nullptr);
    hearth::testing::activate(&question);
    EXPECT_EQ(focus()->objectName(), QStringLiteral("answer1"));
    press(Qt::Key_Return);
    EXPECT_EQ(question.answer(), 1);
}

TEST(Question, escapeIsNoAnswer) {
    Question question(QStringLiteral("Leave?"), QStringLiteral("Something is not kept."), kAnswers, 1,
                      nullptr);
    hearth::testing::activate(&question);
    press(Qt::Key_Escape);
    EXPECT_EQ(question.answer(), -1);
    EXPECT_FALSE(question.isVisible());
}

TEST(Question, anotherAnswerIsGoneToFirst) {
    Question question(QStringLiteral("Leave?"), QStringLiteral("Something is not kept."), kAnswers, 1,
                      nullptr);
    hearth::testing::activate(&question);
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    EXPECT_EQ(question.answer(), 2);
}

TEST(Question, canBeWalkedThrough) {
    Question question(QStringLiteral("Leave?"), QStringLiteral("Something is not kept."), kAnswers, 1,
                      nullptr);
    hearth::testing::activate(&question);
    hearth::testing::expectEveryStopOnce(&question);
    hearth::testing::expectUniqueNames(&question);
}

TEST(TextQuestion, enterTakesWhatWasTypedButNotNothing) {
    TextQuestion question(QStringLiteral("Why?"), QStringLiteral("Reason"), nullptr);
    hearth::testing::activate(&question);
    press(Qt::Key_Return);
    EXPECT_TRUE(question.isVisible()) << "nothing is no reason";
    type(QStringLiteral("wrong serial number"));
    press(Qt::Key_Return);
    EXPECT_EQ(question.result(), QDialog::Accepted);
    EXPECT_EQ(question.text(), QStringLiteral("wrong serial number"));
}

TEST(TextQuestion, escapeLeavesIt) {
    TextQuestion question(QStringLiteral("Why?"), QStringLiteral("Reason"), nullptr);
    hearth::testing::activate(&question);
    type(QStringLiteral("half a"));
    press(Qt::Key_Escape);  // a field may take the first for itself: what stood there before comes back
    if (question.isVisible()) {
        press(Qt::Key_Escape);
    }
    EXPECT_EQ(question.result(), QDialog::Rejected);
    EXPECT_FALSE(question.isVisible());
}

/// Does something as soon as a dialog waits.
template <class Act>
void whileWaiting(Act act) {
    QTimer::singleShot(0, qApp, [act] { act(QApplication::activeModalWidget()); });
}

TEST(SystemDialogs, giveTheAnswersOfTheirDialogs) {
    SystemDialogs dialogs;
    whileWaiting([](QWidget* dialog) { child<QPushButton>(dialog, "answer2")->click(); });
    EXPECT_EQ(dialogs.ask(nullptr, QStringLiteral("Leave?"), QStringLiteral("…"), kAnswers, 1), 2);
    whileWaiting([](QWidget* dialog) { QTest::keyClick(dialog, Qt::Key_Escape); });
    EXPECT_EQ(dialogs.ask(nullptr, QStringLiteral("Leave?"), QStringLiteral("…"), kAnswers, 1), -1);
    whileWaiting([](QWidget* dialog) {
        editor(dialog, "answerField")->setText(QStringLiteral(" because "));
        child<QPushButton>(dialog, "takeButton")->click();
    });
    EXPECT_EQ(dialogs.askText(nullptr, QStringLiteral("Why?"), QStringLiteral("Reason")),
              QStringLiteral("because"));
    whileWaiting([](QWidget* dialog) { child<QPushButton>(dialog, "leaveButton")->click(); });
    EXPECT_EQ(dialogs.askText(nullptr, QStringLiteral("Why?"), QStringLiteral("Reason")), std::nullopt);
    bool told = false;
    whileWaiting([&told](QWidget* dialog) {
        told = dialog != nullptr;
        child<QPushButton>(dialog, "answer0")->click();
    });
    dialogs.tell(nullptr, QStringLiteral("Done"), QStringLiteral("It is done."));
    EXPECT_TRUE(told);
}

}  // namespace
}  // namespace hearth::ui::shell

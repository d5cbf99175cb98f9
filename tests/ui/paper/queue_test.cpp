// SPDX-License-Identifier: GPL-3.0-or-later
// Printing through CUPS, to the end of a queue: a scheduler of our own, whose one queue writes into a file.
#include "tests/ui/paper/print_queue.h"
#include "tests/ui/paper/programs.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

class QueueTest : public ::testing::Test {
  protected:
    void SetUp() override {
        if (const QString why = queue.start(); !why.isEmpty()) {
            GTEST_SKIP() << why.toStdString();
        }
    }
    /// This program again, as one who prints: CUPS reads where its server is once in a process.
    void print(const char* what) {
        QProcess process;
        auto surroundings = QProcessEnvironment::systemEnvironment();
        surroundings.insert(QStringLiteral("CUPS_SERVER"), queue.server());
        process.setProcessEnvironment(surroundings);
        process.start(
            QCoreApplication::applicationFilePath(),
            {QStringLiteral("--print"), hearth::testing::PrintQueue::name(), QString::fromLatin1(what)});
        ASSERT_TRUE(process.waitForFinished(60000));
        ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    }
    [[nodiscard]] std::string info() {
        return hearth::testing::run(QStringLiteral("pdfinfo"), {queue.printed()}).out.toStdString();
    }
    [[nodiscard]] int pages() {
        return QRegularExpression(QStringLiteral("Pages: +([0-9]+)"))
            .match(QString::fromStdString(info()))
            .captured(1)
            .toInt();
    }

    hearth::testing::PrintQueue queue;
};

TEST_F(QueueTest, theRecordComesOutWholeOnItsOwnPaper) {
    // The queue's paper is A5, and the person who was asked left it at A5, across.
    print("one");
    const std::string about = info();
    EXPECT_NE(about.find("(A4)"), std::string::npos) << about;
    EXPECT_EQ(pages(), 2) << about;
    const QString text = hearth::testing::pdfText(queue.printed());
    EXPECT_TRUE(text.contains(QStringLiteral("Tight: no perceptible movement in two minutes.")));
    EXPECT_TRUE(text.contains(QStringLiteral("QKD-000017")));
    EXPECT_TRUE(text.contains(QStringLiteral("page 2 of 2")));
    EXPECT_EQ(queue.jobs(), 1);
}

TEST_F(QueueTest, manyAreOneJobAndBeginOnSheetsOfTheirOwn) {
    print("many");
    EXPECT_EQ(pages(), 3);
    EXPECT_EQ(queue.jobs(), 1);
    const QString text = hearth::testing::pdfText(queue.printed());
    EXPECT_EQ(text.count(QStringLiteral("page 1 of 1")), 3);
    print("both sides");
    EXPECT_EQ(pages(), 5) << "one, empty, two, empty, three";
    EXPECT_EQ(queue.jobs(), 2);
}

TEST_F(QueueTest, whoeverStepsBackLeavesNoJob) {
    print("not");
    EXPECT_EQ(queue.jobs(), 0);
}

}  // namespace
}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/finding_note.h"

#include "tests/ui/input/sample_findings.h"
#include "ui/look/look.h"

#include <QApplication>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace hearth::ui::input {
namespace {

using rulebook::Outcome;
using testing::sampleFinding;

struct Margin {
    words::Words words;
    QWidget window;
    FindingNote* note = new FindingNote(words, &window);
    int chosen = 0;

    explicit Margin(Outcome outcome = Outcome::Pass) {
        auto* column = new QVBoxLayout(&window);
        column->addWidget(note);
        column->addStretch();
        note->show(judging::Judged{sampleFinding(outcome), {}, {}});
        QObject::connect(note, &FindingNote::chosen, &window, [this] { ++chosen; });
        window.resize(330, 500);
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        note->setFocus(Qt::TabFocusReason);
    }
};

TEST(FindingNote, saysTitleOutcomeAndReasonToScreenReaders) {
    Margin margin(Outcome::Fail);
    const rulebook::Finding finding = sampleFinding(Outcome::Fail);
    EXPECT_TRUE(margin.note->accessibleName().contains(margin.words.findingTitle(finding.kind)));
    EXPECT_TRUE(margin.note->accessibleName().contains(margin.words.outcome(Outcome::Fail)));
    EXPECT_TRUE(margin.note->accessibleDescription().contains(margin.words.sentence(finding.why)));
    EXPECT_TRUE(margin.note->accessibleDescription().contains(margin.words.sentence(finding.notes.front())));
}

TEST(FindingNote, f1OpensAndClosesTheSourceInPlace) {
    Margin margin;
    QCoreApplication::processEvents();
    const int closed = margin.note->height();
    QTest::keyClick(margin.note, Qt::Key_F1);
    EXPECT_TRUE(margin.note->isSourceOpen());
    EXPECT_TRUE(QTest::qWaitFor([&] { return margin.note->height() > closed + 40; }));
    QTest::keyClick(margin.note, Qt::Key_Escape);
    EXPECT_FALSE(margin.note->isSourceOpen());
    EXPECT_TRUE(QTest::qWaitFor([&] { return margin.note->height() == closed; }));
    EXPECT_EQ(margin.chosen, 0);
}

TEST(FindingNote, enterSpaceAndClickGoToTheReading) {
    Margin margin;
    QTest::keyClick(margin.note, Qt::Key_Return);
    QTest::keyClick(margin.note, Qt::Key_Space);
    QTest::mouseClick(margin.note, Qt::LeftButton, Qt::NoModifier, QPoint(100, 12));
    EXPECT_EQ(margin.chosen, 3);
}

TEST(FindingNote, aClickOnTheSourceOpensIt) {
    Margin margin;
    QTest::mouseClick(margin.note, Qt::LeftButton, Qt::NoModifier, QPoint(40, margin.note->height() - 14));
    EXPECT_TRUE(margin.note->isSourceOpen());
    EXPECT_EQ(margin.chosen, 0);
}

TEST(FindingNote, isHigherWhereItIsNarrower) {
    Margin margin;
    EXPECT_GT(margin.note->heightForWidth(190), margin.note->heightForWidth(420));
    EXPECT_EQ(margin.note->sizeHint().height(), margin.note->heightForWidth(margin.note->sizeHint().width()));
}

TEST(FindingNote, isPaintedInItsOutcomesColours) {
    for (const Outcome outcome : {Outcome::Pass, Outcome::Fail, Outcome::LookAgain, Outcome::NoVerdict}) {
        Margin margin(outcome);
        margin.note->clearFocus();
        const QImage image = margin.note->grab().toImage();
        EXPECT_EQ(image.pixelColor(1, image.height() / 2), look::colour(look::inkOf(outcome)));
        EXPECT_EQ(image.pixelColor(image.width() - 3, image.height() - 3),
                  look::colour(look::groundOf(outcome)));
    }
}

TEST(FindingNote, aChangeOfSchemeChangesItsColours) {
    Margin margin(Outcome::Fail);
    qApp->setProperty("hearthScheme", static_cast<int>(look::Scheme::Dark));
    const QImage image = margin.note->grab().toImage();
    qApp->setProperty("hearthScheme", QVariant());
    EXPECT_EQ(image.pixelColor(image.width() - 6, image.height() - 6),
              look::colour(look::Role::FailGround, look::Scheme::Dark));
}

}  // namespace
}  // namespace hearth::ui::input

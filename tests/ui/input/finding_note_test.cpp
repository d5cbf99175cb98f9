// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/finding_note.h"

#include "tests/ui/input/sample_findings.h"
#include "ui/look/look.h"

#include <QApplication>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>
#include <vector>

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
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window, 20000));
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
    EXPECT_TRUE(QTest::qWaitFor([&] { return margin.note->height() > closed + 40; }, 20000));
    QTest::keyClick(margin.note, Qt::Key_Escape);
    EXPECT_FALSE(margin.note->isSourceOpen());
    EXPECT_TRUE(QTest::qWaitFor([&] { return margin.note->height() == closed; }, 20000));
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

TEST(FindingNote, anOpenSourceIsToldToScreenReaders) {
    Margin margin;
    EXPECT_FALSE(margin.note->accessibleDescription().contains(QStringLiteral("a place where it was read")));
    QTest::keyClick(margin.note, Qt::Key_F1);
    const QString said = margin.note->accessibleDescription();
    EXPECT_TRUE(said.contains(QStringLiteral("a place where it was read")));
    EXPECT_TRUE(said.contains(QStringLiteral("what is doubtful about it")));
}

TEST(FindingNote, shiftF1AndAClickOnTheLimitAskForItsPageInTheRuleBook) {
    Margin margin;
    std::vector<rulebook::RuleKey> wanted;
    QObject::connect(margin.note, &FindingNote::ruleWanted, &margin.window,
                     [&](const rulebook::RuleKey& key) { wanted.push_back(key); });
    const auto key = sampleFinding(Outcome::Pass).limits.front().key;
    QTest::keyClick(margin.note, Qt::Key_F1, Qt::ShiftModifier);
    EXPECT_EQ(wanted, std::vector{key});
    const int closed = margin.note->height();
    QTest::keyClick(margin.note, Qt::Key_F1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return margin.note->height() > closed; }, 20000));
    QTest::mouseClick(margin.note, Qt::LeftButton, Qt::NoModifier, QPoint(40, margin.note->height() - 14));
    EXPECT_EQ(wanted.size(), 2U);
    EXPECT_EQ(margin.chosen, 0);
}

TEST(FindingNote, aMakersFigureHasNoPageInTheRuleBook) {
    Margin margin;
    auto finding = sampleFinding(Outcome::Pass);
    finding.limits.front().provenance = rulebook::Provenance::Maker;
    margin.note->show(judging::Judged{finding, {}, {}});
    EXPECT_EQ(margin.note->rule(), std::nullopt);
    bool wanted = false;
    QObject::connect(margin.note, &FindingNote::ruleWanted, &margin.window, [&] { wanted = true; });
    QTest::keyClick(margin.note, Qt::Key_F1, Qt::ShiftModifier);
    EXPECT_FALSE(wanted);
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

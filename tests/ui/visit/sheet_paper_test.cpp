// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet_paper.h"

#include "tests/ui/visit/sheet_bench.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using testing::SheetBench;

void expectNotesApart(const SheetBench& bench) {
    std::vector<QRect> boxes;
    const auto* paper = bench.sheet().paper();
    for (const auto* note : paper->notes()) {
        EXPECT_TRUE(note->isVisible());
        EXPECT_EQ(note->height(), note->heightForWidth(note->width()));
        EXPECT_TRUE(paper->rect().contains(note->geometry()));
        for (const QRect& other : boxes) {
            EXPECT_FALSE(other.intersects(note->geometry()))
                << testing::spokenName(const_cast<input::FindingNote*>(note));
        }
        boxes.push_back(note->geometry());
    }
    ASSERT_FALSE(boxes.empty());
}

/// Each note stands within the part whose reading it judges, at the reading or below it.
void expectNotesAtTheirReadings(const SheetBench& bench) {
    const auto* paper = bench.sheet().paper();
    for (const auto* note : paper->notes()) {
        const QWidget* anchor = paper->anchorOf(note->judged());
        ASSERT_NE(anchor, nullptr);
        EXPECT_GE(note->y(), anchor->mapTo(paper, QPoint(0, 0)).y());
        const auto* part =
            paper->part(partAt(partOf(note->judged().finding.kind), note->judged().subject, bench.file()));
        EXPECT_LE(note->geometry().bottom(), part->geometry().bottom());
    }
}

TEST(SheetPaper, NotesStandBesideTheirReadingsAndNeverMeet) {
    SheetBench bench;
    bench.fillIn();
    for (const QSize size : {QSize(1280, 800), QSize(1024, 600), QSize(1700, 1000)}) {
        bench.place->resize(size);
        SheetBench::settle();
        expectNotesApart(bench);
        expectNotesAtTheirReadings(bench);
    }
}

TEST(SheetPaper, OpenSourcesPushTheOthersDown) {
    SheetBench bench;
    bench.fillIn();
    for (auto* note : bench.sheet().paper()->notes()) {
        note->setSourceOpen(true);
    }
    bench.sheet().paper()->refresh();
    SheetBench::settle();
    expectNotesApart(bench);
}

TEST(SheetPaper, AFreshSheetHasNoNotesThatOnlyMissReadings) {
    SheetBench bench;
    for (const auto* note : bench.sheet().paper()->notes()) {
        const auto& judged = note->judged();
        EXPECT_TRUE(judged.finding.outcome != Outcome::NoVerdict ||
                    judged.finding.kind == FindingKind::Scope || judged.finding.kind == FindingKind::Volume)
            << rulebook::kindText(judged.finding.kind);
    }
}

TEST(SheetPaper, ACommittedReadingHasItsNoteAtOnce) {
    SheetBench bench;
    EXPECT_EQ(bench.note(FindingKind::LetBy), nullptr);
    bench.enter(Item::TestGauge, bench.firm.gauge.id.text());
    bench.enter(Item::LetByStartedAt, "09:41");
    bench.enter(Item::LetByEndedAt, "09:42");
    bench.type(Item::LetByStart, QStringLiteral("9.02"));
    bench.type(Item::LetByEnd, QStringLiteral("9.01"));
    auto* note = bench.note(FindingKind::LetBy);
    ASSERT_NE(note, nullptr);
    EXPECT_EQ(note->judged().finding.outcome, Outcome::Pass);
    EXPECT_TRUE(note->isVisible());
}

TEST(SheetPaper, ANoteLeadsToItsReading) {
    SheetBench bench;
    bench.fillIn();
    auto* note = bench.note(FindingKind::Tightness);
    ASSERT_NE(note, nullptr);
    Q_EMIT note->chosen();
    EXPECT_EQ(QApplication::focusWidget(), bench.editor(Item::TightEnd).focusTarget());
}

TEST(SheetPaper, AnIssuedVisitSaysThatChangesGoIntoARevision) {
    SheetBench bench;
    bench.fillIn();
    bench.sheet().recordsPart()->issue();
    SheetBench::settle();
    const std::string number = bench.model().records().front().header.record;
    bool said = false;
    for (const auto* label : bench.sheet().paper()->findChildren<QLabel*>()) {
        said = said || (label->isVisible() && label->text().contains(QString::fromStdString(number)) &&
                        label->text().contains(QStringLiteral("revision")));
    }
    EXPECT_TRUE(said);
}

TEST(SheetPaper, TheLanguageOfTheRecordIsChosenByKeys) {
    SheetBench bench;
    bench.fillIn();
    auto* records = bench.sheet().recordsPart();
    EXPECT_EQ(records->language(), QStringLiteral("en"));
    EXPECT_EQ(records->languageField()->text(), QStringLiteral("en"));
    records->languageField()->focusTarget()->setFocus();
    QTest::keyClick(records->languageField()->focusTarget(), Qt::Key_P);
    SheetBench::settle();
    records->issue();
    SheetBench::settle();
    ASSERT_EQ(bench.model().records().size(), 1U);
    const auto record = bench.firm.store->record(bench.model().records().front().id);
    ASSERT_TRUE(record);
    EXPECT_EQ(record->document.language, "pl");
    EXPECT_EQ(records->language(), QStringLiteral("pl")) << "a revision keeps it";
}

}  // namespace
}  // namespace hearth::ui::visit

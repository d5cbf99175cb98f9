// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/records_place.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/records/file_name.h"
#include "ui/records/page_preview.h"
#include "ui/shell/line_list.h"
#include "ui/words/pseudo_translator.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>
#include <memory>
#include <sqlite3.h>

namespace hearth::ui::records {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;

class RecordsPlaceTest : public ::testing::Test {
  protected:
    void issueOne() {
        premises = bench.addPremises("14 Tallow Lane", "M. Harrow");
        visit = bench.startVisit(premises);
        record = need(bench.issue()(visit, std::nullopt, {}));
    }
    void start() {
        place = std::make_unique<RecordsPlace>(bench.context());
        place->resize(1000, 700);
        place->refresh();  // before it is shown, as the window does
        hearth::testing::activate(place.get());
        place->takeFocus();
    }
    [[nodiscard]] shell::LineList* list() const { return child<shell::LineList>(place.get(), "recordsList"); }
    [[nodiscard]] PagePreview* pages() const { return place->findChild<PagePreview*>(); }
    [[nodiscard]] QString state() const { return child<QLabel>(place.get(), "recordState")->text(); }

    FirmBench bench;
    reg::PremisesId premises;
    reg::VisitId visit;
    store::RecordId record;
    std::unique_ptr<RecordsPlace> place;
};

TEST_F(RecordsPlaceTest, showsThePagesThatWereIssued) {
    issueOne();
    start();
    ASSERT_EQ(list()->count(), 1);
    const auto issued = need(bench.store->record(record));
    ASSERT_TRUE(pages()->isVisible());
    ASSERT_TRUE(pages()->pages());
    paper::PageOptions options;
    options.digest = issued.line.header.snapshotDigest;
    const paper::Layout expected(issued.document, options);
    ASSERT_EQ(pages()->pages()->pageCount(), expected.pageCount());
    for (int page = 0; page < expected.pageCount(); ++page) {
        EXPECT_EQ(paper::toImage(*pages()->pages(), page, 50), paper::toImage(expected, page, 50));
    }
    EXPECT_TRUE(pages()->accessibleDescription().contains(words::qstring(issued.document.number)));
}

TEST_F(RecordsPlaceTest, savesTheBytesThatWereIssued) {
    issueOne();
    start();
    const auto target = bench.folder() / "out.pdf";
    bench.dialogs.files = {QString::fromStdString(target.string())};
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(hearth::testing::readFile(target), need(bench.store->record(record)).pdf);
    const auto number = words::qstring(need(bench.store->record(record)).line.header.record);
    ASSERT_EQ(bench.dialogs.proposed.size(), 1);
    EXPECT_TRUE(bench.dialogs.proposed[0].startsWith(number + QStringLiteral(" 14 Tallow Lane")));
    EXPECT_TRUE(bench.dialogs.proposed[0].endsWith(QStringLiteral("2026-11-25.pdf")));
    ASSERT_FALSE(bench.navigator.said.isEmpty());
    EXPECT_TRUE(bench.navigator.said.last().contains(QString::fromStdString(target.string())));
}

TEST_F(RecordsPlaceTest, aPlaceThatCannotBeWrittenIsSaid) {
    issueOne();
    start();
    bench.dialogs.files = {QString::fromStdString((bench.folder() / "no" / "such" / "folder.pdf").string())};
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(bench.dialogs.told[0].contains(QStringLiteral("folder.pdf")));
    bench.dialogs.files = {std::nullopt};
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(bench.dialogs.told.size(), 1) << "stepping back is no error";
}

TEST_F(RecordsPlaceTest, aReprintIsMarkedCopy) {
    issueOne();
    start();
    press(Qt::Key_P, Qt::ControlModifier);
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(bench.printing.jobs.size(), 2U);
    EXPECT_EQ(bench.printing.jobs[0].options.stamp, paper::Stamp::None);
    EXPECT_EQ(bench.printing.jobs[1].options.stamp, paper::Stamp::Copy);
    const auto issued = need(bench.store->record(record));
    EXPECT_EQ(bench.printing.jobs[1].document, issued.document);
    EXPECT_EQ(bench.printing.jobs[1].options.digest, issued.line.header.snapshotDigest);
}

TEST_F(RecordsPlaceTest, aPrinterThatFailsIsSaid) {
    issueOne();
    start();
    bench.printing.failure = Error{ErrorCode::PrinterFailed, {"office", "no paper"}};
    press(Qt::Key_P, Qt::ControlModifier);
    ASSERT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_EQ(bench.dialogs.told[0], bench.words.error(*bench.printing.failure));
}

TEST_F(RecordsPlaceTest, aRevisionAsksTheReasonAndSupersedes) {
    issueOne();
    start();
    bench.dialogs.answers = {1};
    bench.dialogs.texts = {QStringLiteral("meter serial was wrong")};
    press(Qt::Key_R, Qt::ControlModifier);
    const auto records = need(bench.store->recordsOf(visit));
    ASSERT_EQ(records.size(), 2U);
    const auto& revision = records[0].header.revision == 2 ? records[0] : records[1];
    EXPECT_EQ(revision.header.revision, 2);
    EXPECT_EQ(revision.reason, "meter serial was wrong");
    EXPECT_EQ(revision.supersedes, record);
    EXPECT_EQ(list()->count(), 2);
    EXPECT_EQ(list()->currentKey(), words::qstring(revision.id.text())) << "the revision is shown";

    place->openRecord(record);
    EXPECT_EQ(pages()->stamp(), paper::Stamp::Superseded);
    EXPECT_TRUE(state().contains(QStringLiteral("Superseded")));
    EXPECT_FALSE(child<QPushButton>(place.get(), "reviseButton")->isEnabled())
        << "only what counts is revised";
    press(Qt::Key_P, Qt::ControlModifier);
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(bench.printing.jobs.size(), 1U);
    EXPECT_EQ(bench.printing.jobs[0].options.stamp, paper::Stamp::Superseded);
}

TEST_F(RecordsPlaceTest, aRevisionCanBeginWithTheVisit) {
    issueOne();
    start();
    bench.dialogs.answers = {0};
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_EQ(bench.navigator.went, std::vector<std::string>{"visit " + visit.text()});
    bench.dialogs.answers = {1};
    bench.dialogs.texts = {std::nullopt};
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->recordsOf(visit)).size(), 1U) << "no reason, no revision";
}

TEST_F(RecordsPlaceTest, aRecordThatWasTamperedWithIsNotShown) {
    issueOne();
    bench.issue()(bench.startVisit(premises), std::nullopt, {}).value();
    const auto path = bench.path();
    sqlite3* file = nullptr;
    ASSERT_EQ(sqlite3_open(path.string().c_str(), &file), SQLITE_OK);
    // As somebody would who wants a record to say something else: the guards taken away first.
    const char* forge =
        "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = CAST('%PDF-1.4 another' AS BLOB);";
    char* why = nullptr;
    ASSERT_EQ(sqlite3_exec(file, forge, nullptr, nullptr, &why), SQLITE_OK) << why;
    sqlite3_close(file);
    start();
    place->openRecord(record);
    EXPECT_FALSE(pages()->isVisible());
    EXPECT_FALSE(child<QPushButton>(place.get(), "savePdfButton")->isVisible());
    const auto broken = bench.store->record(record);
    ASSERT_FALSE(broken);
    EXPECT_EQ(broken.error().code, ErrorCode::RecordAltered);
    EXPECT_EQ(state(), bench.words.error(broken.error()));
}

TEST_F(RecordsPlaceTest, aRecordThatWasLetGoKeepsItsLineAndSaysSo) {
    issueOne();
    const auto number = need(bench.store->record(record)).line.header.record;
    bench.clock.advance(std::chrono::hours(24 * 366 * 7));
    need(bench.store->letGo({{record}, {}}));
    start();
    ASSERT_EQ(list()->count(), 1);
    EXPECT_EQ(list()->line(0).title, words::qstring(number));
    EXPECT_EQ(list()->line(0).rightDetail, QStringLiteral("erased"));
    EXPECT_FALSE(list()->line(0).outcome.has_value()) << "no verdict that nothing stands for";
    place->openRecord(record);
    EXPECT_FALSE(pages()->isVisible());
    EXPECT_FALSE(child<QPushButton>(place.get(), "savePdfButton")->isVisible());
    EXPECT_TRUE(state().contains(QStringLiteral("was erased on 30 Nov 2033"))) << state().toStdString();
    EXPECT_TRUE(state().contains(QStringLiteral("25 Nov 2032"))) << state().toStdString();
}

TEST_F(RecordsPlaceTest, searchAndTheWayToVisitAndPremises) {
    issueOne();
    start();
    place->search(QStringLiteral("nowhere"));
    EXPECT_EQ(list()->count(), 0);
    place->search(QStringLiteral("tallow"));
    EXPECT_EQ(list()->count(), 1);
    press(Qt::Key_O, Qt::ControlModifier);
    EXPECT_EQ(bench.navigator.went, std::vector<std::string>{"visit " + visit.text()});
}

TEST_F(RecordsPlaceTest, canBeWalkedThroughInTheWindow) {
    issueOne();
    shell::MainWindow window(bench.parts());
    auto* shown = new RecordsPlace(window.context());
    window.setPlaces({shown});
    hearth::testing::activate(&window);
    hearth::testing::expectWalkable(&window, [this] { return bench.state(); });
    shown->takeFocus();
    press(Qt::Key_F12);
    EXPECT_TRUE(child<QWidget>(&window, "emergencyPanel")->isVisible());
}

TEST_F(RecordsPlaceTest, fitsASmallScreenInTheLongestLanguage) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    issueOne();
    shell::MainWindow window(bench.parts());
    window.setPlaces({new RecordsPlace(window.context())});
    hearth::testing::activate(&window);
    hearth::testing::expectFits(&window, {1024, 600});
    QCoreApplication::removeTranslator(&pseudo);
}

struct NameCase {
    const char* number;
    int revision;
    QString address;
    QString expected;
};
class FileName : public ::testing::TestWithParam<NameCase> {};

TEST_P(FileName, isOneThatEveryFileSystemTakes) {
    const auto& c = GetParam();
    EXPECT_EQ(
        proposedFileName(QString::fromLatin1(c.number), c.revision, c.address, QStringLiteral("2026-11-25")),
        c.expected);
}

INSTANTIATE_TEST_SUITE_P(
    All, FileName,
    ::testing::Values(
        NameCase{"A-000017", 1, QStringLiteral("14 Tallow Lane"),
                 QStringLiteral("A-000017 14 Tallow Lane 2026-11-25.pdf")},
        NameCase{"A-000018", 2, QStringLiteral("14 Tallow Lane"),
                 QStringLiteral("A-000018 r2 14 Tallow Lane 2026-11-25.pdf")},
        NameCase{"A-000017", 1, QStringLiteral("Flat 1/2: \"The Mill\"\n?*"),
                 QStringLiteral("A-000017 Flat 1 2 The Mill 2026-11-25.pdf")},
        NameCase{"A-000017", 1, QString(), QStringLiteral("A-000017 2026-11-25.pdf")},
        NameCase{"A-000017", 1, QStringLiteral("../../etc"), QStringLiteral("A-000017 etc 2026-11-25.pdf")},
        NameCase{"A-000017", 1, QStringLiteral("Tŷ Gŵyr"), QStringLiteral("A-000017 Tŷ Gŵyr 2026-11-25.pdf")},
        NameCase{"A-000017", 1, QString(200, u'x'),
                 QStringLiteral("A-000017 ") + QString(60, u'x') + QStringLiteral(" 2026-11-25.pdf")}));

}  // namespace
}  // namespace hearth::ui::records

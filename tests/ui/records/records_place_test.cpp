// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/records_place.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/records/page_preview.h"
#include "ui/shell/file_pattern.h"
#include "ui/shell/line_list.h"
#include "ui/words/pseudo_translator.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>
#include <memory>
#include <random>
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
    [[nodiscard]] static QString number(const store::IssuedRecord& issued) {
        return words::qstring(issued.line.header.record);
    }
    [[nodiscard]] static std::string toText(const QString& text) { return text.toStdString(); }
    [[nodiscard]] QString textOf(const char* name) const { return child<QLabel>(place.get(), name)->text(); }
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

TEST_F(RecordsPlaceTest, aPdfIsCheckedByItsKey) {
    issueOne();
    start();
    const auto issued = need(bench.store->record(record));
    const auto file = bench.folder() / "shown.pdf";
    hearth::testing::writeFile(file, issued.pdf);
    const auto check = [&] {
        bench.dialogs.told.clear();
        bench.dialogs.answers = {0};
        bench.dialogs.chosen = {{QString::fromStdString(file.string())}};
        press(Qt::Key_H, Qt::ControlModifier);
        return bench.dialogs.told.value(0);
    };
    EXPECT_TRUE(check().startsWith(QStringLiteral("Ours and unchanged: %1").arg(number(issued))))
        << toText(check());
    std::string changed = issued.pdf;
    changed[changed.size() / 2] = static_cast<char>(changed[changed.size() / 2] ^ 1);
    hearth::testing::writeFile(file, changed);
    EXPECT_TRUE(check().startsWith(QStringLiteral("Changed: this is not %1").arg(number(issued))));
    hearth::testing::writeFile(file, "%PDF-1.4 somebody else's");
    EXPECT_TRUE(check().startsWith(QStringLiteral("Not ours")));
}

// A real PDF: its title names the record, its bytes are in compressed streams.
TEST_F(RecordsPlaceTest, eachFlippedByteOfARealPdfIsCaught) {
    issueOne();
    const auto issued = need(bench.store->record(record));
    std::minstd_rand random(20261125);
    for (int i = 0; i < 200; ++i) {
        std::string changed = issued.pdf;
        const auto at = random() % changed.size();
        changed[at] = static_cast<char>(changed[at] ^ static_cast<char>(1U << (random() % 8)));
        const auto proof = need(bench.store->proveFile(changed));
        ASSERT_EQ(proof.verdict, record::Verdict::Changed) << at;
        EXPECT_EQ(proof.kept->header.record, issued.line.header.record) << at;
        EXPECT_EQ(proof.kept->differsAt, at);
    }
    EXPECT_EQ(record::numbersNamedIn(issued.pdf), std::vector<std::string>{issued.line.header.record})
        << "a file that was written anew is recognised by its title";
}

TEST_F(RecordsPlaceTest, aNumberOrACodeIsChecked) {
    issueOne();
    start();
    const auto issued = need(bench.store->record(record));
    const auto& header = issued.line.header;
    for (const auto& text : {header.record, header.record + " 1 " + header.snapshotDigest}) {
        bench.dialogs.answers = {1};
        bench.dialogs.texts = {words::qstring(text)};
        bench.dialogs.told.clear();
        press(Qt::Key_H, Qt::ControlModifier);
        EXPECT_TRUE(bench.dialogs.told.value(0).startsWith(QStringLiteral("Ours and unchanged"))) << text;
    }
    bench.dialogs.answers = {1};
    bench.dialogs.texts = {QStringLiteral("what?")};
    press(Qt::Key_H, Qt::ControlModifier);
    EXPECT_TRUE(bench.dialogs.told.last().contains(QStringLiteral("what?")));
    bench.dialogs.answers = {-1};
    press(Qt::Key_H, Qt::ControlModifier);
}

TEST_F(RecordsPlaceTest, aRecordIsDeclaredVoidWithAReason) {
    issueOne();
    start();
    auto* button = child<QPushButton>(place.get(), "voidButton");
    bench.dialogs.answers = {0};
    button->click();
    EXPECT_EQ(need(bench.store->record(record)).line.voided, std::nullopt) << "the safe answer leaves it";
    bench.dialogs.answers = {1};
    bench.dialogs.texts = {QStringLiteral(" ")};
    button->click();
    EXPECT_EQ(bench.dialogs.told.size(), 1) << "no reason, no void";
    bench.dialogs.answers = {1};
    bench.dialogs.texts = {QStringLiteral("wrong house")};
    button->click();
    ASSERT_TRUE(need(bench.store->record(record)).line.voided);
    EXPECT_TRUE(state().contains(QStringLiteral("wrong house")));
    EXPECT_TRUE(state().contains(QStringLiteral("R. Ashdown")));
    EXPECT_EQ(list()->line(0).rightDetail, QStringLiteral("void"));
    EXPECT_EQ(pages()->stamp(), paper::Stamp::Void);
    EXPECT_FALSE(button->isEnabled());
    EXPECT_FALSE(child<QPushButton>(place.get(), "reviseButton")->isEnabled());
}

TEST_F(RecordsPlaceTest, aSignatureGoesBesideThePdf) {
    const std::string passphrase = "quiet lamp under stairs";
    need(bench.store->makeSigningKey(passphrase));
    bench.store->signWith(need(bench.store->openSigningKey(passphrase)));
    issueOne();
    start();
    bench.dialogs.answers = {1, 0};
    bench.dialogs.texts = {QStringLiteral("m@harrow.example")};
    press(Qt::Key_E, Qt::ControlModifier);
    ASSERT_EQ(bench.mails.size(), 1U);
    const QStringList files = bench.mails[0].attachments;
    ASSERT_EQ(files.size(), 2);
    EXPECT_EQ(files[1], files[0] + QStringLiteral(".sig"));
    const auto signature = need(bench.store->signatureOf(record));
    EXPECT_TRUE(record::signatureHolds(hearth::testing::readFile(files[0].toStdString()),
                                       hearth::testing::readFile(files[1].toStdString()),
                                       signature->key.publicKey));
    std::filesystem::remove_all(std::filesystem::path(files[0].toStdString()).parent_path());
}

TEST_F(RecordsPlaceTest, aMailHasTextAndThePdfAndIsNoted) {
    issueOne();
    start();
    bench.dialogs.answers = {1, 0};  // somebody else; by mail
    bench.dialogs.texts = {QStringLiteral("m@harrow.example")};
    press(Qt::Key_E, Qt::ControlModifier);
    ASSERT_EQ(bench.mails.size(), 1U);
    const auto issued = need(bench.store->record(record));
    EXPECT_EQ(bench.mails[0].to, QStringLiteral("m@harrow.example"));
    EXPECT_TRUE(bench.mails[0].subject.contains(words::qstring(issued.line.header.record)));
    ASSERT_EQ(bench.mails[0].attachments.size(), 1) << "it is not signed";
    EXPECT_EQ(hearth::testing::readFile(bench.mails[0].attachments.at(0).toStdString()), issued.pdf);
    std::filesystem::remove_all(
        std::filesystem::path(bench.mails[0].attachments.at(0).toStdString()).parent_path());
    const auto sent = need(bench.store->sendings(record));
    ASSERT_EQ(sent.size(), 1U);
    EXPECT_EQ(sent[0].how, record::SentBy::Mail);
    EXPECT_EQ(sent[0].to, "m@harrow.example");
    EXPECT_EQ(sent[0].by, "R. Ashdown");
    EXPECT_TRUE(textOf("recordSendings").contains(QStringLiteral("by mail, to m@harrow.example")));

    bench.mailFailure = Error{ErrorCode::MailFailed, {"no mail program"}};
    bench.dialogs.answers = {1, 0};
    bench.dialogs.texts = {QStringLiteral("m@harrow.example")};
    press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_EQ(need(bench.store->sendings(record)).size(), 1U) << "what did not go is not noted";
}

TEST_F(RecordsPlaceTest, itGoesToTheCustomerIntoAFolderOnPaperAndAsAMessage) {
    issueOne();
    need(bench.store->saveSetting(shell::kFilePatternSetting, "{customer} {number}"));
    start();
    const auto issued = need(bench.store->record(record));
    bench.dialogs.answers = {0, 1};
    bench.dialogs.files = {QString::fromStdString(bench.folder().string())};
    press(Qt::Key_E, Qt::ControlModifier);
    const auto file = bench.folder() / ("M. Harrow " + issued.line.header.record + ".pdf");
    EXPECT_EQ(hearth::testing::readFile(file), issued.pdf);
    hearth::testing::writeFile(file, "somebody's own");
    bench.dialogs.answers = {0, 1};
    bench.dialogs.files = {QString::fromStdString(bench.folder().string())};
    press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_EQ(hearth::testing::readFile(file), "somebody's own") << "nothing is written over";
    bench.dialogs.answers = {0, 2};
    press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(bench.printing.jobs.size(), 1U);
    bench.dialogs.answers = {0, 3};
    press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_TRUE(QGuiApplication::clipboard()->text().contains(words::qstring(issued.line.header.record)));
    std::vector<record::SentBy> ways;
    for (const auto& sending : need(bench.store->sendings(record))) {
        EXPECT_EQ(sending.to, "M. Harrow");
        ways.push_back(sending.how);
    }
    EXPECT_EQ(ways,
              (std::vector{record::SentBy::File, record::SentBy::Printed, record::SentBy::TextMessage}));
}

TEST_F(RecordsPlaceTest, whoHasAnOlderOneIsSentTheNewOneByOneKey) {
    issueOne();
    need(bench.store->noteSending(record, {record::SentBy::Mail, "m@harrow.example", "", "", {}}));
    need(bench.store->noteSending(record, {record::SentBy::Printed, "T. Nant", "", "", {}}));
    auto firm = need(bench.store->firm());
    firm.name = "Ashdown and Daughters";
    need(bench.store->saveFirm(firm));
    const auto revision = need(bench.issue()(visit, record, QStringLiteral("the firm's name")));
    start();
    place->openRecord(revision);
    EXPECT_TRUE(textOf("recordChanges").contains(QStringLiteral("Ashdown and Daughters")));
    EXPECT_TRUE(textOf("recordChanges").contains(QStringLiteral("Ashdown & Pike Heating")));
    EXPECT_TRUE(textOf("recordHolders").contains(QStringLiteral("m@harrow.example: by mail")));
    EXPECT_TRUE(textOf("recordHolders").contains(QStringLiteral("T. Nant: printed")));
    press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(bench.mails.size(), 1U);
    std::filesystem::remove_all(
        std::filesystem::path(bench.mails[0].attachments.at(0).toStdString()).parent_path());
    ASSERT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(bench.dialogs.told[0].contains(QStringLiteral("T. Nant")));
    EXPECT_FALSE(textOf("recordHolders").contains(QStringLiteral("m@harrow.example")));
    EXPECT_TRUE(textOf("recordHolders").contains(QStringLiteral("T. Nant")));
    place->openRecord(record);
    EXPECT_FALSE(child<QLabel>(place.get(), "recordHolders")->isVisible());
    EXPECT_FALSE(child<QPushButton>(place.get(), "tellHoldersButton")->isVisible());
    EXPECT_FALSE(child<QPushButton>(place.get(), "sendButton")->isEnabled()) << "it doesn't count any more";
}

TEST_F(RecordsPlaceTest, itSaysWhetherItIsSignedAndSavesTheSignature) {
    issueOne();
    start();
    EXPECT_TRUE(textOf("recordSignature").contains(QStringLiteral("Not signed")));
    need(bench.store->makeSigningKey("quiet lamp under stairs"));
    bench.store->signWith(need(bench.store->openSigningKey("quiet lamp under stairs")));
    EXPECT_EQ(need(bench.store->signWaiting(10)), 1);
    place->refresh();
    EXPECT_TRUE(
        textOf("recordSignature").contains(QStringLiteral("Signed with the firm's key on 25 Nov 2026")));
    const auto target = bench.folder() / "out.pdf";
    bench.dialogs.files = {QString::fromStdString(target.string())};
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(hearth::testing::readFile(target.string() + ".sig"),
              need(bench.store->signatureOf(record))->bytes);
}

TEST_F(RecordsPlaceTest, severalAreWrittenAsOnePdfOrAsFiles) {
    issueOne();
    const auto other =
        need(bench.issue()(bench.startVisit(bench.addPremises("2 Mill Row", "P. Lyle")), std::nullopt, {}));
    need(bench.store->makeSigningKey("quiet lamp under stairs"));
    bench.store->signWith(need(bench.store->openSigningKey("quiet lamp under stairs")));
    EXPECT_EQ(need(bench.store->signWaiting(1)), 1);
    start();
    const auto whole = bench.folder() / "whole.pdf";
    bench.dialogs.answers = {0, 0};
    bench.dialogs.files = {QString::fromStdString(whole.string())};
    press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    const auto outline = hearth::testing::runCommand("qpdf --json --json-key=outlines " + whole.string());
    for (const auto id : {record, other}) {
        EXPECT_NE(outline.text.find(need(bench.store->record(id)).line.header.record + " revision 1"),
                  std::string::npos);
        ASSERT_EQ(need(bench.store->sendings(id)).size(), 1U);
        EXPECT_EQ(need(bench.store->sendings(id))[0].detail, whole.string());
    }

    const auto folder = bench.folder() / "files";
    std::filesystem::create_directories(folder);
    bench.dialogs.answers = {1, 1};  // of a person, as files
    bench.dialogs.texts = {QStringLiteral("harrow")};
    bench.dialogs.files = {QString::fromStdString(folder.string())};
    press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    const auto issued = need(bench.store->record(record));
    const auto file = folder / shell::recordFileName(*bench.store, issued.line).toStdString();
    EXPECT_EQ(hearth::testing::readFile(file), issued.pdf);
    EXPECT_EQ(hearth::testing::readFile(file.string() + ".sig"),
              need(bench.store->signatureOf(record))->bytes);
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder), {}), 2) << "hers alone";

    bench.dialogs.answers = {2};  // of a period in which there was none
    bench.dialogs.texts = {QStringLiteral("1/1/2026"), QStringLiteral("24/11/2026")};
    press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(bench.dialogs.told.size(), 1);
    bench.dialogs.answers = {-1};
    press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
}

}  // namespace
}  // namespace hearth::ui::records

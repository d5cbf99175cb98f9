// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/backups_part.h"

#include "core/store/backup_seal.h"
#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/firm/firm_place.h"
#include "ui/shell/line_list.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

namespace fs = std::filesystem;
using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;

class BackupsPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto parts = bench.parts();
        parts.restore = [this](const fs::path& backup, const std::string& passphrase) {
            wanted = backup;
            with = passphrase;
        };
        window = std::make_unique<shell::MainWindow>(parts);
        place = new FirmPlace(window->context());
        window->setPlaces({place});
        hearth::testing::activate(window.get());
        fs::create_directories(stick);
    }
    [[nodiscard]] QString textOf(const char* name) const {
        const auto* label = child<QLabel>(window.get(), name);
        return label->isVisible() ? label->text() : QString();
    }
    void press(const char* button) const { child<QPushButton>(window.get(), button)->click(); }
    /// By its key, to its end.
    void backUp() const {
        hearth::testing::press(Qt::Key_B, Qt::ControlModifier);
        window->context().backups->finish();
        QApplication::processEvents();
    }
    [[nodiscard]] shell::LineList* list() const { return child<shell::LineList>(window.get(), "backupList"); }
    void choose(const fs::path& folder) {
        bench.dialogs.files = {QString::fromStdString(folder.string())};
        press("secondFolderButton");
        window->context().backups->finish();
    }

    FirmBench bench;
    std::unique_ptr<shell::MainWindow> window;
    FirmPlace* place = nullptr;
    const fs::path stick = bench.folder() / "stick";
    fs::path wanted;
    std::string with;
};

TEST_F(BackupsPartTest, oneIsMadeByItsKeyAndSaidWhere) {
    EXPECT_TRUE(textOf("backupStateText").contains(QStringLiteral("no backup yet")));
    backUp();
    ASSERT_EQ(list()->count(), 1);
    EXPECT_TRUE(textOf("backupStateText").contains(QStringLiteral("Last backup: 25 Nov 2026, 09:00")))
        << textOf("backupStateText").toStdString();
    EXPECT_TRUE(textOf("backupStateText").contains(QStringLiteral("Nothing was changed since")));
    EXPECT_TRUE(textOf("statusText").startsWith(QStringLiteral("Backed up, read again")))
        << textOf("statusText").toStdString();
    EXPECT_EQ(textOf("backupTroubleText"), QString());
}

TEST_F(BackupsPartTest, aSecondFolderGetsACopyAtOnce) {
    choose(stick);
    EXPECT_EQ(need(bench.store->backupState()).secondFolder, stick);
    EXPECT_FALSE(fs::is_empty(stick));
    press("noSecondFolderButton");
    EXPECT_TRUE(need(bench.store->backupState()).secondFolder.empty());
}

TEST_F(BackupsPartTest, aFailureStandsThereAndAtTheFootUntilItIsGood) {
    choose(stick);
    fs::remove_all(stick);
    backUp();
    EXPECT_TRUE(textOf("backupTroubleText").contains(QString::fromStdString(stick.string())));
    EXPECT_TRUE(textOf("standingText").contains(QString::fromStdString(stick.string())))
        << "seen from every place, not logged";
    fs::create_directories(stick);
    backUp();
    EXPECT_EQ(textOf("backupTroubleText"), QString());
    EXPECT_EQ(textOf("standingText"), QString());
}

TEST_F(BackupsPartTest, aFailureIsSeenWhenTheProgramIsStartedAgain) {
    choose(stick);
    fs::remove_all(stick);
    backUp();
    window.reset();
    bench.store.reset();
    bench.store = need(store::Store::open(bench.path(), store::Access::Write, bench.clock));
    SetUp();
    fs::remove_all(stick);
    QApplication::processEvents();
    EXPECT_TRUE(textOf("standingText").contains(QString::fromStdString(stick.string())));
}

TEST_F(BackupsPartTest, isRestoredInThreeStepsByKeys) {
    backUp();
    const auto made = need(bench.store->backupState()).last;
    list()->setCurrentRow(0);
    list()->setFocus();
    hearth::testing::press(Qt::Key_Return);  // 1: look inside
    EXPECT_TRUE(textOf("insideText").contains(QStringLiteral("Ashdown & Pike Heating")));
    EXPECT_TRUE(textOf("insideText").contains(QStringLiteral("it is whole")));
    EXPECT_EQ(focus()->objectName(), QStringLiteral("restoreButton"));
    bench.dialogs.answers = {0};
    hearth::testing::press(Qt::Key_Return);
    EXPECT_TRUE(wanted.empty()) << "the safe answer";
    bench.dialogs.answers = {1};             // 3: yes
    hearth::testing::press(Qt::Key_Return);  // 2: restore
    EXPECT_EQ(wanted, made);
    EXPECT_TRUE(bench.dialogs.asked.last().contains(QStringLiteral("What stands now is kept")));
}

TEST_F(BackupsPartTest, aDamagedOneCannotBeRestored) {
    const fs::path spoilt = bench.folder() / "spoilt.hearth";
    hearth::testing::writeFile(spoilt, "nothing of ours");
    bench.dialogs.chosen = {{QString::fromStdString(spoilt.string())}};
    press("otherBackupButton");
    EXPECT_FALSE(textOf("insideText").isEmpty());
    EXPECT_FALSE(child<QPushButton>(window.get(), "restoreButton")->isVisible());
}

TEST_F(BackupsPartTest, aPassphraseSealsAndIsAskedForToLookInside) {
    const QString passphrase = QStringLiteral("kettle harbour violet");
    bench.dialogs.texts = {passphrase, QStringLiteral("kettle harbour violets")};
    press("sealButton");
    EXPECT_EQ(bench.dialogs.told.size(), 1) << "the two differ";
    EXPECT_FALSE(need(bench.store->backupState()).isSealed);
    bench.dialogs.texts = {QStringLiteral("short"), QStringLiteral("short")};
    press("sealButton");
    EXPECT_FALSE(need(bench.store->backupState()).isSealed);
    bench.dialogs.texts = {passphrase, passphrase};
    press("sealButton");
    window->context().backups->finish();
    EXPECT_TRUE(need(bench.store->backupState()).isSealed);
    ASSERT_EQ(list()->count(), 1);
    EXPECT_TRUE(list()->line(0).detail.contains(QStringLiteral("sealed")));

    list()->setCurrentRow(0);
    bench.dialogs.texts = {QStringLiteral("another one"), passphrase};
    press("lookInsideButton");
    EXPECT_TRUE(textOf("insideText").contains(QStringLiteral("it is whole")));
    bench.dialogs.answers = {1};
    press("restoreButton");
    EXPECT_EQ(with, passphrase.toStdString());
    bench.dialogs.texts = {std::nullopt};
    press("lookInsideButton");
    EXPECT_EQ(textOf("insideText"), QString());
}

TEST_F(BackupsPartTest, canBeWalkedThrough) {
    choose(stick);
    list()->setCurrentRow(0);
    press("lookInsideButton");
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
}

}  // namespace
}  // namespace hearth::ui::firm

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/restore_dialog.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/backup_words.h"
#include "ui/shell/line_list.h"
#include "ui/words/pseudo_translator.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

namespace fs = std::filesystem;
using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;

class RestoreDialogTest : public ::testing::Test {
  protected:
    void SetUp() override {
        bench.addPremises("14 Tallow Lane");
        made = store::runBackup(need(bench.store->backupJob())).made;
        bench.store.reset();
    }
    [[nodiscard]] BackupChooser::Around around() { return {bench.words, bench.dialogs, bench.path()}; }

    FirmBench bench;
    fs::path made;
};

TEST_F(RestoreDialogTest, offersWhatThereIsWhenTheStoreIsLost) {
    fs::remove(bench.path());
    RestoreDialog dialog(around(), {});
    hearth::testing::activate(&dialog);
    ASSERT_EQ(child<LineList>(&dialog, "backupList")->count(), 1);
    press(Qt::Key_Return);  // the list has the keyboard, its first line the cursor
    bench.dialogs.answers = {1};
    press(Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.backup(), QString::fromStdString(made.string()));
    EXPECT_TRUE(bench.dialogs.asked.last().contains(QStringLiteral("no store here yet")));
}

TEST_F(RestoreDialogTest, takesAFileFromAnywhere) {
    const fs::path stick = bench.folder() / "stick";
    fs::create_directories(stick);
    fs::rename(made, stick / "from the old computer.hearth");
    RestoreDialog dialog({bench.words, bench.dialogs, bench.folder() / "new" / "firm.hearth"}, {});
    hearth::testing::activate(&dialog);
    EXPECT_EQ(child<LineList>(&dialog, "backupList")->count(), 0);
    bench.dialogs.chosen = {{QString::fromStdString((stick / "from the old computer.hearth").string())}};
    press(Qt::Key_Return);
    EXPECT_TRUE(child<QLabel>(&dialog, "insideText")->text().contains(QStringLiteral("Premises: 1")));
    press(Qt::Key_Escape);
    EXPECT_EQ(dialog.result(), QDialog::Rejected);
}

TEST_F(RestoreDialogTest, canBeWalkedThroughAndFitsASmallScreen) {
    RestoreDialog dialog(around(), {});
    hearth::testing::activate(&dialog);
    hearth::testing::expectWalkable(&dialog, [] { return std::string(); });
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    RestoreDialog longer(around(), {});
    hearth::testing::expectFits(&longer, {1024, 600});
    QCoreApplication::removeTranslator(&pseudo);
}

TEST_F(RestoreDialogTest, saysEveryKindOfBackupInItsOwnWords) {
    QStringList said;
    store::BackupFile file;
    for (const auto kind : {store::BackupKind::Regular, store::BackupKind::BeforeMigration,
                            store::BackupKind::BeforeRestore, store::BackupKind::SetAside}) {
        file.kind = kind;
        said << backupKindText(file);
    }
    file.kind = store::BackupKind::Regular;
    file.isFromHere = true;
    said << backupKindText(file);
    file.isSealed = true;
    said << backupKindText(file);
    EXPECT_EQ(said.removeDuplicates(), 0);
}

TEST_F(RestoreDialogTest, saysThatTheStoreLiesOnANetworkDrive) {
    store::BackupState state;
    EXPECT_EQ(backupTroubleText(bench.words, state), QString());
    state.networkDrive = "SMB";
    EXPECT_TRUE(backupTroubleText(bench.words, state).contains(QStringLiteral("network drive (SMB)")));
}

}  // namespace
}  // namespace hearth::ui::shell

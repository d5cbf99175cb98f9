// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/closing_backup.h"

#include "app/waiting.h"
#include "ui/shell/backup_runner.h"
#include "ui/shell/backup_words.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QWidget>

namespace hearth::app {
namespace {

QString closingText(const char* source) {
    return QCoreApplication::translate("ClosingBackup", source);
}

}  // namespace

void backUpOnClosing(store::Store& store, const Surroundings& surroundings) {
    const auto before = store.backupState();
    const auto job = store.backupDue(store::BackupOccasion::Closing);
    if (!job || !*job) {
        return;
    }
    ui::shell::BackupRunner runner(store);
    store::BackupOutcome outcome;
    QEventLoop loop;
    QObject::connect(&runner, &ui::shell::BackupRunner::done, &loop, [&](const store::BackupOutcome& came) {
        outcome = came;
        loop.quit();
    });
    // A large store takes some seconds: then it is said why the program is still there.
    const auto notice = makeWaitingNotice(closingText(QT_TRANSLATE_NOOP(
        "ClosingBackup", "The day's backup is being made and checked. This closes by itself.")));
    runner.start(**job);
    loop.exec();
    runner.finish();  // closing the notice ends the loop early
    notice->hide();
    const bool isNews = outcome.failure || (outcome.secondFailure && !(before && before->secondFailure));
    if (isNews) {
        surroundings.dialogs.tell(nullptr,
                                  closingText(QT_TRANSLATE_NOOP("ClosingBackup", "The day's backup")),
                                  ui::shell::outcomeText(surroundings.words, outcome));
    }
}

}  // namespace hearth::app

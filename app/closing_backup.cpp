// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/closing_backup.h"

#include "ui/shell/backup_runner.h"
#include "ui/shell/backup_words.h"
#include "ui/shell/kit.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>
#include <QVBoxLayout>

#include <chrono>

namespace hearth::app {
namespace {

constexpr std::chrono::milliseconds kNobodyWonders{700};
constexpr int kNoticeWidth = 420;

QString closingText(const char* source) {
    return QCoreApplication::translate("ClosingBackup", source);
}

/// A large store takes some seconds: then it is said why the program is still there.
std::unique_ptr<QWidget> makeNotice() {
    auto notice = std::make_unique<QWidget>();
    notice->setObjectName(QStringLiteral("closingNotice"));
    notice->setWindowTitle(QStringLiteral("Hearthledger"));
    notice->setMinimumWidth(kNoticeWidth);
    auto* lines = new QVBoxLayout(notice.get());
    lines->addWidget(ui::shell::bodyText(
        closingText(QT_TRANSLATE_NOOP("ClosingBackup",
                                      "The day's backup is being made and checked. This closes by itself.")),
        notice.get()));
    return notice;
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
    const auto notice = makeNotice();
    QTimer::singleShot(kNobodyWonders, notice.get(), &QWidget::show);
    runner.start(**job);
    loop.exec();
    notice->hide();
    const bool isNews = outcome.failure || (outcome.secondFailure && !(before && before->secondFailure));
    if (isNews) {
        surroundings.dialogs.tell(nullptr,
                                  closingText(QT_TRANSLATE_NOOP("ClosingBackup", "The day's backup")),
                                  ui::shell::outcomeText(surroundings.words, outcome));
    }
}

}  // namespace hearth::app

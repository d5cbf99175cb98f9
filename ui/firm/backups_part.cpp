// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/backups_part.h"

#include "ui/shell/backup_chooser.h"
#include "ui/shell/backup_words.h"

#include <QGuiApplication>

namespace hearth::ui::firm {

BackupsPart::BackupsPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_runner(context.backups != nullptr ? context.backups : new shell::BackupRunner(context.store, this)),
      m_state(shell::bodyText({}, this)),
      m_trouble(shell::bodyText({}, this)),
      m_chooser(new shell::BackupChooser({context.words, context.dialogs, context.store.path()}, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Backups"), this));
    m_trouble->setObjectName(QStringLiteral("backupTroubleText"));
    m_trouble->setInk(look::Role::Fail);
    lines->addWidget(m_trouble);
    m_state->setObjectName(QStringLiteral("backupStateText"));
    m_state->setTextInteractionFlags(Qt::TextSelectableByMouse);
    lines->addWidget(m_state);
    lines->addWidget(makeButtons());
    lines->addWidget(m_chooser);
    connect(m_runner, &shell::BackupRunner::started, this, &BackupsPart::showState);
    connect(m_runner, &shell::BackupRunner::done, this, &BackupsPart::showDone);
    connect(m_chooser, &shell::BackupChooser::restoreWanted, this,
            [this](const QString& path, const QString& passphrase) {
                if (m_context.restore) {
                    m_context.restore(std::filesystem::path(path.toStdString()), passphrase.toStdString());
                }
            });
}

QWidget* BackupsPart::makeButtons() {
    auto* row = new QWidget(this);
    auto* box = new QHBoxLayout(row);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(look::kGap);
    const auto add = [&](shell::KeyButton* button, const char* name, void (BackupsPart::*press)()) {
        button->setObjectName(QString::fromLatin1(name));
        box->addWidget(button);
        connect(button, &QPushButton::clicked, this, press);
        return button;
    };
    m_backUp = add(new shell::KeyButton(tr("Back up now"), QKeySequence(Qt::CTRL | Qt::Key_B),
                                        shell::ButtonKind::Primary, row),
                   "backUpButton", &BackupsPart::backUp);
    add(new shell::KeyButton(tr("Second folder…"), shell::ButtonKind::Plain, row), "secondFolderButton",
        &BackupsPart::chooseSecond);
    m_noSecond = add(new shell::KeyButton(tr("No second folder"), shell::ButtonKind::Quiet, row),
                     "noSecondFolderButton", &BackupsPart::dropSecond);
    m_seal = add(new shell::KeyButton(tr("Seal with a passphrase…"), shell::ButtonKind::Plain, row),
                 "sealButton", &BackupsPart::seal);
    box->addStretch(1);
    return row;
}

void BackupsPart::refresh() {
    showState();
    const auto state = m_context.store.backupState();
    m_chooser->refresh(state ? state->secondFolder : std::filesystem::path());
}

void BackupsPart::showState() {
    const auto state = m_context.store.backupState();
    const QString trouble =
        state ? shell::backupTroubleText(m_context.words, *state) : m_context.words.error(state.error());
    m_trouble->setText(trouble);
    m_trouble->setVisible(!trouble.isEmpty());
    const bool isReadOnly = m_context.store.isReadOnly();
    m_backUp->setEnabled(!m_runner->isBusy());
    m_backUp->setWords(m_runner->isBusy() ? tr("Being made…") : tr("Back up now"));
    m_seal->setEnabled(!isReadOnly);
    m_noSecond->setVisible(state && !state->secondFolder.empty() && !isReadOnly);
    if (state) {
        m_isSealed = state->isSealed;
        m_state->setText(shell::lastBackupText(m_context.words, *state));
        m_seal->setWords(m_isSealed ? tr("Don't seal any more") : tr("Seal with a passphrase…"));
    }
}

void BackupsPart::tellFailed(const Error& error) {
    m_context.dialogs.tell(this, tr("Backups are as they were"), m_context.words.error(error));
}

void BackupsPart::backUp() {
    const auto job = m_context.store.backupJob();
    if (!job) {
        tellFailed(job.error());
        return;
    }
    m_runner->start(*job);
}

void BackupsPart::showDone(const store::BackupOutcome& outcome) {
    refresh();
    m_context.navigator.say(shell::outcomeText(m_context.words, outcome));
}

void BackupsPart::chooseSecond() {
    const auto folder = m_context.dialogs.chooseFolder(this, tr("Second folder for backups"));
    if (!folder) {
        return;
    }
    const auto set = m_context.store.setSecondFolder(std::filesystem::path(folder->toStdString()));
    if (!set) {
        tellFailed(set.error());
        return;
    }
    backUp();  // at once, so that it is known whether it can be written to
    refresh();
}

void BackupsPart::dropSecond() {
    if (const auto set = m_context.store.setSecondFolder({}); !set) {
        tellFailed(set.error());
    }
    refresh();
}

void BackupsPart::seal() {
    if (m_isSealed) {
        if (const auto set = m_context.store.setSealing({}); !set) {
            tellFailed(set.error());
        }
        refresh();
        return;
    }
    const auto first =
        m_context.dialogs.askPassphrase(this, tr("Seal the backups with a passphrase"),
                                        tr("A passphrase. Without it nobody opens them, nor can this "
                                           "program: keep it apart from the computer"));
    if (!first) {
        return;
    }
    const auto again = m_context.dialogs.askPassphrase(this, tr("Seal the backups with a passphrase"),
                                                       tr("The same once more"));
    if (!again) {
        return;
    }
    if (*again != *first) {
        m_context.dialogs.tell(this, tr("Backups are as they were"),
                               tr("The two were not the same. Nothing was changed; try again."));
        return;
    }
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    const auto sealing = store::makeSealing(first->toStdString());
    QGuiApplication::restoreOverrideCursor();
    const auto set =
        sealing ? m_context.store.setSealing(*sealing) : Result<void>(tl::unexpected<Error>(sealing.error()));
    if (!set) {
        tellFailed(set.error());
        return;
    }
    backUp();  // so that one that is sealed is there
    refresh();
}

}  // namespace hearth::ui::firm

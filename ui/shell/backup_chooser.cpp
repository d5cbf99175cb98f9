// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/backup_chooser.h"

#include "ui/shell/backup_words.h"
#include "ui/shell/line_list.h"

#include <QGuiApplication>

namespace hearth::ui::shell {

BackupChooser::BackupChooser(const Around& around, QWidget* parent)
    : QWidget(parent),
      m_around(around),
      m_list(new LineList(tr("Backups"), tr("There are no backups here."), this)),
      m_look(new KeyButton(tr("Look inside"), ButtonKind::Plain, this)),
      m_other(new KeyButton(tr("Another file…"), ButtonKind::Quiet, this)),
      m_inside(bodyText({}, this)),
      m_restore(new KeyButton(tr("Restore this backup"), ButtonKind::Primary, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    m_list->setObjectName(QStringLiteral("backupList"));
    m_list->setGrowing(true);
    lines->addWidget(m_list);
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    m_look->setObjectName(QStringLiteral("lookInsideButton"));
    m_look->showKey(QStringLiteral("Enter"));
    row->addWidget(m_look);
    m_other->setObjectName(QStringLiteral("otherBackupButton"));
    row->addWidget(m_other);
    row->addStretch(1);
    lines->addLayout(row);
    m_inside->setObjectName(QStringLiteral("insideText"));
    lines->addWidget(m_inside);
    m_restore->setObjectName(QStringLiteral("restoreButton"));
    lines->addWidget(m_restore, 0, Qt::AlignLeft);
    const auto lookAtRow = [this] {
        const int at = m_list->currentRow();
        if (at >= 0) {
            lookInside(m_files.at(static_cast<std::size_t>(at)).path);
        }
    };
    connect(m_list, &LineList::opened, this, lookAtRow);
    connect(m_list, &LineList::moved, this, &BackupChooser::forget);
    connect(m_look, &QPushButton::clicked, this, lookAtRow);
    connect(m_other, &QPushButton::clicked, this, &BackupChooser::takeAnother);
    connect(m_restore, &QPushButton::clicked, this, &BackupChooser::restore);
    forget();
}

void BackupChooser::refresh(const std::filesystem::path& secondFolder) {
    m_files = store::findBackups(m_around.store, secondFolder);
    std::vector<Line> lines;
    for (const auto& file : m_files) {
        Line line;
        line.key = QString::fromStdString(file.path.string());
        line.title = momentText(m_around.words, file.madeAt);
        line.detail = backupKindText(file);
        line.right = sizeText(file.size);
        line.rightDetail = QString::fromStdString(file.path.parent_path().filename().string());
        lines.push_back(std::move(line));
    }
    m_list->setLines(std::move(lines));
    m_look->setVisible(!m_files.empty());
    forget();
}

void BackupChooser::takeFocus() {
    if (m_files.empty()) {
        m_other->setFocus(Qt::OtherFocusReason);
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

void BackupChooser::forget() {
    m_looked.clear();
    m_passphrase.clear();
    m_inside->hide();
    m_restore->hide();
}

std::optional<Result<store::BackupInside>> BackupChooser::looked(const std::filesystem::path& path) {
    while (true) {
        QGuiApplication::setOverrideCursor(Qt::WaitCursor);
        auto inside = store::lookInside(path, m_passphrase.toStdString(), m_around.store);
        QGuiApplication::restoreOverrideCursor();
        const bool wantsPassphrase = !inside && (inside.error().code == ErrorCode::PassphraseMissing ||
                                                 inside.error().code == ErrorCode::PassphraseWrong);
        if (!wantsPassphrase) {
            return inside;
        }
        const auto typed = m_around.dialogs.askPassphrase(
            this, m_passphrase.isEmpty() ? tr("This backup is sealed") : tr("That was another passphrase"),
            tr("Its passphrase"));
        if (!typed) {
            return std::nullopt;
        }
        m_passphrase = *typed;
    }
}

void BackupChooser::lookInside(const std::filesystem::path& path) {
    forget();
    const auto inside = looked(path);
    if (!inside) {
        forget();
        return;
    }
    const bool canBeRestored = *inside && (*inside)->check;
    m_inside->setInk(canBeRestored ? look::Role::Ink : look::Role::Fail);
    m_inside->setText(*inside ? insideText(m_around.words, **inside) : m_around.words.error(inside->error()));
    m_inside->show();
    m_restore->setVisible(canBeRestored);
    if (canBeRestored) {
        m_looked = path;
        m_restore->setFocus(Qt::OtherFocusReason);
    }
}

void BackupChooser::takeAnother() {
    const auto chosen = m_around.dialogs.openFiles(
        this, tr("Which backup?"), tr("Backups and stores (*.hearth *.sealed);;All files (*)"));
    if (!chosen.isEmpty()) {
        lookInside(std::filesystem::path(chosen.first().toStdString()));
    }
}

void BackupChooser::restore() {
    constexpr int kLeave = 0;
    constexpr int kRestore = 1;
    std::error_code unknown;
    const bool stands = std::filesystem::exists(m_around.store, unknown);
    const QString kept = stands ? tr("What stands now is kept beside the backups, and can be brought back in "
                                     "the same way.")
                                : tr("There is no store here yet.");
    const int answer =
        m_around.dialogs.ask(this, tr("Restore this backup?"),
                             m_inside->text() + QStringLiteral("\n\n") + kept + u' ' +
                                 tr("Records issued from then on have numbers of a new series."),
                             {tr("Leave it"), tr("Restore")}, kLeave);
    if (answer == kRestore) {
        Q_EMIT restoreWanted(QString::fromStdString(m_looked.string()), m_passphrase);
    }
}

}  // namespace hearth::ui::shell

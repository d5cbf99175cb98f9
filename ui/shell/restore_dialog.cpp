// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/restore_dialog.h"

#include <QKeyEvent>

namespace hearth::ui::shell {

namespace {
constexpr QSize kRestoreSize{860, 560};
}  // namespace

RestoreDialog::RestoreDialog(const BackupChooser::Around& around, const QString& why, QWidget* parent)
    : QDialog(parent) {
    setObjectName(QStringLiteral("restoreDialog"));
    setWindowTitle(tr("Hearthledger: open a backup"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(2 * look::kGap, 2 * look::kGap, 2 * look::kGap, 2 * look::kGap);
    lines->setSpacing(look::kGap);
    auto* sheet = new Sheet(this);
    sheet->lines()->addWidget(titleText(tr("Open a backup"), sheet));
    sheet->lines()->addWidget(bodyText(
        why.isEmpty() ? tr("A backup from a stick, a synchronised folder or another computer becomes "
                           "the store of this one. It is checked first, and stays as it is.")
                      : why,
        sheet));
    auto* chooser = new BackupChooser(around, sheet);
    sheet->lines()->addWidget(chooser);
    sheet->lines()->addStretch(1);
    lines->addWidget(sheet, 1);
    auto* back = new KeyButton(tr("Back"), ButtonKind::Plain, this);
    back->setObjectName(QStringLiteral("backButton"));
    back->showKey(QStringLiteral("Esc"));
    lines->addWidget(back, 0, Qt::AlignRight);
    connect(back, &QPushButton::clicked, this, &QDialog::reject);
    connect(chooser, &BackupChooser::restoreWanted, this,
            [this](const QString& path, const QString& passphrase) {
                m_backup = path;
                m_passphrase = passphrase;
                accept();
            });
    chooser->refresh({});
    resize(kRestoreSize);
    chooser->takeFocus();
}

void RestoreDialog::keyPressEvent(QKeyEvent* event) {
    if (isEnter(*event)) {
        return;  // no button is pressed from afar
    }
    QDialog::keyPressEvent(event);
}

}  // namespace hearth::ui::shell

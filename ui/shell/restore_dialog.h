// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/backup_chooser.h"

#include <QDialog>

namespace hearth::ui::shell {

/// Choosing a backup where no store is open: at the first start, or when the store can't be opened.
/// accepted() when one is to be restored.
class RestoreDialog : public QDialog {
    Q_OBJECT
  public:
    /// `why`: said above the list; empty: nothing is.
    RestoreDialog(const BackupChooser::Around& around, const QString& why, QWidget* parent = nullptr);
    [[nodiscard]] QString backup() const { return m_backup; }
    [[nodiscard]] QString passphrase() const { return m_passphrase; }

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QString m_backup;
    QString m_passphrase;
};

}  // namespace hearth::ui::shell

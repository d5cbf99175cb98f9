// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/backup_runner.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class BackupChooser;
}

namespace hearth::ui::firm {

/// Backups: how it stands with them, one now, the second folder, the passphrase; and one of them restored.
class BackupsPart : public QWidget {
    Q_OBJECT
  public:
    BackupsPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    QWidget* makeButtons();
    void showState();
    void backUp();
    void showDone(const store::BackupOutcome& outcome);
    void chooseSecond();
    void dropSecond();
    void seal();
    void tellFailed(const Error& error);

    shell::Context m_context;
    shell::BackupRunner* m_runner;
    shell::Text* m_state;
    shell::Text* m_trouble;
    shell::KeyButton* m_backUp = nullptr;
    shell::KeyButton* m_noSecond = nullptr;
    shell::KeyButton* m_seal = nullptr;
    shell::BackupChooser* m_chooser;
    bool m_isSealed = false;
};

}  // namespace hearth::ui::firm

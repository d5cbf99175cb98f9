// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/backups.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/kit.h"

namespace hearth::ui::shell {

class LineList;

/// The backups there are: Enter looks inside one, a second Enter asks to restore it, a third does. A file
/// from anywhere else can be taken too. It restores nothing itself: whoever holds the store open closes it
/// first.
class BackupChooser : public QWidget {
    Q_OBJECT
  public:
    struct Around {
        const words::Words& words;
        Dialogs& dialogs;
        std::filesystem::path store;
    };
    BackupChooser(const Around& around, QWidget* parent);

    /// Lists anew; what was looked into is forgotten.
    void refresh(const std::filesystem::path& secondFolder);
    void takeFocus();

  Q_SIGNALS:
    /// A person has looked inside it, and has said yes.
    void restoreWanted(const QString& path, const QString& passphrase);

  private:
    void lookInside(const std::filesystem::path& path);
    /// Nothing when a person does not want to go on.
    [[nodiscard]] std::optional<Result<store::BackupInside>> looked(const std::filesystem::path& path);
    void forget();
    void takeAnother();
    void restore();

    Around m_around;
    std::vector<store::BackupFile> m_files;
    std::filesystem::path m_looked;
    QString m_passphrase;
    LineList* m_list;
    KeyButton* m_look;
    KeyButton* m_other;
    Text* m_inside;
    KeyButton* m_restore;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/dialogs.h"

#include <QTemporaryDir>

namespace hearth::ui::shell {

/// The dialogs that wait for a person: plain, by keyboard, the default answer always set by the caller.
class SystemDialogs final : public Dialogs {
  public:
    void tell(QWidget* over, const QString& title, const QString& text) override;
    int ask(QWidget* over, const QString& title, const QString& text, const QStringList& answers,
            int safe) override;
    std::optional<QString> askText(QWidget* over, const QString& title, const QString& label) override;
    std::optional<QString> askPassphrase(QWidget* over, const QString& title, const QString& label) override;
    std::optional<QString> chooseFolder(QWidget* over, const QString& title) override;
    std::optional<QString> saveFile(QWidget* over, const QString& title, const QString& proposed,
                                    const QString& filter) override;
    QStringList openFiles(QWidget* over, const QString& title, const QString& filter) override;
    void openDocument(QWidget* over, const QString& name, const QByteArray& bytes) override;

  private:
    QTemporaryDir m_opened;  // copies for other programs, gone when this one ends
};

}  // namespace hearth::ui::shell

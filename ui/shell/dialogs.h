// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <optional>

class QWidget;

namespace hearth::ui::shell {

/// Everything that would stop and wait for a person, behind one interface, so that tests can answer.
class Dialogs {
  public:
    virtual ~Dialogs() = default;
    /// Tells something that needs an OK.
    virtual void tell(QWidget* over, const QString& title, const QString& text) = 0;
    /// Asks; gives the index of the answer chosen, -1 for Escape. `safe` is the default answer.
    virtual int ask(QWidget* over, const QString& title, const QString& text, const QStringList& answers,
                    int safe) = 0;
    /// Asks for one line of text (the reason of a revision); nothing when cancelled.
    virtual std::optional<QString> askText(QWidget* over, const QString& title, const QString& label) = 0;
    /// Asks for a passphrase, which nobody else can read on the screen; nothing when cancelled.
    virtual std::optional<QString> askPassphrase(QWidget* over, const QString& title, const QString& label) {
        return askText(over, title, label);
    }
    /// Which folder; nothing when cancelled.
    virtual std::optional<QString> chooseFolder(QWidget* over, const QString& title) {
        return saveFile(over, title, {}, {});
    }
    /// Where to save; nothing when cancelled.
    virtual std::optional<QString> saveFile(QWidget* over, const QString& title, const QString& proposed,
                                            const QString& filter) = 0;
    /// Which files to read; empty when cancelled.
    virtual QStringList openFiles(QWidget* over, const QString& title, const QString& filter) = 0;
    /// Shows a copy of a picture or paper with the program that the desktop has for it.
    virtual void openDocument(QWidget* over, const QString& name, const QByteArray& bytes) = 0;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/system_dialogs.h"

#include "ui/shell/question.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QUrl>

namespace hearth::ui::shell {

void SystemDialogs::tell(QWidget* over, const QString& title, const QString& text) {
    Question question(title, text, {QCoreApplication::translate("hearth::ui::shell::Question", "Understood")},
                      0, over);
    question.exec();
}

int SystemDialogs::ask(QWidget* over, const QString& title, const QString& text, const QStringList& answers,
                       int safe) {
    Question question(title, text, answers, safe, over);
    question.exec();
    return question.answer();
}

std::optional<QString> SystemDialogs::askText(QWidget* over, const QString& title, const QString& label) {
    TextQuestion question(title, label, over);
    if (question.exec() != QDialog::Accepted) {
        return std::nullopt;
    }
    return question.text();
}

std::optional<QString> SystemDialogs::askPassphrase(QWidget* over, const QString& title,
                                                    const QString& label) {
    TextQuestion question(title, label, over, TextQuestion::Shown::No);
    if (question.exec() != QDialog::Accepted) {
        return std::nullopt;
    }
    return question.text();
}

std::optional<QString> SystemDialogs::chooseFolder(QWidget* over, const QString& title) {
    const QString path = QFileDialog::getExistingDirectory(over, title);
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

std::optional<QString> SystemDialogs::saveFile(QWidget* over, const QString& title, const QString& proposed,
                                               const QString& filter) {
    const QString path = QFileDialog::getSaveFileName(over, title, proposed, filter);
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

QStringList SystemDialogs::openFiles(QWidget* over, const QString& title, const QString& filter) {
    return QFileDialog::getOpenFileNames(over, title, QString(), filter);
}

void SystemDialogs::openDocument(QWidget* over, const QString& name, const QByteArray& bytes) {
    const QString path = m_opened.filePath(QFileInfo(name).fileName());
    QFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
    file.close();
    if (!written || !QDesktopServices::openUrl(QUrl::fromLocalFile(path))) {
        tell(over, QCoreApplication::translate("hearth::ui::shell::SystemDialogs", "It can't be shown"),
             QCoreApplication::translate("hearth::ui::shell::SystemDialogs",
                                         "No program of this computer shows “%1”. It is kept as it is.")
                 .arg(name));
    }
}

}  // namespace hearth::ui::shell

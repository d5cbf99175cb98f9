// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/system_dialogs.h"

#include "ui/shell/question.h"

#include <QCoreApplication>
#include <QFileDialog>

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

std::optional<QString> SystemDialogs::saveFile(QWidget* over, const QString& title, const QString& proposed,
                                               const QString& filter) {
    const QString path = QFileDialog::getSaveFileName(over, title, proposed, filter);
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

}  // namespace hearth::ui::shell

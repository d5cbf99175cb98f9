// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/mail.h"

#include <QCoreApplication>
#include <QProcess>
#include <QStandardPaths>

#include <memory>

namespace hearth::ui::shell {
namespace {

constexpr int kMostWaiting = 15000;  // milliseconds until the mail program has taken it

tl::unexpected<Error> mailFailed(const char* why) {
    return tl::unexpected<Error>(
        Error{ErrorCode::MailFailed, {QCoreApplication::translate("Mail", why).toStdString()}});
}

}  // namespace

Result<void> beginMail(const Mail& mail) {
    const QString program = QStandardPaths::findExecutable(QStringLiteral("xdg-email"));
    if (program.isEmpty()) {
        return mailFailed(QT_TRANSLATE_NOOP("Mail", "the program xdg-email is not installed"));
    }
    auto process = std::make_unique<QProcess>();
    QStringList arguments{QStringLiteral("--utf8"), QStringLiteral("--subject"), mail.subject,
                          QStringLiteral("--body"), mail.text};
    for (const QString& attachment : mail.attachments) {
        arguments << QStringLiteral("--attach") << attachment;
    }
    process->start(program, arguments << QStringLiteral("mailto:") + mail.to);
    if (!process->waitForStarted()) {
        return mailFailed(QT_TRANSLATE_NOOP("Mail", "xdg-email could not be started"));
    }
    if (!process->waitForFinished(kMostWaiting)) {
        // It waits for the mail program's window to be closed: that goes on without us.
        QProcess* going = process.release();
        QObject::connect(going, &QProcess::finished, going, &QObject::deleteLater);
        return {};
    }
    if (process->exitStatus() != QProcess::NormalExit || process->exitCode() != 0) {
        return mailFailed(QT_TRANSLATE_NOOP("Mail", "this computer has no mail program set up"));
    }
    return {};
}

}  // namespace hearth::ui::shell

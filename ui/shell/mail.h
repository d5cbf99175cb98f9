// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>

#include <functional>

namespace hearth::ui::shell {

/// A mail to be looked over and sent by the person, in the mail program that the desktop has.
struct Mail {
    QString to;
    QString subject;
    QString text;
    QStringList attachments;  // paths
};

/// Opens a mail in the desktop's mail program. Error: MailFailed.
using BeginMail = std::function<Result<void>(const Mail&)>;

/// By xdg-email.
[[nodiscard]] Result<void> beginMail(const Mail& mail);

}  // namespace hearth::ui::shell

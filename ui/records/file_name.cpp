// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/file_name.h"

#include <QStringList>

namespace hearth::ui::records {

namespace {

constexpr qsizetype kLongest =
    60;  // of the address: the whole stays far below the 255 bytes of common file systems

bool isRefused(QChar letter) {
    static const QString refused = QStringLiteral("/\\:*?\"<>|");
    return refused.contains(letter) || letter.unicode() < 0x20 || letter.unicode() == 0x7f;
}

QString fit(const QString& text) {
    QString safe;
    for (const QChar letter : text) {
        safe += isRefused(letter) ? QChar(u' ') : letter;
    }
    safe = safe.simplified().left(kLongest).trimmed();
    while (safe.startsWith(u'.') || safe.startsWith(u' ')) {
        safe.remove(0, 1);  // a hidden file is a lost one
    }
    return safe;
}

}  // namespace

QString proposedFileName(const QString& number, int revision, const QString& address, const QString& isoDay) {
    QStringList parts{fit(number)};
    if (revision > 1) {
        parts << QStringLiteral("r%1").arg(revision);
    }
    parts << fit(address) << isoDay;
    parts.removeAll(QString());
    return parts.join(u' ') + QStringLiteral(".pdf");
}

}  // namespace hearth::ui::records

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop_notices.h"

#include <QDBusMessage>
#include <QVariantMap>

namespace hearth::app {

void DesktopNotices::notify(const QString& title, const QString& text) {
    if (!m_bus.isConnected()) {
        return;
    }
    constexpr uint kReplacesNone = 0;
    constexpr int kAsLongAsTheDesktopLikes = -1;
    auto call = QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.Notifications"), QStringLiteral("/org/freedesktop/Notifications"),
        QStringLiteral("org.freedesktop.Notifications"), QStringLiteral("Notify"));
    call << QStringLiteral("Hearthledger") << kReplacesNone << QStringLiteral("hearthledger") << title << text
         << QStringList() << QVariantMap{{QStringLiteral("desktop-entry"), QStringLiteral("hearthledger")}}
         << kAsLongAsTheDesktopLikes;
    m_bus.send(call);  // no answer is waited for
}

}  // namespace hearth::app

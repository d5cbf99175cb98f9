// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/notifying.h"

#include <QDBusConnection>

namespace hearth::app {

/// Notices by org.freedesktop.Notifications (Desktop Notifications Specification 1.2), which the usual
/// desktops have.
class DesktopNotices final : public ui::shell::Notifying {
  public:
    explicit DesktopNotices(const QDBusConnection& bus) : m_bus(bus) {}
    void notify(const QString& title, const QString& text) override;

  private:
    QDBusConnection m_bus;
};

}  // namespace hearth::app

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hearth::ui::shell {

/// The desktop's own notices, behind an interface so that tests see them. They may stand on a locked screen:
/// no name or address goes into one.
class Notifying {
  public:
    Notifying() = default;
    Notifying(const Notifying&) = delete;
    Notifying& operator=(const Notifying&) = delete;
    virtual ~Notifying() = default;
    /// Hands it to the desktop and does not wait; a desktop without notices shows none.
    virtual void notify(const QString& title, const QString& text) = 0;
};

}  // namespace hearth::ui::shell

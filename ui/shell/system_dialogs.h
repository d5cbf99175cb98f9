// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/dialogs.h"

namespace hearth::ui::shell {

/// The dialogs that wait for a person: plain, by keyboard, the default answer always set by the caller.
class SystemDialogs final : public Dialogs {
  public:
    void tell(QWidget* over, const QString& title, const QString& text) override;
    int ask(QWidget* over, const QString& title, const QString& text, const QStringList& answers,
            int safe) override;
    std::optional<QString> askText(QWidget* over, const QString& title, const QString& label) override;
    std::optional<QString> saveFile(QWidget* over, const QString& title, const QString& proposed,
                                    const QString& filter) override;
};

}  // namespace hearth::ui::shell

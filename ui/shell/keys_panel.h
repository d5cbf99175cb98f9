// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/panel.h"

namespace hearth::ui::shell {

/// The keys of the window, in a short list (F1).
class KeysPanel : public Panel {
    Q_OBJECT
  public:
    KeysPanel(const QStringList& places, QWidget* parent);
    void takeFocus() override;

  private:
    QWidget* m_close;
};

}  // namespace hearth::ui::shell

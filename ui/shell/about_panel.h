// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/panel.h"

namespace hearth::ui::shell {

/// What the program is, what it is not, and where its store lies.
class AboutPanel : public Panel {
    Q_OBJECT
  public:
    AboutPanel(const QString& storePath, QWidget* parent);
    void showCaution(const QString& caution);
    void takeFocus() override;

  private:
    Text* m_caution;
    QWidget* m_close;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/panel.h"
#include "ui/words/words.h"

namespace hearth::ui::shell {

/// What the program is, what it is not, and where its store lies.
class AboutPanel : public Panel {
    Q_OBJECT
  public:
    AboutPanel(const words::Words& words, const QString& storePath, QWidget* parent);
    void takeFocus() override;

  private:
    QWidget* m_close;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// The firm's logo: chosen from a file, shown as it will stand on paper, taken away again.
class LogoPart : public QWidget {
    Q_OBJECT
  public:
    LogoPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    void choose();
    [[nodiscard]] Result<void> keep(const QString& path);
    void takeAway();

    shell::Context m_context;
    QLabel* m_picture;
    shell::Text* m_state;
    shell::KeyButton* m_choose;
    shell::KeyButton* m_remove;
};

}  // namespace hearth::ui::firm

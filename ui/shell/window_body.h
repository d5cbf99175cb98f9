// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStackedWidget>

namespace hearth::ui::shell {

/// What lies between the bars of the window. It gives height to a bar that comes for a while, so that the
/// window's least height stays, and its foot on the screen.
class WindowBody : public QStackedWidget {
  public:
    using QStackedWidget::QStackedWidget;
    void giveHeight(int height);
    [[nodiscard]] QSize minimumSizeHint() const override;

  private:
    int m_given = 0;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/look/look.h"

#include <QWidget>

namespace hearth::ui::shell {

class Text;

/// A line across the window that somebody has to look at once: shown, or put away, by one key each.
class NewsBar : public QWidget {
    Q_OBJECT
  public:
    explicit NewsBar(QWidget* parent);
    /// Shows it, and tells it to screen readers.
    void tell(const QString& text);
    [[nodiscard]] QString text() const;

  Q_SIGNALS:
    void shown();
    void putAway();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Text* m_text;
};

}  // namespace hearth::ui::shell

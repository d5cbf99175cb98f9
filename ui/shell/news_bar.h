// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/look/look.h"

#include <QWidget>

namespace hearth::ui::shell {

/// One line across the window that somebody has to look at once: shown, or put away, by one key each. Where
/// it is too narrow the words are cut; the tool tip has them all.
class NewsBar : public QWidget {
    Q_OBJECT
  public:
    explicit NewsBar(QWidget* parent);
    /// Shows it, and tells it to screen readers.
    void tell(const QString& text);
    [[nodiscard]] QString text() const { return m_text; }

  Q_SIGNALS:
    void shown();
    void putAway();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QString m_text;
    QWidget* m_room;  // where the words stand
};

}  // namespace hearth::ui::shell

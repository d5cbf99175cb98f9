// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/look/look.h"

#include <QWidget>

namespace hearth::ui::shell {

/// One line across the window that stays: the demonstration firm, a store that can only be read.
class Band : public QWidget {
  public:
    Band(const QString& text, look::Role ground, look::Role ink, QWidget* parent);
    [[nodiscard]] QString text() const { return m_text; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QString m_text;
    look::Role m_ground;
    look::Role m_ink;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QVBoxLayout;

namespace hearth::ui::shell {

class Sheet;

/// A sheet that lies over the place in view until Escape: what to do first, the keys, about.
class Panel : public QWidget {
    Q_OBJECT
  public:
    explicit Panel(QWidget* parent);
    /// Where the keyboard starts when it is shown.
    virtual void takeFocus() = 0;

  Q_SIGNALS:
    void closed();

  protected:
    [[nodiscard]] QVBoxLayout* lines() const;
    /// The closing button, for the end of lines().
    [[nodiscard]] QWidget* closeButton();
    void keyPressEvent(QKeyEvent* event) override;

  private:
    Sheet* m_sheet;
};

}  // namespace hearth::ui::shell

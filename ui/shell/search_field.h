// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace hearth::ui::shell {

/// The window's search: every letter searches the place in view; Down or Enter goes to what was found, Escape
/// empties it and goes back.
class SearchField : public QLineEdit {
    Q_OBJECT
  public:
    explicit SearchField(QWidget* parent);
    void setHint(const QString& hint);

  Q_SIGNALS:
    void found();
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
};

}  // namespace hearth::ui::shell

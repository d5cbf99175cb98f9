// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace hearth::ui::shell {

/// The window's search, at every letter. Down goes to what was found, Enter opens the first of it, Escape
/// empties the field and goes back.
class SearchField : public QLineEdit {
    Q_OBJECT
  public:
    explicit SearchField(QWidget* parent);
    void setHint(const QString& hint);

  Q_SIGNALS:
    void down();
    void enter();
    void left();
    /// The keyboard went elsewhere.
    void focusLost();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

class QVBoxLayout;

namespace hearth::ui::shell {
class KeyButton;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// What to do first, on the sheet itself, right where the bad answer or reading was given: a title and one
/// step a line.
class WhatFirst : public QWidget {
    Q_OBJECT
  public:
    explicit WhatFirst(QWidget* parent);

    /// Shows the steps; no title and no steps hides it. True when it has just come into view.
    bool setSteps(const QString& title, const QStringList& steps);
    /// A button below the steps ("Done: go on"); empty: none.
    void setDoneButton(const QString& text);
    [[nodiscard]] shell::KeyButton* doneButton() const { return m_done; }
    [[nodiscard]] QString title() const;

  Q_SIGNALS:
    void done();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QVBoxLayout* m_lines;
    shell::Text* m_title;
    QWidget* m_steps = nullptr;
    shell::KeyButton* m_done;
    QString m_shownTitle;
    QStringList m_shown;
};

}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include <vector>

class QHBoxLayout;
class QVBoxLayout;

namespace hearth::ui::input {
class Editor;
}

namespace hearth::ui::shell {

/// A question with its answers as buttons. Enter presses the one with the focus, at first the safe one;
/// Escape answers -1.
class Question : public QDialog {
    Q_OBJECT
  public:
    Question(const QString& title, const QString& text, const QStringList& answers, int safe, QWidget* over);
    [[nodiscard]] int answer() const { return m_answer; }

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    int m_answer = -1;
};

/// Asks for one line of text. Enter in the field takes it unless it is blank. A passphrase is not shown, and
/// is taken to the letter.
class TextQuestion : public QDialog {
    Q_OBJECT
  public:
    enum class Shown { Yes, No };
    TextQuestion(const QString& title, const QString& label, QWidget* over, Shown shown = Shown::Yes);
    [[nodiscard]] QString text() const;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void take();
    input::Editor* m_field;
    Shown m_shown;
};

}  // namespace hearth::ui::shell

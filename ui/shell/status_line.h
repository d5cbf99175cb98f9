// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

namespace hearth::ui::shell {

class Text;

/// The line at the foot: what was just done at the left, or what stands there until it is mended; keys and
/// about at the right.
class StatusLine : public QWidget {
    Q_OBJECT
  public:
    explicit StatusLine(QWidget* parent);
    /// Stands for some seconds and is told to screen readers.
    void say(const QString& sentence);
    [[nodiscard]] QString said() const;
    /// What stands there until it is mended, or only done, wherever one is in the window; empty: nothing
    /// does.
    enum class Standing { Trouble, Reminder };
    void setStanding(const QString& sentence, Standing kind = Standing::Trouble);

  Q_SIGNALS:
    void undoPressed();
    void keysPressed();
    void aboutPressed();

  private:
    Text* m_said;
    Text* m_standing;
    QTimer m_fade;
};

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <vector>

namespace hearth::ui::due {

/// What can be done from the list or from one premises.
enum class Action {
    Book,
    NoAccess,
    Call,
    Remind,        // those that were chosen
    RemindersDue,  // by the firm's cadence
    Earlier,
    Copy,
    Premises,
    Visit,
    Day,
    Overview,
    Summary,
    Calendar,
    Evidence,
    Duties,
};

/// Buttons for some of them, each with its key, in lines that wrap.
class ActionBar : public QWidget {
    Q_OBJECT
  public:
    /// `writes`: false leaves those out of use that change the store.
    ActionBar(const std::vector<Action>& actions, bool writes, QWidget* parent);

  Q_SIGNALS:
    void asked(Action action);
};

}  // namespace hearth::ui::due

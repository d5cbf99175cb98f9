// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QProgressDialog>
#include <QWidget>

namespace hearth::ui::shell {

/// How far long work has come, shown where it takes longer than a moment; its button or Escape stops the
/// work. When it goes, the keyboard is where it was before.
class Progress {
  public:
    /// @param name the dialog's object name.
    Progress(QWidget* over, const char* name, const QString& doing, const QString& stop);
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    /// False once somebody stopped it.
    bool operator()(int done, int all);

  private:
    QPointer<QWidget> m_over;
    QPointer<QWidget> m_focus;
    QProgressDialog m_dialog;
    bool m_wasShown = false;
};

}  // namespace hearth::ui::shell

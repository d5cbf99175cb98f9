// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/progress.h"

#include <QApplication>

namespace hearth::ui::shell {

namespace {
constexpr int kLongMilliseconds = 700;  // nobody wonders before
}

Progress::Progress(QWidget* over, const char* name, const QString& doing, const QString& stop)
    : m_over(over), m_focus(QApplication::focusWidget()), m_dialog(doing, stop, 0, 0, over) {
    m_dialog.setObjectName(QLatin1String(name));
    m_dialog.setAccessibleName(doing);
    m_dialog.setWindowModality(Qt::WindowModal);
    m_dialog.setMinimumDuration(kLongMilliseconds);
    // By itself Escape may only hide it.
    QObject::connect(&m_dialog, &QDialog::rejected, &m_dialog, &QProgressDialog::cancel);
}

Progress::~Progress() {
    m_dialog.reset();
    m_dialog.hide();
    // Not every desktop gives the keyboard back to the window below.
    if (m_wasShown && m_over != nullptr) {
        m_over->window()->activateWindow();
        if (m_focus != nullptr) {
            m_focus->setFocus(Qt::OtherFocusReason);
        }
    }
}

bool Progress::operator()(int done, int all) {
    m_dialog.setMaximum(all);
    m_dialog.setValue(done);  // lets the window live, since it is modal
    m_wasShown = m_wasShown || m_dialog.isVisible();
    return !m_dialog.wasCanceled();
}

}  // namespace hearth::ui::shell

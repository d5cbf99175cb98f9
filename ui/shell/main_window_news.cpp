// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"
#include "ui/shell/news_bar.h"
#include "ui/shell/notifying.h"
#include "ui/shell/openers.h"

#include <QApplication>

// What turned overdue, said once when the window comes up.
namespace hearth::ui::shell {

void MainWindow::tellOverdueNews() {
    const auto where = newsWhere(m_parts.store);
    m_overdue = where == NewsWhere::Nowhere ? std::nullopt : overdueNews(m_parts.store, m_parts.clock);
    if (!m_overdue) {
        return;
    }
    const QString text = newsText(*m_overdue, m_parts.words);
    m_news->tell(text);
    if (where == NewsWhere::WindowAndDesktop && m_parts.notifying != nullptr) {
        m_parts.notifying->notify(tr("Gas safety checks"), text);
    }
}

void MainWindow::showOverdueNews() {
    const auto premises = m_overdue ? m_overdue->premises : std::vector<reg::PremisesId>();
    putNewsAway();
    if (auto* opener = bringOpener<OverdueOpener>()) {
        opener->openOverdue(premises);
    }
}

/// A store that can only be read keeps no day: there it is said again at the next start.
void MainWindow::putNewsAway() {
    const QWidget* focus = QApplication::focusWidget();
    const bool hadFocus = focus != nullptr && m_news->isAncestorOf(focus);
    m_overdue.reset();
    m_news->hide();
    if (hadFocus && placeInView() != nullptr) {
        placeInView()->takeFocus();
    }
    if (m_parts.store.isReadOnly()) {
        return;
    }
    if (const auto noted = noteNewsSeen(m_parts.store, m_parts.clock); !noted) {
        say(m_parts.words.error(noted.error()));
    }
}

}  // namespace hearth::ui::shell

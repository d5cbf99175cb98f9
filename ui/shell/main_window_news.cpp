// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"
#include "ui/shell/news_bar.h"
#include "ui/shell/notifying.h"
#include "ui/shell/openers.h"
#include "ui/shell/window_body.h"

#include <QApplication>
#include <QTimer>

#include <algorithm>
#include <chrono>

// What turned overdue, said once when the window comes up and when a day begins.
namespace hearth::ui::shell {

namespace {
constexpr std::chrono::minutes kDayAskedEvery{1};
}

QSize WindowBody::minimumSizeHint() const {
    const QSize least = QStackedWidget::minimumSizeHint();
    return {least.width(), std::max(0, least.height() - m_given)};
}

void WindowBody::giveHeight(int height) {
    m_given = height;
    updateGeometry();
}

/// The day is asked for again and again, not timed: the machine may sleep over midnight, or its clock be set.
void MainWindow::watchDay() {
    m_newsDay = today();
    tellOverdueNews();
    auto* timer = new QTimer(this);
    timer->setObjectName(QStringLiteral("newsTimer"));
    connect(timer, &QTimer::timeout, this, &MainWindow::beginDay);
    timer->start(kDayAskedEvery);
}

void MainWindow::beginDay() {
    if (m_newsDay == today()) {
        return;
    }
    m_newsDay = today();
    tellOverdueNews();
    if (dynamic_cast<OverdueOpener*>(placeInView()) != nullptr) {
        placeInView()->refresh();  // what it counts by the day
    }
}

calendar::Date MainWindow::today() const {
    return m_parts.clock.today("Europe/London");
}

void MainWindow::tellOverdueNews() {
    const auto where = newsWhere(m_parts.store);
    NewsDay day(m_parts.store, m_parts.settings);
    m_overdue = where == NewsWhere::Nowhere ? std::nullopt : overdueNews(m_parts.store, day, today());
    if (!m_overdue) {
        hideNews();
        return;
    }
    const QString text = newsText(*m_overdue, m_parts.words);
    m_body->giveHeight(m_news->sizeHint().height());
    m_news->tell(text);
    if (m_parts.store.isReadOnly()) {
        static_cast<void>(day.note(today()));  // who only reads puts nothing right: once a day is enough
    }
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

void MainWindow::hideNews() {
    const QWidget* focus = QApplication::focusWidget();
    const bool hadFocus = focus != nullptr && m_news->isAncestorOf(focus);
    m_news->hide();
    m_body->giveHeight(0);
    if (hadFocus && placeInView() != nullptr) {
        placeInView()->takeFocus();
    }
}

void MainWindow::putNewsAway() {
    m_overdue.reset();
    hideNews();
    NewsDay day(m_parts.store, m_parts.settings);
    if (const auto noted = day.note(today()); !noted) {
        say(m_parts.words.error(noted.error()));
    }
}

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/date_time_editors.h"

#include <QCalendarWidget>
#include <QKeyEvent>
#include <QLocale>
#include <QRegularExpression>
#include <QVBoxLayout>

namespace hearth::ui::input {

namespace {

calendar::Date civil(const QDate& date) {
    return {std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
            std::chrono::day(static_cast<unsigned>(date.day()))};
}

QDate qdate(calendar::Date date) {
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}

/// Month in letters that parseDate reads back, whatever the window's language.
QString shown(calendar::Date date) {
    return QLocale::c().toString(qdate(date), QStringLiteral("d MMM yyyy"));
}

bool opensCalendar(const QKeyEvent& event) {
    return event.key() == Qt::Key_Down && event.modifiers().testFlag(Qt::AltModifier);
}

}  // namespace

DateEditor::DateEditor(QWidget* parent, Today today)
    : LineEditor(parent), m_today(today ? std::move(today) : [] { return civil(QDate::currentDate()); }) {}

QString DateEditor::text() const {
    const QString now = line()->text();
    return !m_iso.isEmpty() && now == m_shown ? m_iso : now;
}

void DateEditor::setText(const QString& text) {
    showText(text);
    markCommitted();
}

void DateEditor::showText(const QString& text) {
    const auto date = calendar::fromIso(text.toStdString());
    m_iso = date ? text : QString();
    m_shown = date ? shown(*date) : text;
    LineEditor::showText(m_shown);
}

void DateEditor::settle() {
    if (text() == m_iso && !m_iso.isEmpty()) {
        return;
    }
    const auto date = calendar::parseDate(line()->text().trimmed().toStdString(), m_today());
    if (date) {
        showText(QString::fromStdString(calendar::isoText(*date)));
    }
}

QString DateEditor::hint() const {
    const QString keys = tr(
        "Day, day and month, or the whole date; t is today, +7 a week from now. Alt+Down opens a calendar.");
    const QString suggested = LineEditor::hint();
    return suggested.isEmpty() ? keys : suggested + u' ' + keys;
}

QString DateEditor::shownAs(const QString& text) const {
    const auto date = calendar::fromIso(text.toStdString());
    return date ? shown(*date) : text;
}

void DateEditor::offerCalendar() {
    auto* popup = new QWidget(this, Qt::Popup);
    popup->setAttribute(Qt::WA_DeleteOnClose);
    auto* month = new QCalendarWidget(popup);
    month->setObjectName(QStringLiteral("dateCalendar"));
    month->setAccessibleName(tr("Calendar"));
    const auto date = calendar::parseDate(line()->text().trimmed().toStdString(), m_today());
    month->setSelectedDate(qdate(date ? *date : m_today()));
    auto* box = new QVBoxLayout(popup);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(month);
    connect(month, &QCalendarWidget::activated, this, [this, popup](const QDate& chosen) {
        showText(QString::fromStdString(calendar::isoText(civil(chosen))));
        popup->close();
        commit();
    });
    popup->move(line()->mapToGlobal(QPoint(0, line()->height())));
    popup->show();
    month->setFocus();
}

bool DateEditor::eventFilter(QObject* watched, QEvent* event) {
    const bool isKey = watched == line() && event->type() == QEvent::KeyPress;
    if (isKey && opensCalendar(*static_cast<QKeyEvent*>(event)) && !line()->isReadOnly()) {
        offerCalendar();
        return true;
    }
    return LineEditor::eventFilter(watched, event);
}

std::optional<QString> timeText(const QString& typed, const Now& now) {
    const QString text = typed.trimmed();
    if (text.compare(QStringLiteral("n"), Qt::CaseInsensitive) == 0) {
        return now().toString(QStringLiteral("HH:mm"));
    }
    static const QRegularExpression form(
        QStringLiteral("^([0-9]{1,2})(?:[:.]([0-9]{2})(?:[:.]([0-9]{2}))?|([0-9]{2}))$"));
    const auto match = form.match(text);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const QString minutes = match.captured(2).isEmpty() ? match.captured(4) : match.captured(2);
    const QString seconds = match.captured(3);
    const QTime time(match.captured(1).toInt(), minutes.toInt(), seconds.toInt());
    if (!time.isValid()) {
        return std::nullopt;
    }
    return time.toString(seconds.isEmpty() ? QStringLiteral("HH:mm") : QStringLiteral("HH:mm:ss"));
}

TimeEditor::TimeEditor(QWidget* parent, Now now)
    : LineEditor(parent), m_now(now ? std::move(now) : [] { return QTime::currentTime(); }) {}

void TimeEditor::settle() {
    if (const auto time = timeText(text(), m_now)) {
        showText(*time);
    }
}

QString TimeEditor::hint() const {
    return tr("Hours and minutes; n is now.");
}

Editor* makeDateEditor(QWidget* parent, Today today) {
    return new DateEditor(parent, std::move(today));
}

Editor* makeTimeEditor(QWidget* parent, Now now) {
    return new TimeEditor(parent, std::move(now));
}

}  // namespace hearth::ui::input

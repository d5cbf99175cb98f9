// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_text.h"
#include "ui/due/story_page.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

/// The line of time of story_page.h.
namespace hearth::ui::due {

using look::Role;
using store::StoryKind;

namespace {

constexpr int kStoryHead = 20;
constexpr int kMostYears = 2;  // that are shown at first
constexpr int kFewestDays = 60;
constexpr int kMostDays = 10 * 366;

std::optional<Mark> markOf(StoryKind kind) {
    switch (kind) {
        case StoryKind::Check:
        case StoryKind::EarlierCheck:
            return Mark::Check;
        case StoryKind::Letter:
            return Mark::Letter;
        case StoryKind::Call:
            return Mark::Call;
        case StoryKind::NoAccess:
            return Mark::NoAccess;
        case StoryKind::Booking:
            return Mark::Booked;
        default:
            return std::nullopt;
    }
}

}  // namespace

StoryLine::StoryLine(const words::Words& words, QWidget* parent) : QWidget(parent), m_words(words) {
    setObjectName(QStringLiteral("storyLine"));
    setFocusPolicy(Qt::StrongFocus);
    setFixedHeight(92);
    setAccessibleName(tr("The story on a line of time"));
    setAccessibleDescription(tr("All of it stands in the list below. Left and Right move, + and − zoom."));
}

void StoryLine::show(const std::vector<store::StoryEvent>& events, const store::DueLine& line,
                     calendar::Date today) {
    m_events = events;
    m_line = line;
    m_today = today;
    m_pointed.reset();
    calendar::Date first = calendar::addMonths(today, -3);
    calendar::Date last = calendar::addMonths(today, 2);
    const auto oldest = calendar::addMonths(today, -12 * kMostYears);
    for (const auto& event : events) {
        first = std::min(first, std::max(event.date, oldest));
        last = std::max(last, event.date);
    }
    m_scale.first = calendar::addDays(first, -14);
    m_scale.last = calendar::addDays(last, 30);
    update();
}

void StoryLine::point(std::optional<std::size_t> event) {
    m_pointed = event;
    if (event && *event < m_events.size() && !m_scale.shows(m_events[*event].date)) {
        const int half = calendar::daysBetween(m_scale.first, m_scale.last) / 2;
        m_scale.first = calendar::addDays(m_events[*event].date, -half);
        m_scale.last = calendar::addDays(m_events[*event].date, half);
    }
    update();
}

TimeScale StoryLine::placed() const {
    TimeScale scale = m_scale;
    scale.left = look::kGap;
    scale.width = std::max(1, width() - 2 * look::kGap);
    return scale;
}

void StoryLine::drawEvents(QPainter& painter, const QRectF& band, const TimeScale& scale) const {
    const auto scheme = shell::currentScheme();
    for (const auto& event : m_events) {
        if (!scale.shows(event.date)) {
            continue;
        }
        const double x = scale.at(event.date);
        if (const auto mark = markOf(event.kind)) {
            drawMark(painter, QRectF(x - 10, band.center().y() - 10, 20, 20), *mark, scheme);
        } else if (event.kind != StoryKind::Deadline && event.kind != StoryKind::WindowOpens) {
            painter.setPen(QPen(look::colour(Role::SoftInk, scheme), 1.2));
            painter.setBrush(look::colour(Role::Sheet, scheme));
            painter.drawRect(QRectF(x - 3, band.bottom() - 3, 6, 6));
        }
    }
}

void StoryLine::drawPointed(QPainter& painter, const QRectF& band, const TimeScale& scale) const {
    if (!m_pointed || *m_pointed >= m_events.size()) {
        return;
    }
    const auto& event = m_events[*m_pointed];
    if (!scale.shows(event.date)) {
        return;
    }
    const auto scheme = shell::currentScheme();
    const double x = scale.at(event.date);
    painter.setPen(QPen(look::colour(Role::Key, scheme), 1.5));
    painter.drawLine(QPointF(x, band.bottom() + 2), QPointF(x, band.bottom() + 8));
    painter.setFont(look::font(look::TypeRole::Small));
    const QString text = m_words.shortDate(event.date) + QStringLiteral(" · ") + storyTitle(event);
    const int wide = QFontMetrics(painter.font()).horizontalAdvance(text) + 2;
    const double left = std::clamp(x - wide / 2.0, 2.0, std::max(2.0, double(width() - wide - 2)));
    painter.drawText(QRectF(left, band.bottom() + 8, wide, 16), Qt::AlignLeft | Qt::AlignVCenter, text);
}

void StoryLine::paintEvent(QPaintEvent*) {
    const auto scheme = shell::currentScheme();
    const TimeScale scale = placed();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), look::colour(Role::Sheet, scheme));
    drawMonths(painter, QRectF(scale.left, 2, scale.width, kStoryHead - 2), scale, scheme);
    const QRectF band(scale.left, kStoryHead, scale.width, 44);
    drawGrid(painter, band, m_today, scale, scheme);
    store::DueLine bare = m_line;  // its marks come from the events, which are more
    bare.lastCheck.reset();
    bare.letters.clear();
    bare.attempts.clear();
    bare.booking.reset();
    drawStrip(painter, band, bare, m_today, scale, scheme);
    drawEvents(painter, band, scale);
    drawPointed(painter, band, scale);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(hasFocus() ? QPen(look::colour(Role::Focus, scheme), 2)
                              : QPen(look::colour(Role::Line, scheme), 1));
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

void StoryLine::keyPressEvent(QKeyEvent* event) {
    const int days = calendar::daysBetween(m_scale.first, m_scale.last);
    const auto move = [this](int by) {
        m_scale.first = calendar::addDays(m_scale.first, by);
        m_scale.last = calendar::addDays(m_scale.last, by);
    };
    switch (event->key()) {
        case Qt::Key_Left:
            move(-std::max(1, days / 8));
            break;
        case Qt::Key_Right:
            move(std::max(1, days / 8));
            break;
        case Qt::Key_Plus:
        case Qt::Key_Minus: {
            const bool nearer = event->key() == Qt::Key_Plus;
            const int by = nearer ? days / 5 : -days / 4;
            const int then = days - 2 * by;
            if (then >= kFewestDays && then <= kMostDays) {
                m_scale.first = calendar::addDays(m_scale.first, by);
                m_scale.last = calendar::addDays(m_scale.last, -by);
            }
            break;
        }
        default:
            QWidget::keyPressEvent(event);
            return;
    }
    update();
}

void StoryLine::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void StoryLine::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace hearth::ui::due

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/strip.h"

#include "ui/shell/kit.h"

#include <QFontMetrics>
#include <QLocale>
#include <QPainterPath>

#include <algorithm>

namespace hearth::ui::due {

using calendar::Date;
using look::Role;

namespace {

constexpr double kBandHigh = 14;
constexpr double kMarkWide = 13;
constexpr double kMonthLabelGap = 6;

QColor inkAt(Role role, look::Scheme scheme) {
    return look::colour(role, scheme);
}

void drawEnvelope(QPainter& painter, const QRectF& box) {
    painter.drawRect(box);
    const QPolygonF flap({box.topLeft(), QPointF(box.center().x(), box.center().y() + 0.5), box.topRight()});
    painter.drawPolyline(flap);
}

/// A receiver: two ear pieces on a bow.
void drawReceiver(QPainter& painter, const QRectF& box) {
    QPainterPath bow(QPointF(box.left() + 1.5, box.bottom() - 1.5));
    bow.quadTo(QPointF(box.center().x(), box.top() - 3), QPointF(box.right() - 1.5, box.bottom() - 1.5));
    painter.drawPath(bow);
    painter.drawRect(QRectF(box.left(), box.bottom() - 3, 3, 3));
    painter.drawRect(QRectF(box.right() - 3, box.bottom() - 3, 3, 3));
}

void drawDiamond(QPainter& painter, const QRectF& box) {
    const QPointF middle = box.center();
    painter.drawPolygon(QPolygonF({{middle.x(), box.top()},
                                   {box.right(), middle.y()},
                                   {middle.x(), box.bottom()},
                                   {box.left(), middle.y()}}));
}

void drawTick(QPainter& painter, const QRectF& box) {
    painter.drawPolyline(QPolygonF({{box.left() + box.width() * 0.22, box.top() + box.height() * 0.52},
                                    {box.left() + box.width() * 0.42, box.top() + box.height() * 0.72},
                                    {box.left() + box.width() * 0.78, box.top() + box.height() * 0.3}}));
}

QRectF squareIn(const QRectF& box, double side) {
    const double size = std::min({side, box.width(), box.height()});
    return {box.center().x() - size / 2, box.center().y() - size / 2, size, size};
}

/// Where a day lies beyond an edge: a small arrow head, pointing there.
void drawBeyond(QPainter& painter, double x, double y, double direction, const QColor& ink) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawPolygon(QPolygonF({{x + direction * 6, y}, {x, y - 5}, {x, y + 5}}));
}

}  // namespace

double TimeScale::at(Date day) const {
    const double all = std::max(1, calendar::daysBetween(first, last));
    return left + width * calendar::daysBetween(first, day) / all;
}

Role inkOf(calendar::DueState state) {
    switch (state) {
        case calendar::DueState::Overdue:
            return Role::Fail;
        case calendar::DueState::LastTwoWeeks:
            return Role::LookAgain;
        case calendar::DueState::WindowOpen:
        case calendar::DueState::Booked:
            return Role::Key;
        default:
            return Role::NoVerdict;
    }
}

void drawMark(QPainter& painter, const QRectF& around, Mark mark, look::Scheme scheme) {
    const QRectF box = squareIn(around, kMarkWide);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    switch (mark) {
        case Mark::Check:
            painter.setPen(QPen(inkAt(Role::Pass, scheme), 1.5));
            painter.setBrush(inkAt(Role::Sheet, scheme));
            painter.drawEllipse(box.adjusted(1, 1, -1, -1));
            drawTick(painter, box);
            break;
        case Mark::Letter:
            painter.setPen(QPen(inkAt(Role::Key, scheme), 1.3));
            painter.setBrush(inkAt(Role::Sheet, scheme));
            drawEnvelope(painter, box.adjusted(0.5, 2.5, -0.5, -2.5));
            break;
        case Mark::Call:
            painter.setPen(QPen(inkAt(Role::Key, scheme), 1.5));
            drawReceiver(painter, box.adjusted(1, 2, -1, -2));
            break;
        case Mark::NoAccess:
            painter.setPen(QPen(inkAt(Role::Fail, scheme), 2.4));
            painter.drawLine(box.topLeft() + QPointF(2.5, 2.5), box.bottomRight() - QPointF(2.5, 2.5));
            painter.drawLine(box.topRight() + QPointF(-2.5, 2.5), box.bottomLeft() + QPointF(2.5, -2.5));
            break;
        case Mark::Booked:
            painter.setPen(QPen(inkAt(Role::Sheet, scheme), 1));
            painter.setBrush(inkAt(Role::Key, scheme));
            drawDiamond(painter, box.adjusted(0, -1, 0, 1));
            break;
        case Mark::Window:
            painter.fillRect(box.adjusted(-3, 2, 3, -2), inkAt(Role::KeyGround, scheme));
            painter.setPen(QPen(inkAt(Role::Key, scheme), 0.6));
            painter.drawRect(box.adjusted(-3, 2, 3, -2));
            break;
        case Mark::Overrun:
            painter.fillRect(box.adjusted(-3, 2, 3, -2), inkAt(Role::FailGround, scheme));
            painter.fillRect(box.adjusted(-3, 2, 3, -2), QBrush(inkAt(Role::Fail, scheme), Qt::BDiagPattern));
            break;
        case Mark::Deadline:
            painter.fillRect(QRectF(box.center().x() - 1.25, box.top() - 1, 2.5, box.height() + 2),
                             inkAt(Role::Ink, scheme));
            break;
        case Mark::Today:
            painter.setPen(QPen(inkAt(Role::Fail, scheme), 1.4, Qt::DashLine));
            painter.drawLine(QPointF(box.center().x(), box.top() - 1),
                             QPointF(box.center().x(), box.bottom() + 1));
            break;
    }
    painter.restore();
}

namespace {

void drawClockFace(QPainter& painter, const QRectF& box) {
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(box);
    painter.drawLine(box.center(), QPointF(box.center().x(), box.top() + 3));
    painter.drawLine(box.center(), QPointF(box.right() - 4, box.center().y()));
}

void drawQuestion(QPainter& painter, const QRectF& box) {
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(box);
    const double x = box.center().x();
    QPainterPath hook(QPointF(x - 2.5, box.top() + 5.5));
    hook.cubicTo(QPointF(x - 2, box.top() + 2), QPointF(x + 4, box.top() + 3.5),
                 QPointF(x + 1.5, box.top() + 7));
    hook.lineTo(QPointF(x, box.top() + 8.8));
    painter.drawPath(hook);
    painter.drawPoint(QPointF(x, box.bottom() - 3));
}

}  // namespace

void drawState(QPainter& painter, const QRectF& around, calendar::DueState state, look::Scheme scheme) {
    using calendar::DueState;
    const QRectF box = squareIn(around, 15);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = inkAt(inkOf(state), scheme);
    painter.setPen(QPen(ink, 1.5));
    painter.setBrush(ink);
    const QRectF inner = box.adjusted(1, 1, -1, -1);
    switch (state) {
        case DueState::Overdue:
            look::drawOutcome(painter, box, rulebook::Outcome::Fail, scheme);
            break;
        case DueState::LastTwoWeeks:
            look::drawOutcome(painter, box, rulebook::Outcome::LookAgain, scheme);
            break;
        case DueState::WindowOpen:  // half of a disc is filled
            painter.drawPie(inner, 90 * 16, 180 * 16);
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(inner);
            break;
        case DueState::Booked:
            painter.setPen(Qt::NoPen);
            drawDiamond(painter, box);
            break;
        case DueState::OpeningSoon:
            drawClockFace(painter, inner);
            break;
        case DueState::Later:
            look::drawOutcome(painter, box, rulebook::Outcome::NoVerdict, scheme);
            break;
        case DueState::NotKnown:
            drawQuestion(painter, inner);
            break;
        case DueState::NoDuty:
            painter.drawLine(QPointF(box.left() + 3, box.center().y()),
                             QPointF(box.right() - 3, box.center().y()));
            break;
    }
    painter.restore();
}

namespace {

/// A band between two days as far as the scale shows it; nothing where it shows none of it.
std::optional<QRectF> bandOf(const QRectF& box, Date from, Date until, const TimeScale& scale) {
    if (until < scale.first || from > scale.last || until <= from) {
        return std::nullopt;
    }
    const double x1 = scale.at(std::max(from, scale.first));
    const double x2 = scale.at(std::min(until, scale.last));
    return QRectF(x1, box.center().y() - kBandHigh / 2, x2 - x1, kBandHigh);
}

void drawMarkOn(QPainter& painter, const QRectF& box, Date day, Mark mark, const TimeScale& scale,
                look::Scheme scheme) {
    if (scale.shows(day)) {
        drawMark(painter, QRectF(scale.at(day) - 10, box.center().y() - 10, 20, 20), mark, scheme);
    }
}

void drawDeadline(QPainter& painter, const QRectF& box, const store::DueLine& line, Date today,
                  const TimeScale& scale, look::Scheme scheme) {
    if (*line.deadline < scale.first) {
        drawBeyond(painter, scale.left + 8, box.center().y(), -1, inkAt(Role::Fail, scheme));
    } else if (*line.deadline > scale.last) {
        drawBeyond(painter, scale.left + scale.width - 8, box.center().y(), 1, inkAt(Role::SoftInk, scheme));
    } else {
        const bool over = *line.deadline < today;
        painter.fillRect(QRectF(scale.at(*line.deadline) - 1.25, box.center().y() - 13, 2.5, 26),
                         inkAt(over ? Role::Fail : Role::Ink, scheme));
    }
    if (line.latest && scale.shows(*line.latest)) {  // not decided: the other date that the texts may mean
        painter.setPen(QPen(inkAt(Role::LookAgain, scheme), 1.6, Qt::DotLine));
        const double x = scale.at(*line.latest);
        painter.drawLine(QPointF(x, box.center().y() - 13), QPointF(x, box.center().y() + 13));
    }
}

}  // namespace

void drawStrip(QPainter& painter, const QRectF& box, const store::DueLine& line, Date today,
               const TimeScale& scale, look::Scheme scheme) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(box);
    if (line.deadline) {
        if (line.opens) {
            if (const auto band = bandOf(box, *line.opens, *line.deadline, scale)) {
                painter.fillRect(*band, inkAt(Role::KeyGround, scheme));
                painter.setPen(QPen(inkAt(Role::Key, scheme), 0.5));
                painter.drawRect(*band);
            }
        }
        if (const auto band = bandOf(box, *line.deadline, today, scale)) {
            painter.fillRect(*band, inkAt(Role::FailGround, scheme));
            painter.fillRect(*band, QBrush(inkAt(Role::Fail, scheme), Qt::BDiagPattern));
        }
        drawDeadline(painter, box, line, today, scale, scheme);
    }
    if (line.lastCheck) {
        drawMarkOn(painter, box, *line.lastCheck, Mark::Check, scale, scheme);
    }
    for (const auto day : line.letters) {
        drawMarkOn(painter, box, day, Mark::Letter, scale, scheme);
    }
    for (const auto day : line.attempts) {
        drawMarkOn(painter, box, day, Mark::NoAccess, scale, scheme);
    }
    if (line.booking) {
        drawMarkOn(painter, box, line.booking->date, Mark::Booked, scale, scheme);
    }
    painter.restore();
}

namespace {

std::vector<Date> monthStarts(const TimeScale& scale) {
    std::vector<Date> starts;
    Date month = scale.first.year() / scale.first.month() / std::chrono::day{1};
    for (; month <= scale.last; month = calendar::addMonths(month, 1)) {
        if (month >= scale.first) {
            starts.push_back(month);
        }
    }
    return starts;
}

}  // namespace

void drawGrid(QPainter& painter, const QRectF& box, Date today, const TimeScale& scale, look::Scheme scheme) {
    painter.save();
    painter.setPen(QPen(inkAt(Role::Line, scheme), 1));
    for (const auto month : monthStarts(scale)) {
        const double x = std::round(scale.at(month)) + 0.5;
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
    }
    if (scale.shows(today)) {
        painter.setPen(QPen(inkAt(Role::Fail, scheme), 1.2, Qt::DashLine));
        const double x = std::round(scale.at(today)) + 0.5;
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
    }
    painter.restore();
}

void drawMonths(QPainter& painter, const QRectF& box, const TimeScale& scale, look::Scheme scheme) {
    painter.save();
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(inkAt(Role::SoftInk, scheme));
    const QFontMetricsF metrics(painter.font());
    const QLocale english(QLocale::English);
    double free = box.left();
    for (const auto month : monthStarts(scale)) {
        const auto number = static_cast<int>(static_cast<unsigned>(month.month()));
        QString name = english.monthName(number, QLocale::ShortFormat);
        if (number == 1) {
            name += QStringLiteral(" %1").arg(static_cast<int>(month.year()));
        }
        const double x = scale.at(month) + 3;
        const double wide = metrics.horizontalAdvance(name);
        if (x < free || x + wide > box.right()) {
            continue;
        }
        painter.drawText(QRectF(x, box.top(), wide + 1, box.height()), Qt::AlignVCenter | Qt::AlignLeft,
                         name);
        free = x + wide + kMonthLabelGap;
    }
    painter.restore();
}

namespace {

struct LegendEntry {
    Mark mark;
    QString text;
};

std::vector<LegendEntry> legendEntries() {
    return {
        {Mark::Check, Legend::tr("last check")},   {Mark::Window, Legend::tr("window that keeps the date")},
        {Mark::Deadline, Legend::tr("deadline")},  {Mark::Overrun, Legend::tr("overdue")},
        {Mark::Booked, Legend::tr("booked")},      {Mark::Letter, Legend::tr("letter or call")},
        {Mark::NoAccess, Legend::tr("no access")}, {Mark::Today, Legend::tr("today")}};
}

constexpr int kLegendLine = 20;
constexpr int kLegendMark = 22;

}  // namespace

Legend::Legend(QWidget* parent) : QWidget(parent) {
    setFont(look::font(look::TypeRole::Small));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    QStringList texts;
    for (const auto& entry : legendEntries()) {
        texts << entry.text;
    }
    setAccessibleName(tr("What the marks on the strip mean: %1").arg(texts.join(QStringLiteral(", "))));
}

int Legend::layOut(int width, QPainter* painter) const {
    const QFontMetrics metrics(font());
    int x = 0;
    int y = 0;
    for (const auto& entry : legendEntries()) {
        const int wide = kLegendMark + metrics.horizontalAdvance(entry.text) + 2 * look::kGap;
        if (x > 0 && x + wide > width) {
            x = 0;
            y += kLegendLine;
        }
        if (painter != nullptr) {
            drawMark(*painter, QRectF(x, y, kLegendMark - 4, kLegendLine), entry.mark,
                     shell::currentScheme());
            painter->setPen(inkAt(Role::SoftInk, shell::currentScheme()));
            painter->drawText(QRect(x + kLegendMark, y, wide, kLegendLine), Qt::AlignVCenter | Qt::AlignLeft,
                              entry.text);
        }
        x += wide;
    }
    return y + kLegendLine;
}

int Legend::heightForWidth(int width) const {
    return layOut(width, nullptr);
}

void Legend::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(font());
    (void)layOut(width(), &painter);
}

}  // namespace hearth::ui::due

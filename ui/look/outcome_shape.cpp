// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"

#include <QPainterPath>
#include <QPen>

#include <algorithm>

namespace hearth::ui::look {

namespace {

/// All shapes are drawn in a square of one unit.
QPen markPen(const QColor& colour, double width) {
    return {QBrush(colour), width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

void drawPass(QPainter& painter, const QColor& ink, const QColor& mark) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawEllipse(QRectF(0.03, 0.03, 0.94, 0.94));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(markPen(mark, 0.115));
    const QPointF tick[] = {{0.29, 0.52}, {0.44, 0.67}, {0.72, 0.36}};
    painter.drawPolyline(tick, 3);
}

void drawFail(QPainter& painter, const QColor& ink, const QColor& mark) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawRoundedRect(QRectF(0.05, 0.05, 0.90, 0.90), 0.09, 0.09);
    painter.setPen(markPen(mark, 0.115));
    painter.drawLine(QPointF(0.33, 0.33), QPointF(0.67, 0.67));
    painter.drawLine(QPointF(0.67, 0.33), QPointF(0.33, 0.67));
}

void drawLookAgain(QPainter& painter, const QColor& ink, const QColor& mark) {
    painter.setPen(markPen(ink, 0.12));
    painter.setBrush(ink);
    const QPointF corners[] = {{0.50, 0.13}, {0.93, 0.88}, {0.07, 0.88}};
    painter.drawPolygon(corners, 3);
    painter.setPen(markPen(mark, 0.095));
    painter.drawLine(QPointF(0.50, 0.39), QPointF(0.50, 0.60));
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark);
    painter.drawEllipse(QPointF(0.50, 0.765), 0.06, 0.06);
}

void drawNoVerdict(QPainter& painter, const QColor& ink) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(markPen(ink, 0.105));
    painter.drawEllipse(QRectF(0.09, 0.09, 0.82, 0.82));
    painter.drawLine(QPointF(0.33, 0.50), QPointF(0.67, 0.50));
}

}  // namespace

void drawOutcome(QPainter& painter, const QRectF& box, rulebook::Outcome outcome, Scheme scheme) {
    const double side = std::min(box.width(), box.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center() - QPointF(side / 2, side / 2));
    painter.scale(side, side);
    const QColor ink = colour(inkOf(outcome), scheme);
    const QColor mark = colour(Role::Sheet, scheme);
    switch (outcome) {
        case rulebook::Outcome::Pass:
            drawPass(painter, ink, mark);
            break;
        case rulebook::Outcome::Fail:
            drawFail(painter, ink, mark);
            break;
        case rulebook::Outcome::LookAgain:
            drawLookAgain(painter, ink, mark);
            break;
        case rulebook::Outcome::NoVerdict:
            drawNoVerdict(painter, ink);
            break;
    }
    painter.restore();
}

}  // namespace hearth::ui::look

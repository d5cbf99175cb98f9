// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/signature_pad.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace hearth::ui::visit {

namespace {

constexpr int kPixelsPerMm = 5;
constexpr double kPenPixels = 2.2;
/// Nearer points than this, in tenths of a millimetre, are the same to an eye.
constexpr int kNearest = 2;

QPainterPath pathOf(const reg::PenStroke& stroke, double scale) {
    QPainterPath path;
    for (std::size_t i = 0; i < stroke.size(); ++i) {
        const QPointF at(stroke[i].x * scale, stroke[i].y * scale);
        if (i == 0) {
            path.moveTo(at);
        }
        path.lineTo(at + QPointF(stroke.size() == 1 ? 0.1 : 0, 0));
    }
    return path;
}

}  // namespace

SignaturePad::SignaturePad(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::CrossCursor);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize SignaturePad::sizeHint() const {
    return {reg::kPadWidth * kPixelsPerMm, reg::kPadHeight * kPixelsPerMm};
}

void SignaturePad::setStrokes(const reg::PenStrokes& strokes) {
    if (m_strokes != strokes) {
        m_strokes = strokes;
        update();
    }
}

double SignaturePad::tenthsToPixels() const {
    return width() / (10.0 * reg::kPadWidth);
}

reg::PenPoint SignaturePad::pointAt(const QPointF& pixels) const {
    const auto tenths = [this](double at, int most) {
        return std::clamp(static_cast<int>(std::lround(at / tenthsToPixels())), 0, 10 * most);
    };
    return {tenths(pixels.x(), reg::kPadWidth), tenths(pixels.y(), reg::kPadHeight)};
}

std::size_t SignaturePad::pointCount() const {
    std::size_t count = m_drawing.size();
    for (const auto& stroke : m_strokes) {
        count += stroke.size();
    }
    return count;
}

void SignaturePad::addPoint(const QPointF& pixels) {
    const auto point = pointAt(pixels);
    const bool isNear = !m_drawing.empty() && std::abs(m_drawing.back().x - point.x) < kNearest &&
                        std::abs(m_drawing.back().y - point.y) < kNearest;
    if (!isNear && pointCount() < reg::kMostPenPoints) {
        m_drawing.push_back(point);
        update();
    }
}

void SignaturePad::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && !m_readOnly) {
        m_drawing.clear();
        addPoint(event->position());
    }
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons().testFlag(Qt::LeftButton) && !m_drawing.empty()) {
        addPoint(event->position());
    }
}

void SignaturePad::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && !m_drawing.empty()) {
        m_strokes.push_back(std::move(m_drawing));
        m_drawing.clear();
        Q_EMIT changed();
    }
}

void SignaturePad::keyPressEvent(QKeyEvent* event) {
    const bool takesBack = event->key() == Qt::Key_Backspace;
    if ((takesBack || event->key() == Qt::Key_Delete) && !m_readOnly) {
        if (!m_strokes.empty()) {
            if (takesBack) {
                m_strokes.pop_back();
            } else {
                m_strokes.clear();
            }
            update();
            Q_EMIT changed();
        }
        return;
    }
    QWidget::keyPressEvent(event);
}

void SignaturePad::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void SignaturePad::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void SignaturePad::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto scheme = shell::currentScheme();
    const double edge = hasFocus() ? 2 : 1;
    painter.setPen(QPen(look::colour(hasFocus() ? look::Role::Focus : look::Role::FieldEdge, scheme), edge));
    painter.setBrush(look::colour(look::Role::FieldGround, scheme));
    painter.drawRoundedRect(QRectF(rect()).adjusted(edge / 2, edge / 2, -edge / 2, -edge / 2), 3, 3);
    const double line = height() * 0.78;
    painter.setPen(QPen(look::colour(look::Role::Line, scheme), 1));
    painter.drawLine(QPointF(2 * look::kGap, line), QPointF(width() - 2 * look::kGap, line));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(
        QPen(look::colour(look::Role::Ink, scheme), kPenPixels, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const auto& stroke : m_strokes) {
        painter.drawPath(pathOf(stroke, tenthsToPixels()));
    }
    painter.drawPath(pathOf(m_drawing, tenthsToPixels()));
}

}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/clock_face.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QFontMetrics>
#include <QPainter>

namespace hearth::ui::visit {

namespace {

constexpr int kFacePad = look::kGap;

}  // namespace

ClockFace::ClockFace(Size size, QWidget* parent) : QWidget(parent), m_size(size) {
    setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
}

QFont ClockFace::figureFont() const {
    return look::font(m_size == Size::Big ? look::TypeRole::BigFigure : look::TypeRole::Figure);
}

void ClockFace::setFigure(const QString& figure, const QString& unit, const QString& caption, bool alarmed) {
    if (figure == m_figure && unit == m_unit && caption == m_caption && alarmed == m_alarmed) {
        return;
    }
    m_figure = figure;
    m_unit = unit;
    m_caption = caption;
    m_alarmed = alarmed;
    updateGeometry();
    update();
}

QSize ClockFace::sizeHint() const {
    const QFontMetrics small(look::font(look::TypeRole::Small));
    // As wide as any time, so that the figures beside it stand still.
    const int least = QFontMetrics(figureFont()).horizontalAdvance(QStringLiteral("+00:00"));
    const int height =
        QFontMetrics(look::font(look::TypeRole::BigFigure)).height() + small.height() + kFacePad;
    return {(m_size == Size::Big ? least : least / 2) + 2 * kFacePad, height};
}

void ClockFace::paintEvent(QPaintEvent*) {
    using look::Role;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto scheme = shell::currentScheme();
    if (m_alarmed) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(look::colour(Role::Key, scheme));
        painter.drawRoundedRect(rect(), 4, 4);
    }
    const int left = m_alarmed ? kFacePad : 0;
    const QFontMetrics small(look::font(look::TypeRole::Small));
    const QRect top(left, 0, width() - left, height() - small.height() - kFacePad / 2);
    const QFont big = figureFont();
    painter.setFont(big);
    const Role ink = m_alarmed ? Role::OnKey : m_size == Size::Big ? Role::Key : Role::Ink;
    painter.setPen(look::colour(ink, scheme));
    const int baseline = top.bottom() - QFontMetrics(look::font(look::TypeRole::BigFigure)).descent();
    painter.drawText(left, baseline, m_figure);
    const int after = left + QFontMetrics(big).horizontalAdvance(m_figure) + kFacePad;
    painter.setFont(look::font(look::TypeRole::Body));
    painter.setPen(look::colour(m_alarmed ? Role::OnKey : Role::SoftInk, scheme));
    painter.drawText(after, baseline, m_unit);
    painter.setFont(look::font(look::TypeRole::Small));
    const QRect below(left + 2, top.bottom(), width() - left - 2, small.height() + kFacePad / 2);
    painter.drawText(below, Qt::AlignLeft | Qt::AlignTop,
                     small.elidedText(m_caption, Qt::ElideRight, below.width()));
}

}  // namespace hearth::ui::visit

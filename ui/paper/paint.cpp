// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/layout.h"

#include <QPen>
#include <QPolygonF>

#include <cmath>

namespace hearth::ui::paper {

namespace {

// A plot's lines, millimetres; a mark's rim, of its size.
constexpr double kDash = 1.1;
constexpr double kDot = 0.45;
constexpr double kRim = 0.14;

/// Text is drawn in fine units, everything else in millimetres; the painter's scale is changed only where one
/// follows the other.
class PagePainter {
  public:
    PagePainter(QPainter& painter, look::Scheme scheme) : m_painter(painter), m_scheme(scheme) {}

    void operator()(const TextItem& item) {
        use(Unit::Fine);
        usePen(item.role);
        const QPointF at(std::round(item.origin.x() * kUnitsPerMm),
                         std::round(item.origin.y() * kUnitsPerMm) - item.ascent);
        for (const QGlyphRun& run : item.runs) {
            m_painter.drawGlyphRun(at, run);
        }
    }

    void operator()(const RuleItem& item) {
        use(Unit::Millimetre);
        m_painter.fillRect(QRectF(item.from, QSizeF(item.length, item.thickness)), ink(item.role));
    }

    void operator()(const FrameItem& item) {
        use(Unit::Millimetre);
        m_painter.setPen(QPen(ink(item.role), item.thickness, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        m_pen.reset();
        const double inset = item.thickness / 2;
        m_painter.drawRect(item.box.adjusted(inset, inset, -inset, -inset));
    }

    void operator()(const ShapeItem& item) {
        use(Unit::Millimetre);
        look::drawOutcome(m_painter, item.box, item.outcome, m_scheme);
    }

    void operator()(const CodeItem& item) {
        use(Unit::Millimetre);
        m_painter.save();
        // Smoothed edges would leave light seams between the rows on a screen.
        m_painter.setRenderHint(QPainter::Antialiasing, false);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(ink(look::Role::Ink));
        QList<QRectF> boxes;
        for (const QRect& run : item.runs) {
            boxes.append(QRectF(item.origin.x() + run.x() * item.moduleSize,
                                item.origin.y() + run.y() * item.moduleSize, run.width() * item.moduleSize,
                                item.moduleSize));
        }
        m_painter.drawRects(boxes.constData(), static_cast<int>(boxes.size()));
        m_painter.restore();
    }

    void operator()(const PictureItem& item) {
        use(Unit::Millimetre);
        m_painter.save();
        m_painter.setRenderHint(QPainter::SmoothPixmapTransform);
        // A PDF would otherwise hold a logo as JPEG, with the marks that leaves around letters.
        m_painter.setRenderHint(QPainter::LosslessImageRendering, !item.isPhotograph);
        m_painter.drawImage(item.box, item.image);
        m_painter.restore();
    }

    void operator()(const LineItem& item) {
        use(Unit::Millimetre);
        QPen pen(ink(item.role), item.thickness, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        if (item.stroke != Stroke::Solid) {
            pen.setCapStyle(Qt::FlatCap);
            // In thicknesses of the pen.
            const double on = (item.stroke == Stroke::Dashed ? kDash : kDot) / item.thickness;
            const double off = (item.stroke == Stroke::Dashed ? kDash : 2 * kDot) / item.thickness;
            pen.setDashPattern({on, off});
        }
        m_painter.setPen(pen);
        m_pen.reset();
        m_painter.drawPolyline(item.points.constData(), static_cast<int>(item.points.size()));
    }

    void operator()(const MarkItem& item) {
        use(Unit::Millimetre);
        m_painter.save();
        const bool isRing = item.mark == Mark::Ring;
        const double rim = kRim * item.size;
        m_painter.setPen(QPen(ink(isRing ? item.role : look::Role::Sheet), isRing ? 1.6 * rim : rim));
        m_painter.setBrush(ink(isRing ? look::Role::Sheet : item.role));
        const double half = item.size / 2;
        const QPointF at = item.centre;
        switch (item.mark) {
            case Mark::Disc:
                m_painter.drawEllipse(at, half, half);
                break;
            case Mark::Ring:
                m_painter.drawEllipse(at, half - 0.8 * rim, half - 0.8 * rim);
                break;
            case Mark::Square:
                m_painter.drawRect(QRectF(at.x() - half, at.y() - half, item.size, item.size));
                break;
            case Mark::Diamond:
                m_painter.drawPolygon(QPolygonF{at + QPointF(0, -1.2 * half), at + QPointF(1.2 * half, 0),
                                                at + QPointF(0, 1.2 * half), at + QPointF(-1.2 * half, 0)});
                break;
            case Mark::Triangle:
                m_painter.drawPolygon(QPolygonF{at + QPointF(0, -1.2 * half), at + QPointF(1.1 * half, half),
                                                at + QPointF(-1.1 * half, half)});
                break;
        }
        m_painter.restore();
    }

  private:
    enum class Unit { Millimetre, Fine };

    void use(Unit unit) {
        if (unit != m_unit) {
            const double by = unit == Unit::Fine ? 1 / kUnitsPerMm : kUnitsPerMm;
            m_painter.scale(by, by);
            m_unit = unit;
        }
    }

    [[nodiscard]] QColor ink(look::Role role) const { return look::colour(role, m_scheme); }

    void usePen(look::Role role) {
        if (m_pen != role) {
            m_painter.setPen(ink(role));
            m_pen = role;
        }
    }

    QPainter& m_painter;
    look::Scheme m_scheme;
    Unit m_unit = Unit::Millimetre;
    std::optional<look::Role> m_pen;
};

}  // namespace

void paintPage(QPainter& painter, const Page& page, look::Scheme scheme) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    painter.setBrush(Qt::NoBrush);
    PagePainter paint(painter, scheme);
    for (const Item& item : page.items) {
        std::visit(paint, item);
    }
    painter.restore();
}

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/layout.h"

#include <QPen>

namespace hearth::ui::paper {

namespace {

/// Paper is white whatever the window's scheme.
QColor inkOnPaper(look::Role role) {
    return look::colour(role, look::Scheme::Light);
}

/// Text is drawn in fine units, everything else in millimetres; the painter's scale is changed only where one
/// follows the other.
class PagePainter {
  public:
    explicit PagePainter(QPainter& painter) : m_painter(painter) {}

    void operator()(const TextItem& item) {
        use(Unit::Fine);
        usePen(item.role);
        const QPointF at(item.origin.x() * kUnitsPerMm, item.origin.y() * kUnitsPerMm - item.ascent);
        for (const QGlyphRun& run : item.runs) {
            m_painter.drawGlyphRun(at, run);
        }
    }

    void operator()(const RuleItem& item) {
        use(Unit::Millimetre);
        m_painter.fillRect(QRectF(item.from, QSizeF(item.length, item.thickness)), inkOnPaper(item.role));
    }

    void operator()(const FrameItem& item) {
        use(Unit::Millimetre);
        m_painter.setPen(
            QPen(inkOnPaper(item.role), item.thickness, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        m_pen.reset();
        const double inset = item.thickness / 2;
        m_painter.drawRect(item.box.adjusted(inset, inset, -inset, -inset));
    }

    void operator()(const ShapeItem& item) {
        use(Unit::Millimetre);
        look::drawOutcome(m_painter, item.box, item.outcome, look::Scheme::Light);
    }

    void operator()(const CodeItem& item) {
        use(Unit::Millimetre);
        m_painter.save();
        // Smoothed edges would leave light seams between the rows on a screen.
        m_painter.setRenderHint(QPainter::Antialiasing, false);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(inkOnPaper(look::Role::Ink));
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
        // A PDF would otherwise hold it as JPEG, with the marks that leaves around letters.
        m_painter.setRenderHint(QPainter::LosslessImageRendering);
        m_painter.drawImage(item.box, item.image);
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

    void usePen(look::Role role) {
        if (m_pen != role) {
            m_painter.setPen(inkOnPaper(role));
            m_pen = role;
        }
    }

    QPainter& m_painter;
    Unit m_unit = Unit::Millimetre;
    std::optional<look::Role> m_pen;
};

}  // namespace

void paintPage(QPainter& painter, const Page& page) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    painter.setBrush(Qt::NoBrush);
    PagePainter paint(painter);
    for (const Item& item : page.items) {
        std::visit(paint, item);
    }
    painter.restore();
}

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/page_preview.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QPainter>
#include <QPaintEvent>

#include <algorithm>
#include <cmath>

namespace hearth::ui::records {

namespace {
constexpr int kWidest = 820;              // logical pixels: about life size
constexpr int kBetween = 2 * look::kGap;  // pages
}  // namespace

PagePreview::PagePreview(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("pagePreview"));
    setAccessibleName(tr("Pages of the record"));
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    clear();
}

void PagePreview::show(const record::Document& document, const paper::PageOptions& options) {
    m_layout.emplace(document, options);
    m_stamp = options.stamp;
    QStringList spoken;
    for (int page = 0; page < m_layout->pageCount(); ++page) {
        for (const auto& run : m_layout->runs(page)) {
            spoken << run.text;
        }
    }
    setAccessibleDescription(spoken.join(u'\n'));
    setVisible(true);
    fitHeight();
    update();
}

void PagePreview::clear() {
    m_layout.reset();
    setAccessibleDescription({});
    setVisible(false);
}

double PagePreview::scale() const {
    return m_layout ? std::min(width(), kWidest) / m_layout->pageSize().width() : 1.0;
}

QRectF PagePreview::box(int page) const {
    const QSizeF size = m_layout->pageSize() * scale();
    return {0.0, page * (size.height() + kBetween), size.width(), size.height()};
}

void PagePreview::fitHeight() {
    if (m_layout) {
        setFixedHeight(static_cast<int>(std::ceil(box(m_layout->pageCount() - 1).bottom())) + 1);
    }
}

void PagePreview::resizeEvent(QResizeEvent*) {
    fitHeight();
}

void PagePreview::paintEvent(QPaintEvent* event) {
    if (!m_layout) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    for (int page = 0; page < m_layout->pageCount(); ++page) {
        const QRectF sheet = box(page);
        if (!sheet.intersects(QRectF(event->rect()))) {
            continue;
        }
        // Paper is white whatever the window's scheme: it shows what comes out of the printer.
        painter.fillRect(sheet, look::colour(look::Role::Sheet, look::Scheme::Light));
        painter.save();
        painter.translate(sheet.topLeft());
        painter.scale(scale(), scale());
        m_layout->paint(painter, page);
        painter.restore();
        const bool focused = hasFocus();
        const auto edge = focused ? look::Role::Focus : look::Role::SheetEdge;
        painter.setPen(QPen(look::colour(edge, shell::currentScheme()), focused ? 2 : 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(sheet.adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

}  // namespace hearth::ui::records

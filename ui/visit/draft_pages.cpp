// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/draft_pages.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QPainter>
#include <QPaintEvent>

#include <cmath>

namespace hearth::ui::visit {

namespace {

constexpr int kBetweenPages = 2 * look::kGap;

}  // namespace

DraftPages::DraftPages(QWidget* parent) : QWidget(parent) {
    // Not Fixed: a layout would hold it to the height of its size hint, whatever its width asks for.
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void DraftPages::setDocument(const record::Document& document) {
    m_layout.emplace(document, paper::PageOptions{});
    updateGeometry();
    update();
}

double DraftPages::pageHeight(int width) const {
    const QSizeF page = m_layout->pageSize();
    return page.height() * width / page.width();
}

int DraftPages::heightForWidth(int width) const {
    return m_layout ? static_cast<int>(std::ceil(pageCount() * (pageHeight(width) + kBetweenPages))) : 0;
}

void DraftPages::paintEvent(QPaintEvent* event) {
    if (!m_layout) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double height = pageHeight(width());
    for (int page = 0; page < pageCount(); ++page) {
        const QRectF box(0, page * (height + kBetweenPages), width(), height);
        if (!box.intersects(event->rect())) {
            continue;
        }
        // Paper is white whatever the window's scheme.
        painter.fillRect(box, look::colour(look::Role::Sheet, look::Scheme::Light));
        painter.save();
        painter.translate(box.topLeft());
        painter.scale(width() / m_layout->pageSize().width(), width() / m_layout->pageSize().width());
        m_layout->paint(painter, page);
        painter.restore();
        painter.setPen(look::colour(look::Role::SheetEdge, shell::currentScheme()));
        painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/hits_panel.h"

#include "ui/look/look.h"
#include "ui/shell/hit_words.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::shell {
namespace {

constexpr int kHitsWide = 560;
constexpr int kHitsAway = 24;  // from the window's foot

}  // namespace

HitsPanel::HitsPanel(QWidget* field, const words::Words& words, QWidget* window)
    : QFrame(window), m_field(field), m_words(words), m_list(new LineList(tr("What was found"), {}, this)) {
    setObjectName(QStringLiteral("hitsPanel"));
    m_list->setObjectName(QStringLiteral("hitsList"));
    m_list->setGrowing(true);
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(1, 1, 1, 1);
    lines->addWidget(m_list);
    m_list->installEventFilter(this);
    window->installEventFilter(this);
    connect(m_list, &LineList::opened, this, &HitsPanel::open);
    hide();
}

void HitsPanel::show(const store::Hits& found) {
    m_hits = found.hits;
    m_rows.clear();
    std::vector<Line> lines;
    for (const auto& hit : m_hits) {
        if (m_rows.empty() || hit.kind != m_hits[m_rows.size() - 1].kind) {
            Line heading;
            heading.title = hitKindTitle(hit.kind);
            heading.heading = true;
            lines.push_back(std::move(heading));
        }
        m_rows.push_back(static_cast<int>(lines.size()));
        lines.push_back(hitLine(hit, m_words));
    }
    if (found.more && !lines.empty()) {
        Line more;
        more.title = tr("There are more: type another word.");
        more.heading = true;
        lines.push_back(std::move(more));
    }
    m_list->setCurrentRow(-1);
    m_list->setLines(std::move(lines));
    setVisible(!m_hits.empty());
    if (!m_hits.empty()) {
        place();
        raise();
    }
}

void HitsPanel::place() {
    const QWidget* window = parentWidget();
    const QPoint corner = m_field->mapTo(window, QPoint(m_field->width(), m_field->height() + 2));
    const int width = std::min(kHitsWide, window->width() - 2 * kHitsAway);
    const int height = std::min(m_list->sizeHint().height() + 2, window->height() - corner.y() - kHitsAway);
    const int left = std::clamp(corner.x() - width, kHitsAway, std::max(kHitsAway, window->width() - width));
    setGeometry(left, corner.y(), width, std::max(height, 0));
}

void HitsPanel::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

bool HitsPanel::holdsFocus() const {
    return m_list->hasFocus();
}

void HitsPanel::openFirst() {
    if (!m_rows.empty()) {
        open(m_rows.front());
    }
}

void HitsPanel::open(int row) {
    const auto at = std::find(m_rows.begin(), m_rows.end(), row);
    if (at != m_rows.end()) {
        const store::Hit hit = m_hits[static_cast<std::size_t>(at - m_rows.begin())];
        hide();
        Q_EMIT opened(hit);
    }
}

void HitsPanel::backToField() {
    m_list->setCurrentRow(-1);
    m_field->setFocus(Qt::OtherFocusReason);
}

bool HitsPanel::goesBack(const QKeyEvent& key) {
    if (key.key() == Qt::Key_Escape ||
        (key.key() == Qt::Key_Up && !m_rows.empty() && m_list->currentRow() == m_rows.front())) {
        backToField();
        return true;
    }
    const bool isText = !key.text().isEmpty() && key.text().at(0).isPrint();
    const bool plain = (key.modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0;
    if ((isText && plain) || key.key() == Qt::Key_Backspace) {
        backToField();
        QKeyEvent again(QEvent::KeyPress, key.key(), key.modifiers(), key.text());
        QApplication::sendEvent(m_field, &again);
        return true;
    }
    return false;
}

bool HitsPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        return goesBack(*static_cast<QKeyEvent*>(event));
    }
    if (watched == m_list && event->type() == QEvent::FocusOut && QApplication::focusWidget() != m_field) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::ActiveWindowFocusReason && reason != Qt::PopupFocusReason) {
            hide();
        }
    }
    if (watched == parentWidget() && event->type() == QEvent::Resize && isVisible()) {
        place();
    }
    return QFrame::eventFilter(watched, event);
}

void HitsPanel::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        update();
    }
}

void HitsPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), look::colour(look::Role::Sheet, currentScheme()));
    painter.setPen(look::colour(look::Role::SheetEdge, currentScheme()));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace hearth::ui::shell

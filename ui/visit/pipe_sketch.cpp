// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/pipe_sketch.h"

#include "ui/look/look.h"
#include "ui/paper/layout.h"
#include "ui/shell/kit.h"
#include "ui/words/pipe_words.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <array>
#include <cmath>

namespace hearth::ui::visit {

namespace {

constexpr std::array kZoomSteps{50, 67, 80, 100, 125, 150, 200, 300};  // percent
constexpr int kPlainStep = 3;
constexpr int kMostHeight = 380;  // beyond it the sketch scrolls in its own room
constexpr int kRim = 4;

}  // namespace

PipeSketch::PipeSketch(QWidget* parent) : QAbstractScrollArea(parent), m_step(kPlainStep) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    viewport()->setAutoFillBackground(false);
    viewport()->setFocusPolicy(Qt::NoFocus);
    setAccessibleName(tr("Sketch of the pipework"));
    setToolTip(tr("+ and \u2212 make the sketch larger and smaller, 0 as it was, arrows move it."));
}

int PipeSketch::zoom() const {
    return kZoomSteps.at(static_cast<std::size_t>(m_step));
}

double PipeSketch::scale() const {
    return logicalDpiX() / paper::kMmPerInch * zoom() / 100.0;
}

QSize PipeSketch::drawnSize() const {
    return {static_cast<int>(std::ceil(m_width * scale())) + 2 * kRim,
            static_cast<int>(std::ceil(m_set.height * scale())) + 2 * kRim};
}

void PipeSketch::draw(record::Diagram diagram) {
    setVisible(!diagram.sections.empty());
    if (diagram == m_diagram && !m_set.items.empty()) {
        return;
    }
    m_diagram = std::move(diagram);
    setAccessibleDescription(words::diagramInWords(m_diagram));
    layOut();
}

/// The width of the room as it is without zoom: zooming makes all larger, and breaks no line anew.
void PipeSketch::layOut() {
    const double plain = logicalDpiX() / paper::kMmPerInch;
    const double room = (viewport()->width() - 2 * kRim) / plain;
    m_width = std::max(room, paper::wholeDiagramWidth(m_diagram));
    m_set = paper::setDiagram(m_diagram, paper::TypeSetter(), m_width);
    setStep(m_step);
}

void PipeSketch::setStep(int step) {
    m_step = std::clamp(step, 0, static_cast<int>(kZoomSteps.size()) - 1);
    const QSize drawn = drawnSize();
    const QSize room = viewport()->size();
    horizontalScrollBar()->setRange(0, std::max(0, drawn.width() - room.width()));
    horizontalScrollBar()->setPageStep(room.width());
    horizontalScrollBar()->setSingleStep(fontMetrics().height() * 2);
    const int height = std::min(drawn.height(), kMostHeight);
    verticalScrollBar()->setRange(0, std::max(0, drawn.height() - height));
    verticalScrollBar()->setPageStep(height);
    verticalScrollBar()->setSingleStep(fontMetrics().height() * 2);
    setAccessibleName(tr("Sketch of the pipework, %1 %").arg(zoom()));
    updateGeometry();
    viewport()->update();
}

QSize PipeSketch::sizeHint() const {
    const bool isWide = horizontalScrollBar()->maximum() > 0;
    const int bar = isWide ? horizontalScrollBar()->sizeHint().height() : 0;
    return {320, std::min(drawnSize().height(), kMostHeight) + bar};
}

QSize PipeSketch::minimumSizeHint() const {
    return {160, sizeHint().height()};
}

void PipeSketch::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    const auto scheme = shell::currentScheme();
    painter.save();
    painter.translate(kRim - horizontalScrollBar()->value(), kRim - verticalScrollBar()->value());
    painter.scale(scale(), scale());
    paper::paintPage(painter, paper::Page{m_set.items}, scheme);
    painter.restore();
    if (hasFocus()) {
        painter.setPen(QPen(look::colour(look::Role::Key, scheme), 2));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void PipeSketch::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    if (event->size().width() != event->oldSize().width() && !m_diagram.sections.empty()) {
        layOut();
    }
}

void PipeSketch::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Plus:
        case Qt::Key_Equal:  // the same key without Shift
            setStep(m_step + 1);
            break;
        case Qt::Key_Minus:
            setStep(m_step - 1);
            break;
        case Qt::Key_0:
            setStep(kPlainStep);
            break;
        default:
            QAbstractScrollArea::keyPressEvent(event);
            return;
    }
    event->accept();
}

void PipeSketch::wheelEvent(QWheelEvent* event) {
    if (!(event->modifiers() & Qt::ControlModifier)) {
        event->ignore();
        return;
    }
    const int turned = event->angleDelta().y();
    setStep(m_step + (turned > 0 ? 1 : turned < 0 ? -1 : 0));
    event->accept();
}

void PipeSketch::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
}

void PipeSketch::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

}  // namespace hearth::ui::visit

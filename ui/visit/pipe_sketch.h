// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/diagram.h"
#include "ui/paper/diagram.h"

#include <QAbstractScrollArea>

namespace hearth::ui::visit {

/// The pipework as a tree drawn to read, by the same code as on the record. With the keyboard on it + and -
/// make it larger and smaller, 0 as it was, arrows move it; Ctrl and the wheel do as + and -, the wheel alone
/// moves the sheet. What it shows is its description for a screen reader.
class PipeSketch : public QAbstractScrollArea {
    Q_OBJECT
  public:
    explicit PipeSketch(QWidget* parent);
    void draw(record::Diagram diagram);
    /// In percent.
    [[nodiscard]] int zoom() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void layOut();
    void setStep(int step);
    /// Pixels to the millimetre.
    [[nodiscard]] double scale() const;
    [[nodiscard]] QSize drawnSize() const;

    record::Diagram m_diagram;
    paper::SetDiagram m_set;
    double m_width = 0;  // of the drawing, millimetres
    int m_step;
};

}  // namespace hearth::ui::visit

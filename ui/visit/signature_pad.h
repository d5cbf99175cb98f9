// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/hand_signature.h"

#include <QWidget>

namespace hearth::ui::visit {

/// A place to sign with mouse, pen or finger. Each stroke is told when the pen is lifted. Backspace takes the
/// last one away, Delete all of them.
class SignaturePad : public QWidget {
    Q_OBJECT
  public:
    explicit SignaturePad(QWidget* parent);
    void setStrokes(const reg::PenStrokes& strokes);
    [[nodiscard]] const reg::PenStrokes& strokes() const { return m_strokes; }
    void setReadOnly(bool readOnly) { m_readOnly = readOnly; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  Q_SIGNALS:
    void changed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    [[nodiscard]] double tenthsToPixels() const;
    [[nodiscard]] reg::PenPoint pointAt(const QPointF& pixels) const;
    [[nodiscard]] std::size_t pointCount() const;
    void addPoint(const QPointF& pixels);

    reg::PenStrokes m_strokes;
    reg::PenStroke m_drawing;  // the pen is down
    bool m_readOnly = false;
};

}  // namespace hearth::ui::visit

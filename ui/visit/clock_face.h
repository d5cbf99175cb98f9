// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

namespace hearth::ui::visit {

/// A large figure with a line below it: the time left, a reading. `alarmed` turns its ground, so that the end
/// of a stage is seen across a room.
class ClockFace : public QWidget {
    Q_OBJECT
  public:
    enum class Size { Big, Middle };
    ClockFace(Size size, QWidget* parent);
    void setFigure(const QString& figure, const QString& unit, const QString& caption, bool alarmed = false);
    [[nodiscard]] QString figure() const { return m_figure; }
    [[nodiscard]] bool isAlarmed() const { return m_alarmed; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] QFont figureFont() const;

    Size m_size;
    QString m_figure;
    QString m_unit;
    QString m_caption;
    bool m_alarmed = false;
};

}  // namespace hearth::ui::visit

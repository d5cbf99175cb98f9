// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due_lines.h"
#include "ui/look/look.h"

#include <QPainter>
#include <QRectF>
#include <QWidget>

/// The strip of time: what lies where between two days. Every mark has a form of its own, so that it reads
/// in greyscale too.
namespace hearth::ui::due {

/// Days laid along a line.
struct TimeScale {
    calendar::Date first{};
    calendar::Date last{};
    double left = 0;
    double width = 1;
    [[nodiscard]] double at(calendar::Date day) const;
    [[nodiscard]] bool shows(calendar::Date day) const { return day >= first && day <= last; }
};

enum class Mark { Check, Letter, Call, NoAccess, Booked, Window, Overrun, Deadline, Today };
/// In a box around its middle, about as high as a line of text.
void drawMark(QPainter& painter, const QRectF& box, Mark mark, look::Scheme scheme);
/// The sign of a state; a different form for each.
void drawState(QPainter& painter, const QRectF& box, calendar::DueState state, look::Scheme scheme);
[[nodiscard]] look::Role inkOf(calendar::DueState state);

/// One premises' strip. What lies outside the scale is pointed at from the edge.
void drawStrip(QPainter& painter, const QRectF& box, const store::DueLine& line, calendar::Date today,
               const TimeScale& scale, look::Scheme scheme);
/// Lines where months begin, faint, and today's, dashed.
void drawGrid(QPainter& painter, const QRectF& box, calendar::Date today, const TimeScale& scale,
              look::Scheme scheme);
/// Names of the months over a strip, as many as fit.
void drawMonths(QPainter& painter, const QRectF& box, const TimeScale& scale, look::Scheme scheme);

/// What the marks mean, in one line that wraps.
class Legend : public QWidget {
    Q_OBJECT
  public:
    explicit Legend(QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override { return {400, heightForWidth(width())}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, heightForWidth(width())}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] int layOut(int width, QPainter* painter) const;
};

}  // namespace hearth::ui::due

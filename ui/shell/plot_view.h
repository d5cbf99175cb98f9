// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/plot.h"

#include <QWidget>

namespace hearth::ui::shell {

/// Plots in the window, by the painter that sets them on paper: beside each other where there is room, else
/// below. Hidden while there is nothing to draw. What they show stands in fields and findings for a screen
/// reader; their names and keys are told too.
class PlotView : public QWidget {
  public:
    explicit PlotView(QWidget* parent);
    void show(const record::Plots& plots);
    [[nodiscard]] const record::Plots& plots() const { return m_plots; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    record::Plots m_plots;
};

}  // namespace hearth::ui::shell

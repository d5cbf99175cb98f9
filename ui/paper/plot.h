// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/plot.h"
#include "ui/paper/page.h"
#include "ui/paper/type_setter.h"

#include <vector>

/// A plot on a page, in a section of a record and in the window alike.
namespace hearth::ui::paper {

/// A plot that has been set: its items from its top left corner, and how high it came out.
struct SetPlot {
    std::vector<Item> items;
    double height = 0;
    QRectF area;  // inside the axes
};

/// Title and unit, the axes, what was read, and below it the key: every limit, range, event and series by
/// name, each beside how it is drawn. `height` is that of the area inside the axes; millimetres.
[[nodiscard]] SetPlot setPlot(const record::Plot& plot, const TypeSetter& type, double width, double height);

}  // namespace hearth::ui::paper

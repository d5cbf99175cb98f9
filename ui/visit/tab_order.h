// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

class QWidget;

namespace hearth::ui::visit {

/// Sets the order of the Tab key below `root` to the order in which its widgets were made, which is the order
/// in which they are read; gives the stops in that order. Needed again when fields were added in the middle.
std::vector<QWidget*> chainTabStops(QWidget* root);

}  // namespace hearth::ui::visit

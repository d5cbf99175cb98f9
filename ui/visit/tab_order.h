// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace hearth::ui::visit {

/// Sets the order of the Tab key below `root` to the order in which its widgets were made, which is the order
/// in which they are read. Needed again when fields were added in the middle.
void chainTabStops(QWidget* root);

}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

namespace hearth::ui::records {

/// Asks which records are meant (`search`: those of the list in view; of a person; of a period) and whether
/// as one PDF, as files or on paper, and writes or prints them, with progress, until it is done or stopped.
void collectRecords(const shell::Context& context, const QString& search, QWidget* over);

}  // namespace hearth::ui::records

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

#include <optional>

namespace hearth::ui::records {

/// Asks for a PDF, a number or the text of a page's code, and says whether it is a record of the firm's.
/// Gives the record that was meant, if there is one.
std::optional<store::RecordId> checkRecord(const shell::Context& context, QWidget* over);

}  // namespace hearth::ui::records

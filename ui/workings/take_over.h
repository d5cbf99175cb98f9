// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/worksheet.h"
#include "core/store/store.h"

#include <QString>

#include <string>
#include <vector>

namespace hearth::ui::workings {

/// Visits that are open: not closed, nothing issued yet; the newest first.
[[nodiscard]] Result<std::vector<store::VisitLine>> openVisits(const store::Store& store);

/// What went into a visit.
struct TakenOver {
    bool workingPressure = false;  // of its last test, where none was entered
};

/// Appends the text to a visit's remarks as a paragraph; what stands there stays. The working pressure at the
/// meter goes into the visit's last test too where that has none. One transaction. Errors: those of the
/// store.
[[nodiscard]] Result<TakenOver> takeOver(store::Store& store, reg::VisitId visit,
                                         const judging::Worksheet& sheet, const std::string& text);

}  // namespace hearth::ui::workings

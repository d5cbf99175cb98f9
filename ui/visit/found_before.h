// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_model.h"
#include "ui/words/words.h"

#include <QStringList>

namespace hearth::ui::visit {

/// What earlier visits to the premises left behind, for whoever comes back; nothing: nothing that is kept
/// here.
struct FoundBefore {
    /// Unsafe situations that nobody has closed.
    QStringList open;
    /// What failed on the visit before, judged again by that visit's own date; how many were to be looked at
    /// again is counted.
    QStringList failed;
};
[[nodiscard]] FoundBefore foundBefore(const VisitSheetModel& model, const words::Words& words);

}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/plot.h"
#include "core/store/store.h"
#include "ui/words/words.h"

#include <QStringList>

#include <vector>

namespace hearth::ui::premises {

/// What was read of one appliance on its visits, one figure a plot, by the visits' days.
struct YearPlots {
    record::Plots plots;  // of each figure that was read twice at least
    /// The same in words, for who doesn't see them: every reading with its day, and the change from the first
    /// to the last. Where nothing was read twice it says so instead.
    QStringList told;
};

/// Combustion ratio at the highest rate, gas rate, heat input, working pressure at the inlet and burner
/// pressure, against the maker's range where it is kept with the appliance. A figure is drawn in the unit of
/// its last reading; how many stand in another is told, and they are not drawn. Nothing is judged: whether a
/// reading is right, its own visit says. Errors: of reading the store.
[[nodiscard]] Result<YearPlots> yearPlotsOf(const store::Store& store, const words::Words& words,
                                            const reg::Appliance& appliance, reg::PremisesId premises);
/// The same of visits that are at hand, in any order.
[[nodiscard]] YearPlots yearPlotsOf(const std::vector<reg::VisitFile>& visits, const rulebook::RuleBook& book,
                                    const words::Words& words, const reg::Appliance& appliance);

}  // namespace hearth::ui::premises

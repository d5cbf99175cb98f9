// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/store/store.h"
#include "ui/words/words.h"

#include <QString>

#include <string>

/// Taking over a spreadsheet: the road that the window's assistant and the command line share.
namespace hearth::ui::shell {

/// What is said of a visit that stands for an earlier check.
[[nodiscard]] QString importRemark(const QString& fileName);

/// Everything that is chosen before anybody chooses: columns and orders of dates guessed, the firm's country.
[[nodiscard]] Result<exchange::ImportChoices> firstChoices(const exchange::CsvTable& table,
                                                           const store::Store& store, const Clock& clock,
                                                           const QString& fileName);

/// What the import would do to the store as it is now.
[[nodiscard]] Result<exchange::ImportPlan> planFor(const exchange::CsvTable& table,
                                                   const exchange::ImportChoices& choices,
                                                   store::Store& store, const Clock& clock);

/// Writes a plan in one transaction that one undo takes back. Errors: the store's; ImportStopped.
[[nodiscard]] Result<void> takeOver(const exchange::ImportPlan& plan, store::Store& store,
                                    const exchange::ImportProgress& progress);

/// "12 new premises, 3 filled up, 2 set aside …"
[[nodiscard]] QString planSummary(const exchange::ImportPlan& plan);
/// What a column is taken for: "Landlord: telephone", "Appliance 2: make".
[[nodiscard]] QString targetText(const exchange::ColumnTarget& target, const words::Words& words);
/// The problem in words.
[[nodiscard]] QString problemText(const exchange::ProblemAt& problem, const words::Words& words);
[[nodiscard]] QString fateText(exchange::RowFate fate, const words::Words& words);

}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/store/store.h"

/// The paper that the firm uses: for what is issued from now on, for blanks and letters, and what a printer
/// is taken to hold.
namespace hearth::ui::shell {

inline constexpr const char* kPaperSetting = "records.paper";
/// A4 where none was chosen, or the choice can't be read.
[[nodiscard]] record::Paper firmsPaper(const store::Store& store);
[[nodiscard]] Result<void> keepPaper(store::Store& store, record::Paper paper);

}  // namespace hearth::ui::shell

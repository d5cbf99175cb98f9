// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/record/kind.h"
#include "ui/words/words.h"

#include <optional>
#include <string>
#include <vector>

/// Blanks: a record's paper before the work, to be filled in by pen where there is no power or printer and
/// typed in afterwards.
namespace hearth::ui::words {

/// The kinds that have a blank: those that are filled in on site.
[[nodiscard]] std::vector<record::RecordKind> blankKinds();

struct BlankInput {
    record::RecordKind kind;
    const reg::Firm& firm;
    std::string number;  // of the blank itself; the record that is typed in from it takes its own
    std::optional<record::Logo> logo = {};
    /// So many appliances and rooms, or on a notice situations, have a place on it; nothing: two of each, and
    /// one situation.
    std::optional<int> subjects = {};
};
inline constexpr int kMostOnBlank = 6;
/// Ruled places for everything that a record of the kind asks for, in its order; choices as boxes to cross.
/// It has no outcome, revision or digest: it is no record.
[[nodiscard]] record::Document blankFor(const BlankInput& input, const Words& words);

}  // namespace hearth::ui::words

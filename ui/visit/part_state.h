// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/record/kind.h"
#include "ui/visit/part.h"

#include <optional>
#include <vector>

namespace hearth::ui::visit {

/// What the spine says of a part, in a word.
enum class PartWord {
    NotStarted,
    Running,
    Fails,
    LookAgain,
    ToFill,
    NoVerdict,
    Done,
    Defects,    // of an appliance: found, or declared not safe to use
    StillOpen,  // of a situation
    NoneThere,  // of appliances or situations
    Listed,
    ReadyToIssue,
    Issued,
};

struct PartState {
    PartWord word = PartWord::NotStarted;
    int count = 0;  // of failing findings, of those to look at, of what is to fill in, of what is listed
    bool operator==(const PartState&) const = default;
};

/// The shape that goes with the word.
[[nodiscard]] rulebook::Outcome shapeOf(PartWord word);

/// All that the states follow from.
struct SheetFacts {
    const reg::VisitFile& file;
    const std::vector<judging::Judged>& findings;
    const std::vector<record::Missing>& missing;
    int issued = 0;                      // records of this visit
    std::optional<std::size_t> running;  // the test whose clock runs
};

[[nodiscard]] PartState stateOf(const PartRef& part, const SheetFacts& facts);

}  // namespace hearth::ui::visit

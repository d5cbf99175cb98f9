// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/due_lines.h"

#include <string>
#include <string_view>
#include <vector>

/// What the list asks of `due_premises AS d`, as SQL. States follow calendar::dueState(); a test holds the
/// two against each other.
namespace hearth::store {

/// A condition with the values for its marks.
struct Condition {
    std::string sql;
    Cells values;
};

[[nodiscard]] Condition isInState(calendar::DueState state, std::int64_t today);
/// All of a filter but its states.
[[nodiscard]] Condition meets(const DueFilter& filter);
[[nodiscard]] Condition both(Condition a, const Condition& b);
/// The states that a filter asks for, in their order.
[[nodiscard]] std::vector<calendar::DueState> statesOf(const DueFilter& filter);

/// Part of a list: what is in it, by which index it is walked, and in which order.
struct Section {
    Condition condition;
    std::string_view index;
    std::string_view order;
    std::vector<calendar::DueState> states = {};  // all of these that meet the filter
};
/// A list's parts, one after the other.
[[nodiscard]] std::vector<Section> sectionsOf(const DueFilter& filter, DueSort sort, std::int64_t today);

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/due_state.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::exchange {

/// A line of the list of checks due, for other programs. Dates are ISO; what is not known is empty.
struct DueRow {
    calendar::DueState state = calendar::DueState::NotKnown;
    std::optional<calendar::Date> deadline;
    std::optional<calendar::Date> latest;  // not decided: it may be as late as this
    std::optional<calendar::Date> opens;
    std::optional<calendar::Date> lastCheck;
    std::optional<calendar::Date> booked;
    std::string time;  // of the booking
    std::string engineer;
    std::string line1;
    std::string line2;
    std::string town;
    std::string postcode;
    std::string landlord;
    std::string agent;
    std::string applianceKind;
    std::string appliancePlace;
    int letters = 0;   // since the last check
    int attempts = 0;  // since the last check
};

/// With a row of headings in the program's own codes ("last_check"), which never change. Source: RFC 4180.
/// Checked: due_list_test.cpp.
[[nodiscard]] std::string dueCsv(const std::vector<DueRow>& rows);
/// An array of objects by the same codes; what is not known is null. Source: RFC 8259. Checked:
/// due_list_test.cpp.
[[nodiscard]] std::string dueJson(const std::vector<DueRow>& rows);

}  // namespace hearth::exchange

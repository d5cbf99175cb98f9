// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/duties.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::exchange {

/// A line of the duties beside the checks, for other programs. Dates are ISO; what is not known is empty.
struct DutyRow {
    calendar::DutyKind kind = calendar::DutyKind::TenantCopy;
    bool overdue = false;
    std::optional<calendar::Date> by;
    std::optional<calendar::Date> from;  // what it counts from
    std::string what;
    std::string which;
    std::string line1;
    std::string line2;
    std::string town;
    std::string postcode;
};

/// With a row of headings in the program's own codes, which never change, and the source of each day. Source:
/// RFC 4180. Checked: duty_list_test.cpp.
[[nodiscard]] std::string dutyCsv(const std::vector<DutyRow>& rows);
/// An array of objects by the same codes; what is not known is null. Source: RFC 8259. Checked:
/// duty_list_test.cpp.
[[nodiscard]] std::string dutyJson(const std::vector<DutyRow>& rows);

}  // namespace hearth::exchange

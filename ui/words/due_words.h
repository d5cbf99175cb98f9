// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/due_state.h"
#include "core/record/document.h"
#include "core/register/model.h"
#include "ui/words/words.h"

#include <array>
#include <optional>
#include <vector>

/// Words for checks due, in whatever language goes out.
namespace hearth::ui::words {

/// "overdue"; of what is overdue and booked all the same "overdue, booked".
[[nodiscard]] QString dueState(const Words& words, calendar::DueState state, bool isBooked = false);

/// A line of a landlord's or agent's summary.
struct SummaryLine {
    reg::Address address;
    calendar::DueState state = calendar::DueState::NotKnown;
    std::optional<calendar::Date> lastCheck;
    std::optional<calendar::Date> deadline;
    std::optional<calendar::Date> latest;  // not decided
    std::string booked;                    // with the time, where there is one
    std::string record;                    // number of the newest that counts
    int letters = 0;                       // since that check
    int attempts = 0;
};
struct Summary {
    reg::Firm firm;
    std::string whose;  // the landlord's or agent's name
    calendar::Date today;
    std::vector<SummaryLine> lines;
    record::Paper paper = record::Paper::A4;
};
/// All their premises with states, dates and records, and how many stand where.
[[nodiscard]] record::Document summaryDocument(const Words& words, const Summary& summary);

}  // namespace hearth::ui::words

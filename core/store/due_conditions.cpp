// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/due_conditions.h"

#include "core/store/search_query.h"

#include <algorithm>
#include <limits>

namespace hearth::store {
namespace {

using calendar::DueState;

/// A window opens at most so many days before its deadline: two months of 31 days. It bounds the stretch of
/// the index that is walked, and decides nothing.
constexpr std::int64_t kMostBefore = 62;
/// And at least so many: two months with a February, less the doubtful days of a short month end.
constexpr std::int64_t kLeastBefore = 55;

constexpr std::string_view kNotBooked = " AND (d.booked IS NULL OR d.booked < ? OR d.booked > d.deadline)";

Condition unbooked(std::string sql, Cells values, std::int64_t today) {
    values.emplace_back(today);
    return {std::move(sql.append(kNotBooked)), std::move(values)};
}

std::string_view indexFor(DueSort sort) {
    switch (sort) {
        case DueSort::Address:
            return "due_by_place";
        case DueSort::Postcode:
            return "due_by_postcode";
        case DueSort::Landlord:
            return "due_by_landlord_name";
        case DueSort::LastCheck:
            return "due_by_last_check";
        case DueSort::Need:
        case DueSort::Deadline:
            break;
    }
    return "due_by_deadline";
}
std::string_view orderFor(DueSort sort) {
    switch (sort) {
        case DueSort::Address:
            return "d.place, d.premises";
        case DueSort::Postcode:
            return "d.postcode, d.deadline, d.premises";
        case DueSort::Landlord:
            return "d.landlord_name, d.deadline, d.premises";
        case DueSort::LastCheck:
            return "d.last_check, d.deadline, d.premises";
        case DueSort::Need:
        case DueSort::Deadline:
            break;
    }
    return "d.deadline, d.premises";
}

/// One landlord's or agent's few are found by an index of their own, and sorted where it is not by deadline.
std::string_view indexFor(const DueFilter& filter, DueSort sort) {
    return filter.landlord ? std::string_view("due_by_landlord")
           : filter.agent  ? std::string_view("due_by_agent")
                           : indexFor(sort);
}

Section sectionOf(DueState state, std::int64_t today, const DueFilter& by, const Condition& filter) {
    const bool hasDeadline = state != DueState::NotKnown && state != DueState::NoDuty;
    const DueSort sort = hasDeadline ? DueSort::Deadline : DueSort::Address;
    return {both(isInState(state, today), filter),
            state == DueState::NoDuty ? std::string_view("due_by_none") : indexFor(by, sort),
            orderFor(sort),
            {state}};
}

/// Any of the states with a duty.
Condition isInAny(const std::vector<DueState>& states, std::int64_t today) {
    Condition any{"d.duty < 3", {}};
    const bool orNone = std::find(states.begin(), states.end(), DueState::NotKnown) != states.end();
    constexpr std::size_t kWithDeadline = calendar::kDueStates.size() - 2;
    if (states.size() - (orNone ? 1 : 0) == kWithDeadline) {
        any.sql.append(orNone ? "" : " AND d.deadline IS NOT NULL");
        return any;
    }
    std::string either;
    for (const auto state : states) {
        const auto one = isInState(state, today);
        either.append(either.empty() ? "((" : " OR (").append(one.sql).append(")");
        any.values.insert(any.values.end(), one.values.begin(), one.values.end());
    }
    any.sql.append(" AND ").append(either).append(")");
    return any;
}

}  // namespace

Condition both(Condition a, const Condition& b) {
    a.sql.append(" AND ").append(b.sql);
    a.values.insert(a.values.end(), b.values.begin(), b.values.end());
    return a;
}

Condition isInState(DueState state, std::int64_t today) {
    const std::int64_t last = today + calendar::kLastDays;
    const std::int64_t soon = today + calendar::kOpeningDays;
    switch (state) {
        case DueState::Overdue:
            return {"d.duty < 3 AND d.deadline < ?", {today}};
        case DueState::LastTwoWeeks:
            return unbooked("d.duty < 3 AND d.deadline >= ? AND d.deadline <= ?", {today, last}, today);
        case DueState::WindowOpen:
            return unbooked("d.duty < 3 AND d.deadline > ? AND d.deadline <= ? AND d.opens <= ?",
                            {last, today + kMostBefore, today}, today);
        case DueState::Booked:
            return {"d.duty < 3 AND d.deadline >= ? AND d.booked >= ? AND d.booked <= d.deadline",
                    {today, today}};
        case DueState::OpeningSoon:
            return unbooked(
                "d.duty < 3 AND d.deadline > ? AND d.deadline <= ? AND d.opens > ? AND d.opens <= ?",
                {today + kLeastBefore, soon + kMostBefore, today, soon}, today);
        case DueState::Later:
            return unbooked("d.duty < 3 AND d.deadline > ? AND d.opens > ?", {soon + kLeastBefore, soon},
                            today);
        case DueState::NotKnown:
            return {"d.duty < 3 AND d.deadline IS NULL", {}};
        case DueState::NoDuty:
            break;
    }
    return {"d.duty = 3", {}};
}

Condition meets(const DueFilter& filter) {
    Condition all{"TRUE", {}};
    const auto ask = [&](std::string_view sql, Cell value) {
        all.sql.append(" AND ").append(sql);
        all.values.push_back(std::move(value));
    };
    if (filter.landlord) {
        ask("d.landlord = ?", filter.landlord->bytes);
    }
    if (filter.agent) {
        ask("d.agent = ?", filter.agent->bytes);
    }
    if (filter.engineer) {
        ask("d.engineer = ?", filter.engineer->bytes);
    }
    if (!filter.outward.empty()) {
        ask("d.outward = ?", filter.outward);
    }
    if (filter.text.size() > 1) {  // one letter finds half of all, and would be waited for at each key
        const std::string found = matching(Indexed::Premises, filter.text, "d.premises",
                                           std::numeric_limits<int>::max(), all.values);
        all.sql.append(" AND ").append(found);
    }
    return all;
}

std::vector<DueState> statesOf(const DueFilter& filter) {
    std::vector<DueState> states;
    for (const auto state : calendar::kDueStates) {
        const bool isAsked = filter.states.empty() ? state != DueState::NoDuty
                                                   : std::find(filter.states.begin(), filter.states.end(),
                                                               state) != filter.states.end();
        if (isAsked) {
            states.push_back(state);
        }
    }
    return states;
}

std::vector<Section> sectionsOf(const DueFilter& filter, DueSort sort, std::int64_t today) {
    const Condition met = meets(filter);
    auto states = statesOf(filter);
    std::vector<Section> sections;
    if (sort == DueSort::Need) {
        for (const auto state : states) {
            sections.push_back(sectionOf(state, today, filter, met));
        }
        return sections;
    }
    const auto take = [&](DueState state) {
        const auto found = std::find(states.begin(), states.end(), state);
        const bool was = found != states.end();
        if (was) {
            states.erase(found);
        }
        return was;
    };
    const bool withoutDuty = take(DueState::NoDuty);
    const bool notKnown = sort == DueSort::Deadline && take(DueState::NotKnown);
    if (!states.empty()) {
        sections.push_back(
            {both(isInAny(states, today), met), indexFor(filter, sort), orderFor(sort), states});
    }
    if (notKnown) {
        sections.push_back(sectionOf(DueState::NotKnown, today, filter, met));
    }
    if (withoutDuty) {
        sections.push_back(sectionOf(DueState::NoDuty, today, filter, met));
    }
    return sections;
}

}  // namespace hearth::store

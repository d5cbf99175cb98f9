// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/judging/question.h"
#include "core/judging/readings.h"

#include <string>
#include <vector>

namespace hearth::judging {

/// What was typed for one question: entries like a visit's, kept as typed, on subjects of their own (one a
/// row).
class Worksheet {
  public:
    Worksheet(Question question, calendar::Date on) : m_question(question), m_on(on) {}

    [[nodiscard]] Question question() const { return m_question; }
    /// The day by whose rules the answer is given.
    [[nodiscard]] calendar::Date on() const { return m_on; }

    /// Keeps a text as typed; an empty one takes the entry away. `row` from 0.
    void put(Group group, int row, reg::Item item, const std::string& text,
             quantity::UnitCode unit = quantity::UnitCode::None);
    [[nodiscard]] const reg::Entry* find(Group group, int row, reg::Item item) const;
    /// One more than the last row that holds anything.
    [[nodiscard]] int rows(Group group) const;
    [[nodiscard]] bool isEmpty() const { return m_entries.empty(); }
    [[nodiscard]] bool holdsAny(Group group, int row) const;
    /// Whether an item is of use, given what was chosen so far (no test dial for a metric meter). What holds
    /// something is always asked.
    [[nodiscard]] bool isAsked(Group group, int row, reg::Item item) const;

    [[nodiscard]] static reg::SubjectRef subject(Group group, int row);
    [[nodiscard]] Readings readings(Group group, int row = 0) const;

  private:
    Question m_question;
    calendar::Date m_on;
    std::vector<reg::Entry> m_entries;
};

/// The rules behind Worksheet::isAsked().
[[nodiscard]] bool isOfUse(const Worksheet& sheet, Group group, int row, reg::Item item);

}  // namespace hearth::judging

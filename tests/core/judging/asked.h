// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/answer.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Questions asked and answered, for the tests of the adapters.
namespace hearth::judging::asked {

struct Typed {
    Typed(reg::Item of, std::string_view typed, quantity::UnitCode in = quantity::UnitCode::None)
        : item(of), text(typed), unit(in) {}
    reg::Item item;
    std::string text;
    quantity::UnitCode unit;
    Group group = Group::Once;
    int row = 0;
};
using Sheet = std::vector<Typed>;

/// The same typed in a row of a group.
[[nodiscard]] Sheet inRow(Group group, int row, Sheet sheet);

/// The shipped book, and the same with every entry that it has a value for confirmed by the firm.
[[nodiscard]] const rulebook::RuleBook& shippedBook();
[[nodiscard]] const rulebook::RuleBook& confirmedBook();

/// On 25 November 2026. A later entry replaces an earlier one of its item; an empty text takes it away.
[[nodiscard]] Answer answerTo(Question question, const Sheet& sheet,
                              const rulebook::RuleBook& book = confirmedBook());

[[nodiscard]] Sheet with(Sheet sheet, const Sheet& more);
[[nodiscard]] Sheet without(Sheet sheet, reg::Item item);

/// The finding of the kind, the first of them; null when there is none.
[[nodiscard]] const rulebook::Finding* findingOf(const Answer& answer, rulebook::FindingKind kind);
[[nodiscard]] std::optional<rulebook::Outcome> outcomeOf(const Answer& answer, rulebook::FindingKind kind);
/// Whether the finding of the kind gives this as its reason, or among its notes.
[[nodiscard]] bool saysOf(const Answer& answer, rulebook::FindingKind kind, rulebook::Say say);
[[nodiscard]] bool passes(const Answer& answer);

/// As shown; nothing when it was not worked out.
[[nodiscard]] std::optional<double> figureOf(const Answer& answer, Derived what);
/// The same for a comparison: not a number when it was not worked out.
[[nodiscard]] double valueOf(const Answer& answer, Derived what);

}  // namespace hearth::judging::asked

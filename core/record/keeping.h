// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/record/kind.h"

#include <optional>
#include <string_view>

/// How long a firm keeps what it issued and sent, beside what the law says of landlords' checks
/// (calendar/retention.h).
namespace hearth::record {

/// Why something is kept for so long. The code is what the store notes when it goes.
enum class KeepRule { SixYears, FifteenYears };
[[nodiscard]] std::string_view keepRuleCode(KeepRule rule);
[[nodiscard]] std::optional<KeepRule> keepRuleFromCode(std::string_view code);

/// No kind of record and no letter is let go sooner, so that younger ones need not be looked at.
inline constexpr int kShortestKeepingMonths = 72;

/// The rule that keepUntil() goes by for that kind.
[[nodiscard]] KeepRule keepRuleOf(RecordKind kind);

/// Until the end of which day the firm keeps a record of that kind: six years after it was issued; fifteen
/// for what goes with an appliance, an installation or an instrument for as long as that is in use, and for
/// an investigation of carbon monoxide. The landlord's own duty is another one (calendar::keepRecord()). A
/// notice whose situation is open goes nowhere, whatever its age (the bin refuses it). Source: no statute
/// binds the firm (RIDDOR 2013 regulation 12 asks three years for entries that are none of these); six and
/// fifteen years are common practice, for the Limitation Act 1980 (contract and tort; the long stop of
/// negligence), from memory. Checked: tests/core/record/keeping_test.cpp.
[[nodiscard]] calendar::Date keepUntil(RecordKind kind, calendar::Date issued);

/// The same of a letter that was sent: it is what shows that somebody was told.
/// Source: common practice, with the record that it goes with. Checked: tests/core/record/keeping_test.cpp.
[[nodiscard]] calendar::Date keepLetterUntil(calendar::Date sent);

}  // namespace hearth::record

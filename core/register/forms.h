// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

/// The forms of public numbers: read and put in order, never a ground for refusing what was typed.
namespace hearth::reg {

/// "ls14ab" as "LS1 4AB"; nothing where it has none of the forms of a postcode. Source: BS 7666 PostCodeType
/// schema and its letters (published); the letter P in third place from streets that have it. Checked:
/// forms_test.cpp.
[[nodiscard]] std::optional<std::string> postcodeIn(std::string_view text);

/// A telephone number as E.164 ("+441134960000"): the country of a national one is 44; 9 or 10 digits after
/// the 0. Nothing where it can't be one. Source: ITU-T E.164 (at most 15 digits), UK numbering plan layouts
/// (published). Checked: forms_test.cpp.
[[nodiscard]] std::optional<std::string> telephoneE164(std::string_view text);

/// Up to 12 digits. Source: UPRN guidance (published). Checked: forms_test.cpp.
[[nodiscard]] bool isUprn(std::string_view text);

/// 6 to 10 digits (11 in some lists) whose last two are the check digits of the rest: weights n, n-1 … 1 from
/// the left, the sum modulo 11. A warning only: one guide denies the check. Source: description of the meter
/// point reference number (published). Checked: forms_test.cpp.
[[nodiscard]] bool isMprn(std::string_view text);

}  // namespace hearth::reg

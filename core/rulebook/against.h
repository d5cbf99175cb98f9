// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/uncertain.h"
#include "core/rulebook/conclude.h"

/// The one way in which a measured value with its uncertainty is held against an entry of the rule book.
namespace hearth::rulebook {

/// Where a measured value stands: `Near` is within its expanded uncertainty of the limit, either side, or
/// exactly at it.
enum class Standing { Within, Near, Beyond };

/// `limit` and `measured` in the same unit; Comparison::Within and AsGiven have no single limit (assert).
/// Source: JCGM 106:2012 8.3 (guarded acceptance and rejection), from memory; k = 2.
[[nodiscard]] Standing standing(const quantity::Uncertain& measured, Comparison comparison, double limit);
/// Against both ends of a range: beyond if beyond one end, near if near one.
[[nodiscard]] Standing standing(const quantity::Uncertain& measured, double least, double most);

/// What to say in each case. All three get the same arguments.
struct Verdicts {
    Say within;
    Say near;
    Say beyond;
    std::vector<Argument> arguments;
};

/// Concludes a finding by an entry that has one figure or a range; `measured` in the entry's own unit. An
/// entry without a value: no verdict. Near: look again. What provenance may decide is conclude.h's.
void judgeAgainst(Finding& finding, const Entry& entry, const quantity::Uncertain& measured,
                  const Verdicts& verdicts);
/// The same; no entry at all is no verdict too.
void judgeAgainst(Finding& finding, const Entry* entry, const quantity::Uncertain& measured,
                  const Verdicts& verdicts);

/// The maker's own figure as an entry: decides before all others. `source` says where it stands (maker's
/// instructions, page).
[[nodiscard]] Entry makersEntry(RuleKey key, Value value, Comparison comparison, std::string source);

}  // namespace hearth::rulebook

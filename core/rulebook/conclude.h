// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"

/// The few ways in which a finding comes about, so that none passes by default and none passes on memory.
namespace hearth::rulebook {

[[nodiscard]] Finding noVerdict(FindingKind kind, Sentence why);

/// A finding that no limit decides: what was seen or done is itself the answer.
[[nodiscard]] Finding plainFinding(FindingKind kind, Outcome outcome, Say say);

/// Adds the entry to those that the finding rests on; the first one gives the limit and the comparison.
void restOn(Finding& finding, const Entry& entry);

/// The finding holds: it passes only if every entry that it rests on may decide; otherwise it is "look
/// again", says that the limit is to be confirmed, and keeps `why` as its first note. With no entry to rest
/// on there is no verdict.
void concludeWithin(Finding& finding, Sentence why);
/// The finding does not hold by `decisive`, one of the entries that it rests on.
void concludeBeyond(Finding& finding, const Entry& decisive, Sentence why);
/// At the limit, or too near to it to tell.
void concludeAtLimit(Finding& finding, Sentence why);
/// Nothing can be said.
void concludeOpen(Finding& finding, Sentence why);

[[nodiscard]] bool says(const Finding& finding, Say say);

}  // namespace hearth::rulebook

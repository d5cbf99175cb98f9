// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"

#include <optional>
#include <string>
#include <string_view>

/// Visits to judge: the common-practice case, to be varied entry by entry.
namespace hearth::judging::scenario {

/// The shipped book with the daily entries confirmed by the firm, as the set-up step leaves it. What nobody
/// has read of Edition 4 (scope, purge) is entered with Edition 3's figures, invented here as the firm's
/// copy; the bands stay empty.
[[nodiscard]] rulebook::RuleBook confirmedBook();

/// An existing domestic installation on natural gas: G4 meter, 15 and 22 mm copper, an electronic gauge with
/// two decimals. Let-by steady at about 9 mbar falling 0.02, settled at about 20.5, a fall of 0.04 in two
/// minutes, a second display that differs by 0.01 (common practice, no source).
[[nodiscard]] reg::VisitFile commonPractice(std::string_view isoDate, std::string_view edition);

/// Enters, replaces or (with empty text) removes an item of the first test, or of the visit where it belongs
/// to that.
void enter(reg::VisitFile& file, reg::Item item, std::string_view text);
void removeItem(reg::VisitFile& file, reg::Item item);

/// The finding of a kind; nothing when there is none.
[[nodiscard]] const Judged* findingOf(const std::vector<Judged>& judged, rulebook::FindingKind kind);
[[nodiscard]] std::optional<rulebook::Outcome> outcomeOf(const std::vector<Judged>& judged,
                                                         rulebook::FindingKind kind);
/// Judges the file with the book and returns the outcome of the kind.
[[nodiscard]] std::optional<rulebook::Outcome> outcomeOf(const reg::VisitFile& file,
                                                         const rulebook::RuleBook& book,
                                                         rulebook::FindingKind kind);
[[nodiscard]] rulebook::Outcome overallOf(const reg::VisitFile& file, const rulebook::RuleBook& book);

}  // namespace hearth::judging::scenario

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/record/kind.h"
#include "core/register/visit_file.h"

#include <vector>

namespace hearth::ui::visit {

/// What the records that the visit can issue ask of an item.
enum class Asking { Not, MayBeLeftOut, Asked };
[[nodiscard]] Asking askingOf(reg::Item item, const reg::SubjectRef& subject, const reg::VisitFile& file,
                              const std::vector<judging::Judged>& findings);

/// The items that those records ask of such a subject at all, or of which something was entered. Of an
/// appliance those that its kind can be asked.
[[nodiscard]] std::vector<reg::Item> itemsAskedOf(const reg::SubjectRef& subject, const reg::VisitFile& file);

/// Whether what a record misses is kept away from the sheet: at the premises, or under Firm.
[[nodiscard]] bool isKeptAtPremises(const record::Missing& missing);
[[nodiscard]] bool isKeptElsewhere(const record::Missing& missing);

/// Whether the sheet shows an item's field: most always, some only when the work calls for them (which
/// edition where only one is allowed, the reason for a low pressure, the repeat with appliances isolated). A
/// field that holds something is always shown.
[[nodiscard]] bool isWanted(reg::Item item, const reg::SubjectRef& subject, const reg::VisitFile& file,
                            const std::vector<judging::Judged>& findings);

/// Whether the repeat with appliances isolated belongs on the sheet of this test.
[[nodiscard]] bool isRetestWanted(const reg::SubjectRef& test, const reg::VisitFile& file,
                                  const std::vector<judging::Judged>& findings);

/// Whether a finding has anything to show yet: one that only misses readings which nobody has begun to enter
/// does not.
[[nodiscard]] bool isWorthShowing(const judging::Judged& judged, const reg::VisitFile& file);

}  // namespace hearth::ui::visit

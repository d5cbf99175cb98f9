// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"

namespace hearth::judging {

/// The findings on one appliance of a visit: what was read of it goes to the same adapters as a question that
/// is asked away from a visit. A matter of which nothing was read gives none, but for what regulation 26(9)
/// asks of every appliance that was inspected. The register gives the gas, the kind, the flue and the maker's
/// limits where the visit does not say them. Whether the appliance is safe to use is none of its findings.
[[nodiscard]] std::vector<Judged> judgeAppliance(const reg::VisitFile& file, const reg::Appliance& appliance,
                                                 const rulebook::RuleBook& book);

/// The findings on pipework beyond the small domestic, of what was entered on the visit's installation; none
/// where neither a strength nor a tightness test was begun.
[[nodiscard]] std::vector<Judged> judgeLarger(const reg::VisitFile& file, const rulebook::RuleBook& book);

/// The findings on the readings of carbon monoxide in rooms, each on the reading that it is about; none where
/// nothing was read. How the room was sampled is not asked on the sheet and not judged here.
[[nodiscard]] std::vector<Judged> judgeRoomCo(const reg::VisitFile& file, const rulebook::RuleBook& book);

}  // namespace hearth::judging

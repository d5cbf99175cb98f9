// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/volume_finding.h"

#include "core/rulebook/conclude.h"
#include "core/tightness/figures.h"

#include <algorithm>

namespace hearth::tightness {

using pipework::VolumeBasis;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

namespace {

bool uses(const pipework::VolumeReport& report, VolumeBasis basis) {
    return std::any_of(report.sections.begin(), report.sections.end(), [&](const auto& section) {
        return section.underTest && section.volume && section.basis == basis;
    });
}

}  // namespace

Finding volumeFinding(const pipework::VolumeReport& report, const rulebook::RuleBook& book) {
    Finding finding{FindingKind::Volume};
    if (!report.total) {
        concludeOpen(finding, {Say::VolumeUnknown});
        return finding;
    }
    finding.outcome = Outcome::Pass;
    finding.measured = figureOf(*report.total);
    if (report.typedTotal) {
        finding.why = {Say::VolumeTypedUsed};
        return finding;
    }
    finding.why = {Say::VolumeWorkedOut,
                   {figureOf(*report.total), figureOf(*report.meter), figureOf(*report.pipes),
                    figureOf(*report.fittings)}};
    const std::pair<VolumeBasis, Say> bases[] = {{VolumeBasis::TradeTable, Say::VolumeTableUsed},
                                                 {VolumeBasis::Geometry, Say::VolumeGeometryUsed},
                                                 {VolumeBasis::Typed, Say::VolumeTypedUsed}};
    for (const auto& [basis, say] : bases) {
        if (uses(report, basis)) {
            finding.notes.push_back({say});
        }
    }
    if (const auto* share = book.find({rulebook::Rule::FittingsShare})) {
        finding.limits.push_back(*share);
    }
    return finding;
}

}  // namespace hearth::tightness

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/volume.h"

#include "core/quantity/units.h"

#include <algorithm>

namespace hearth::pipework {

namespace {

using quantity::Volume;
using rulebook::Provenance;

bool isUsable(const std::optional<Volume>& volume) {
    return volume && *volume >= Volume{};
}

/// Only a figure that was read somewhere stands before the geometry of the standard's own dimensions.
bool usesTable(const Tube& tube) {
    return tube.tableVolume &&
           (tube.tableProvenance == Provenance::Published || tube.tableProvenance == Provenance::Secondary);
}

SectionVolume sectionVolume(const SectionInput& section) {
    SectionVolume result;
    result.underTest = section.underTest;
    if (isUsable(section.typedVolume)) {
        result.volume = section.typedVolume;
        result.basis = VolumeBasis::Typed;
        result.provenance = Provenance::Firm;
        return result;
    }
    const Tube* tube = section.tube;
    if (tube == nullptr || !tube->hasDimensions()) {
        result.basis = VolumeBasis::Typed;
        return result;
    }
    const bool table = usesTable(*tube);
    result.basis = table ? VolumeBasis::TradeTable : VolumeBasis::Geometry;
    result.provenance = table ? tube->tableProvenance : tube->dimensionProvenance;
    if (section.length && *section.length >= quantity::Length{}) {
        const double perMetre = table ? *tube->tableVolume : tube->geometricVolume();
        result.volume = Volume(perMetre, quantity::kCubicMetre) * section.length->in(quantity::kMetre);
    }
    return result;
}

std::optional<Volume> meterVolume(const VolumeInput& input) {
    if (!input.meterUnderTest) {
        return Volume{};
    }
    if (isUsable(input.meterTyped)) {
        return input.meterTyped;
    }
    if (input.meter == nullptr || !input.meter->volume) {
        return std::nullopt;
    }
    return Volume(*input.meter->volume, quantity::kCubicMetre);
}

/// Sum over the sections under test; nothing when one of them is not known, or when there are none.
std::optional<Volume> pipeVolume(const std::vector<SectionVolume>& sections) {
    std::optional<Volume> sum;
    for (const auto& section : sections) {
        if (!section.underTest) {
            continue;
        }
        if (!section.volume) {
            return std::nullopt;
        }
        sum = sum.value_or(Volume{}) + *section.volume;
    }
    return sum;
}

void noteSizes(const VolumeInput& input, VolumeReport& report) {
    bool any = false;
    bool all = true;
    for (const auto& section : input.sections) {
        if (!section.underTest) {
            continue;
        }
        any = true;
        const double nominal = section.tube == nullptr ? 0.0 : section.tube->nominal;
        all = all && nominal > 0.0;
        report.largestNominal = std::max(report.largestNominal, nominal);
    }
    report.nominalKnown = any && all;
}

}  // namespace

VolumeReport volume(const VolumeInput& input) {
    VolumeReport report;
    report.sections.reserve(input.sections.size());
    for (const auto& section : input.sections) {
        report.sections.push_back(sectionVolume(section));
    }
    noteSizes(input, report);
    report.meter = meterVolume(input);
    report.pipes = pipeVolume(report.sections);
    if (report.pipes) {
        report.fittings = *report.pipes * input.fittingsShare;
    }
    if (isUsable(input.typedTotal)) {
        report.typedTotal = true;
        report.total = input.typedTotal;
    } else if (report.meter && report.pipes) {
        report.total = *report.meter + *report.pipes + *report.fittings;
    }
    return report;
}

}  // namespace hearth::pipework

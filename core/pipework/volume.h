// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tube.h"
#include "core/quantity/quantity.h"
#include "core/rulebook/entry.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::pipework {

/// Which figure a section's volume came from; always shown.
enum class VolumeBasis { TradeTable, Geometry, Typed };

struct SectionInput {
    const Tube* tube = nullptr;  // none: not said yet
    std::optional<quantity::Length> length;
    std::optional<quantity::Volume> typedVolume;  // for corrugated tube, or anything the table lacks
    bool underTest = true;
};

struct SectionVolume {
    std::optional<quantity::Volume> volume;  // nothing: tube or length missing
    VolumeBasis basis = VolumeBasis::TradeTable;
    rulebook::Provenance provenance = rulebook::Provenance::Published;
    bool underTest = true;
};

/// Installation volume of the part under test: meter + pipes + a share of the pipes for fittings (10 % of the
/// pipes, not of the meter: certification body's pocket guide reproducing IGEM/UP/1B Edition 3).
struct VolumeReport {
    std::vector<SectionVolume> sections;  // one an input, in order
    std::optional<quantity::Volume> meter;
    std::optional<quantity::Volume> pipes;  // of the part under test
    std::optional<quantity::Volume> fittings;
    std::optional<quantity::Volume> total;  // only when every part of it is known
    bool typedTotal = false;                // the whole was typed in instead
    double largestNominal = 0.0;            // mm, of the part under test; 0: no pipes
    bool nominalKnown = false;              // there are pipes, and the size of each is known
};

struct VolumeInput {
    const Meter* meter = nullptr;  // none: not said yet
    std::optional<quantity::Volume> meterTyped;
    bool meterUnderTest = true;
    std::vector<SectionInput> sections;
    std::optional<quantity::Volume> typedTotal;
    double fittingsShare = 0.10;
};

/// A section counts with the trade table's figure where that was published, with the geometry of the
/// standard's dimensions otherwise, and with the typed volume before both. A negative length or volume counts
/// as not known. Source: certification body's pocket guide reproducing IGEM/UP/1B Edition 3 (meter + pipes + 10 %
/// of the pipes). Checked: volume_test.cpp, tree_test.cpp.
[[nodiscard]] VolumeReport volume(const VolumeInput& input);

}  // namespace hearth::pipework

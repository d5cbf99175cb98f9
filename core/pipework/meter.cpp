// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/table_sources.h"
#include "core/pipework/tube.h"

#include <algorithm>
#include <array>

namespace hearth::pipework {

namespace {

using rulebook::Provenance;

constexpr std::string_view kMeterRecalled = "recalled from the trade's table, not read";

constexpr std::array kMeters{
    Meter{"none", MeterKind::None, 0, "no meter in the part under test", 0.0, Provenance::Published, {}},
    Meter{"e6", MeterKind::Ultrasonic, 6, "E6 ultrasonic", 0.0024, Provenance::Secondary, kRevisionPage},
    Meter{"u6_g4", MeterKind::Diaphragm, 6, "U6 / G4 diaphragm", 0.008, Provenance::Published, kGuide},
    Meter{"u16_g10", MeterKind::Diaphragm, 16, "U16 / G10 diaphragm", 0.025, Provenance::Secondary,
          kRevisionPage},
    Meter{"u25_g16", MeterKind::Diaphragm, 25, "U25 / G16 diaphragm", 0.037, Provenance::Memory, kMeterRecalled},
    Meter{"u40_g25", MeterKind::Diaphragm, 40, "U40 / G25 diaphragm", 0.067, Provenance::Memory, kMeterRecalled},
    Meter{"u65_g40", MeterKind::Diaphragm, 65, "U65 / G40 diaphragm", 0.100, Provenance::Memory, kMeterRecalled},
    Meter{"u100_g65", MeterKind::Diaphragm, 100, "U100 / G65 diaphragm", 0.182, Provenance::Memory,
          kMeterRecalled},
    Meter{"u160_g100", MeterKind::Diaphragm, 160, "U160 / G100 diaphragm", 0.304, Provenance::Memory,
          kMeterRecalled},
    Meter{"other", MeterKind::Other, 0, "other meter", {}, Provenance::Maker, {}},
};

}  // namespace

std::span<const Meter> meters() {
    return kMeters;
}

const Meter* meterByCode(std::string_view code) {
    const auto* found =
        std::find_if(kMeters.begin(), kMeters.end(), [&](const Meter& meter) { return meter.code == code; });
    return found == kMeters.end() ? nullptr : found;
}

}  // namespace hearth::pipework

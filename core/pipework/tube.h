// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/rulebook/entry.h"

#include <optional>
#include <span>
#include <string_view>

namespace hearth::pipework {

enum class TubeFamily { Copper, SteelMedium, SteelHeavy, PeSdr11, PeSdr176, Corrugated };

/// One size of tube by its standard. Dimensions in millimetres, volumes in m3 per metre. The nominal size of
/// steel is its DN: the scope of IGEM/UP/1B, 35 mm nominal bore, is about R 1 1/4 steel (DN 32).
struct Tube {
    std::string_view code;  // "copper_15", "steel_medium_25", "pe11_32", "corrugated"; never changes
    TubeFamily family;
    double nominal;  // mm: what it is called (15, DN 25, OD 32); the scope check holds this against its
                     // limit; 0: not said (corrugated tube without its size)
    double outside;                     // mm
    double wall;                        // mm
    std::string_view label;             // "15 mm", "DN 25 (1 in)", "32 mm": proper names
    std::string_view standard;          // "EN 1057"
    std::optional<double> tableVolume;  // m3/m from the trade table, where there is one
    rulebook::Provenance tableProvenance = rulebook::Provenance::Published;
    std::string_view tableSource;
    rulebook::Provenance dimensionProvenance = rulebook::Provenance::Published;
    std::string_view dimensionSource;  // with the doubt about the wall, where there is one

    /// Whether the size has dimensions (corrugated tube has none: its volume is typed).
    [[nodiscard]] bool hasDimensions() const { return outside > 0.0; }
    [[nodiscard]] double bore() const { return outside - 2 * wall; }
    /// pi/4 d2 of the standard's dimensions, m3 per metre. Source: textbook.
    [[nodiscard]] double geometricVolume() const;
};

/// All sizes of tube, by material. Source: the standard of each, named in the table with where it was read.
/// Checked: tube_test.cpp.
[[nodiscard]] std::span<const Tube> tubes();
/// The tube of a code; null if there is none. Source: tubes(). Checked: tube_test.cpp.
[[nodiscard]] const Tube* tubeByCode(std::string_view code);

enum class MeterKind { None, Ultrasonic, Diaphragm, Other };

/// One size of gas meter.
struct Meter {
    std::string_view code;  // "none", "e6", "u6_g4", "u16_g10", "u25_g16"…, "other"
    MeterKind kind;
    double badge;                  // m3/h; 0 for none and other
    std::string_view label;        // "U6 / G4 diaphragm": proper names
    std::optional<double> volume;  // m3
    rulebook::Provenance provenance = rulebook::Provenance::Published;
    std::string_view source;
};

/// All meters. Source: named in the table, one by one. Checked: meter_test.cpp.
[[nodiscard]] std::span<const Meter> meters();
/// The meter of a code; null if there is none. Source: meters(). Checked: meter_test.cpp.
[[nodiscard]] const Meter* meterByCode(std::string_view code);

}  // namespace hearth::pipework

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/entry.h"

#include <optional>
#include <string_view>

/// Kinds of appliance, as far as the limits of combustion differ by them.
namespace hearth::burner {

/// A range cooker's oven, grill and hotplates are judged as such where they are read one by one; RangeCooker
/// is one with a single flue. Other has no limit but its maker's.
enum class ApplianceKind {
    CondensingBoiler,
    NonCondensingBoiler,
    WarmAirHeater,  // circulators too
    BackBoiler,
    BackBoilerFire,
    GasFire,  // open-flued space heaters too
    OpenFluedWaterHeater,
    RoomSealedWaterHeater,
    FluelessSpaceHeater,
    FluelessWaterHeater,
    Oven,
    Grill,
    Hotplate,
    RangeCooker,
    TumbleDryer,
    Other,
};

/// Stable codes in files: "condensing_boiler". Source: none, our own.
[[nodiscard]] std::string_view applianceKindText(ApplianceKind kind);
[[nodiscard]] std::optional<ApplianceKind> applianceKindFromText(std::string_view text);

/// Which entry limits the kind's CO/CO2 ratio; nothing for a hotplate (judged by its flame and the CO in the
/// room) and for Other. Source: BS 7967's kinds, from memory (facts: combustion 2.3).
/// Checked: tests/core/burner/appliance_kind_test.cpp.
[[nodiscard]] std::optional<rulebook::Rule> ratioRuleOf(ApplianceKind kind);
/// Which entry limits its CO by itself: condensing boilers have one. Source: boiler trade's procedure TB 143
/// (facts: combustion 2.2). Checked: the same.
[[nodiscard]] std::optional<rulebook::Rule> carbonMonoxideRuleOf(ApplianceKind kind);
/// Whether both rates must be read: condensing boilers, since 1 April 2014. Source: the same (facts:
/// combustion 2.2, trade press). Checked: the same.
[[nodiscard]] bool needsBothRates(ApplianceKind kind);
/// Whether its products leave by a flue, so that flue, joints and seals are what to look at first. Source:
/// common practice, no source. Checked: the same.
[[nodiscard]] bool hasFlue(ApplianceKind kind);

}  // namespace hearth::burner

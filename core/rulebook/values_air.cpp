// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/values_air.h"

#include <algorithm>
#include <array>

namespace hearth::rulebook {

namespace {

using quantity::UnitFamily;

struct AirFamily {
    Rule rule;
    UnitFamily family;
};

// Per kilowatt and per cubic metre have no unit of their own: the rule's title says what the figure is of.
constexpr std::array kAirFamilies{
    AirFamily{Rule::VentAdventitiousInput, UnitFamily::Power},
    AirFamily{Rule::VentOpenFluedPerKilowatt, UnitFamily::None},
    AirFamily{Rule::VentScopeInput, UnitFamily::Power},
    AirFamily{Rule::VentThroughWallFactor, UnitFamily::None},
    AirFamily{Rule::VentTightPerKilowatt, UnitFamily::None},
    AirFamily{Rule::VentSeveralGroups, UnitFamily::None},
    AirFamily{Rule::VentDecorativeFire, UnitFamily::Area},
    AirFamily{Rule::VentDecorativeInputMost, UnitFamily::Power},
    AirFamily{Rule::VentFireInputWithout, UnitFamily::Power},
    AirFamily{Rule::VentMakersArea, UnitFamily::Area},
    AirFamily{Rule::VentOpenToRoomHigh, UnitFamily::None},
    AirFamily{Rule::VentOpenToRoomLow, UnitFamily::None},
    AirFamily{Rule::VentOpenOutsideHigh, UnitFamily::None},
    AirFamily{Rule::VentOpenOutsideLow, UnitFamily::None},
    AirFamily{Rule::VentSealedToRoomHigh, UnitFamily::None},
    AirFamily{Rule::VentSealedToRoomLow, UnitFamily::None},
    AirFamily{Rule::VentSealedOutsideHigh, UnitFamily::None},
    AirFamily{Rule::VentSealedOutsideLow, UnitFamily::None},
    AirFamily{Rule::VentCookerVolumeSmall, UnitFamily::Volume},
    AirFamily{Rule::VentCookerVolumeMedium, UnitFamily::Volume},
    AirFamily{Rule::VentCookerSmall, UnitFamily::Area},
    AirFamily{Rule::VentCookerMedium, UnitFamily::Area},
    AirFamily{Rule::VentCookerBedSit, UnitFamily::Volume},
    AirFamily{Rule::VentCookerBasement, UnitFamily::Area},
    AirFamily{Rule::VentWaterHeaterInputMost, UnitFamily::Power},
    AirFamily{Rule::VentWaterHeaterVolumeLeast, UnitFamily::Volume},
    AirFamily{Rule::VentWaterHeaterVolumeMedium, UnitFamily::Volume},
    AirFamily{Rule::VentWaterHeaterVolumeLarge, UnitFamily::Volume},
    AirFamily{Rule::VentWaterHeaterSmall, UnitFamily::Area},
    AirFamily{Rule::VentWaterHeaterMedium, UnitFamily::Area},
    AirFamily{Rule::VentHeaterWattsRoom, UnitFamily::None},
    AirFamily{Rule::VentHeaterWattsInternal, UnitFamily::None},
    AirFamily{Rule::VentHeaterBase, UnitFamily::Area},
    AirFamily{Rule::VentHeaterInputRoom, UnitFamily::Power},
    AirFamily{Rule::VentHeaterPerKilowattRoom, UnitFamily::None},
    AirFamily{Rule::VentHeaterInputInternal, UnitFamily::Power},
    AirFamily{Rule::VentHeaterPerKilowattInternal, UnitFamily::None},
    AirFamily{Rule::VentCabinetWattsRoom, UnitFamily::None},
    AirFamily{Rule::VentCabinetWattsInternal, UnitFamily::None},
    AirFamily{Rule::VentCabinetVolumeLeast, UnitFamily::Volume},
    AirFamily{Rule::VentCabinetPerKilowatt, UnitFamily::None},
    AirFamily{Rule::VentCabinetLeast, UnitFamily::Area},
    AirFamily{Rule::VentDryer, UnitFamily::Area},
    AirFamily{Rule::PlantInputMost, UnitFamily::Power},
    AirFamily{Rule::PlantRoomLow, UnitFamily::None},
    AirFamily{Rule::PlantRoomHigh, UnitFamily::None},
    AirFamily{Rule::PlantEnclosureLowHalf, UnitFamily::None},
    AirFamily{Rule::PlantEnclosureHighHalf, UnitFamily::None},
    AirFamily{Rule::PlantEnclosureLowMost, UnitFamily::None},
    AirFamily{Rule::PlantEnclosureHighMost, UnitFamily::None},
    AirFamily{Rule::PlantEnclosureLowAll, UnitFamily::None},
    AirFamily{Rule::PlantEnclosureHighAll, UnitFamily::None},
    AirFamily{Rule::PlantSummerMost, UnitFamily::None},
    AirFamily{Rule::PlantSummerAll, UnitFamily::None},
    AirFamily{Rule::PlantTemperatureFloor, UnitFamily::Temperature},
    AirFamily{Rule::PlantTemperatureMiddle, UnitFamily::Temperature},
    AirFamily{Rule::PlantTemperatureCeiling, UnitFamily::Temperature},
    AirFamily{Rule::RoomCoShortLimit, UnitFamily::Trace},
    AirFamily{Rule::RoomCoLongLimit, UnitFamily::Trace},
    AirFamily{Rule::RoomCoDangerFrom, UnitFamily::Trace},
    AirFamily{Rule::RoomCoRaisedFrom, UnitFamily::Trace},
    AirFamily{Rule::RoomCoNoActionMost, UnitFamily::Trace},
    AirFamily{Rule::RoomCoLeaveFrom, UnitFamily::Trace},
    AirFamily{Rule::RoomCoCookerPeakMost, UnitFamily::Trace},
    AirFamily{Rule::RoomCoSampleHeight, UnitFamily::Length},
    AirFamily{Rule::RoomCoSampleDistance, UnitFamily::Length},
    AirFamily{Rule::RoomCoTimeFlued, UnitFamily::LongTime},
    AirFamily{Rule::RoomCoTimeFlueless, UnitFamily::LongTime},
    AirFamily{Rule::RoomCoBloodLimit, UnitFamily::Share},
};

}  // namespace

std::optional<UnitFamily> airFamilyOf(Rule rule) {
    const auto* found = std::find_if(kAirFamilies.begin(), kAirFamilies.end(),
                                     [&](const AirFamily& row) { return row.rule == rule; });
    return found == kAirFamilies.end() ? std::nullopt : std::optional(found->family);
}

}  // namespace hearth::rulebook

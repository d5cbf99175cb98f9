// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/appliance_kind.h"

#include "core/rulebook/code_table.h"

#include <array>

namespace hearth::burner {

namespace {

constexpr auto kApplianceKinds = std::to_array<rulebook::Code<ApplianceKind>>({
    {ApplianceKind::CondensingBoiler, "condensing_boiler"},
    {ApplianceKind::NonCondensingBoiler, "non_condensing_boiler"},
    {ApplianceKind::WarmAirHeater, "warm_air_heater"},
    {ApplianceKind::BackBoiler, "back_boiler"},
    {ApplianceKind::BackBoilerFire, "back_boiler_fire"},
    {ApplianceKind::GasFire, "gas_fire"},
    {ApplianceKind::OpenFluedWaterHeater, "open_flued_water_heater"},
    {ApplianceKind::RoomSealedWaterHeater, "room_sealed_water_heater"},
    {ApplianceKind::FluelessSpaceHeater, "flueless_space_heater"},
    {ApplianceKind::FluelessWaterHeater, "flueless_water_heater"},
    {ApplianceKind::Oven, "oven"},
    {ApplianceKind::Grill, "grill"},
    {ApplianceKind::Hotplate, "hotplate"},
    {ApplianceKind::RangeCooker, "range_cooker"},
    {ApplianceKind::TumbleDryer, "tumble_dryer"},
    {ApplianceKind::Other, "other"},
});
static_assert(rulebook::inOrder(kApplianceKinds));

}  // namespace

std::string_view applianceKindText(ApplianceKind kind) {
    return rulebook::textIn(kApplianceKinds, kind);
}

std::optional<ApplianceKind> applianceKindFromText(std::string_view text) {
    return rulebook::valueIn(kApplianceKinds, text);
}

std::optional<rulebook::Rule> ratioRuleOf(ApplianceKind kind) {
    using rulebook::Rule;
    switch (kind) {
        case ApplianceKind::CondensingBoiler:
            return Rule::CombustionRatioCondensing;
        case ApplianceKind::NonCondensingBoiler:
            return Rule::CombustionRatioNonCondensing;
        case ApplianceKind::WarmAirHeater:
            return Rule::CombustionRatioWarmAir;
        case ApplianceKind::BackBoiler:
            return Rule::CombustionRatioBackBoiler;
        case ApplianceKind::BackBoilerFire:
            return Rule::CombustionRatioBackBoilerFire;
        case ApplianceKind::GasFire:
            return Rule::CombustionRatioFire;
        case ApplianceKind::OpenFluedWaterHeater:
            return Rule::CombustionRatioOpenFluedWater;
        case ApplianceKind::RoomSealedWaterHeater:
            return Rule::CombustionRatioRoomSealedWater;
        case ApplianceKind::FluelessSpaceHeater:
            return Rule::CombustionRatioFluelessSpace;
        case ApplianceKind::FluelessWaterHeater:
            return Rule::CombustionRatioFluelessWater;
        case ApplianceKind::Oven:
            return Rule::CombustionRatioOven;
        case ApplianceKind::Grill:
            return Rule::CombustionRatioGrill;
        case ApplianceKind::RangeCooker:
            return Rule::CombustionRatioRangeCooker;
        case ApplianceKind::TumbleDryer:
            return Rule::CombustionRatioDryer;
        case ApplianceKind::Hotplate:
        case ApplianceKind::Other:
            break;
    }
    return std::nullopt;
}

std::optional<rulebook::Rule> carbonMonoxideRuleOf(ApplianceKind kind) {
    return kind == ApplianceKind::CondensingBoiler
               ? std::optional(rulebook::Rule::CombustionCarbonMonoxideCondensing)
               : std::nullopt;
}

bool needsBothRates(ApplianceKind kind) {
    return kind == ApplianceKind::CondensingBoiler;
}

bool hasFlue(ApplianceKind kind) {
    switch (kind) {
        case ApplianceKind::FluelessSpaceHeater:
        case ApplianceKind::FluelessWaterHeater:
        case ApplianceKind::Oven:
        case ApplianceKind::Grill:
        case ApplianceKind::Hotplate:
            return false;
        default:
            return true;
    }
}

}  // namespace hearth::burner

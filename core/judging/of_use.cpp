// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/worksheet.h"

namespace hearth::judging {

using reg::Item;
namespace choice = reg::choice;

namespace {

/// The code chosen in the part that is asked once; empty while nothing is.
std::string_view chosen(const Worksheet& sheet, Item item) {
    const auto* entry = sheet.find(Group::Once, 0, item);
    return entry == nullptr ? std::string_view{} : std::string_view(entry->canonical);
}

}  // namespace

bool isOfUse(const Worksheet& sheet, Group /*group*/, int /*row*/, Item item) {
    switch (item) {
        case Item::RateIndexStart:
        case Item::RateIndexEnd:
            return chosen(sheet, Item::RateMeter) != choice::kImperial;
        case Item::RateDial:
        case Item::RateTurns:
            return chosen(sheet, Item::RateMeter) == choice::kImperial;
        case Item::RateMeterPressure:
        case Item::RateGasTemperature:
        case Item::RateAltitude:
            return chosen(sheet, Item::RateCorrection) == choice::kStatutory;
        case Item::GasMix:
            return chosen(sheet, Item::GasFamily) != choice::kLpgAir;
        case Item::GasLpgShare:
            return chosen(sheet, Item::GasFamily) == choice::kLpgAir;
        case Item::GasMethane:
        case Item::GasEthane:
        case Item::GasPropane:
        case Item::GasButanes:
        case Item::GasPentanes:
        case Item::GasHydrogen:
        case Item::GasCarbonMonoxide:
        case Item::GasNitrogen:
        case Item::GasCarbonDioxide:
        case Item::GasOxygen:
            return chosen(sheet, Item::GasMix) == choice::kTyped;
        case Item::WhyNeitherTaken:
            return chosen(sheet, Item::ExaminedPressure) == choice::kNo &&
                   chosen(sheet, Item::ExaminedHeatInput) == choice::kNo;
        default:
            return true;
    }
}

}  // namespace hearth::judging

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/worksheet.h"

#include <algorithm>
#include <array>
#include <span>

namespace hearth::judging {

using reg::Item;
namespace choice = reg::choice;

namespace {

/// An item is of use only while the choice that decides it is (or is not) that code; nothing chosen is no
/// code.
enum class While { Is, IsNot };
struct OfUse {
    Item item;
    Item decidedBy;
    While when;
    std::string_view code;
};

// What is not named here is always asked. Of several lines of one item all must hold.
constexpr auto kOfUse = std::to_array<OfUse>({
    // --- gas_rate
    {Item::RateIndexStart, Item::RateMeter, While::IsNot, choice::kImperial},
    {Item::RateIndexStart, Item::RateMeter, While::IsNot, choice::kByHand},
    {Item::RateIndexStart, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateIndexEnd, Item::RateMeter, While::IsNot, choice::kImperial},
    {Item::RateIndexEnd, Item::RateMeter, While::IsNot, choice::kByHand},
    {Item::RateIndexEnd, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateIndexWhole, Item::RateMeter, While::IsNot, choice::kImperial},
    {Item::RateIndexWhole, Item::RateMeter, While::IsNot, choice::kByHand},
    {Item::RateIndexWhole, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RatePassed, Item::RateMeter, While::Is, choice::kByHand},
    {Item::GasHeatValue, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateDial, Item::RateMeter, While::Is, choice::kImperial},
    {Item::RateTurns, Item::RateMeter, While::Is, choice::kImperial},
    {Item::RateDialDivision, Item::RateMeter, While::Is, choice::kImperial},
    {Item::RateTime, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateOthersOff, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateFullRate, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateWarm, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateMeterMost, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateCorrection, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::RateMeterPressure, Item::RateCorrection, While::Is, choice::kStatutory},
    {Item::RateGasTemperature, Item::RateCorrection, While::Is, choice::kStatutory},
    {Item::RateAltitude, Item::RateCorrection, While::Is, choice::kStatutory},
    {Item::ApplianceInput, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::ApplianceInputBasis, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::ApplianceTolerance, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::ApplianceToleranceUnder, Item::RateMeter, While::IsNot, choice::kNone},
    {Item::ApplianceToleranceSource, Item::RateMeter, While::IsNot, choice::kNone},
    // --- end of gas_rate
    // --- regulation_26_9
    {Item::WhyNeither, Item::ExaminedPressure, While::Is, choice::kNotTaken},
    {Item::WhyNeither, Item::ExaminedHeatInput, While::Is, choice::kNotTaken},
    {Item::WhyNeitherTaken, Item::WhyNeither, While::Is, choice::kOther},
    // --- end of regulation_26_9
    // --- larger
    {Item::LargerArea, Item::LargerWork, While::IsNot, choice::kNew},
    {Item::LargerVentilated, Item::LargerWork, While::IsNot, choice::kNew},
    {Item::LargerVentilated, Item::LargerArea, While::IsNot, choice::kAreaA},
    {Item::LargerVentilated, Item::LargerArea, While::IsNot, choice::kOutdoors},
    {Item::LargerVentilated, Item::LargerArea, While::IsNot, choice::kBuried},
    {Item::LargerRoomVolume, Item::LargerWork, While::IsNot, choice::kNew},
    {Item::LargerRoomVolume, Item::LargerArea, While::IsNot, choice::kAreaA},
    {Item::LargerRoomVolume, Item::LargerArea, While::IsNot, choice::kOutdoors},
    {Item::LargerRoomVolume, Item::LargerArea, While::IsNot, choice::kBuried},
    // --- end of larger
    // --- check_due
    {Item::CheckOthersDue, Item::CheckCountry, While::IsNot, choice::kNorthernIreland},
    {Item::CheckMovesIn, Item::CheckTenant, While::IsNot, choice::kExisting},
    // --- end of check_due
    // --- purge
    {Item::PurgeVolumeKnown, Item::PurgeSize, While::IsNot, choice::kLarger},
    {Item::PurgePipes, Item::PurgeSize, While::Is, choice::kLarger},
    {Item::PurgePlate, Item::PurgeSize, While::Is, choice::kLarger},
    {Item::PurgePassed, Item::PurgeSize, While::Is, choice::kLarger},
    {Item::PurgeEndGas, Item::PurgeSize, While::Is, choice::kLarger},
    // --- end of purge
    // --- gas
    {Item::GasMix, Item::GasFamily, While::IsNot, choice::kLpgAir},
    {Item::GasLpgShare, Item::GasFamily, While::Is, choice::kLpgAir},
    {Item::GasMethane, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasEthane, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasPropane, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasButanes, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasPentanes, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasHydrogen, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasCarbonMonoxide, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasNitrogen, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasCarbonDioxide, Item::GasMix, While::Is, choice::kTyped},
    {Item::GasOxygen, Item::GasMix, While::Is, choice::kTyped},
    // --- end of gas
});

/// An item is of use only while the choice that decides it is one of these; no code stands for nothing
/// chosen.
using Codes = std::span<const std::string_view>;
struct OneOf {
    Item item;
    Item decidedBy;
    Codes codes;
};
constexpr std::array kRooms{std::string_view(), choice::kRoom, choice::kInternalSpace};
constexpr std::array kPlants{choice::kBoilerRoom, choice::kBoilerEnclosure};
constexpr std::array kNoPlants{std::string_view(), choice::kRoom, choice::kInternalSpace,
                               choice::kCompartmentToRoom, choice::kCompartmentToOutside};
constexpr std::array kSomeVents{std::string_view(), choice::kYes};
/// Kinds that come with more than one kind of flue.
constexpr std::array kFluesDiffer{
    std::string_view(),     choice::kCondensingBoiler, choice::kNonCondensingBoiler,
    choice::kWarmAirHeater, choice::kGasFire,          choice::kRangeCooker,
    choice::kTumbleDryer,   choice::kCatering,         choice::kOther};

constexpr auto kOneOf = std::to_array<OneOf>({
    // --- ventilation
    {Item::RoomVolume, Item::RoomSpace, Codes(kRooms)},
    {Item::RoomOpening, Item::RoomSpace, Codes(kRooms)},
    {Item::RoomTight, Item::RoomSpace, Codes(kRooms)},
    {Item::RoomBedSitting, Item::RoomSpace, Codes(kRooms)},
    {Item::RoomBasement, Item::RoomSpace, Codes(kRooms)},
    {Item::PlantSummer, Item::RoomSpace, Codes(kPlants)},
    {Item::PlantFloor, Item::RoomSpace, Codes(kPlants)},
    {Item::PlantMiddle, Item::RoomSpace, Codes(kPlants)},
    {Item::PlantCeiling, Item::RoomSpace, Codes(kPlants)},
    {Item::ApplianceFlue, Item::ApplianceKind, Codes(kFluesDiffer)},
    {Item::ApplianceVentArea, Item::RoomSpace, Codes(kNoPlants)},
    {Item::VentArea, Item::RoomVents, Codes(kSomeVents)},
    {Item::VentTo, Item::RoomVents, Codes(kSomeVents)},
    {Item::VentLevel, Item::RoomVents, Codes(kSomeVents)},
    {Item::VentSound, Item::RoomVents, Codes(kSomeVents)},
    {Item::VentSleeved, Item::RoomVents, Codes(kSomeVents)},
    // --- end of ventilation
});

/// The code chosen in the row, or in the part that is asked once; empty while nothing is.
std::string_view chosen(const Worksheet& sheet, Group group, int row, Item item) {
    const auto* entry = sheet.find(group, row, item);
    if (entry == nullptr) {
        entry = sheet.find(Group::Once, 0, item);
    }
    return entry == nullptr ? std::string_view{} : std::string_view(entry->canonical);
}

}  // namespace

bool isOfUse(const Worksheet& sheet, Group group, int row, Item item) {
    return std::all_of(kOfUse.begin(), kOfUse.end(),
                       [&](const OfUse& line) {
                           const bool is = chosen(sheet, group, row, line.decidedBy) == line.code;
                           return line.item != item || is == (line.when == While::Is);
                       }) &&
           std::all_of(kOneOf.begin(), kOneOf.end(), [&](const OneOf& line) {
               const auto code = chosen(sheet, group, row, line.decidedBy);
               return line.item != item ||
                      std::find(line.codes.begin(), line.codes.end(), code) != line.codes.end();
           });
}

}  // namespace hearth::judging

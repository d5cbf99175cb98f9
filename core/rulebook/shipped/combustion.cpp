// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

#include <utility>

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr std::string_view kBoilerProcedure =
    "Boiler trade's procedure for condensing boilers (bulletin TB 143)";
constexpr std::string_view kBs7967 = "BS 7967";

constexpr Origin kCondensing{
    Provenance::Published, kBoilerProcedure,
    "CO charity's pages on the procedure: not more than 350 ppm and a ratio of 0.0040 or below where the "
    "maker gives no figure",
    "Flowcharts are remembered as \"less than\": exactly at the limit is said as such."};

Origin recalledRatio(std::string_view doubt) {
    return {Provenance::Memory, kBs7967, "recalled from BS 7967-3:2005 and BS 7967:2015, not read", doubt};
}

constexpr std::string_view kNonCondensingDoubt =
    "The table of the standard was not seen. Whether 0.008 still holds for older room-sealed boilers with a "
    "fan is not certain.";
constexpr std::string_view kTableDoubt = "The table of the standard was not seen.";
constexpr std::string_view kFaint =
    "The figure of BS 7967 is remembered too faintly to be given: enter it from your own copy.";
constexpr std::string_view kUnknown =
    "Whether BS 7967 has a figure for this kind of appliance is not known: enter it from your own copy.";

constexpr Origin kAirInlet{
    Provenance::Memory, kBoilerProcedure,
    "recalled of the bulletin and BS 7967:2015; a boiler maker's page on the check prints the same figures",
    "The one page that was read prints them where the analyser is set to fresh air, not at the air inlet."};

constexpr Origin kGap{
    Provenance::CommonPractice,
    {},
    "worked out: in complete combustion CO2 + (CO2max/20.95) O2 is CO2max; what analysers round and how gas "
    "varies comes to about 0.3 points",
    "Advice: it fails nothing."};

void addRatio(std::vector<Entry>& entries, Rule rule, std::int64_t tenThousandths, const Origin& origin) {
    entries.push_back(entry({rule}, number(tenThousandths, 4, UnitCode::None), Comparison::AtMost, origin));
}

}  // namespace

void addCombustion(std::vector<Entry>& entries) {
    addRatio(entries, Rule::CombustionRatioCondensing, 40, kCondensing);
    entries.push_back(entry({Rule::CombustionCarbonMonoxideCondensing}, number(350, 0, UnitCode::Ppm),
                            Comparison::AtMost, kCondensing));
    addRatio(entries, Rule::CombustionRatioNonCondensing, 80, recalledRatio(kNonCondensingDoubt));
    addRatio(entries, Rule::CombustionRatioWarmAir, 80, recalledRatio(kTableDoubt));
    addRatio(entries, Rule::CombustionRatioFire, 200, recalledRatio(kTableDoubt));
    for (const auto rule :
         {Rule::CombustionRatioBackBoiler, Rule::CombustionRatioBackBoilerFire,
          Rule::CombustionRatioOpenFluedWater, Rule::CombustionRatioFluelessSpace,
          Rule::CombustionRatioFluelessWater, Rule::CombustionRatioOven, Rule::CombustionRatioGrill}) {
        entries.push_back(emptyEntry({rule}, Comparison::AtMost, kFaint));
    }
    for (const auto rule : {Rule::CombustionRatioRoomSealedWater, Rule::CombustionRatioRangeCooker,
                            Rule::CombustionRatioDryer}) {
        entries.push_back(emptyEntry({rule}, Comparison::AtMost, kUnknown));
    }
    entries.push_back(
        entry({Rule::AirInletOxygen}, number(206, 1, UnitCode::Percent), Comparison::AtLeast, kAirInlet));
    entries.push_back(
        entry({Rule::AirInletCarbonDioxide}, number(2, 1, UnitCode::Percent), Comparison::Below, kAirInlet));
    entries.push_back(
        entry({Rule::CombustionPlausibleGap}, number(3, 1, UnitCode::Percent), Comparison::AtMost, kGap));
}

}  // namespace hearth::rulebook::shipped

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

namespace hearth::rulebook::shipped {

namespace {

using quantity::Decimal;
using quantity::UnitCode;

constexpr std::string_view kEn437 = "EN 437";
constexpr std::string_view kFromMemory = "from memory of the standard";

constexpr Origin kMeterAccuracy{
    Provenance::Published, "Gas (Meters) Regulations 1983", "The regulations",
    "From a fiftieth of the meter's greatest flow up to it; below that nothing was read.", "reg 3"};
constexpr Origin kTimingByHand{
    Provenance::CommonPractice,
    {},
    "common practice, no source",
    "Half a second either way at the start and again at the stop of a stopwatch; no page gives a figure."};
constexpr Origin kMeteringFactor{
    Provenance::Published, "Gas (Calculation of Thermal Energy) Regulations 1996",
    "Five suppliers' help pages on bills",
    "The regulations' amendment that fixes it was not read; 12.2 degrees, 21 mbar and 66 m rebuild 1.02266."};
constexpr Origin kOver{
    Provenance::Secondary, "Makers' gas-rating pages",
    "Makers' gas-rating pages (flueless fires): +-5 % as production tolerance at the maximum rate; training "
    "practice has the same +5 %",
    "The makers speak of their own appliances; no standard was found. The maker's own tolerance decides "
    "first."};
constexpr Origin kUnder{
    Provenance::Secondary, "Makers' gas-rating pages",
    "Makers' gas-rating pages (flueless fires): +-5 % as production tolerance at the maximum rate",
    "The stricter of two figures: training practice allows 10 % under the plate (no source). The makers "
    "speak "
    "of their own appliances; no standard was found. The maker's own tolerance decides first."};
constexpr Origin kInletNatural{
    Provenance::Memory, kEn437, kFromMemory,
    "Limits of the test pressures of second-family gas at 20 mbar. With 19 mbar at the meter and 1 mbar in "
    "the "
    "pipes at least 18 is left: a pressure below that points to the supply or the pipes."};
constexpr Origin kInletPropane{
    Provenance::Memory, "UKLPG code of practice / BS 5482", kFromMemory,
    "37 +-5 mbar, the stricter of two: EN 437 has 25 to 45 mbar. Both from memory."};
constexpr Origin kInletButane{Provenance::Memory, "EN 437, UKLPG code of practice / BS 5482", kFromMemory,
                              "The stricter end of each of two: EN 437 has 25 to 35 mbar, the code of "
                              "practice 28 +-5. Both from memory."};
constexpr std::string_view kNoLpgAir = "Not read for LPG-air: take it from the maker or the supplier.";
constexpr Origin kAverage{
    Provenance::Secondary, "IGEM/G/13",
    "Institution's magazine, August 2019: proposals of its low-pressure working group",
    "A proposal of 2019, taken into IGEM/G/13, whose own text was not read. It conflicts with 19 to 23 mbar "
    "after "
    "BS 6400: write down which was used. It informs, and decides nothing until the firm has confirmed it."};
constexpr std::string_view kMakersAlone =
    "Only the maker's figure of the appliance decides: enter it with the appliance.";
constexpr Origin kHeatBalance{
    Provenance::CommonPractice,
    {},
    "common practice, no source",
    "A plausibility check by the heat balance: outside it flow or temperatures were misread more often than "
    "not."};

Value decimals(std::int64_t least, std::int64_t most, int places, UnitCode unit) {
    return Range{Decimal(least, places), Decimal(most, places), unit};
}

}  // namespace

void addBurner(std::vector<Entry>& entries) {
    constexpr auto kAny = Edition::General;
    const auto add = [&](RuleKey key, Value value, Comparison comparison, const Origin& origin) {
        entries.push_back(entry(key, std::move(value), comparison, origin));
    };
    add({Rule::MeterAccuracy}, number(2, 0, UnitCode::Percent), Comparison::AtMost, kMeterAccuracy);
    add({Rule::TimingByHand}, number(5, 1, UnitCode::Second), Comparison::AsGiven, kTimingByHand);
    add({Rule::MeteringFactor, kAny, Gas::NaturalGas}, number(102264, 5, UnitCode::None), Comparison::AsGiven,
        kMeteringFactor);
    add({Rule::HeatInputOver}, number(5, 0, UnitCode::Percent), Comparison::AtMost, kOver);
    add({Rule::HeatInputUnder}, number(5, 0, UnitCode::Percent), Comparison::AtMost, kUnder);
    add({Rule::InletPressure, kAny, Gas::NaturalGas}, range(17, 25, UnitCode::Millibar), Comparison::Within,
        kInletNatural);
    add({Rule::InletPressure, kAny, Gas::Propane}, range(32, 42, UnitCode::Millibar), Comparison::Within,
        kInletPropane);
    add({Rule::InletPressure, kAny, Gas::Butane}, range(25, 33, UnitCode::Millibar), Comparison::Within,
        kInletButane);
    entries.push_back(emptyEntry({Rule::InletPressure, kAny, Gas::LpgAir}, Comparison::Within, kNoLpgAir));
    add({Rule::MeterAverage, kAny, Gas::NaturalGas}, decimals(185, 220, 1, UnitCode::Millibar),
        Comparison::Within, kAverage);
    add({Rule::MeterAverageTime, kAny, Gas::NaturalGas}, number(360, 0, UnitCode::Second),
        Comparison::AtLeast, kAverage);
    add({Rule::HeatBalance}, decimals(90, 105, 2, UnitCode::None), Comparison::Within, kHeatBalance);
    entries.push_back(emptyEntry({Rule::BurnerPressure}, Comparison::Within, kMakersAlone));
    entries.push_back(emptyEntry({Rule::HotWaterOutput}, Comparison::AtLeast, kMakersAlone));
    entries.push_back(emptyEntry({Rule::HotWaterFlow}, Comparison::AtLeast, kMakersAlone));
}

}  // namespace hearth::rulebook::shipped

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr Origin kMeterCards{
    Provenance::Secondary, kBs6400, "Trainees' revision cards on domestic meters",
    "Not in the standard's own words: the catalogue's abstract gives 19 mbar as the least "
    "at the meter outlet and no lock-up."};
constexpr std::string_view kLpgPressuresNotRead = "Not read for LPG: enter it from your own copy.";

}  // namespace

void addPressures(std::vector<Entry>& entries) {
    entries.push_back(entry({Rule::StandingPressureMost, Edition::General, Gas::NaturalGas},
                            number(30, 0, UnitCode::Millibar), Comparison::AtMost, kMeterCards, Daily::Yes));
    entries.push_back(entry({Rule::WorkingPressure, Edition::General, Gas::NaturalGas},
                            range(19, 23, UnitCode::Millibar), Comparison::Within, kMeterCards, Daily::Yes));
    for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        entries.push_back(emptyEntry({Rule::StandingPressureMost, Edition::General, gas}, Comparison::AtMost,
                                     kLpgPressuresNotRead));
        entries.push_back(emptyEntry({Rule::WorkingPressure, Edition::General, gas}, Comparison::Within,
                                     kLpgPressuresNotRead));
    }
}

}  // namespace hearth::rulebook::shipped

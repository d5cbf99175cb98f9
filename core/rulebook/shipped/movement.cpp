// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr std::string_view kBoth =
    "Trainees' revision cards on Edition 2/3 (water 0.25 mbar) and an exam revision page on Edition 2 (water "
    "0.2, "
    "electronic 0.25 mbar)";

constexpr Origin kWater{
    Provenance::Secondary, kUp1bEd3, kBoth,
    "Half of the gauge's smallest division of 0.5 mbar. The cards count 0.25 itself as none; here "
    "it is at the limit. The revision page says 0.2, perhaps with the two gauges swapped."};
constexpr Origin kElectronic{
    Provenance::Secondary, kUp1bEd3, kBoth,
    "The stricter of the two figures: the page gives 0.25 for electronic gauges and 0.2 for water, perhaps "
    "swapped; "
    "for a gauge that shows one decimal nothing is settled. A movement below it is none."};
constexpr Origin kAccuracy{Provenance::Secondary, "IGEM/UP/1B Edition 2", "An exam revision page (2013)",
                           "The page contains slips; the standard itself was not read."};
constexpr Origin kAssumed{
    Provenance::CommonPractice,
    {},
    "common practice, no source",
    "A figure to reckon with, not a limit: at 20 mbar and 15 degrees, 0.07 K is worth 0.25 mbar."};

}  // namespace

void addMovement(std::vector<Entry>& entries) {
    entries.push_back(entry({Rule::NoMovementWater}, number(25, 2, UnitCode::Millibar), Comparison::Below,
                            kWater, Daily::Yes));
    entries.push_back(entry({Rule::NoMovementElectronic}, number(2, 1, UnitCode::Millibar), Comparison::Below,
                            kElectronic, Daily::Yes));
    entries.push_back(
        emptyEntry({Rule::SettleMovement}, Comparison::Below,
                   "No page gives a figure for 'steady'; while it is empty, no perceptible movement "
                   "is taken (common practice, no source)."));
    entries.push_back(entry({Rule::GaugeAccuracy}, number(3, 1, UnitCode::Millibar), Comparison::AtMost,
                            kAccuracy, Daily::Yes));
    entries.push_back(entry({Rule::AssumedTemperatureChange}, number(7, 2, UnitCode::Kelvin),
                            Comparison::AsGiven, kAssumed));
}

}  // namespace hearth::rulebook::shipped

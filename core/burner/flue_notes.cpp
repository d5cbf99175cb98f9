// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/flue_notes.h"

#include "core/burner/flue_figures.h"
#include "core/burner/flue_gas.h"

namespace hearth::burner {

using rulebook::Say;
using rulebook::Sentence;

namespace {

void noteExcessAir(std::vector<Sentence>& notes, quantity::Share oxygen, const gas::Stoichiometry& burning) {
    const auto exact = gas::lambdaAtOxygen(burning, oxygen).and_then(excessAir);
    const auto simple = lambdaSimple(oxygen).and_then(excessAir);
    if (exact && simple) {
        notes.push_back({Say::FlueGasExcessAir, {percentFigure(*exact, 0), percentFigure(*simple, 0)}});
    }
}

void noteCarbonMonoxide(std::vector<Sentence>& notes, quantity::Share carbonMonoxide, quantity::Share oxygen,
                        const gas::Stoichiometry& burning, const gas::Properties& properties) {
    constexpr double kKilojoulesInKilowattHour = 3600.0;
    const auto free = airFree(carbonMonoxide, oxygen);
    const auto atThree = atThreePercent(carbonMonoxide, oxygen);
    if (!free || !atThree) {
        return;
    }
    notes.push_back({Say::FlueGasAirFree, {ppmFigure(*free), ppmFigure(*atThree)}});
    const auto net = milligramsPerKilowattHour(*free, kMolarMassCarbonMonoxide, burning.dryFlue,
                                               properties.netMolar / kKilojoulesInKilowattHour);
    const auto gross = milligramsPerKilowattHour(*free, kMolarMassCarbonMonoxide, burning.dryFlue,
                                                 properties.grossMolar / kKilojoulesInKilowattHour);
    if (net && gross) {
        notes.push_back({Say::FlueGasEmission, {emissionFigure(*net), emissionFigure(*gross)}});
    }
}

}  // namespace

std::vector<Sentence> flueGasNotes(const FlueReadings& readings, const gas::Stoichiometry& burning,
                                   const gas::Properties& properties) {
    std::vector<Sentence> notes;
    if (!readings.oxygen) {
        return notes;
    }
    noteExcessAir(notes, readings.oxygen->value, burning);
    if (readings.carbonMonoxide) {
        noteCarbonMonoxide(notes, readings.carbonMonoxide->value, readings.oxygen->value, burning,
                           properties);
    }
    return notes;
}

}  // namespace hearth::burner

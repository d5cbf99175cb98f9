// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/stoichiometry.h"

#include "core/gas/figures.h"
#include "core/quantity/units.h"

namespace hearth::gas {

std::optional<Stoichiometry> stoichiometry(const Composition& composition, double oxygenInAir) {
    if (!(oxygenInAir > 0.0 && oxygenInAir <= 1.0)) {
        return std::nullopt;
    }
    Stoichiometry result;
    double nitrogen = 0.0;
    for (const auto component : kComponents) {
        const double fraction = composition.of(component);
        const Atoms atoms = atomsOf(component);
        result.oxygen += fraction * (atoms.carbon + atoms.hydrogen / 4.0 - atoms.oxygen / 2.0);
        result.carbonDioxide += fraction * atoms.carbon;
        result.water += fraction * atoms.hydrogen / 2.0;
        nitrogen += fraction * atoms.nitrogenMolecules;
    }
    if (!(result.oxygen > 0.0)) {
        return std::nullopt;
    }
    result.air = result.oxygen / oxygenInAir;
    result.dryFlue = result.carbonDioxide + nitrogen + (1.0 - oxygenInAir) * result.air;
    result.wetFlue = result.dryFlue + result.water;
    if (result.dryFlue > 0.0) {  // hydrogen in pure oxygen leaves nothing but water
        result.co2Max = quantity::Share(result.carbonDioxide / result.dryFlue, quantity::kOne);
    }
    return result;
}

double dryPerAir(const Stoichiometry& burning) {
    return burning.dryFlue / burning.air;
}

Result<double> lambdaAtOxygen(const Stoichiometry& burning, quantity::Share oxygenDry) {
    const double oxygen = oxygenDry.in(quantity::kOne);
    const double inAir = burning.oxygenInAir();
    if (!(oxygen >= 0.0 && oxygen < inAir)) {
        return outside(oxygen * 100.0, 0.0, inAir * 100.0, quantity::UnitCode::Percent);
    }
    return 1.0 + dryPerAir(burning) * oxygen / (inAir - oxygen);
}

}  // namespace hearth::gas

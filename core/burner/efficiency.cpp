// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/efficiency.h"

#include "core/burner/flue_figures.h"
#include "core/gas/properties.h"
#include "core/gas/stoichiometry.h"

namespace hearth::burner {

using quantity::kPercent;
using quantity::Share;
using quantity::Temperature;
using rulebook::Gas;
using rulebook::Say;

namespace {

constexpr Share kWhole(1.0, quantity::kOne);

/// A loss in per cent, if it can be one.
Result<Share> lossOf(double percent) {
    if (!(percent >= 0.0 && percent <= 100.0)) {
        return outOfRange(percent, "0", "100");
    }
    return Share(percent, kPercent);
}

/// How much hotter the flue is than the air, in kelvin.
Result<double> risenBy(Temperature flue, Temperature air) {
    const double rise = (flue - air).in(quantity::kKelvin);
    if (rise < 0.0) {
        return outOfRange(rise, "0", "");
    }
    return rise;
}

Result<double> percentOfCarbonDioxide(Share carbonDioxide) {
    const double percent = carbonDioxide.in(kPercent);
    if (percent <= 0.0) {
        return outOfRange(percent, "0", "");
    }
    return percent;
}

/// The Siegert loss by what has been read: CO2, else O2.
std::optional<Share> siegertLoss(const EfficiencyInput& input) {
    const auto fuel = siegertCoefficients(input.gas);
    if (input.readings.carbonDioxide) {
        const auto loss =
            siegertLossByCarbonDioxide(*input.flue, *input.air, input.readings.carbonDioxide->value, fuel);
        return loss ? std::optional(*loss) : std::nullopt;
    }
    if (input.readings.oxygen) {
        const auto loss = siegertLossByOxygen(*input.flue, *input.air, input.readings.oxygen->value, fuel);
        return loss ? std::optional(*loss) : std::nullopt;
    }
    return std::nullopt;
}

void noteLosses(std::vector<rulebook::Sentence>& notes, const EfficiencyInput& input) {
    const auto fuel = input.composition == nullptr ? std::nullopt : bs845Fuel(input.gas, *input.composition);
    if (!fuel || !input.readings.carbonDioxide || !input.readings.carbonMonoxide) {
        return;
    }
    const auto carbonDioxide = input.readings.carbonDioxide->value;
    const auto dry = dryGasLoss(*input.flue, *input.air, carbonDioxide, *fuel);
    const auto water = waterVapourLoss(*input.flue, *input.air, *fuel);
    const auto unburned = unburnedLoss(input.readings.carbonMonoxide->value, carbonDioxide, *fuel);
    if (dry && water && unburned) {
        notes.push_back({Say::EfficiencyLosses,
                         {percentFigure(kWhole - *dry - *water - *unburned), percentFigure(*dry),
                          percentFigure(*water), percentFigure(*unburned, 2)}});
    }
}

void noteCondensing(std::vector<rulebook::Sentence>& notes, const EfficiencyInput& input) {
    if (!input.dewPoint || *input.flue >= *input.dewPoint) {
        return;
    }
    notes.push_back(
        {Say::EfficiencyNotCondensed, {degreesFigure(*input.flue), degreesFigure(*input.dewPoint)}});
    if (input.composition != nullptr) {
        const auto values = gas::properties(*input.composition);
        if (const auto ceiling = latentCeiling(values.gross, values.net)) {
            notes.push_back({Say::EfficiencyLatentCeiling, {percentFigure(*ceiling)}});
        }
    }
}

}  // namespace

SiegertCoefficients siegertCoefficients(Gas gas) {
    return gas == Gas::NaturalGas ? SiegertCoefficients{0.37, 0.66, 0.009}
                                  : SiegertCoefficients{0.42, 0.63, 0.008};
}

Result<Share> siegertLossByCarbonDioxide(Temperature flue, Temperature air, Share carbonDioxide,
                                         const SiegertCoefficients& fuel) {
    const auto rise = risenBy(flue, air);
    const auto percent = percentOfCarbonDioxide(carbonDioxide);
    if (!rise || !percent) {
        return tl::unexpected(rise ? percent.error() : rise.error());
    }
    return lossOf(*rise * (fuel.a1 / *percent + fuel.b));
}

Result<Share> siegertLossByOxygen(Temperature flue, Temperature air, Share oxygen,
                                  const SiegertCoefficients& fuel) {
    constexpr double kOxygenOfFormula = 21.0;
    const double percent = oxygen.in(kPercent);
    if (percent < 0.0 || percent >= kOxygenOfFormula) {
        return outOfRange(percent, "0", "21");
    }
    const auto rise = risenBy(flue, air);
    if (!rise) {
        return tl::unexpected(rise.error());
    }
    return lossOf(*rise * (fuel.a2 / (kOxygenOfFormula - percent) + fuel.b));
}

std::optional<Bs845Fuel> bs845Fuel(Gas gas, const gas::Composition& composition) {
    constexpr double kMolarMassHydrogen = 2.01588;  // g/mol
    constexpr double kKilojoules = 1000.0;
    const auto burning = gas::stoichiometry(composition);
    if (gas == Gas::LpgAir || !burning) {
        return std::nullopt;
    }
    const auto values = gas::properties(composition);
    const double hydrogen = 100.0 * burning->water * kMolarMassHydrogen / values.molarMass;
    const double heat = values.grossPerKilogram * kKilojoules;
    switch (gas) {
        case Gas::Propane:
            return Bs845Fuel{0.42, 38.0, hydrogen, heat};
        case Gas::Butane:
            return Bs845Fuel{0.43, 39.0, hydrogen, heat};
        default:
            return Bs845Fuel{0.35, 32.0, hydrogen, heat};
    }
}

Result<Share> dryGasLoss(Temperature flue, Temperature air, Share carbonDioxide, const Bs845Fuel& fuel) {
    const auto rise = risenBy(flue, air);
    const auto percent = percentOfCarbonDioxide(carbonDioxide);
    if (!rise || !percent) {
        return tl::unexpected(rise ? percent.error() : rise.error());
    }
    return lossOf(fuel.k * *rise / *percent);
}

Result<Share> waterVapourLoss(Temperature flue, Temperature air, const Bs845Fuel& fuel) {
    if (const auto rise = risenBy(flue, air); !rise) {
        return tl::unexpected(rise.error());
    }
    const double heat = 2488.0 - 4.2 * air.in(quantity::kCelsius) + 2.1 * flue.in(quantity::kCelsius);
    return lossOf(9.0 * fuel.hydrogen * heat / fuel.grossHeat);
}

Result<Share> unburnedLoss(Share carbonMonoxide, Share carbonDioxide, const Bs845Fuel& fuel) {
    if (carbonMonoxide < Share{}) {
        return outOfRange(carbonMonoxide.in(quantity::kPpm), "0", "");
    }
    if (carbonDioxide <= Share{}) {
        return outOfRange(carbonDioxide.in(kPercent), "0", "");
    }
    return lossOf(fuel.k1 * (carbonMonoxide / (carbonDioxide + carbonMonoxide)));
}

Result<Share> latentCeiling(quantity::GrossHeatValue gross, quantity::NetHeatValue net) {
    const double ratio = net.base() > 0.0 ? gross.base() / net.base() : 0.0;
    if (ratio < 1.0) {
        return outOfRange(ratio, "1", "");
    }
    return Share(ratio - 1.0, quantity::kOne);
}

std::vector<rulebook::Sentence> efficiencyNotes(const EfficiencyInput& input) {
    std::vector<rulebook::Sentence> notes;
    if (!input.flue || !input.air) {
        return notes;
    }
    if (const auto loss = siegertLoss(input)) {
        notes.push_back({Say::EfficiencySiegert, {percentFigure(kWhole - *loss), percentFigure(*loss)}});
    }
    noteLosses(notes, input);
    if (!notes.empty()) {
        noteCondensing(notes, input);
    }
    return notes;
}

}  // namespace hearth::burner

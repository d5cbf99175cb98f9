// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/flue_gas.h"

#include "core/burner/flue_figures.h"

namespace hearth::burner {

using quantity::kPercent;
using quantity::kPpm;
using quantity::Share;

namespace {

constexpr Share kNone{};

/// Whether O2 leaves something to divide by; `most` is the oxygen of air that the formula takes.
bool isOxygen(Share oxygen, Share most) {
    return oxygen >= kNone && oxygen < most;
}

}  // namespace

Result<Share> carbonDioxideFromOxygen(Share oxygen, Share co2Max) {
    if (!isOxygen(oxygen, kOxygenInAir) && oxygen != kOxygenInAir) {
        return outOfRange(oxygen.in(kPercent), "0", "20.95");
    }
    return co2Max * ((kOxygenInAir - oxygen) / kOxygenInAir);
}

Result<double> lambdaSimple(Share oxygen) {
    if (!isOxygen(oxygen, kOxygenOnDisplay)) {
        return outOfRange(oxygen.in(kPercent), "0", "20.9");
    }
    return kOxygenOnDisplay / (kOxygenOnDisplay - oxygen);
}

Result<double> lambdaByCarbonDioxide(Share carbonDioxide, Share co2Max) {
    if (carbonDioxide <= kNone || carbonDioxide > co2Max) {
        return outOfRange(carbonDioxide.in(kPercent), "0",
                          quantity::Decimal::rounded(co2Max.in(kPercent), 2).text());
    }
    return co2Max / carbonDioxide;
}

Result<Share> excessAir(double lambda) {
    if (lambda < 1.0) {
        return outOfRange(lambda, "1", "");
    }
    return Share(lambda - 1.0, quantity::kOne);
}

Result<Share> atOxygen(Share measured, Share oxygen, Share reference) {
    if (measured < kNone) {
        return outOfRange(measured.in(kPpm), "0", "");
    }
    for (const auto share : {oxygen, reference}) {
        if (!isOxygen(share, kOxygenOnDisplay)) {
            return outOfRange(share.in(kPercent), "0", "20.9");
        }
    }
    return measured * ((kOxygenOnDisplay - reference) / (kOxygenOnDisplay - oxygen));
}

Result<Share> airFree(Share measured, Share oxygen) {
    return atOxygen(measured, oxygen, kNone);
}

Result<Share> atThreePercent(Share measured, Share oxygen) {
    return atOxygen(measured, oxygen, Share(3.0, kPercent));
}

Result<Share> airFreeByCarbonDioxide(Share measured, Share carbonDioxide, Share co2Max) {
    if (measured < kNone) {
        return outOfRange(measured.in(kPpm), "0", "");
    }
    return lambdaByCarbonDioxide(carbonDioxide, co2Max).map([&](double lambda) { return measured * lambda; });
}

Result<Share> airFreeOfRatio(double ratio, Share co2Max) {
    if (ratio < 0.0) {
        return outOfRange(ratio, "0", "");
    }
    return co2Max * ratio;
}

Result<Share> dryFromWet(Share wet, Share water) {
    constexpr Share kAll(1.0, quantity::kOne);
    if (wet < kNone) {
        return outOfRange(wet.in(kPercent), "0", "100");
    }
    if (water < kNone || water >= kAll) {
        return outOfRange(water.in(kPercent), "0", "100");
    }
    return wet * (kAll / (kAll - water));
}

Result<double> milligramsPerCubicMetre(Share carbonMonoxide, quantity::Temperature at) {
    constexpr double kGasConstant = 8.314462618;  // J/(mol K)
    constexpr double kPressure = 101325.0;        // Pa
    constexpr double kMilligrams = 1000.0;
    const double kelvin = at.in(quantity::kKelvin);
    if (carbonMonoxide < kNone) {
        return outOfRange(carbonMonoxide.in(kPpm), "0", "");
    }
    if (kelvin <= 0.0) {
        return outOfRange(kelvin, "0", "");
    }
    return carbonMonoxide.in(quantity::kOne)*kMolarMassCarbonMonoxide * kMilligrams * kPressure /
           (kGasConstant * kelvin);
}

Result<double> milligramsPerKilowattHour(Share airFree, double molarMass, double dryFlue,
                                         double kilowattHoursPerMole) {
    constexpr double kMilligrams = 1000.0;
    if (airFree < kNone) {
        return outOfRange(airFree.in(kPpm), "0", "");
    }
    for (const double positive : {molarMass, dryFlue, kilowattHoursPerMole}) {
        if (positive <= 0.0) {
            return outOfRange(positive, "0", "");
        }
    }
    return airFree.in(quantity::kOne)*dryFlue * molarMass * kMilligrams / kilowattHoursPerMole;
}

}  // namespace hearth::burner

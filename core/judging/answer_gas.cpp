// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/analysis.h"
#include "core/gas/dew_point.h"
#include "core/gas/figures.h"
#include "core/gas/named_gases.h"
#include "core/gas/network.h"
#include "core/judging/asking.h"
#include "core/quantity/units.h"

#include <array>

namespace hearth::judging {

using reg::Item;

namespace {

using quantity::GrossHeatValue;
using quantity::kMegajoulePerCubicMetre;

constexpr std::string_view kGasByIso6976 = "ISO 6976:2016, 15 °C / 15 °C";
constexpr std::string_view kGasTypedHeat = "calorific value typed in, ratio of ISO 6976:2016";
constexpr std::string_view kGasTypedWobbe = "calorific value and relative density typed in, ISO 6976:2016";
constexpr std::string_view kGasBurning = "stoichiometry, textbook";
constexpr std::string_view kGasCondensing = "stoichiometry, textbook; IAPWS-IF97, dry air";

struct AskedGasPart {
    Item item;
    gas::Component component;
    double part = 1.0;
};
/// Most analyses give butanes and pentanes together: taken as half n-, half i-. Common practice, no source.
constexpr std::array kAskedGasParts{
    AskedGasPart{Item::GasMethane, gas::Component::CH4},
    AskedGasPart{Item::GasEthane, gas::Component::C2H6},
    AskedGasPart{Item::GasPropane, gas::Component::C3H8},
    AskedGasPart{Item::GasButanes, gas::Component::nC4H10, 0.5},
    AskedGasPart{Item::GasButanes, gas::Component::iC4H10, 0.5},
    AskedGasPart{Item::GasPentanes, gas::Component::nC5H12, 0.5},
    AskedGasPart{Item::GasPentanes, gas::Component::iC5H12, 0.5},
    AskedGasPart{Item::GasHydrogen, gas::Component::H2},
    AskedGasPart{Item::GasCarbonMonoxide, gas::Component::CO},
    AskedGasPart{Item::GasNitrogen, gas::Component::N2},
    AskedGasPart{Item::GasCarbonDioxide, gas::Component::CO2},
    AskedGasPart{Item::GasOxygen, gas::Component::O2},
};

/// What was said of the gas. The composition may be one that only stands for it; an analysis is of the gas.
struct GasSaid {
    std::optional<gas::Composition> composition;
    rulebook::Given<gas::Analysis> analysis;
    rulebook::Given<gas::Stated<GrossHeatValue>> gross;
    rulebook::Given<gas::Stated<double>> relativeDensity;

    [[nodiscard]] bool isByFigures() const { return gross.isEntered() || relativeDensity.isEntered(); }
};

rulebook::Given<gas::Analysis> analysisTyped(Asking& asking) {
    using Given = rulebook::Given<gas::Analysis>;
    std::vector<gas::AnalysedPart> parts;
    for (const auto& asked : kAskedGasParts) {
        const auto share = asking.once.share(asked.item);
        if (share.unreadable) {
            return Given::unusable();
        }
        if (share) {
            parts.push_back({asked.component, share->value.in(quantity::kOne)*asked.part,
                             share->digit.in(quantity::kOne)*asked.part});
        }
    }
    if (parts.empty()) {
        return {};
    }
    const auto found = asking.got(gas::analysed(parts));
    return found ? Given(*found) : Given::unusable();
}

/// The composition of a gas that was named: a mix, or a family by its usual one. None for an empty sheet.
std::optional<gas::Composition> compositionNamed(Asking& asking, std::string_view mix) {
    if (asking.gas == rulebook::Gas::LpgAir) {
        const auto share = asking.once.share(Item::GasLpgShare);
        return share ? asking.got(gas::propaneAir(share->value)) : std::nullopt;
    }
    const bool isMixSaid = asking.once.isEntered(Item::GasMix);
    if (!isMixSaid && asking.once.code(Item::GasFamily).empty()) {
        return std::nullopt;
    }
    const auto* named = isMixSaid ? gas::namedGas(mix) : gas::usualGas(asking.gas);
    return named == nullptr ? std::nullopt : std::optional(named->composition);
}

GasSaid gasSaid(Asking& asking) {
    GasSaid said;
    if (const auto mix = asking.once.code(Item::GasMix); mix == reg::choice::kTyped) {
        said.analysis = analysisTyped(asking);
        if (said.analysis) {
            said.composition = said.analysis->composition;
        }
    } else {
        said.composition = compositionNamed(asking, mix);
    }
    const auto gross = asking.once.heatValue<GrossHeatValue>(Item::GasHeatValue);
    if (gross && gross->value.base() > 0.0) {
        said.gross = gas::Stated<GrossHeatValue>{gross->value, gross->digit};
    } else if (gross.isEntered()) {
        said.gross = rulebook::Given<gas::Stated<GrossHeatValue>>::unusable();
    }
    const auto density = asking.once.number(Item::GasDensity);
    if (density && density->toDouble() > 0.0) {
        said.relativeDensity = gas::Stated<double>{density->toDouble(), density->lastDigit()};
    } else if (density.isEntered()) {
        said.relativeDensity = rulebook::Given<gas::Stated<double>>::unusable();
    }
    return said;
}

quantity::Figure gasFigureOf(double value, int decimals, quantity::UnitCode unit = quantity::UnitCode::None) {
    return {quantity::Decimal::rounded(value, decimals), unit};
}

template <class Heat>
quantity::Figure gasHeatFigure(Heat value) {
    return gas::megajoules(value.in(kMegajoulePerCubicMetre));
}

void workOutGasHeat(Asking& asking, const gas::Composition& composition) {
    const auto found = gas::properties(composition);
    asking.work(Derived::GrossHeat, gasHeatFigure(found.gross), kGasByIso6976);
    asking.work(Derived::NetHeat, gasHeatFigure(found.net), kGasByIso6976);
    asking.work(Derived::GrossPerMass, gasFigureOf(found.grossPerKilogram, 2), kGasByIso6976);
    asking.work(Derived::RelativeDensity, gas::densityFigure(found.relativeDensity), kGasByIso6976);
    asking.work(Derived::WobbeGross, gasHeatFigure(found.grossWobbe), kGasByIso6976);
    asking.work(Derived::WobbeNet, gasHeatFigure(found.netWobbe), kGasByIso6976);
}

/// A bill's figures come before those of a composition that stands for the gas, and are not mixed with them.
void workOutGasTyped(Asking& asking, const GasSaid& said) {
    std::optional<quantity::NetHeatValue> net;
    const auto ratio = said.composition ? gas::grossOverNet(*said.composition) : std::nullopt;
    if (said.gross && ratio) {
        net = quantity::NetHeatValue::fromBase(said.gross->value.base() / *ratio);
        asking.work(Derived::NetHeat, gasHeatFigure(*net), kGasTypedHeat);
    }
    if (!said.gross || !said.relativeDensity) {
        return;
    }
    if (const auto wobbe = gas::wobbeOf(said.gross->value, said.relativeDensity->value)) {
        asking.work(Derived::WobbeGross, gasHeatFigure(*wobbe), kGasTypedWobbe);
    }
    if (const auto wobbe = net ? gas::wobbeOf(*net, said.relativeDensity->value) : std::nullopt) {
        asking.work(Derived::WobbeNet, gasHeatFigure(*wobbe), kGasTypedWobbe);
    }
}

void workOutGasBurning(Asking& asking, const gas::Composition& composition) {
    if (const auto ratio = gas::grossOverNet(composition)) {
        asking.work(Derived::GrossOverNet, gasFigureOf(*ratio, 4), kGasByIso6976);
    }
    const auto burning = gas::stoichiometry(composition);
    if (!burning) {
        return;
    }
    constexpr auto kVolume = quantity::UnitCode::CubicMetre;
    asking.work(Derived::AirNeeded, gasFigureOf(burning->air, 3, kVolume), kGasBurning);
    asking.work(Derived::DryProducts, gasFigureOf(burning->dryFlue, 3, kVolume), kGasBurning);
    asking.work(Derived::WetProducts, gasFigureOf(burning->wetFlue, 3, kVolume), kGasBurning);
    asking.work(Derived::Co2Max,
                gasFigureOf(burning->co2Max.in(quantity::kPercent), 2, quantity::UnitCode::Percent),
                kGasBurning);
    if (burning->water > 0.0) {  // carbon monoxide burns dry
        if (const auto dew = asking.got(gas::dewPoint(*burning, 1.0))) {
            asking.work(Derived::StoichiometricDewPoint,
                        gasFigureOf(dew->in(quantity::kCelsius), 1, quantity::UnitCode::Celsius),
                        kGasCondensing);
        }
        if (const auto most = gas::condensateCeiling(composition)) {
            asking.work(Derived::CondensateGross, gasFigureOf(most->perGrossKilowattHour, 3), kGasBurning);
        }
    }
}

/// Judged is what was read of the gas: a bill's figures, or an analysis where there are none. A named mix
/// stands for the gas and says nothing about it.
void judgeGasNetwork(Asking& asking, const GasSaid& said) {
    auto gross = said.gross;
    auto density = said.relativeDensity;
    rulebook::Given<gas::Stated<gas::GrossWobbe>> wobbe;
    if (asking.once.isEntered(Item::GasFamily) && asking.once.code(Item::GasFamily).empty()) {
        gross = rulebook::Given<gas::Stated<GrossHeatValue>>::unusable();  // of which gas nobody can tell
        density = rulebook::Given<gas::Stated<double>>::unusable();
        wobbe = rulebook::Given<gas::Stated<gas::GrossWobbe>>::unusable();
    } else if (said.isByFigures()) {
        if (gross && density) {
            if (const auto found = gas::wobbeStated(*gross, *density)) {
                wobbe = *found;
            }
        }
        wobbe.unreadable = gross.unreadable || density.unreadable;
    } else if (said.analysis) {
        gross = said.analysis->gross;
        density = said.analysis->relativeDensity;
        wobbe = said.analysis->grossWobbe;
    } else {
        gross.unreadable = density.unreadable = wobbe.unreadable = said.analysis.unreadable;
    }
    asking.find(gas::networkWobbe(wobbe, asking.inForce),
                {Item::GasHeatValue, Item::GasDensity, Item::GasMix});
    if (asking.gas != rulebook::Gas::NaturalGas) {
        return;  // the first one says that the limits are natural gas's
    }
    asking.find(gas::networkDensity(density, asking.inForce), {Item::GasDensity, Item::GasMix});
    asking.find(gas::heatValueSeen(gross, asking.inForce), {Item::GasHeatValue, Item::GasMix});
}

}  // namespace

void answerGas(Asking& asking) {
    const auto said = gasSaid(asking);
    if (said.isByFigures()) {
        workOutGasTyped(asking, said);
    } else if (said.composition) {
        workOutGasHeat(asking, *said.composition);
    }
    if (said.composition) {
        workOutGasBurning(asking, *said.composition);
    }
    judgeGasNetwork(asking, said);
}

}  // namespace hearth::judging

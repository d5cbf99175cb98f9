// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/fuel.h"

#include "core/gas/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/values.h"

namespace hearth::gas {

namespace {

using quantity::kMegajoulePerCubicMetre;
using quantity::UnitCode;

constexpr double kGreatestHeatValue = 200.0;  // MJ/m3; hexane's would be 178

Result<void> checkTyped(const FuelInput& input) {
    const double gross = input.gross ? input.gross->in(kMegajoulePerCubicMetre) : kGreatestHeatValue;
    if (!(gross > 0.0 && gross <= kGreatestHeatValue)) {
        return outside(gross, 0.0, kGreatestHeatValue, UnitCode::MegajoulePerCubicMetre);
    }
    if (input.relativeDensity && !(*input.relativeDensity > 0.0 && *input.relativeDensity <= 3.0)) {
        return outside(*input.relativeDensity, 0.0, 3.0, UnitCode::None);
    }
    return {};
}

Result<void> addHeatValues(Fuel& fuel, const rulebook::RulesInForce& rules, const FuelInput& input) {
    if (input.gross) {
        fuel.gross = *input.gross;
    } else {
        const auto* entry = rules.known(rulebook::Rule::WorkingHeatValue);
        const auto working = entry == nullptr ? std::nullopt : rulebook::grossHeatValueOf(*entry);
        if (!working) {
            return fail(ErrorCode::NumberMissing, {"heat_value"});
        }
        fuel.gross = *working;
        fuel.workingHeatValue = entry;
    }
    if (input.net) {
        const double net = input.net->in(kMegajoulePerCubicMetre);
        const double gross = fuel.gross.in(kMegajoulePerCubicMetre);
        if (!(net > 0.0 && net <= gross)) {
            return outside(net, 0.0, gross, UnitCode::MegajoulePerCubicMetre);
        }
        fuel.net = input.net;
    } else if (fuel.named != nullptr) {
        if (const auto ratio = grossOverNet(fuel.named->composition)) {
            fuel.net = quantity::NetHeatValue::fromBase(fuel.gross.base() / *ratio);
        }
    }
    return {};
}

void addWobbe(Fuel& fuel, const FuelInput& input) {
    fuel.relativeDensity = input.relativeDensity;
    if (!fuel.relativeDensity && fuel.named != nullptr) {
        fuel.relativeDensity = properties(fuel.named->composition).relativeDensity;
    }
    fuel.isWobbeRough = !(input.gross && input.relativeDensity);
    if (!fuel.relativeDensity) {
        return;
    }
    fuel.grossWobbe = wobbeOf(fuel.gross, *fuel.relativeDensity);
    if (fuel.net) {
        fuel.netWobbe = wobbeOf(*fuel.net, *fuel.relativeDensity);
    }
}

}  // namespace

Result<Fuel> fuelOf(const rulebook::RulesInForce& rules, const FuelInput& input) {
    if (const auto typed = checkTyped(input); !typed) {
        return tl::unexpected(typed.error());
    }
    Fuel fuel;
    fuel.gas = rules.gas();
    fuel.named = input.named != nullptr ? input.named : usualGas(rules.gas());
    if (const auto added = addHeatValues(fuel, rules, input); !added) {
        return tl::unexpected(added.error());
    }
    addWobbe(fuel, input);
    if (fuel.named != nullptr) {
        fuel.stoichiometry = stoichiometry(fuel.named->composition);
    }
    return fuel;
}

}  // namespace hearth::gas

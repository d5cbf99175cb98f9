// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/named_gases.h"

#include <algorithm>
#include <array>

namespace hearth::gas {

namespace {

using rulebook::Provenance;

constexpr std::string_view kEn437Recalled = "EN 437, test gases, recalled, not read";
constexpr std::string_view kEn437Page = "A page of BS EN 437:2003+A1:2009 with part of its Table 2";
constexpr std::string_view kPureLpg =
    "Commercial LPG holds other hydrocarbons; calorific values of 93 to 95.65 MJ/m3 (propane) and 121 to 126 "
    "MJ/m3 (butane) are met. The supplier's figure is better.";

constexpr std::array kNamedGases{
    NamedGas{
        "natural_typical", "Typical UK natural gas, handbook mix",
        Composition::exactly({{Component::CH4, 0.926},
                              {Component::C2H6, 0.036},
                              {Component::C3H8, 0.008},
                              {Component::nC4H10, 0.002},
                              {Component::N2, 0.026},
                              {Component::CO2, 0.002}}),
        Provenance::Secondary, "Building-services notes on gas pipe sizing (hydrocarbons)",
        "The notes do not say how much of the rest is nitrogen and how much CO2: 2.6 and 0.2 % are from "
        "memory, and butane is taken as n-butane. The calorific values that the notes print do not belong to "
        "this composition and are not used."},
    NamedGas{"natural_rich_in_co2", "Typical UK natural gas, richer in CO2",
             Composition::exactly({{Component::CH4, 0.930},
                                   {Component::C2H6, 0.032},
                                   {Component::C3H8, 0.007},
                                   {Component::nC4H10, 0.003},
                                   {Component::N2, 0.012},
                                   {Component::CO2, 0.016}}),
             Provenance::CommonPractice, "common practice, no source", "Butane is taken as n-butane."},
    NamedGas{"g20", "G20", Composition::exactly({{Component::CH4, 1.0}}), Provenance::Memory, kEn437Recalled},
    NamedGas{"g21", "G21", Composition::exactly({{Component::CH4, 0.87}, {Component::C3H8, 0.13}}),
             Provenance::Memory, kEn437Recalled},
    NamedGas{"g23", "G23", Composition::exactly({{Component::CH4, 0.925}, {Component::N2, 0.075}}),
             Provenance::Published, kEn437Page},
    NamedGas{"g25", "G25", Composition::exactly({{Component::CH4, 0.86}, {Component::N2, 0.14}}),
             Provenance::Memory, kEn437Recalled},
    NamedGas{"g30", "G30", Composition::exactly({{Component::nC4H10, 0.5}, {Component::iC4H10, 0.5}}),
             Provenance::Memory, kEn437Recalled},
    NamedGas{"g31", "G31", Composition::exactly({{Component::C3H8, 1.0}}), Provenance::Memory,
             kEn437Recalled},
    NamedGas{"propane", "Commercial propane, taken as pure", Composition::exactly({{Component::C3H8, 1.0}}),
             Provenance::CommonPractice, "common practice, no source: G31 stands for commercial propane",
             kPureLpg},
    NamedGas{"butane", "Commercial butane, taken as half n-butane and half i-butane",
             Composition::exactly({{Component::nC4H10, 0.5}, {Component::iC4H10, 0.5}}),
             Provenance::CommonPractice, "common practice, no source: G30 stands for commercial butane",
             kPureLpg},
};

}  // namespace

std::span<const NamedGas> namedGases() {
    return kNamedGases;
}

const NamedGas* namedGas(std::string_view code) {
    const auto found = std::find_if(kNamedGases.begin(), kNamedGases.end(),
                                    [&](const NamedGas& gas) { return gas.code == code; });
    return found == kNamedGases.end() ? nullptr : &*found;
}

const NamedGas* usualGas(rulebook::Gas gas) {
    switch (gas) {
        case rulebook::Gas::NaturalGas:
            return namedGas("natural_typical");
        case rulebook::Gas::Propane:
            return namedGas("propane");
        case rulebook::Gas::Butane:
            return namedGas("butane");
        case rulebook::Gas::LpgAir:
            break;
    }
    return nullptr;
}

}  // namespace hearth::gas

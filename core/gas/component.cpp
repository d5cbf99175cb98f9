// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/component.h"

namespace hearth::gas {

namespace {

struct Molecule {
    std::string_view formula;
    Atoms atoms;
};

constexpr std::array<Molecule, kComponents.size()> kMolecules{{
    {"CH4", {1, 4, 0, 0}},
    {"C2H6", {2, 6, 0, 0}},
    {"C3H8", {3, 8, 0, 0}},
    {"n-C4H10", {4, 10, 0, 0}},
    {"i-C4H10", {4, 10, 0, 0}},
    {"n-C5H12", {5, 12, 0, 0}},
    {"i-C5H12", {5, 12, 0, 0}},
    {"n-C6H14", {6, 14, 0, 0}},
    {"H2", {0, 2, 0, 0}},
    {"CO", {1, 0, 1, 0}},
    {"N2", {0, 0, 0, 1}},
    {"CO2", {1, 0, 2, 0}},
    {"O2", {0, 0, 2, 0}},
}};

}  // namespace

Atoms atomsOf(Component component) {
    return kMolecules[placeOf(component)].atoms;
}

std::string_view formulaText(Component component) {
    return kMolecules[placeOf(component)].formula;
}

}  // namespace hearth::gas

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/component.h"

#include "core/gas/properties.h"

#include <array>
#include <cctype>
#include <gtest/gtest.h>
#include <set>
#include <string>

namespace hearth::gas {
namespace {

TEST(Components, StandInTheOrderOfTheEnumerationEachWithAFormula) {
    std::set<std::string_view> formulas;
    for (std::size_t i = 0; i < kComponents.size(); ++i) {
        EXPECT_EQ(placeOf(kComponents[i]), i);
        EXPECT_TRUE(formulas.insert(formulaText(kComponents[i])).second) << formulaText(kComponents[i]);
    }
}

/// The number behind an element's letter in a formula: 10 of H in "n-C4H10".
int countIn(std::string_view formula, char element) {
    const auto at = formula.rfind(element);
    if (at == std::string_view::npos) {
        return 0;
    }
    int count = 0;
    for (auto i = at + 1; i < formula.size() && std::isdigit(static_cast<unsigned char>(formula[i])) != 0;
         ++i) {
        count = count * 10 + (formula[i] - '0');
    }
    return count == 0 ? 1 : count;
}

TEST(Components, AtomsAreThoseOfTheFormula) {
    for (const auto component : kComponents) {
        const auto formula = formulaText(component);
        const auto atoms = atomsOf(component);
        EXPECT_EQ(atoms.carbon, countIn(formula, 'C')) << formula;
        EXPECT_EQ(atoms.hydrogen, countIn(formula, 'H')) << formula;
        EXPECT_EQ(atoms.oxygen, countIn(formula, 'O')) << formula;
        EXPECT_EQ(2 * atoms.nitrogenMolecules, countIn(formula, 'N')) << formula;
    }
}

// Atomic masses 12.011, 1.008, 15.999, 14.007 (textbook): a molecule weighs what its atoms do.
TEST(Components, WeighWhatTheirAtomsDo) {
    for (const auto component : kComponents) {
        const auto atoms = atomsOf(component);
        const double mass = 12.011 * atoms.carbon + 1.008 * atoms.hydrogen + 15.999 * atoms.oxygen +
                            2 * 14.007 * atoms.nitrogenMolecules;
        const std::array pure{Part{component, 1.0}};
        EXPECT_NEAR(properties(compositionOf(pure).value()).molarMass, mass, 0.01) << formulaText(component);
    }
}

}  // namespace
}  // namespace hearth::gas

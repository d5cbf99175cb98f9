// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/gas/component.h"
#include "core/quantity/quantity.h"

#include <array>
#include <cassert>
#include <initializer_list>
#include <span>

namespace hearth::gas {

/// A component and its mole fraction (0 to 1).
struct Part {
    Component component;
    double fraction = 0.0;
};

/// How far from one the fractions of a whole gas may add up: analyses are printed to 0.01 mole per cent, and
/// a dozen rounded figures are together within this.
inline constexpr double kSumTolerance = 0.001;

/// What a gas is made of, in mole fractions. There is none that does not add up: it comes from the tables of
/// named gases, or checked by compositionOf().
class Composition {
  public:
    [[nodiscard]] constexpr double of(Component component) const { return m_fractions[placeOf(component)]; }

    /// For tables in code: the fractions must add up to one to 1e-9 (a constant that does not is not
    /// compiled).
    [[nodiscard]] static constexpr Composition exactly(std::initializer_list<Part> parts) {
        Composition made;
        double sum = 0.0;
        for (const auto& part : parts) {
            made.m_fractions[placeOf(part.component)] += part.fraction;
            sum += part.fraction;
        }
        assert(sum > 1.0 - 1e-9 && sum < 1.0 + 1e-9);
        return made;
    }

    bool operator==(const Composition&) const = default;

  private:
    constexpr Composition() = default;
    std::array<double, kComponents.size()> m_fractions{};

    friend class CompositionMaker;
};

/// Whether fractions are to be taken as they are or divided by their sum.
enum class Fractions { AsTyped, Normalised };

/// Fractions as somebody typed them. A component named twice counts with both. As typed, the sum must be one
/// to within kSumTolerance and is not touched; normalised, each is divided by the sum, whatever it is,
/// because that was said. Errors: OutOfRange with "C3H8 = -0.1", least, greatest for a component that is
/// negative, above one or no number; with the sum likewise. Source: a mole fraction's definition (textbook);
/// the tolerance is our own, see there. Checked: tests/core/gas/composition_test.cpp.
[[nodiscard]] Result<Composition> compositionOf(std::span<const Part> parts,
                                                Fractions fractions = Fractions::AsTyped);

/// Propane diluted with dry air (20.95 % oxygen, argon counted with nitrogen, which makes a mixture of half
/// air 0.002 too light in relative density): shares by volume.
/// Valid for: a share of propane above 0 and up to 1; OutOfRange otherwise. Whether the mixture burns, and
/// what a plant delivers, it does not know.
/// Source: definition; the oxygen in air as in stoichiometry.h.
/// Checked: tests/core/gas/composition_test.cpp, properties_test.cpp.
[[nodiscard]] Result<Composition> propaneAir(quantity::Share propane);

}  // namespace hearth::gas

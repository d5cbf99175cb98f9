// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace hearth::gas {

/// What a fuel gas can be made of. The order is that of every table of component data.
enum class Component { CH4, C2H6, C3H8, nC4H10, iC4H10, nC5H12, iC5H12, nC6H14, H2, CO, N2, CO2, O2 };

inline constexpr std::array kComponents{
    Component::CH4,    Component::C2H6,   Component::C3H8,   Component::nC4H10, Component::iC4H10,
    Component::nC5H12, Component::iC5H12, Component::nC6H14, Component::H2,     Component::CO,
    Component::N2,     Component::CO2,    Component::O2};

/// Place in a table that is in the order of the enumeration.
/// Source: none needed, a cast.
[[nodiscard]] constexpr std::size_t placeOf(Component component) {
    return static_cast<std::size_t>(component);
}

/// Atoms of one molecule, as far as burning asks for them; nitrogen counts in molecules, as it leaves.
struct Atoms {
    int carbon = 0;
    int hydrogen = 0;
    int oxygen = 0;
    int nitrogenMolecules = 0;
};

/// Source: the molecular formulas (textbook). Checked: tests/core/gas/component_test.cpp.
[[nodiscard]] Atoms atomsOf(Component component);

/// "CH4", "n-C4H10": the same in every language.
/// Source: the molecular formulas (textbook). Checked: tests/core/gas/component_test.cpp.
[[nodiscard]] std::string_view formulaText(Component component);

}  // namespace hearth::gas

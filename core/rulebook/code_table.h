// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace hearth::rulebook {

/// One value of an enumeration with its stable text in files.
template <class E>
struct Code {
    E value;
    std::string_view text;
};

/// Whether row i is the enumeration's value i: checked by static_assert, so that a value can't be forgotten
/// in the middle and text lookups can index.
template <class E, std::size_t N>
[[nodiscard]] constexpr bool inOrder(const std::array<Code<E>, N>& table) {
    for (std::size_t i = 0; i < N; ++i) {
        if (static_cast<std::size_t>(table[i].value) != i) {
            return false;
        }
    }
    return true;
}

template <class E, std::size_t N>
[[nodiscard]] constexpr std::array<E, N> valuesIn(const std::array<Code<E>, N>& table) {
    std::array<E, N> values{};
    for (std::size_t i = 0; i < N; ++i) {
        values[i] = table[i].value;
    }
    return values;
}

template <class E, std::size_t N>
[[nodiscard]] constexpr std::string_view textIn(const std::array<Code<E>, N>& table, E value) {
    return table.at(static_cast<std::size_t>(value)).text;
}

template <class E, std::size_t N>
[[nodiscard]] constexpr std::optional<E> valueIn(const std::array<Code<E>, N>& table, std::string_view text) {
    for (const auto& row : table) {
        if (row.text == text) {
            return row.value;
        }
    }
    return std::nullopt;
}

}  // namespace hearth::rulebook

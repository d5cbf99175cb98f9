// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/gas/composition.h"
#include "core/rulebook/entry.h"

#include <span>
#include <string_view>

namespace hearth::gas {

/// A gas whose composition is known by a name, with where that was read.
struct NamedGas {
    std::string_view code;  // "g20", "natural_typical": what files hold, never changed
    std::string_view name;  // "G20", a proper name or plain English: source text, not shown to people
    Composition composition;
    rulebook::Provenance provenance;
    std::string_view source;
    std::string_view doubt = {};
};

/// Typical natural gases, the EN 437 test gases, commercial propane and butane.
/// Source: each entry names its own. Checked: tests/core/gas/named_gases_test.cpp.
[[nodiscard]] std::span<const NamedGas> namedGases();

/// Nothing for a code that is not in the table.
/// Source: the table. Checked: tests/core/gas/named_gases_test.cpp.
[[nodiscard]] const NamedGas* namedGas(std::string_view code);

/// The composition that stands for a gas where nobody said another; nothing for LPG-air, whose mixture only
/// its supplier knows. Source: common practice, no source: a typical mix; commercial LPG taken as pure, see
/// the entries' doubts. Checked: tests/core/gas/named_gases_test.cpp.
[[nodiscard]] const NamedGas* usualGas(rulebook::Gas gas);

}  // namespace hearth::gas

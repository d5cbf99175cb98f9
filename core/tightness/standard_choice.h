// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/scope.h"

#include <optional>

namespace hearth::tightness {

enum class TestStandard { Up1b, Up1a, Up1 };

/// Which standard tests an installation, by scope: IGEM/UP/1B within its limits (the edition in force), else
/// IGE/UP/1A for natural gas to 1 m3, 150 mm and 40 mbar, else IGE/UP/1 to 16 bar. Nothing when it can't be
/// told, and the finding says what is missing.
struct StandardChosen {
    std::optional<TestStandard> standard;
    rulebook::Finding finding{rulebook::FindingKind::StandardChoice};
};
/// Source: institution's own pages on IGEM/UP/1B Edition 3, IGE/UP/1A and IGE/UP/1; 150 mm from memory.
/// Checked: tests/core/tightness/standard_choice_test.cpp.
[[nodiscard]] StandardChosen standardFor(const ScopeInput& input, const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness

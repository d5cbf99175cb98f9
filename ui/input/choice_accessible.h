// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth::ui::input {

/// Tells screen readers what a ChoiceField is (a box to choose from) and what is chosen in it. Once is
/// enough; again is harmless.
void installChoiceAccessible();

}  // namespace hearth::ui::input

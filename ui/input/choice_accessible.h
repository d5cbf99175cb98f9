// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth::ui::input {

/// Tells screen readers what a ChoiceField and a ListEditor's list are (boxes to choose from), what they ask
/// for and what is chosen in them. Once is enough; again is harmless.
void installChoiceAccessible();

}  // namespace hearth::ui::input

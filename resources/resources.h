// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the program carries with it, under ":/": ":/fonts/", ":/icons/", ":/demo/scenario.json", ":/i18n/".
namespace hearth {

/// Makes the resources readable. The linker leaves out what nobody names in a static library, so whoever reads a
/// resource calls this first; calling it again does nothing.
void initResources();

}  // namespace hearth

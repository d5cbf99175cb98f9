// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/window.h"

namespace hearth::app {

/// The backup after the day's work, when the window is closed and something was changed. What goes wrong is
/// told when it is news; what a person knows already stands in the window.
void backUpOnClosing(store::Store& store, const Surroundings& surroundings);

}  // namespace hearth::app

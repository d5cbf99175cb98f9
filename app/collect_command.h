// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"

/// The command that writes many records at once.
namespace hearth::app {

[[nodiscard]] Exit runCollect(const CommandLine& line, const Desk& desk);

}  // namespace hearth::app

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"

/// The commands that make, show and use the firm's key.
namespace hearth::app {

[[nodiscard]] Exit runKey(const CommandLine& line, const Desk& desk);
[[nodiscard]] Exit runNewKey(const CommandLine& line, const Desk& desk);
[[nodiscard]] Exit runSign(const CommandLine& line, const Desk& desk);

}  // namespace hearth::app

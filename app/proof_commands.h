// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"

/// The command that says whether something is a record of the firm's.
namespace hearth::app {

[[nodiscard]] Exit runVerify(const CommandLine& line, const Desk& desk);

}  // namespace hearth::app

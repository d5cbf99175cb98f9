// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_table.h"

#include <vector>

namespace hearth::app {

/// What the commands of checks due add to the tables of commands.
[[nodiscard]] std::vector<Option> dueOptions();
[[nodiscard]] std::vector<Command> dueCommands();

}  // namespace hearth::app

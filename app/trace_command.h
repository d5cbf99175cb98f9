// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_table.h"
#include "app/commands.h"

#include <vector>

namespace hearth::app {

[[nodiscard]] std::vector<Option> traceOptions();
[[nodiscard]] std::vector<Command> traceCommands();

/// `trace`: what a gauge's table of times and pressures says of a pipe. Evidence, no verdict: Done when it
/// could be told, Refused when it can't, Trouble when the file can't be read.
[[nodiscard]] Exit runTrace(const CommandLine& line, const Desk& desk);

}  // namespace hearth::app

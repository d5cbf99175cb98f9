// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/console.h"
#include "core/base/clock.h"
#include "ui/words/words.h"

namespace hearth::app {

/// What a command works with.
struct Desk {
    const Clock& clock;
    const Console& console;
    const ui::words::Words& words;
};

/// Runs a command that needs no window (not Window, Help, Version). Needs a QGuiApplication: PDFs have fonts.
[[nodiscard]] Exit runCommand(const CommandLine& line, const Desk& desk);

/// Says an error in words and gives the exit code that it stands for.
Exit complain(const Error& error, const Desk& desk);

}  // namespace hearth::app

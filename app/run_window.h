// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/console.h"
#include "app/window.h"
#include "core/base/result.h"

#include <filesystem>
#include <memory>
#include <optional>

namespace hearth::app {

/// Opens the window on the store that the command line means and runs until it is closed. On the very first
/// start the two doors come first. What keeps a store from being opened is said in a sentence, on the screen
/// and on standard error; the file is left as it is.
[[nodiscard]] Exit runWindow(const CommandLine& line, const Console& console);

/// The store to work on: the one that is there, or what the first start leads to. Nothing: the person went
/// away. On an error the person was told.
[[nodiscard]] Result<std::optional<std::unique_ptr<store::Store>>> storeForWindow(
    const CommandLine& line, const Surroundings& surroundings);

}  // namespace hearth::app

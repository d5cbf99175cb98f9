// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

#include <filesystem>
#include <optional>

class QString;

/// Where a person's stores are (XDG base directories). The firm's and the demonstration's are two files and
/// never mixed.
namespace hearth::app {

/// $XDG_DATA_HOME/hearthledger, or ~/.local/share/hearthledger.
[[nodiscard]] std::filesystem::path dataFolder();
[[nodiscard]] std::filesystem::path ownStore();
[[nodiscard]] std::filesystem::path demonstrationStore();
/// The name of the demonstration's store in whatever folder it is made.
[[nodiscard]] std::filesystem::path demonstrationStoreIn(const std::filesystem::path& folder);

/// The store that a command line means.
[[nodiscard]] std::filesystem::path storeOf(const CommandLine& line);

/// Where the window's place on the screen is remembered.
[[nodiscard]] QString windowSettingsFile();

[[nodiscard]] std::filesystem::path pathFrom(const QString& text);
[[nodiscard]] QString textOf(const std::filesystem::path& path);

}  // namespace hearth::app

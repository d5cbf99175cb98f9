// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

#include <QLatin1String>
#include <QString>

#include <functional>
#include <vector>

/// Commands and options as data: the parser, the usage lines and --help all read these tables.
namespace hearth::app {

/// One option: its name, what follows it (empty: nothing), what it does, and how it is kept.
struct Option {
    QLatin1String name;
    QLatin1String value;
    const char* what;
    std::function<bool(CommandLine&, const QString&)> keep;  // false: that value is not one
};

/// One command: its word, its operands as the usage line shows them, how many it takes, and the options that
/// it knows beside --language and --help, which all know.
struct Command {
    Verb verb;
    QLatin1String word;
    QLatin1String operands;
    int least;
    int most;
    std::vector<QLatin1String> knows;
    const char* what;
};

[[nodiscard]] const std::vector<Option>& options();
[[nodiscard]] const std::vector<Command>& commands();

/// Nothing for a word that is none.
[[nodiscard]] const Command* commandOf(const QString& word);
[[nodiscard]] const Option* optionOf(const QString& name);
[[nodiscard]] const Command& infoOf(Verb verb);
[[nodiscard]] bool isKnownTo(const Command& command, const Option& option);

}  // namespace hearth::app

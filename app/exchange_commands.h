// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"

/// Files in and out on the command line.
namespace hearth::app {

/// `import FILE [--dry-run]`: says what every row would do and what is doubtful about it; without --dry-run
/// takes over what is not doubtful, in one transaction.
[[nodiscard]] Exit runImport(const CommandLine& line, store::Store& store, const Desk& desk);

/// `export KIND FILE`: a list as CSV; "cards" for people as vCards; "everything" for the whole store as JSON,
/// and "schema" for the JSON Schema of that.
[[nodiscard]] Exit runExport(const CommandLine& line, const store::Store& store, const Desk& desk);

/// `make-from FILE --to STORE`: a new store of what `export everything` wrote.
[[nodiscard]] Exit runMakeFrom(const CommandLine& line, const Desk& desk);

}  // namespace hearth::app

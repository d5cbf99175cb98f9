// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/connection.h"

#include <span>
#include <string_view>

namespace hearth::store {

/// One step of the schema. The text comes from resources/sql and is part of the program.
struct Migration {
    int number;  // from 1, without a gap
    std::string_view name;
    std::string_view sql;
};
using MigrationList = std::span<const Migration>;

/// The program's own.
[[nodiscard]] MigrationList shippedMigrations();

/// The schema that a list leads to; 0 for an empty one.
[[nodiscard]] int newestSchema(MigrationList list);

/// The schema that the open file has.
[[nodiscard]] int schemaOf(const Connection& connection);

/// Throws MigrationChanged when what was once applied to this file is not what the list holds.
void checkApplied(const Connection& connection, MigrationList list);

/// Applies what is missing, each step in a transaction of its own together with its number. A step that fails
/// leaves the file at the step before it, and throws.
void applyMigrations(Connection& connection, MigrationList list, const Clock& clock);

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/whole.h"

#include <string>
#include <vector>

namespace hearth::exchange {

/// The JSON Schema (draft 2020-12) of what WholeWriter writes of a store with these tables. Of the register's
/// tables the fields are described as core/record/register_fields.h and doings_fields.h describe them, codes
/// and forms of dates included.
[[nodiscard]] std::string wholeSchema(const std::vector<record::WholeTable>& tables, int schema);

}  // namespace hearth::exchange

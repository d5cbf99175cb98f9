// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/trace_seen.h"
#include "core/store/store.h"

#include <vector>

namespace hearth::store {

/// What the visit's traces tell, with their readings, in the order they were kept. Errors: TraceAltered and
/// the store's.
[[nodiscard]] Result<std::vector<judging::TraceSeen>> tracesOf(const Store& store, const reg::VisitFile& file,
                                                               const rulebook::RuleBook& book);

}  // namespace hearth::store

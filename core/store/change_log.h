// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/store.h"

#include <functional>
#include <string>
#include <vector>

/// Reading the change log. It is written in edit.cpp alone.
namespace hearth::store {

/// Oldest first.
[[nodiscard]] std::vector<Change> changesOf(const Connection& db, const std::string& table,
                                            const std::string& row);
[[nodiscard]] std::vector<Change> changesOf(const Connection& db, reg::VisitId visit);

/// See Kept::changesOfPremises() and changesOfRecord().
[[nodiscard]] ChangePage changePage(const Connection& db, reg::PremisesId premises, int limit,
                                    std::optional<ChangeId> after);
[[nodiscard]] ChangePage changePage(const Connection& db, RecordId record, int limit,
                                    std::optional<ChangeId> after);

/// Every line, oldest first, without holding them all.
void eachChange(const Connection& db, const std::function<void(const Change&)>& take);

/// The lines of one action, oldest first, with the visit of each.
struct GroupLine {
    Change change;
    std::optional<UuidBytes> visit;
};
[[nodiscard]] std::vector<GroupLine> linesOfGroup(const Connection& db, const UuidBytes& group);

}  // namespace hearth::store

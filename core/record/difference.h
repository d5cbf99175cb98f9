// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"

#include <string>
#include <vector>

/// What a revision says that the one before it did not, as both were printed.
namespace hearth::record {

struct Difference {
    std::string part;     // title of the block that it stands in; empty: the head of the page, or none
    std::string caption;  // what it is of; empty: the block as a whole
    std::string before;   // lines with "\n" between them; empty: it was not there
    std::string after;
    bool operator==(const Difference&) const = default;
};

/// In the order of the newer one; what only the older one had follows. Number, revision, day of issue and
/// what it replaces differ by their nature and are left out. Blocks of one kind are taken for the same by
/// their title, rows of tables by their first cell, in order.
[[nodiscard]] std::vector<Difference> differencesOf(const Document& before, const Document& after);

}  // namespace hearth::record

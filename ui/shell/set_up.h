// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rule_book.h"
#include "core/store/store.h"

#include <optional>
#include <vector>

namespace hearth::ui::shell {

/// What the set-up of a firm gave. Ids are null: they are made on writing.
struct SetUp {
    reg::Firm firm;
    std::optional<reg::Engineer> engineer;
    std::optional<reg::Instrument> gauge;
    /// The daily entries that were confirmed or replaced; those left for later are not here, and look again.
    std::vector<rulebook::FirmEntry> confirmed;
};

/// Writes it into a store (made with setUp.firm, or an older one whose firm it replaces). The first refusal
/// ends it.
[[nodiscard]] Result<void> writeSetUp(store::Store& store, const SetUp& setUp);

}  // namespace hearth::ui::shell

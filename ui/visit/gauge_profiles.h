// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"
#include "ui/gauge/profile.h"

#include <QString>

#include <vector>

namespace hearth::ui::visit {

/// The firm's instruments that send what is of that family.
[[nodiscard]] std::vector<gauge::GaugeProfile> profilesThatRead(quantity::UnitFamily family,
                                                                const store::Store& store);
/// Keeps these in place of those of that family; the others stay.
[[nodiscard]] Result<void> keepProfiles(const std::vector<gauge::GaugeProfile>& profiles,
                                        quantity::UnitFamily family, store::Store& store);
/// Where journals of recordings lie: beside the store.
[[nodiscard]] QString journalsOf(const store::Store& store);

}  // namespace hearth::ui::visit

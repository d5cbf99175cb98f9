// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

/// What a person may ask of a firm that holds data about them.
namespace hearth::ui::premises {

/// Everything held about one person, to read on paper.
[[nodiscard]] record::Document personDocument(const store::PersonFile& file, const reg::Firm& firm,
                                              const words::Words& words);

/// Asks where, and writes it there as PDF and, under the same name, as JSON.
void saveWhatIsHeld(const shell::Context& context, QWidget* over, reg::PartyId id);

/// Says what would go and what stays until when, asks, and erases. True when it was done.
bool erasePerson(const shell::Context& context, QWidget* over, reg::PartyId id);

}  // namespace hearth::ui::premises

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/store.h"

#include <QString>

/// Once a year somebody looks through what has been kept for long enough.
namespace hearth::ui::shell {

/// The day on which it was looked through last; nothing: never.
[[nodiscard]] std::optional<calendar::Date> keepingLookedOn(const store::Store& store);
/// A year has passed since, or it never was.
[[nodiscard]] bool isKeepingLookDue(std::optional<calendar::Date> lookedOn, calendar::Date today);
/// It was looked through today: quiet for a year.
[[nodiscard]] Result<void> noteKeepingLook(store::Store& store, const Clock& clock);

/// What the window says at its foot while something waits and it is time to look; else empty.
[[nodiscard]] QString keepingDueText(const store::Store& store, const Clock& clock);

}  // namespace hearth::ui::shell

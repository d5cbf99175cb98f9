// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"
#include "ui/shell/line_list.h"
#include "ui/words/words.h"

#include <vector>

namespace hearth::ui::due {

/// What is to be doubted of the booked engineer on the booked day, card and categories, for what stands at
/// the premises: each with its shape. Nothing where no engineer is said. The visit's sheet says the same of
/// the same rules (core/judging/competence.h); the booking stays possible. Errors: of reading the store.
[[nodiscard]] Result<std::vector<shell::Line>> bookingDoubts(const store::Store& store,
                                                             const words::Words& words,
                                                             const std::vector<reg::Booking>& bookings,
                                                             calendar::Date today);

}  // namespace hearth::ui::due

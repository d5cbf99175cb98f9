// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"

namespace hearth::ui::visit {

/// What one of several is called: a test by its label, an appliance by its kind and place, a room by its
/// name, a reading and whatever has no name by its number, an unsafe situation by its number. Two of one
/// name are told apart by their numbers.
[[nodiscard]] QString subjectName(const reg::SubjectRef& subject, const reg::VisitFile& file,
                                  const words::Words& words);

/// What tells the fields of one test, appliance, room or situation from those of another in their names;
/// empty for the visit's own, and where a visit has only one test.
[[nodiscard]] QString subjectContext(const SheetContext& context, const reg::SubjectRef& subject);

}  // namespace hearth::ui::visit

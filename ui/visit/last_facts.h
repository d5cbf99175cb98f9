// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/visit_file.h"
#include "core/store/store.h"

#include <optional>
#include <string>

namespace hearth::ui::visit {

/// Whether what was entered for an item last time may be offered again: what something is called, where it
/// runs, what is printed on it. Never a reading, nor an answer to a question.
[[nodiscard]] bool isFact(reg::Item item);

/// The visit at the same premises before this one, up to its day; nothing where there was none.
[[nodiscard]] Result<std::optional<reg::VisitFile>> visitBefore(const store::Store& store,
                                                                const reg::VisitFile& file);

/// What was entered there last time, for an item that holds nothing yet; empty: nothing to offer. A room is
/// the same as last time when it has the same name; one without a name is offered the first that is not there
/// yet.
[[nodiscard]] std::string lastFactOf(const reg::SubjectRef& subject, reg::Item item,
                                     const reg::VisitFile& file, const reg::VisitFile& last);

}  // namespace hearth::ui::visit

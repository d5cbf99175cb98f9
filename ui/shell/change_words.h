// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"
#include "ui/words/words.h"

#include <QString>

namespace hearth::ui::shell {

/// What a line of the change log is about, for a person: "Meter serial number", "Let-by, start".
[[nodiscard]] QString changedThing(const words::Words& words, const store::Change& change);

/// A value of the change log as a person reads it: a code in words, an empty one as "nothing".
[[nodiscard]] QString changedValue(const words::Words& words, const store::Change& change,
                                   const std::optional<std::string>& value);

/// "Meter serial number: “A1” instead of “B2”".
[[nodiscard]] QString changeSentence(const words::Words& words, const store::Change& change);

}  // namespace hearth::ui::shell

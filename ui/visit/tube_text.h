// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tube.h"

#include <QString>

#include <vector>

namespace hearth::ui::visit {

/// What somebody typed for a tube.
struct TubeReading {
    const pipework::Tube* tube = nullptr;           // none: not understood, or several it could be
    std::vector<const pipework::Tube*> candidates;  // more than one: it has to be said which
};

/// Reads a tube as a fitter writes it: "15" and "22 cu" are copper, "25 steel" and "1 in" steel (medium;
/// "heavy" for heavy), "32 pe" polyethylene SDR 11 ("sdr 17.6" for that), "15 x 1.0" a size with its wall,
/// "csst" corrugated tube. A bare size is copper where copper has it; a size that only others have must be
/// said which. A tube's code is understood too.
[[nodiscard]] TubeReading readTube(const QString& typed);

}  // namespace hearth::ui::visit

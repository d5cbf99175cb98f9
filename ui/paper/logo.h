// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"

#include <QImage>
#include <QSizeF>

namespace hearth::ui::paper {

/// The firm's logo as it stands at the head of a record: in millimetres, with its proportions, on white. No
/// size where there is none, or where it can't be read as a picture.
struct HeadLogo {
    static constexpr double kMostWide = 34;
    static constexpr double kMostHigh = 15;

    QImage image;
    QSizeF size{0, 0};
};

/// Scaled down to what paper can show and without transparency, which PDF/A-1 forbids.
[[nodiscard]] HeadLogo headLogo(const record::Document& document);

}  // namespace hearth::ui::paper

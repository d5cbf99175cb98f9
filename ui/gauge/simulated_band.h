// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace hearth::ui::gauge {

/// The band that says that what is shown is practice; hidden.
[[nodiscard]] QWidget* makeSimulatedBand(QWidget* parent);

}  // namespace hearth::ui::gauge

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QRect>

namespace hearth::ui::shell {

/// Where a window may stand: `wanted` if enough of its head lies on one of the `screens` to take hold of it,
/// else the same size in the middle of the first screen; never larger than the screen it stands on.
[[nodiscard]] QRect onScreens(const QRect& wanted, const QList<QRect>& screens);

}  // namespace hearth::ui::shell

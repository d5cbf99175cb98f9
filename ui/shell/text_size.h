// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QFont;
class QSettings;

/// How large the letters of the window are, in per cent of what it is drawn for. It belongs to whoever sits
/// at this machine, not to the firm's store; widgets take their sizes when they are made, so that a new size
/// shows from the next start on.
namespace hearth::ui::shell {

inline constexpr int kUsualText = 100;
inline constexpr int kLargestText = 150;

/// What was chosen here; else what the desktop's font asks for: as many times the usual size as that is
/// larger than 11 points, never less than the usual one.
[[nodiscard]] int textPercent(const QSettings* settings, const QFont& desktop);

/// The next larger size (by = 1) or the next smaller one (-1); 0: the desktop's again. Says what was kept, or
/// why nothing was.
[[nodiscard]] QString changeTextPercent(QSettings* settings, int by);

}  // namespace hearth::ui::shell

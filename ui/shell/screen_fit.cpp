// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/screen_fit.h"

namespace hearth::ui::shell {

namespace {

constexpr int kHeadHeight = 40;  // about a title bar and the bar of places
constexpr int kHeadWidth = 120;  // enough to take hold of

bool canBeHeld(const QRect& window, const QRect& screen) {
    const QRect head(window.left(), window.top(), window.width(), kHeadHeight);
    const QRect seen = head.intersected(screen);
    return seen.width() >= kHeadWidth && seen.height() >= kHeadHeight;
}

}  // namespace

QRect onScreens(const QRect& wanted, const QList<QRect>& screens) {
    if (screens.isEmpty()) {
        return wanted;
    }
    for (const QRect& screen : screens) {
        if (canBeHeld(wanted, screen)) {
            return {wanted.topLeft(), wanted.size().boundedTo(screen.size())};
        }
    }
    QRect centred(QPoint(), wanted.size().boundedTo(screens.first().size()));
    centred.moveCenter(screens.first().center());
    return centred;
}

}  // namespace hearth::ui::shell

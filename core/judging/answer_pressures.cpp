// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/asking.h"

namespace hearth::judging {

void answerPressures(Asking& asking) {
    (void)asking;
}

}  // namespace hearth::judging

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/asking.h"

namespace hearth::judging {

void answerGas(Asking& asking) {
    (void)asking;
}

}  // namespace hearth::judging

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/ui_main.h"

int main(int argc, char** argv) {
    return hearth::testing::runWindowTests(argc, argv);
}

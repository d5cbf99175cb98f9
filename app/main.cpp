// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/start.h"

int main(int argc, char** argv) {
    return hearth::app::start(argc, argv);
}

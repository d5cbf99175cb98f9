// SPDX-License-Identifier: GPL-3.0-or-later
// make_big_store PATH [PREMISES]: the store that the benchmarks are run on, for looking at it in the window.
#include "tests/bench/store_generator.h"

#include <cstdio>
#include <cstdlib>
#include <exception>

int main(int argc, char** argv) {
    if (argc < 2) {
        std::fputs("make_big_store PATH [PREMISES]\n", stderr);
        return 2;
    }
    try {
        hearth::bench::makeBigStore(
            argv[1], argc > 2 ? std::strtoul(argv[2], nullptr, 10) : hearth::bench::kFullPremises);
    } catch (const std::exception& problem) {
        std::fprintf(stderr, "%s\n", problem.what());
        return 1;
    }
    return 0;
}

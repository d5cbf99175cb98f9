// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/exchange/fuzz_whole.h"

#include <cstdint>

// The name is libFuzzer's.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string bytes;
    for (std::size_t i = 0; i < size; ++i) {
        bytes.push_back(static_cast<char>(data[i]));
    }
    hearth::testing::wholeOneInput(bytes);
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"

#include <cstdint>
#include <functional>
#include <memory>

namespace hearth::testing {

/// Ids that count up, shaped like version 7.
[[nodiscard]] inline std::function<UuidBytes()> countingIds() {
    return [next = std::make_shared<std::uint16_t>(std::uint16_t{0})] {
        ++*next;
        UuidBytes bytes{};
        bytes[6] = 0x70;
        bytes[8] = 0x80;
        bytes[14] = static_cast<std::uint8_t>(*next >> 8U);
        bytes[15] = static_cast<std::uint8_t>(*next & 0xFFU);
        return bytes;
    };
}

}  // namespace hearth::testing

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace hearth {

/// 16 bytes of a UUID version 7 (RFC 9562): 48 bits of Unix milliseconds, then random bits.
using UuidBytes = std::array<std::uint8_t, 16>;

/// A new version 7 UUID for the instant `unixMilliseconds`; random bits from the system's generator. Two made
/// in one millisecond by one process sort in the order they were made. `unixMilliseconds` is not negative.
[[nodiscard]] UuidBytes makeUuid7(std::int64_t unixMilliseconds);

/// The Unix milliseconds that it was made for. Nothing for a UUID of another version.
[[nodiscard]] std::optional<std::int64_t> uuid7Milliseconds(const UuidBytes& bytes);

/// "0197…-….": lower case with hyphens; and back. Nothing for anything else.
[[nodiscard]] std::string uuidText(const UuidBytes& bytes);
[[nodiscard]] std::optional<UuidBytes> uuidFromText(std::string_view text);

/// The key of one kind of thing. Ids of different kinds do not mix.
template <class Tag>
struct Id {
    UuidBytes bytes{};

    [[nodiscard]] bool isNull() const { return bytes == UuidBytes{}; }
    [[nodiscard]] std::string text() const { return uuidText(bytes); }
    auto operator<=>(const Id&) const = default;
};

}  // namespace hearth

template <class Tag>
struct std::hash<hearth::Id<Tag>> {
    std::size_t operator()(const hearth::Id<Tag>& id) const noexcept {
        std::size_t h = 1469598103934665603ULL;
        for (auto b : id.bytes) {
            h = (h ^ b) * 1099511628211ULL;
        }
        return h;
    }
};

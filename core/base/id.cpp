// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/id.h"

#include <atomic>
#include <cassert>
#include <cerrno>
#include <cstdlib>
#include <sys/random.h>

namespace hearth {
namespace {

template <class Integer>
Integer randomBits() {
    Integer bits = 0;
    ssize_t got = 0;
    do {
        got = getrandom(&bits, sizeof bits, 0);
    } while (got < 0 && errno == EINTR);
    if (got != static_cast<ssize_t>(sizeof bits)) {
        std::abort();  // keys that might repeat would corrupt the store: better no program than that
    }
    return bits;
}

// RFC 9562 section 6.2, method 1: a counter of 42 bits stands before 32 random bits. It never goes back while
// the process lives, so ids of one millisecond keep their order also when ids of other milliseconds were made
// between. It starts at random with its top bit clear, which leaves room for 2^41 ids.
std::uint64_t nextCount() {
    constexpr std::uint64_t kStartMask = (std::uint64_t{1} << 41U) - 1U;
    static std::atomic<std::uint64_t> count{randomBits<std::uint64_t>() & kStartMask};
    return count.fetch_add(1);
}

std::uint8_t byteOf(std::uint64_t bits, unsigned shift) {
    return static_cast<std::uint8_t>((bits >> shift) & 0xFFU);
}

constexpr bool isHyphenPlace(std::size_t place) {
    return place == 8 || place == 13 || place == 18 || place == 23;
}

std::optional<std::uint8_t> nibble(char c) {
    if (c >= '0' && c <= '9') {
        return static_cast<std::uint8_t>(c - '0');
    }
    if (c >= 'a' && c <= 'f') {
        return static_cast<std::uint8_t>(c - 'a' + 10);
    }
    return std::nullopt;
}

}  // namespace

UuidBytes makeUuid7(std::int64_t unixMilliseconds) {
    assert(unixMilliseconds >= 0);
    const auto time = static_cast<std::uint64_t>(unixMilliseconds);
    const std::uint64_t count = nextCount();
    const auto random = randomBits<std::uint32_t>();
    UuidBytes bytes{};
    for (unsigned i = 0; i < 6; ++i) {
        bytes[i] = byteOf(time, 40U - 8U * i);
    }
    bytes[6] =
        static_cast<std::uint8_t>(0x70U | (byteOf(count, 38U) & 0x0FU));  // version 7, count bits 41..38
    bytes[7] = byteOf(count, 30U);
    bytes[8] =
        static_cast<std::uint8_t>(0x80U | (byteOf(count, 24U) & 0x3FU));  // variant 10, count bits 29..24
    bytes[9] = byteOf(count, 16U);
    bytes[10] = byteOf(count, 8U);
    bytes[11] = byteOf(count, 0U);
    for (unsigned i = 0; i < 4; ++i) {
        bytes[12 + i] = byteOf(random, 24U - 8U * i);
    }
    return bytes;
}

std::optional<std::int64_t> uuid7Milliseconds(const UuidBytes& bytes) {
    if (bytes[6] >> 4U != 7) {
        return std::nullopt;
    }
    std::int64_t time = 0;
    for (unsigned i = 0; i < 6; ++i) {
        time = time * 256 + bytes[i];
    }
    return time;
}

std::string uuidText(const UuidBytes& bytes) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(36);
    for (const auto byte : bytes) {
        if (isHyphenPlace(text.size())) {
            text += '-';
        }
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

std::optional<UuidBytes> uuidFromText(std::string_view text) {
    if (text.size() != 36) {
        return std::nullopt;
    }
    UuidBytes bytes{};
    std::size_t digits = 0;
    for (std::size_t place = 0; place < text.size(); ++place) {
        if (isHyphenPlace(place)) {
            if (text[place] != '-') {
                return std::nullopt;
            }
            continue;
        }
        const auto value = nibble(text[place]);
        if (!value) {
            return std::nullopt;
        }
        auto& byte = bytes[digits / 2];
        byte = static_cast<std::uint8_t>((byte << 4U) | *value);
        ++digits;
    }
    return bytes;
}

}  // namespace hearth

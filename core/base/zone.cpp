// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <mutex>
#include <system_error>
#include <utility>

namespace hearth {
namespace {

using std::chrono::local_seconds;
using std::chrono::seconds;
using std::chrono::sys_seconds;

constexpr std::string_view kDatabase = "/usr/share/zoneinfo/";
constexpr std::size_t kHeaderSize = 44;
// Clocks have never been further from UTC than 26 hours (the extremes of the database, -15:13 and +15:13,
// with room).
constexpr seconds kWidestOffset{26 * 3600};

/// Big-endian, two's complement, `width` bytes.
std::int64_t readInteger(std::string_view bytes, std::size_t at, std::size_t width) {
    std::uint64_t value = (static_cast<unsigned char>(bytes[at]) & 0x80U) != 0 ? ~std::uint64_t{0} : 0;
    for (std::size_t i = 0; i < width; ++i) {
        value = (value << 8U) | static_cast<unsigned char>(bytes[at + i]);
    }
    return static_cast<std::int64_t>(value);
}

/// The counts of a TZif header and the size of the block of data that follows it.
struct Block {
    std::size_t transitions = 0;
    std::size_t types = 0;
    std::size_t size = 0;
    char version = 0;
};

std::optional<Block> readHeader(std::string_view bytes, std::size_t timeWidth) {
    if (bytes.size() < kHeaderSize || bytes.substr(0, 4) != "TZif") {
        return std::nullopt;
    }
    std::array<std::size_t, 6> counts{};
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const std::int64_t count = readInteger(bytes, 20 + 4 * i, 4);
        if (count < 0 || count > 1'000'000) {
            return std::nullopt;
        }
        counts[i] = static_cast<std::size_t>(count);
    }
    const auto [utc, standard, leaps, transitions, types, letters] = counts;
    Block block{transitions, types, 0, bytes[4]};
    block.size =
        transitions * (timeWidth + 1) + types * 6 + letters + leaps * (timeWidth + 4) + standard + utc;
    if (types == 0 || bytes.size() < kHeaderSize + block.size) {
        return std::nullopt;
    }
    return block;
}

bool isSafeName(std::string_view name) {
    const auto isPlain = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' ||
               c == '-' || c == '+' || c == '/';
    };
    return !name.empty() && name.front() != '/' && std::all_of(name.begin(), name.end(), isPlain);
}

std::optional<Zone> readZone(const std::string& name) {
    if (!isSafeName(name)) {
        return std::nullopt;
    }
    const std::string path = std::string(kDatabase) + name;
    std::error_code ignored;  // what can't be looked at is not there
    if (std::filesystem::is_regular_file(path, ignored)) {
        std::ifstream file(path, std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
        if (auto zone = Zone::fromTzif(bytes)) {
            return zone;
        }
    }
    return zoneByRule(name);
}

}  // namespace

std::optional<Zone> Zone::fromTzif(std::string_view bytes) {
    std::size_t timeWidth = 4;
    auto block = readHeader(bytes, timeWidth);
    if (!block) {
        return std::nullopt;
    }
    if (block->version >= '2') {  // the same again with times of 64 bits, then the rule for later years
        timeWidth = 8;
        bytes.remove_prefix(kHeaderSize + block->size);
        block = readHeader(bytes, timeWidth);
        if (!block) {
            return std::nullopt;
        }
    }
    const std::size_t times = kHeaderSize;
    const std::size_t indexes = times + block->transitions * timeWidth;
    const std::size_t types = indexes + block->transitions;
    const auto offsetOfType = [&](std::size_t type) {
        return seconds{readInteger(bytes, types + type * 6, 4)};
    };

    Zone zone;
    zone.m_first = offsetOfType(0);
    for (std::size_t i = 0; i < block->transitions; ++i) {
        const auto type = static_cast<unsigned char>(bytes[indexes + i]);
        const std::int64_t at = readInteger(bytes, times + i * timeWidth, timeWidth);
        if (type >= block->types || (i > 0 && at <= zone.m_transitions.back().at)) {
            return std::nullopt;
        }
        zone.m_transitions.push_back({at, offsetOfType(type)});
    }
    if (timeWidth == 8) {
        const std::string_view footer = bytes.substr(kHeaderSize + block->size);
        if (footer.size() < 2 || footer.front() != '\n' || footer.back() != '\n') {
            return std::nullopt;
        }
        const std::string_view rule = footer.substr(1, footer.size() - 2);
        zone.m_rule = parseZoneRule(rule);
        if (!zone.m_rule && !rule.empty()) {
            return std::nullopt;
        }
    }
    return zone;
}

seconds Zone::offsetAt(sys_seconds instant) const {
    const std::int64_t at = instant.time_since_epoch().count();
    const auto next = std::upper_bound(m_transitions.begin(), m_transitions.end(), at,
                                       [](std::int64_t t, const Transition& entry) { return t < entry.at; });
    if (next == m_transitions.end() && m_rule) {
        return m_rule->offsetAt(instant);
    }
    return next == m_transitions.begin() ? m_first : std::prev(next)->offset;
}

std::optional<sys_seconds> Zone::instantAt(local_seconds wall) const {
    const sys_seconds asUtc{wall.time_since_epoch()};
    // Around a change two offsets may apply; the larger one gives the earlier instant.
    const seconds before = offsetAt(asUtc - kWidestOffset);
    const seconds after = offsetAt(asUtc + kWidestOffset);
    for (const seconds offset : {std::max(before, after), std::min(before, after)}) {
        if (offsetAt(asUtc - offset) == offset) {
            return asUtc - offset;
        }
    }
    return std::nullopt;
}

std::optional<Zone> zoneByRule(std::string_view name) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 8> kRules{{
        {"Europe/London", "GMT0BST,M3.5.0/1,M10.5.0"},
        {"Europe/Belfast", "GMT0BST,M3.5.0/1,M10.5.0"},
        {"Europe/Jersey", "GMT0BST,M3.5.0/1,M10.5.0"},
        {"Europe/Guernsey", "GMT0BST,M3.5.0/1,M10.5.0"},
        {"Europe/Isle_of_Man", "GMT0BST,M3.5.0/1,M10.5.0"},
        {"Europe/Dublin", "GMT0IST,M3.5.0/1,M10.5.0"},
        {"UTC", "UTC0"},
        {"Etc/UTC", "UTC0"},
    }};
    for (const auto& [known, rule] : kRules) {
        if (known == name) {
            return Zone(parseZoneRule(rule).value());
        }
    }
    return std::nullopt;
}

const Zone* zoneNamed(const std::string& name) {
    static std::mutex mutex;
    static std::map<std::string, std::optional<Zone>> zones;
    const std::lock_guard lock(mutex);
    auto found = zones.find(name);
    if (found == zones.end()) {
        found = zones.emplace(name, readZone(name)).first;
    }
    return found->second ? &*found->second : nullptr;
}

}  // namespace hearth

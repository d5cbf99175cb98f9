// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/zone_rule.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hearth {

/// The clocks of one zone. The C library's zones belong to the whole process (TZ), so this reads the time
/// zone database itself.
class Zone {
  public:
    explicit Zone(ZoneRule rule) : m_rule(rule) {}

    /// Reads a compiled zone, "TZif" version 1 to 4 (RFC 9636). Nothing when the bytes are not one.
    [[nodiscard]] static std::optional<Zone> fromTzif(std::string_view bytes);

    /// Offset from UTC; east of Greenwich is positive.
    [[nodiscard]] std::chrono::seconds offsetAt(std::chrono::sys_seconds instant) const;

    /// The instant at which the zone's clocks show `wall` (seconds since 1970 as if it were UTC). A time that
    /// comes twice, when the clocks go back, is the first of the two; one that is left out is nothing.
    [[nodiscard]] std::optional<std::chrono::sys_seconds> instantAt(std::chrono::local_seconds wall) const;

  private:
    struct Transition {
        std::int64_t at;
        std::chrono::seconds offset;
    };

    Zone() = default;

    std::chrono::seconds m_first{0};        ///< before the first transition
    std::vector<Transition> m_transitions;  ///< in order of time
    std::optional<ZoneRule> m_rule;         ///< after the last transition
};

/// The zone of an IANA name, from the system's database. Without a database, the zones of the British Isles
/// and UTC are known by rule: the clocks change at 01:00 UTC on the last Sundays of March and October (Summer
/// Time Act 1972 as amended by the Summer Time Order 2002; Directive 2000/84/EC). Null for a name that is
/// unknown. Read once and kept; may be called from any thread.
[[nodiscard]] const Zone* zoneNamed(const std::string& name);

/// The same without the system's database.
[[nodiscard]] std::optional<Zone> zoneByRule(std::string_view name);

}  // namespace hearth

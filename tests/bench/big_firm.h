// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"

#include <cstdint>
#include <string>

namespace hearth::bench {

/// Chance with a fixed seed (splitmix64: the same numbers on every machine).
class Chance {
  public:
    explicit Chance(std::uint64_t seed) : m_state(seed) {}
    [[nodiscard]] std::uint64_t next();
    /// From 0 to below `count`.
    [[nodiscard]] std::size_t below(std::size_t count) { return static_cast<std::size_t>(next() % count); }
    [[nodiscard]] bool oneIn(std::size_t count) { return below(count) == 0; }
    /// Ids that sort in the order in which they were asked for, as the store's own do.
    [[nodiscard]] UuidBytes id();
    [[nodiscard]] std::string digits(std::size_t count);

  private:
    std::uint64_t m_state;
    std::uint64_t m_ids = 0;
};

/// Invented names of people, firms, streets, towns and things. Telephone numbers are of the ranges that the
/// regulator keeps free for drama; the postcode areas begin with Q, which no real one does.
[[nodiscard]] std::string personName(Chance& chance);
[[nodiscard]] std::string organisationName(Chance& chance);
[[nodiscard]] std::string streetName(Chance& chance);
/// One of some hundreds.
[[nodiscard]] std::string townName(std::size_t number);
[[nodiscard]] std::size_t townCount();
/// Of a town: its district, and a street's last part.
[[nodiscard]] std::string postcodeOf(std::size_t town, Chance& chance);
/// Typed one way or another.
[[nodiscard]] std::string telephone(Chance& chance);

struct MadeBy {
    std::string make;
    std::string model;
};
[[nodiscard]] MadeBy applianceMake(Chance& chance);
[[nodiscard]] std::string serialNumber(Chance& chance);
[[nodiscard]] std::string gcNumber(Chance& chance);

}  // namespace hearth::bench

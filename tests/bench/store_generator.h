// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>

/// A store as a large office has it after some years, invented from a fixed seed: the same on every machine.
namespace hearth::bench {

inline constexpr std::size_t kFullPremises = 100'000;
inline constexpr std::uint64_t kSeed = 20261126;

/// For each premises: one installation (rarely two) with pipes, two appliances, three visits with a test, a
/// record and more than three readings each; people with roles in time, letters, attempts, bookings,
/// situations, and the change log of what was typed. Made beside its place and moved there when it is whole.
/// Throws std::runtime_error.
void makeBigStore(const std::filesystem::path& path, std::size_t premises, std::uint64_t seed = kSeed);

/// The store of that size in `folder`, made when there is none of this program's schema. Others of older
/// schemas are removed.
[[nodiscard]] std::filesystem::path bigStoreIn(const std::filesystem::path& folder, std::size_t premises);

/// 100,000 with HEARTH_FULL=1 in the environment; else a tenth, so that it costs a few seconds.
[[nodiscard]] std::size_t wantedPremises();

}  // namespace hearth::bench

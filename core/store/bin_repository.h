// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"
#include "core/store/session.h"

#include <string>
#include <string_view>
#include <vector>

/// What was deleted lies in the bin: its row stays as it is, and a row of `bin` hides it. Everything throws
/// Failure.
namespace hearth::store {

/// An SQL condition that the row whose id is in `column` does not lie in the bin. Every list and search needs
/// it, for the row and for what the row belongs to.
[[nodiscard]] std::string notInBin(std::string_view column);

/// Whether what lies in the bin is left out. It is not where the law asks: what is binned is still held.
enum class Binned { LeftOut, Included };
/// notInBin(), or a condition that always holds.
[[nodiscard]] std::string shown(std::string_view column, Binned binned);

/// Throws InBin when one of the rows lies in the bin.
void refuseBinned(const Connection& db, const std::vector<UuidBytes>& rows);

[[nodiscard]] reg::BinnedId putIntoBin(Session& session, const std::string& table, const UuidBytes& row,
                                       const std::string& label);
[[nodiscard]] std::vector<reg::Binned> readBin(const Connection& db);
void bringBack(Session& session, reg::BinnedId id);
void removeForGood(Session& session, reg::BinnedId id);

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

namespace hearth::store {

/// All that a store holds, a line for each row of each table, in an order of its own: two stores that say the
/// same are in the same state. What is new each time that the same thing is done (ids, digests) is left out
/// where `of` says so, so that two runs can be compared; everything counts within one run.
enum class Of { OneRun, AnyRun };
[[nodiscard]] std::string wholeState(const std::filesystem::path& path, Of of);

/// The first line in which two states differ, for a failure's message.
[[nodiscard]] std::string firstDifference(const std::string& one, const std::string& other);

/// What SQLite finds wrong in a file: its integrity and its foreign keys. Empty when nothing.
[[nodiscard]] std::string problemsOf(const std::filesystem::path& path);

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace hearth::testing {

/// A folder of its own for one test, removed with everything in it when the test ends.
class TempDir {
  public:
    TempDir();
    ~TempDir();
    TempDir(const TempDir&) = delete;
    TempDir& operator=(const TempDir&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }
    /// The path of `name` within the folder.
    [[nodiscard]] std::filesystem::path operator/(std::string_view name) const { return m_path / name; }

  private:
    std::filesystem::path m_path;
};

/// The whole file as bytes; throws std::runtime_error, and so fails the test, when it can't be read.
[[nodiscard]] std::string readFile(const std::filesystem::path& path);
void writeFile(const std::filesystem::path& path, std::string_view bytes);

/// What a shell command printed, and how it ended. For checks by programs from outside; a missing program
/// ends with 127 and so fails the check.
struct CommandOutput {
    int exitCode = -1;
    std::string text;
};
[[nodiscard]] CommandOutput runCommand(const std::string& command);

}  // namespace hearth::testing

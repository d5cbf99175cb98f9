// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace hearth::store {

/// A database file in the making under a name of its own, removed with its journal unless it is published.
class DraftFile {
  public:
    /// What a former attempt left under that name is removed.
    explicit DraftFile(std::filesystem::path path);
    ~DraftFile();
    DraftFile(const DraftFile&) = delete;
    DraftFile& operator=(const DraftFile&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }

    enum class Existing { Keep, Replace };
    /// Gives the closed file its name, on the disk when this returns. Keep fails when the name is taken.
    /// Throws StoreFailed with the system's reason.
    void publish(const std::filesystem::path& target, Existing existing) const;

  private:
    void remove() const;

    std::filesystem::path m_path;
};

}  // namespace hearth::store

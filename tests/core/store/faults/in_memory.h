// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/faults/power_cut_disk.h"
#include "tests/support/files.h"

#include <cstdlib>
#include <filesystem>
#include <string>

namespace hearth::store {

/// Files in memory, where there is such a folder: syncs are simulated, so real ones would only take time.
class InMemory {
  public:
    InMemory() {
        if (const char* before = std::getenv("TMPDIR")) {
            m_before = before;
        }
        if (std::filesystem::is_directory("/dev/shm")) {
            setenv("TMPDIR", "/dev/shm", 1);
        }
    }
    ~InMemory() { m_before.empty() ? unsetenv("TMPDIR") : setenv("TMPDIR", m_before.c_str(), 1); }
    InMemory(const InMemory&) = delete;
    InMemory& operator=(const InMemory&) = delete;

  private:
    std::string m_before;
};

/// Puts a folder into the state of an image. The store keeps its file, so that it keeps its place.
inline void putBack(const std::filesystem::path& folder, const PowerCutDisk::Image& image) {
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (image.files.count(entry.path().filename().string()) == 0) {
            std::filesystem::remove(entry.path());
        }
    }
    for (const auto& [name, bytes] : image.files) {
        hearth::testing::writeFile(folder / name, bytes);
    }
}

[[nodiscard]] inline PowerCutDisk::Image imageOf(const std::filesystem::path& folder) {
    PowerCutDisk::Image image;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        image.files[entry.path().filename().string()] = hearth::testing::readFile(entry.path());
    }
    return image;
}

}  // namespace hearth::store

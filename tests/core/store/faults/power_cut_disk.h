// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <vector>

namespace hearth::store {

/// A disk that may lose whatever was not synced. While it lives, every file that SQLite opens in this process
/// goes through it, and it sees the syncs and renames that the store makes itself. It remembers the writes to
/// each file since the file's last sync, and the folder as it was at the folder's last sync. Again and again,
/// at random, it notes what a power cut would leave at that moment:
///
/// - of the writes since the last sync each sector of 512 bytes is there, is not, or is torn within;
/// - a file that grew may have nothing or rubbish where a lost sector would be, or may not have grown;
/// - a name that was made, removed or given to another file since the folder's last sync may be the old one.
///
/// One folder with files in it; what else a program opens is only counted.
class PowerCutDisk {
  public:
    /// What is in the folder after a cut, and what had been promised before it.
    struct Image {
        std::map<std::string, std::string> files;  // name, bytes
        int promised = 0;
        int step = 0;
        bool cameBack = false;  // a name that had been removed
    };

    PowerCutDisk(std::filesystem::path folder, unsigned seed);
    ~PowerCutDisk();
    PowerCutDisk(const PowerCutDisk&) = delete;
    PowerCutDisk& operator=(const PowerCutDisk&) = delete;

    /// From now on: what is in the folder is on the disk, and a cut falls on about one step in `every`.
    void start(int every);
    /// What has been promised so far.
    void promise(int number) { m_promised = number; }
    /// Ends it; gives what was noted. The folder holds what a machine without a cut would have.
    [[nodiscard]] std::vector<Image> stop();

    // what the disk is told
    struct Write {
        std::size_t at = 0;
        std::string bytes;
        bool cuts = false;  // the file ends at `at` from then on
    };
    struct File {
        std::string synced;
        std::vector<Write> since;
    };
    void made(const std::string& path);
    void written(const std::string& path, Write write);
    void synced(const std::string& path);
    void removed(const std::string& path);
    void renamed(const std::string& from, const std::string& to);
    void folderSynced(const std::string& folder);

  private:
    using Folder = std::map<std::string, std::shared_ptr<File>>;

    [[nodiscard]] std::string nameOf(const std::string& path) const;
    void step();
    [[nodiscard]] Image cut();
    [[nodiscard]] std::string afterCut(const File& file);
    [[nodiscard]] bool byLot(double chance);

    std::filesystem::path m_folder;
    std::mt19937 m_random;
    bool m_notes = false;
    int m_every = 1;
    int m_steps = 0;
    int m_promised = 0;
    Folder m_now;
    Folder m_synced;
    std::vector<Image> m_images;
};

}  // namespace hearth::store

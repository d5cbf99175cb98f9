// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/power_cut_disk.h"

#include "tests/core/store/faults/power_cut_vfs.h"
#include "tests/support/files.h"

#include <algorithm>
#include <array>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kSector = 512;

/// Lengths of the file after each of its writes.
std::vector<std::size_t> sizesOf(const PowerCutDisk::File& file) {
    std::vector<std::size_t> sizes{file.synced.size()};
    for (const auto& write : file.since) {
        sizes.push_back(write.cuts ? write.at : std::max(sizes.back(), write.at + write.bytes.size()));
    }
    return sizes;
}

}  // namespace

PowerCutDisk::PowerCutDisk(fs::path folder, unsigned seed) : m_folder(std::move(folder)), m_random(seed) {
    power_cut::plugIn(this);
}

PowerCutDisk::~PowerCutDisk() {
    power_cut::plugIn(nullptr);
}

void PowerCutDisk::start(int every) {
    m_now.clear();
    for (const auto& entry : fs::directory_iterator(m_folder)) {
        m_now[entry.path().filename().string()] =
            std::make_shared<File>(File{hearth::testing::readFile(entry.path()), {}});
    }
    m_synced = m_now;
    m_images.clear();
    m_every = every;
    m_steps = 0;
    m_promised = 0;
    m_notes = true;
}

std::vector<PowerCutDisk::Image> PowerCutDisk::stop() {
    m_notes = false;
    return std::move(m_images);
}

std::string PowerCutDisk::nameOf(const std::string& path) const {
    const fs::path whole(path);
    return whole.parent_path() == m_folder ? whole.filename().string() : std::string();
}

bool PowerCutDisk::byLot(double chance) {
    return std::uniform_real_distribution<double>(0.0, 1.0)(m_random) < chance;
}

void PowerCutDisk::step() {
    ++m_steps;
    if (m_notes && byLot(1.0 / m_every)) {
        m_images.push_back(cut());
    }
}

void PowerCutDisk::made(const std::string& path) {
    const std::string name = nameOf(path);
    if (m_notes && !name.empty()) {
        m_now[name] = std::make_shared<File>();
        step();
    }
}

void PowerCutDisk::written(const std::string& path, Write write) {
    const auto file = m_now.find(nameOf(path));
    if (m_notes && file != m_now.end()) {
        file->second->since.push_back(std::move(write));
        step();
    }
}

void PowerCutDisk::synced(const std::string& path) {
    const auto found = m_now.find(nameOf(path));
    if (!m_notes || found == m_now.end()) {
        return;
    }
    step();  // within the sync
    File& file = *found->second;
    const auto sizes = sizesOf(file);
    for (std::size_t i = 0; i < file.since.size(); ++i) {
        const Write& write = file.since[i];
        file.synced.resize(sizes[i + 1], '\0');
        file.synced.replace(write.at, write.bytes.size(), write.bytes);
    }
    file.since.clear();
}

void PowerCutDisk::removed(const std::string& path) {
    if (m_notes && m_now.erase(nameOf(path)) > 0) {
        step();
    }
}

void PowerCutDisk::renamed(const std::string& from, const std::string& to) {
    const auto found = m_now.find(nameOf(from));
    if (!m_notes || found == m_now.end()) {
        return;
    }
    m_now[nameOf(to)] = found->second;
    m_now.erase(nameOf(from));
    step();
}

void PowerCutDisk::folderSynced(const std::string& folder) {
    if (m_notes && fs::path(folder) == m_folder) {
        step();
        m_synced = m_now;
    }
}

/// The sectors of a write that came through, one by one; a torn one came through at its beginning or its end.
std::string PowerCutDisk::afterCut(const File& file) {
    constexpr std::array kChances{0.0, 0.05, 0.5, 0.95, 1.0};
    constexpr double kTorn = 0.05;
    const double chance = kChances.at(m_random() % kChances.size());
    const auto sizes = sizesOf(file);
    const std::size_t reached = chance == 0.0 ? 0 : m_random() % sizes.size();
    const std::size_t size = chance == 1.0 ? sizes.back() : sizes.at(reached);
    const std::size_t largest = *std::max_element(sizes.begin(), sizes.end());
    std::string bytes = file.synced;
    bytes.resize(std::max(largest, bytes.size()), byLot(0.5) ? '\0' : '\xA7');
    for (const auto& write : file.since) {
        for (std::size_t from = write.at; from < write.at + write.bytes.size();) {
            const std::size_t sectorEnd = (from / kSector + 1) * kSector;
            const std::size_t end = std::min(sectorEnd, write.at + write.bytes.size());
            std::size_t first = from;
            std::size_t last = byLot(chance) ? end : from;
            if (byLot(kTorn) && chance < 1.0) {
                const std::size_t tear = from + m_random() % (end - from + 1);
                (byLot(0.5) ? first : last) = tear;
                last = std::max(first, last);
            }
            bytes.replace(first, last - first, write.bytes, first - write.at, last - first);
            from = end;
        }
    }
    bytes.resize(size);
    return bytes;
}

PowerCutDisk::Image PowerCutDisk::cut() {
    for (auto name = m_now.begin(); name != m_now.end();) {  // removed past SQLite
        name = fs::exists(m_folder / name->first) ? std::next(name) : m_now.erase(name);
    }
    Image image{{}, m_promised, m_steps, false};
    Folder all = m_now;
    all.insert(m_synced.begin(), m_synced.end());
    std::map<const File*, std::string> left;  // a file with two names has one content
    for (const auto& [name, unused] : all) {
        const Folder& folder = byLot(0.5) ? m_now : m_synced;
        const auto found = folder.find(name);
        if (found == folder.end()) {
            continue;
        }
        const File* file = found->second.get();
        if (left.count(file) == 0) {
            left[file] = afterCut(*file);
        }
        image.files[name] = left[file];
        image.cameBack = image.cameBack || m_now.count(name) == 0;
    }
    return image;
}

}  // namespace hearth::store

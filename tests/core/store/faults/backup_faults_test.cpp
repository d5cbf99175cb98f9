// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_name.h"
#include "core/store/backup_seal.h"
#include "core/store/plain_file.h"
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/faults/plain_disk.h"

#include <cstdio>
#include <sodium.h>
#include <sys/mount.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using hearth::testing::readFile;
using PlainFault = PlainDisk::Fault;

constexpr const char* kWords = "kettle harbour violet";

/// A store with a backup from yesterday, and work since.
class BackupFaults : public SpoiltStore {
  protected:
    void SetUp() override {
        SpoiltStore::SetUp();
        fs::create_directories(second);
        auto opened = valueOf(Store::open(path(), Access::Write, clock));
        sealing = textOf(sealingFor(kWords, {crypto_pwhash_OPSLIMIT_MIN, crypto_pwhash_MEMLIMIT_MIN}));
        const auto made = runBackup({path(), clock.now(), {}, {}, {}});
        ASSERT_FALSE(made.failure);
        yesterday = made.made;
        oldState = wholeState(yesterday, Of::OneRun);
        clock.advance(std::chrono::hours(24));
        valueOf(issueAnother(*opened, visit));
        opened.reset();
        standing = wholeState(path(), Of::OneRun);
    }

    /// Whatever has a backup's name is whole; the store is untouched.
    void expectNothingLost() {
        for (const auto& folder : {backupFolderOf(path()), second}) {
            for (const auto& name : entriesOf(folder)) {
                if (parseBackupName(name)) {
                    const auto inside = lookInside(folder / name, kWords, path());
                    ASSERT_TRUE(inside) << name << " " << codeText(inside.error().code);
                    EXPECT_TRUE(inside->check) << name;
                }
            }
        }
        EXPECT_TRUE(fs::exists(yesterday));
        EXPECT_EQ(wholeState(path(), Of::OneRun), standing);
    }

    /// A backup with one call failing. True when the backup has so many calls.
    bool failBackup(PlainDisk& disk, int call, PlainFault fault, const std::string& sealWith) {
        clock.advance(std::chrono::seconds(1));
        disk.failAt(call, fault);
        const auto outcome = runBackup({path(), clock.now(), second, sealWith, {}});
        const bool happened = disk.heal();
        if (!happened) {
            EXPECT_FALSE(outcome.failure);
            EXPECT_FALSE(outcome.secondFailure);
        }
        EXPECT_EQ(outcome.made.empty(), outcome.failure.has_value());
        if (outcome.failure) {
            ++failed;
            EXPECT_TRUE(outcome.copied.empty());
            EXPECT_TRUE(outcome.failure->code == ErrorCode::BackupFailed ||
                        outcome.failure->code == ErrorCode::BackupFolderFull)
                << codeText(outcome.failure->code);
        } else {
            EXPECT_EQ(outcome.copied.empty(), outcome.secondFailure.has_value());
            failedSecond += outcome.secondFailure ? 1 : 0;
        }
        expectNothingLost();
        return happened;
    }

    const fs::path second = inFolder("stick");
    std::string sealing;
    fs::path yesterday;
    std::string oldState;
    std::string standing;
    int failed = 0;
    int failedSecond = 0;
};

TEST_F(BackupFaults, aBackupThatFailsAnywhereLeavesTheOthersAndTheStore) {
    int tried = 0;
    for (const auto fault : {PlainFault::Once, PlainFault::Full, PlainFault::Dead}) {
        for (const auto& sealWith : {std::string(), sealing}) {
            PlainDisk disk(path().parent_path());
            const int stride = rounds(9, 1);
            for (int call = 1 + tried % stride; failBackup(disk, call, fault, sealWith); call += stride) {
                ++tried;
                ASSERT_FALSE(HasFailure()) << "call " << call;
            }
        }
    }
    std::printf("%d calls failed in backups: %d had none, %d no second copy\n", tried, failed, failedSecond);
    EXPECT_GT(failed, 0);
    EXPECT_GT(failedSecond, 0);
}

TEST_F(BackupFaults, aRestoreThatFailsAnywhereLeavesTheStore) {
    const auto sealed = runBackup({path(), clock.now(), {}, sealing, {}});
    ASSERT_FALSE(sealed.failure);
    const std::string bytes = readFile(path());
    int tried = 0;
    for (const auto fault : {PlainFault::Once, PlainFault::Full, PlainFault::Dead}) {
        for (const auto& from : {yesterday, sealed.made}) {
            PlainDisk disk(path().parent_path());
            const int stride = rounds(11, 1);
            bool happened = true;
            for (int call = 1 + tried % stride; happened; call += stride) {
                clock.advance(std::chrono::seconds(1));
                disk.failAt(call, fault);
                const auto restored = restoreBackup(from, kWords, path(), clock);
                happened = disk.heal();
                tried += happened ? 1 : 0;
                EXPECT_TRUE(restored || happened);
                // A disk that is dead can't take a change of names back either: then it is the old or the new one.
                if (!restored && fault != PlainFault::Dead) {
                    ASSERT_EQ(wholeState(path(), Of::OneRun), standing)
                        << "call " << call << " " << codeText(restored.error().code);
                }
                ASSERT_TRUE(valueOf(Store::open(path(), Access::Write, clock))->verify()) << call;
                hearth::testing::writeFile(path(), bytes);
            }
        }
    }
    std::printf("%d calls failed in restores\n", tried);
}

/// A file system of its own, for as long as it lives; only root may.
class SmallDisk {
  public:
    SmallDisk(fs::path folder, const char* size) : m_folder(std::move(folder)) {
        fs::create_directories(m_folder);
        m_isMounted = mount("tmpfs", m_folder.c_str(), "tmpfs", 0, size) == 0;
    }
    ~SmallDisk() {
        if (m_isMounted) {
            umount2(m_folder.c_str(), MNT_DETACH);
        }
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    [[nodiscard]] bool isThere() const { return m_isMounted; }
    bool makeReadOnly() {
        return mount(nullptr, m_folder.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) == 0;
    }

  private:
    fs::path m_folder;
    bool m_isMounted = false;
};

TEST_F(BackupFaults, aStickThatIsFullIsSaid) {
    SmallDisk stick(second, "size=64k");
    if (!stick.isThere()) {
        GTEST_SKIP() << "only root may make a small disk";
    }
    const auto outcome = runBackup({path(), clock.now(), second, {}, {}});
    EXPECT_FALSE(outcome.failure);
    EXPECT_EQ(outcome.secondFailure, (Error{ErrorCode::BackupFolderFull, {second.string()}}));
    EXPECT_TRUE(entriesOf(second).empty());
    expectNothingLost();
}

TEST_F(BackupFaults, aStickThatMayOnlyBeReadIsSaid) {
    SmallDisk stick(second, "size=64m");
    if (!stick.isThere() || !stick.makeReadOnly()) {
        GTEST_SKIP() << "only root may make a small disk";
    }
    const auto outcome = runBackup({path(), clock.now(), second, {}, {}});
    EXPECT_FALSE(outcome.failure);
    EXPECT_EQ(outcome.secondFailure, (Error{ErrorCode::BackupFolderReadOnly, {second.string()}}));
}

TEST_F(BackupFaults, aDiskThatIsFullIsSaidAndTheStoreWorksOn) {
    const fs::path folder = inFolder("small");
    // Room for the store and one backup of it.
    const auto room = "size=" + std::to_string(fs::file_size(path()) * 5 / 2 / 1024) + "k";
    SmallDisk disk(folder, room.c_str());
    if (!disk.isThere()) {
        GTEST_SKIP() << "only root may make a small disk";
    }
    const fs::path small = folder / "firm.hearth";
    fs::copy_file(path(), small);
    std::optional<Error> failure;
    for (int i = 0; i < 20 && !failure; ++i) {
        clock.advance(std::chrono::hours(24));
        failure = runBackup({small, clock.now(), {}, {}, {}}).failure;
    }
    ASSERT_TRUE(failure);
    EXPECT_EQ(*failure, (Error{ErrorCode::BackupFolderFull, {backupFolderOf(small).string()}}));
    for (const auto& file : findBackups(small)) {
        EXPECT_TRUE(valueOf(lookInside(file.path, "", small)).check);
    }
    const auto opened = valueOf(Store::open(small, Access::Write, clock));
    EXPECT_TRUE(opened->verify());
    const auto restored = restoreBackup(yesterday, "", folder / "other.hearth", clock);
    EXPECT_EQ(errorOf(restored), ErrorCode::StoreFull);
    EXPECT_FALSE(fs::exists(folder / "other.hearth"));
}

}  // namespace
}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/child.h"
#include "tests/core/store/faults/fault_actions.h"

#include <csignal>
#include <fstream>
#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

class FullDisk : public SpoiltStore {};

/// Saves ever more until it fails; empty when the failure says that the disk is full and the last save is
/// still there.
std::string fillUp(Store& store, reg::VisitId visit) {
    const auto file = valueOf(store.visitFile(visit));
    std::string last;
    for (int i = 0; i < 200; ++i) {
        const std::string text = "note " + std::to_string(i) + std::string(3000, 'n');
        const auto saved = store.saveEntry(testEntry(file, reg::Item::TestPartDescription, text));
        if (!saved) {
            const auto now = valueOf(store.visitFile(visit));
            const auto* entry = now.find(reg::subject(now.tests.front().id), reg::Item::TestPartDescription);
            if (entry == nullptr || entry->text != last) {
                return "the last save is not there";
            }
            const bool isSaid = saved.error() == Error{ErrorCode::StoreFull, {store.path().string()}};
            return isSaid ? "" : std::string(codeText(saved.error().code));
        }
        last = text;
    }
    return "it was never full";
}

// A limit on the size of files is the disk's end, made by the kernel: writes fail with EFBIG.
TEST_F(FullDisk, thatALimitMakesIsSaidAndNothingIsLost) {
    const auto said = saidByChild([&] {
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{fs::file_size(path()) + 20000, fs::file_size(path()) + 20000};
        if (setrlimit(RLIMIT_FSIZE, &limit) != 0) {
            return std::string("no limit");
        }
        const auto opened = valueOf(Store::open(path(), Access::Write, clock));
        return fillUp(*opened, visit);
    });
    EXPECT_EQ(said.end, "0");
    EXPECT_EQ(said.text, "");
    EXPECT_EQ(valueOf(Store::inspect(path())).integrity, "ok");
    EXPECT_TRUE(valueOf(Store::open(path(), Access::Write, clock))->verify());
}

/// A file system of that size in memory, for this process alone.
bool mountSmall(const fs::path& folder, std::uintmax_t size) {
    fs::create_directories(folder);
    const std::string options = "size=" + std::to_string(size);
    return unshare(CLONE_NEWNS) == 0 && mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
           mount("tmpfs", folder.c_str(), "tmpfs", 0, options.c_str()) == 0;
}

std::string wrongWith(const char* what, const Result<void>& result, ErrorCode expected) {
    if (result) {
        return std::string(what) + " did not fail";
    }
    return result.error().code == expected
               ? ""
               : std::string(what) + ": " + std::string(codeText(result.error().code));
}

/// A disk that is full to its last byte.
void fillToTheBrim(const fs::path& filler) {
    std::ofstream file(filler, std::ios::binary);
    const std::string page(1024, 'f');
    while (file.write(page.data(), static_cast<std::streamsize>(page.size())).flush()) {
    }
}

/// The lock of a store can't be written there: it is read, and why is said.
std::string openedWhereItIsFull(const fs::path& store, const Clock& clock) {
    const auto refused = Store::open(store, Access::Write, clock);
    if (refused) {
        return "it opened for writing";
    }
    const auto read = Store::open(store, Access::WriteOrRead, clock);
    return refused.error().code == ErrorCode::StoreFull && read && (*read)->isReadOnly() &&
                   (*read)->whyReadOnly() == refused.error()
               ? ""
               : "opening: " + std::string(codeText(refused.error().code));
}

std::string onSmallDisk(const fs::path& store, const fs::path& small, reg::VisitId visit,
                        const Clock& clock) {
    constexpr std::uintmax_t kSpare = 200'000;
    if (!mountSmall(small, 4 * fs::file_size(store) + kSpare)) {
        return "no mount";
    }
    const fs::path moved = small / "firm.hearth";
    fs::copy_file(store, moved);
    fs::copy_file(store, small / "idle.hearth");
    const auto opened = valueOf(Store::open(moved, Access::Write, clock));
    valueOf(opened->backUp(small / "backup.hearth"));
    std::string wrong = fillUp(*opened, visit);
    fillToTheBrim(small / "filler");
    const auto backup = hearth::testing::readFile(small / "backup.hearth");
    wrong += wrongWith("backing up", opened->backUp(small / "backup.hearth"), ErrorCode::BackupFailed);
    wrong += backup == hearth::testing::readFile(small / "backup.hearth") ? "" : "the backup is another";
    wrong += wrongWith("issuing", issueAnother(*opened, visit), ErrorCode::StoreFull);
    const auto made = Store::create(small / "other.hearth", sampleFirm(), clock);
    wrong += made ? "made where there is no room"
                  : wrongWith("making", fail(made.error().code), ErrorCode::StoreFull);
    wrong += fs::exists(small / "other.hearth") ? "half a store was made" : "";
    wrong += openedWhereItIsFull(small / "idle.hearth", clock);
    fs::remove(small / "filler");
    fs::remove(small / "backup.hearth");  // and with room again the same store works on
    valueOf(issueAnother(*opened, visit));
    valueOf(opened->verify());
    return wrong + problemsOf(moved);
}

TEST_F(FullDisk, ofItsOwnIsSaidAndNothingIsLost) {
    const auto said = saidByChild([&] { return onSmallDisk(path(), inFolder("small"), visit, clock); });
    if (said.text == "no mount") {
        GTEST_SKIP() << "skipped: only root may mount a small disk";
    }
    EXPECT_EQ(said.end, "0");
    EXPECT_EQ(said.text, "");
}

}  // namespace
}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/fault_actions.h"
#include "tests/core/store/fault_vfs.h"

#include <atomic>
#include <csignal>
#include <optional>
#include <sys/wait.h>
#include <unistd.h>

namespace hearth::store {
namespace {

using quantity::UnitCode;

/// A child tells what it has been promised is on the disk, one number after the other.
class Acknowledged {
  public:
    Acknowledged() {
        if (pipe(m_ends) != 0) {
            throw std::runtime_error("no pipe");
        }
    }
    ~Acknowledged() {
        close(m_ends[0]);
        closeWriter();
    }
    Acknowledged(const Acknowledged&) = delete;
    Acknowledged& operator=(const Acknowledged&) = delete;

    void say(int number) const {
        if (write(m_ends[1], &number, sizeof number) != sizeof number) {
            throw std::runtime_error("nobody listens");
        }
    }
    void closeWriter() {
        if (m_ends[1] >= 0) {
            close(m_ends[1]);
        }
        m_ends[1] = -1;
    }
    /// The next number; waits for it. Nothing when the child is gone.
    [[nodiscard]] std::optional<int> next() const {
        int number = 0;
        return read(m_ends[0], &number, sizeof number) == sizeof number ? std::optional<int>(number)
                                                                        : std::nullopt;
    }

  private:
    int m_ends[2] = {-1, -1};
};

class Killed : public SpoiltStore {
  protected:
    /// Saves and issues for ever, telling each number once its save has returned.
    [[noreturn]] void workForEver(const Acknowledged& said, int from) const {
        const auto opened = valueOf(Store::open(path(), Access::Write, clock));
        const auto file = valueOf(opened->visitFile(visit));
        for (int i = from;; ++i) {
            valueOf(opened->saveEntry(
                testEntry(file, reg::Item::TightEnd, std::to_string(i), UnitCode::Millibar)));
            if (i % 5 == 0) {
                valueOf(issueAnother(*opened, visit));
            }
            said.say(i);
        }
    }
    /// Lets a child work, and kills it when it has said so many numbers and a little later; gives the last
    /// one.
    [[nodiscard]] int killAfter(int heard, unsigned later, int from) const {
        Acknowledged said;
        const pid_t child = inChild([&]() -> int { workForEver(said, from); });
        said.closeWriter();
        int last = from - 1;
        for (int i = 0; i < heard; ++i) {
            last = said.next().value_or(last);
        }
        for (unsigned i = 0; i < later; ++i) {  // into the next save, at a place that chance chooses
            std::atomic_signal_fence(std::memory_order_seq_cst);
        }
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        EXPECT_TRUE(WIFSIGNALED(status));
        while (const auto number = said.next()) {
            last = *number;
        }
        return last;
    }
    /// The store is whole, and holds the last number that was promised or the one after it; gives what it
    /// holds.
    [[nodiscard]] int expectKept(int last) const {
        const auto opened = valueOf(Store::open(path(), Access::Write, clock));
        EXPECT_TRUE(opened->verify());
        EXPECT_EQ(valueOf(Store::inspect(path())).integrity, "ok");
        const auto file = valueOf(opened->visitFile(visit));
        const auto* entry = file.find(reg::subject(file.tests.front().id), reg::Item::TightEnd);
        const int kept = entry != nullptr ? std::stoi(entry->text) : 0;
        EXPECT_TRUE(kept == last || kept == last + 1) << kept << " after " << last;
        return kept;
    }
};

TEST_F(Killed, losesNothingThatWasSavedAndStaysWhole) {
    unsigned chance = 20261125;
    int kept = 0;
    for (int round = 0; round < rounds(20, 200) && !HasFailure(); ++round) {
        chance = chance * 1664525U + 1013904223U;
        const int heard = 1 + static_cast<int>((chance >> 16U) % 7U);
        kept = expectKept(killAfter(heard, (chance >> 8U) % 2'000'000U, kept + 1));
    }
}

// What a killed program left in the middle of a save is played back for somebody who only reads; a mere look
// at the store's health plays back a copy.
TEST_F(Killed, leavesAStoreThatAReaderCanOpen) {
    FaultyDisk disk;
    int journals = 0;
    bool happened = true;
    for (int step = 1; happened; step += rounds(6, 1)) {
        restore();
        auto opened = valueOf(Store::open(path(), Access::Write, clock));
        disk.failAt(step, FaultyDisk::Fault::Dead);
        static_cast<void>(layPipes(*opened, visit));
        opened.reset();
        happened = disk.heal();
        const std::string left = hearth::testing::readFile(path());
        journals += std::filesystem::exists(path().string() + "-journal") ? 1 : 0;
        EXPECT_EQ(valueOf(Store::inspect(path())).integrity, "ok");
        EXPECT_EQ(hearth::testing::readFile(path()), left);
        const auto reader = valueOf(Store::open(path(), Access::Read, clock));
        EXPECT_TRUE(reader->verify());
        const auto pipes = valueOf(reader->pipes(valueOf(reader->visitFile(visit)).installation.id));
        EXPECT_EQ(pipes.size(), happened ? 0U : 20U);
    }
    EXPECT_GT(journals, 1);
}

}  // namespace
}  // namespace hearth::store

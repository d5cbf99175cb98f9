// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/file_header.h"
#include "tests/core/store/faults/child.h"
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/faults/fault_vfs.h"
#include "tests/core/store/faults/workload.h"

#include <chrono>
#include <csignal>
#include <cstdio>
#include <random>
#include <thread>

namespace hearth::store {
namespace {

class Killed : public SpoiltStore {
  protected:
    struct Figures {
        int kills = 0;
        int saves = 0;     // acknowledged
        int journals = 0;  // found after a kill: it fell into a save
        int newer = 0;     // the save that was cut off had come through
        int backups = 0;
        int parts = 0;  // backups that were cut off
    };

    [[nodiscard]] std::filesystem::path backup() const { return inFolder("backup.hearth"); }

    /// Works for ever, telling each number once its call has returned.
    [[noreturn]] void workForEver(const Acknowledged& said, int from) const {
        const auto opened = valueOf(Store::open(path(), Access::Write, clock));
        Worker worker(*opened, visit, kSeed, backup());
        for (int number = from;; ++number) {
            valueOf(worker.run(number));
            said.say(number);
        }
    }

    /// Lets a child work and kills it after a while, from its very beginning on; gives the last number that
    /// it said.
    [[nodiscard]] int killAfter(std::chrono::microseconds while_, int from) const {
        Acknowledged said;
        const pid_t child = inChild([&]() -> int { workForEver(said, from); });
        said.closeWriter();
        std::this_thread::sleep_for(while_);  // the moment is what is tried
        kill(child, SIGKILL);
        EXPECT_EQ(endOf(child), "signal 9");
        int last = from - 1;
        while (const auto number = said.next()) {
            EXPECT_EQ(*number, last + 1);
            last = *number;
        }
        return last;
    }

    /// About the time of opening the store and of a dozen steps on this machine as it is now.
    [[nodiscard]] std::chrono::microseconds timeOfSomeWork() {
        constexpr int kSome = 12;
        startAnew();
        const auto begun = std::chrono::steady_clock::now();
        EXPECT_EQ(endOf(inChild([&] {
                      const auto opened = valueOf(Store::open(path(), Access::Write, clock));
                      Worker worker(*opened, visit, kSeed, backup());
                      for (int number = 1; number <= kSome; ++number) {
                          valueOf(worker.run(number));
                      }
                      return 0;
                  })),
                  "0");
        return std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() -
                                                                     begun);
    }

    void startAnew() {
        restore();
        std::filesystem::remove(backup());
        m_expected.emplace(kSeed, Worker::pictureOf(path()));
        m_backedUp.clear();
    }

    /// What was said until then is there; of what was not said, all or nothing. Gives the last step that is
    /// there.
    int expectKept(int from, int last) {
        m_expected->newSession();
        for (int number = from; number <= last; ++number) {
            take(number);
        }
        m_figures.saves += last - from + 1;
        m_figures.journals += hasJournal(path()) ? 1 : 0;
        const auto opened = valueOf(Store::open(path(), Access::Write, clock));
        EXPECT_TRUE(opened->verify());
        EXPECT_EQ(problemsOf(path()), "");
        const Picture found = Worker::pictureOf(path());
        Expected next = *m_expected;
        next.take(last + 1);
        expectBackup(last + 1);
        if (found == m_expected->picture()) {
            return last;
        }
        EXPECT_EQ(textOf(found), textOf(next.picture())) << "but said: " << textOf(m_expected->picture());
        take(last + 1);
        ++m_figures.newer;
        return last + 1;
    }

    void TearDown() override {
        std::printf(
            "%d kills: %d acknowledged calls; %d kills within a save, %d saves were through all "
            "the "
            "same; %d backups looked at, %d cut off\n",
            m_figures.kills, m_figures.saves, m_figures.journals, m_figures.newer, m_figures.backups,
            m_figures.parts);
    }

    Figures m_figures;
    static constexpr unsigned kSeed = 20261125;

  private:
    void take(int number) {
        m_expected->take(number);
        if (stepOf(kSeed, number) == Step::Backup) {
            m_backedUp = textOf(m_expected->picture());
        }
    }

    /// The last backup that was said to be good is, or one that was under way; there is never half a one.
    void expectBackup(int next) {
        const auto part = backup().string() + ".part";
        m_figures.parts += std::filesystem::exists(part) ? 1 : 0;
        if (!std::filesystem::exists(backup())) {
            EXPECT_EQ(m_backedUp, "");
            return;
        }
        EXPECT_EQ(problemsOf(backup()), "");
        EXPECT_TRUE(valueOf(Store::inspect(backup())).chain);
        const std::string found = textOf(Worker::pictureOf(backup()));
        const bool underWay = stepOf(kSeed, next) == Step::Backup && found == textOf(m_expected->picture());
        EXPECT_TRUE(found == m_backedUp || underWay) << found << " instead of " << m_backedUp;
        m_backedUp = found;
        ++m_figures.backups;
    }

    std::optional<Expected> m_expected;
    std::string m_backedUp;
};

TEST_F(Killed, losesNothingThatWasSavedAndStaysWhole) {
    constexpr int kBeforeItGrowsTooLarge = 20;
    std::mt19937 random(kSeed);
    std::uniform_int_distribution<long> moment(0, 2 * timeOfSomeWork().count());
    int done = 0;
    for (int round = 0; round < rounds(20, 1000) && !HasFailure(); ++round) {
        if (round % kBeforeItGrowsTooLarge == 0) {
            startAnew();
        }
        const int last = killAfter(std::chrono::microseconds(moment(random)), done + 1);
        done = expectKept(done + 1, last);
        ++m_figures.kills;
    }
    EXPECT_GT(m_figures.saves, m_figures.kills / 2) << "too little was done to show anything";
    EXPECT_GT(m_figures.journals, 0) << "no kill fell into a save";
}

class KilledWriter : public SpoiltStore {};

// What a killed program left in the middle of a save is played back for somebody who only reads; a mere look
// at the store's health plays back a copy.
TEST_F(KilledWriter, leavesAStoreThatAReaderCanOpen) {
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

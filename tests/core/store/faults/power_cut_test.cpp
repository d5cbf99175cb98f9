// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/file_header.h"
#include "core/store/opening.h"
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/faults/in_memory.h"
#include "tests/core/store/faults/power_cut_disk.h"
#include "tests/core/store/faults/workload.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <sqlite3.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using Image = PowerCutDisk::Image;

class PowerCut : public InMemory, public SpoiltStore {
  protected:
    [[nodiscard]] fs::path folder() const { return path().parent_path(); }
    [[nodiscard]] static double secondsSince(std::chrono::steady_clock::time_point start) {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    }

    std::chrono::steady_clock::time_point begun = std::chrono::steady_clock::now();
};

/// A day's work with cuts in it, one stretch of work after the other, each on what a cut of the one before
/// left.
class PowerCutAtWork : public PowerCut {
  protected:
    struct Figures {
        int cuts = 0;
        int journals = 0;  // a save was cut off and had to be played back

        int cameBack = 0;  // a journal that had been removed was there again
        int newer = 0;     // the save that was cut off had come through
        int backups = 0;
        int stretches = 0;
        int saves = 0;
    };

    /// Works, and learns the whole state and the backup after each step.
    [[nodiscard]] std::vector<Image> workFrom(const Image& image, int first, int last) {
        putBack(folder(), image);
        m_states.clear();
        m_backups.clear();
        m_disk.start(kStepsForACut);
        const auto opened = valueOf(Store::open(path(), Access::Write, clock));
        Worker worker(*opened, visit, kSeed, backup());
        learn(first - 1);
        for (int number = first; number <= last; ++number) {
            m_disk.promise(number);  // it may be there, and the one before it must
            valueOf(worker.run(number));
            learn(number);
        }
        m_figures.saves += last - first + 1;
        ++m_figures.stretches;
        return m_disk.stop();
    }

    /// Opens what a cut left: whole, with all that had been promised. Gives the step that it holds.
    int expectKept(const Image& image, int first) {
        putBack(folder(), image);
        const int last = std::max(image.promised, first - 1);
        m_figures.journals += hasJournal(path()) ? 1 : 0;
        ++m_figures.cuts;
        m_figures.cameBack += image.cameBack ? 1 : 0;
        expectBackup(image, last, first);
        {
            const auto opened = Store::open(path(), Access::Write, clock);
            if (!opened) {
                ADD_FAILURE() << codeText(opened.error().code) << " after step " << image.step;
                return last;
            }
            EXPECT_TRUE((*opened)->verify());
        }
        EXPECT_EQ(problemsOf(path()), "");
        const std::string found = wholeState(path(), Of::OneRun);
        if (found == m_states.at(last)) {
            ++m_figures.newer;
            return last;
        }
        if (last >= first && found == m_states.at(last - 1)) {
            return last - 1;
        }
        ADD_FAILURE() << "neither old nor new after step " << image.step << "\n"
                      << firstDifference(m_states.at(last), found);
        return last;
    }

    [[nodiscard]] fs::path backup() const { return inFolder("backup.hearth"); }

    void say() const {
        std::printf(
            "%d power cuts in %d stretches of work with %d saves: %d journals played back (%d times a "
            "removed "
            "name had come back), %d times the save under way had come through, %d backups looked at; %.0f "
            "s\n",
            m_figures.cuts, m_figures.stretches, m_figures.saves, m_figures.journals, m_figures.cameBack,
            m_figures.newer, m_figures.backups, secondsSince(begun));
    }

    static constexpr unsigned kSeed = 20261125;
    static constexpr int kStepsForACut = 40;
    Figures m_figures;

  private:
    void learn(int number) {
        m_states[number] = wholeState(path(), Of::OneRun);
        m_backups[number] = fs::exists(backup()) ? hearth::testing::readFile(backup()) : std::string();
    }

    /// The newest backup that was said to be good, to the byte, or the one that was under way.
    void expectBackup(const Image& image, int last, int first) {
        const auto found = image.files.find("backup.hearth");
        const std::string bytes = found == image.files.end() ? std::string() : found->second;
        EXPECT_TRUE(bytes == m_backups.at(last) || bytes == m_backups.at(std::max(last - 1, first - 1)));
        m_figures.backups += bytes.empty() ? 0 : 1;
    }

    PowerCutDisk m_disk{folder(), kSeed};
    std::map<int, std::string> m_states;
    std::map<int, std::string> m_backups;
};

TEST_F(PowerCutAtWork, losesNothingThatWasSavedAndStaysWhole) {
    constexpr int kStretch = 12;
    constexpr std::size_t kTooLarge = 2'000'000;
    const Image fresh = imageOf(folder());
    Image from = fresh;
    int next = 1;
    while (m_figures.cuts < rounds(150, 10'000) && !HasFailure()) {
        const auto images = workFrom(from, next, next + kStretch - 1);
        const int first = next;
        next += kStretch;
        from = imageOf(folder());
        for (const auto& image : images) {
            const int kept = expectKept(image, first);
            if (&image ==
                &images[images.size() / 2]) {  // work goes on from there, with what has to be mended
                from = image;
                next = kept + 1;
            }
        }
        if (from.files["firm.hearth"].size() > kTooLarge) {
            from = fresh;
        }
    }
    say();
    EXPECT_GT(m_figures.journals * 10, m_figures.cuts) << "too few cuts fell into a save";
}

// A store in the making is there whole or not at all; once its maker was told so, it is there.
TEST_F(PowerCut, leavesNoHalfStoreWhereOneIsMade) {
    const fs::path made = inFolder("made.hearth");
    const auto before = imageOf(folder());
    PowerCutDisk disk(folder(), 3);
    int cuts = 0;
    int whole = 0;
    while (cuts < rounds(40, 1000) && !HasFailure()) {
        putBack(folder(), before);
        disk.start(50);
        valueOf(Store::create(made, sampleFirm(), clock));
        disk.promise(1);
        valueOf(valueOf(Store::open(made, Access::Write, clock))->saveFirm(sampleFirm()));
        for (const auto& image : disk.stop()) {
            putBack(folder(), image);
            ++cuts;
            if (!fs::exists(made)) {
                EXPECT_EQ(image.promised, 0);
                continue;
            }
            ++whole;
            EXPECT_TRUE(valueOf(Store::open(made, Access::Write, clock))->firm());
            EXPECT_EQ(problemsOf(made), "");
        }
    }
    std::printf("%d power cuts while a store was made: %d times it was there, whole\n", cuts, whole);
}

class PowerCutAtMigration : public PowerCut {
  protected:
    void SetUp() override {
        PowerCut::SetUp();
        m_list.assign(shippedMigrations().begin(), shippedMigrations().end());
        m_schema = newestSchema(m_list) + 1;
        m_list.push_back(
            {m_schema, "notes",
             "CREATE TABLE notes (x INTEGER) STRICT; ALTER TABLE premises ADD COLUMN extra TEXT;"
             "UPDATE premises SET extra = line1; CREATE INDEX visits_by_start ON visits (started_at);"});
    }
    [[nodiscard]] Result<Opened> migrate() const {
        return guarded([&] { return openFile(path(), Access::Write, clock, m_list); });
    }
    /// The old store or the new one; and with the new one the backup of the old.
    void expectMigrates(const Image& image, const std::string& before) const {
        putBack(folder(), image);
        const bool isNew = askSql(path(), "PRAGMA user_version") == std::to_string(m_schema);
        EXPECT_EQ(problemsOf(path()), "");
        EXPECT_TRUE(isNew || wholeState(path(), Of::OneRun) == before);
        EXPECT_TRUE(isNew || image.promised == 0);
        int backups = 0;
        for (const auto& [name, bytes] : image.files) {
            const bool isBackup =
                name.find("-schema") != std::string::npos && fs::path(name).extension() == path().extension();
            EXPECT_EQ(isBackup ? problemsOf(folder() / name) : "", "");
            backups += isBackup ? 1 : 0;
        }
        EXPECT_TRUE(backups == 1 || !isNew);
        const auto again = migrate();
        ASSERT_TRUE(again) << codeText(again.error().code);
        EXPECT_EQ(schemaOf(*again->db), m_schema);
    }

  private:
    std::vector<Migration> m_list;
    int m_schema = 0;
};

TEST_F(PowerCutAtMigration, leavesTheOldStoreOrTheNewWithItsBackup) {
    const auto fresh = imageOf(folder());
    const std::string before = wholeState(path(), Of::OneRun);
    PowerCutDisk disk(folder(), 5);
    int cuts = 0;
    while (cuts < rounds(40, 1000) && !HasFailure()) {
        putBack(folder(), fresh);
        disk.start(30);
        ASSERT_TRUE(migrate());
        disk.promise(1);
        ASSERT_TRUE(migrate());
        for (const auto& image : disk.stop()) {
            expectMigrates(image, before);
            ++cuts;
        }
    }
    std::printf("%d power cuts while a store was migrated\n", cuts);
}

}  // namespace
}  // namespace hearth::store

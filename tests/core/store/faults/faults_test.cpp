// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/opening.h"
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/faults/fault_vfs.h"
#include "tests/core/store/faults/in_memory.h"

#include <cstdio>
#include <tuple>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using Fault = FaultyDisk::Fault;

using Where = std::tuple<std::size_t, Fault>;  // which action, what fault

class FaultAtEachStep : public InMemory, public SpoiltStore, public ::testing::WithParamInterface<Where> {
  protected:
    /// Lets one step of the action fail. True when the action has so many.
    [[nodiscard]] bool failOnce(const Action& action, int step, Fault fault) {
        auto opened = prepared(action);
        m_disk.failAt(step, fault);
        const auto result = action.run(*opened, visit);
        if (fault == Fault::Dead) {
            opened.reset();  // a dead machine rolls nothing back
        }
        const bool happened = m_disk.heal();
        if (!result) {
            expectSaid(result.error(), fault);
        }
        if (fault == Fault::Dead) {
            expectSound(result ? std::vector{m_after} : std::vector{m_before, m_after});
            return happened;
        }
        if (!result) {  // an error says that nothing was changed, and the same store works on
            EXPECT_EQ(firstDifference(m_before, state()), "");
            EXPECT_TRUE(opened->verify());
            valueOf(action.run(*opened, visit));
        }
        opened.reset();
        expectSound({m_after});
        return happened;
    }

    static void TearDownTestSuite() {
        std::printf("%d steps failed, in %zu kinds of work\n", steps, actions().size());
    }

    void expectSaid(const Error& error, Fault fault) const {
        if (fault == Fault::Full) {
            EXPECT_EQ(error, (Error{ErrorCode::StoreFull, {path().string()}}));
        } else {
            EXPECT_EQ(error.code, ErrorCode::StoreFailed) << codeText(error.code);
            ASSERT_EQ(error.details.size(), 2U);  // as its sentence needs
            EXPECT_EQ(error.details.front(), path().string());
            EXPECT_NE(error.details.back(), "");
        }
    }

    /// Learns what the store is like before and after the action when nothing goes wrong.
    void learnStates(const Action& action) {
        const auto opened = prepared(action);
        m_before = state();
        valueOf(action.run(*opened, visit));
        m_after = state();
        EXPECT_NE(m_before, m_after);
    }

    static inline int steps = 0;

  private:
    FaultyDisk m_disk;
    std::string m_before;
    std::string m_after;
};

TEST_P(FaultAtEachStep, leavesTheOldStateOrTheNew) {
    const auto [index, fault] = GetParam();
    const Action& action = actions().at(index);
    learnStates(action);
    const int stride = rounds(fault == Fault::Dead ? 5 : 11, 1);
    const int first = 1 + static_cast<int>(index) % stride;  // all places by turns
    int step = first;
    // With sanitizers the many steps of a long action are tried ever more sparsely.
    const int sparser = rounds(kIsSanitized ? 20 : 0, 0);
    for (; failOnce(action, step, fault) && !HasFailure();
         step += stride + (sparser > 0 ? step / sparser : 0)) {
        ++steps;
    }
    EXPECT_FALSE(HasFailure()) << "step " << step;
    // Journal, file and header at the least; by strides, one of the steps of the shortest action.
    EXPECT_GT(step, stride == 1 ? first + 2 : first);
}

std::string nameOf(const ::testing::TestParamInfo<Where>& info) {
    const auto [index, fault] = info.param;
    const char* kind = fault == Fault::Once ? "_once" : fault == Fault::Dead ? "_dead" : "_full";
    return actions().at(index).name + std::string(kind);
}

INSTANTIATE_TEST_SUITE_P(EveryAction, FaultAtEachStep,
                         ::testing::Combine(::testing::Range<std::size_t>(0, actions().size()),
                                            ::testing::Values(Fault::Once, Fault::Dead, Fault::Full)),
                         nameOf);

class Faults : public InMemory, public SpoiltStore {};

TEST_F(Faults, aFailedMakingLeavesNoHalfStore) {
    FaultyDisk disk;
    const fs::path made = inFolder("made.hearth");
    for (int step = 1;; step += rounds(7, 1)) {
        disk.failAt(step, Fault::Dead);
        const auto result = Store::create(made, sampleFirm(), clock);
        if (!disk.heal()) {
            EXPECT_TRUE(result);
            break;
        }
        EXPECT_FALSE(result);
        if (fs::exists(made)) {  // it was whole before the disk died
            EXPECT_TRUE(valueOf(Store::open(made, Access::Write, clock))->firm());
            fs::remove(made);
        }
    }
    EXPECT_FALSE(fs::exists(made.string() + ".new"));
}

TEST_F(Faults, aFailedBackupLeavesTheOneBefore) {
    const fs::path target = inFolder("backup.hearth");
    const auto opened = valueOf(Store::open(path(), Access::Write, clock));
    valueOf(opened->backUp(target));
    const std::string good = hearth::testing::readFile(target);
    FaultyDisk disk;
    const auto reader = valueOf(Store::open(path(), Access::Read, clock));
    for (int step = 1;; step += rounds(5, 1)) {
        disk.failAt(step, step % 2 == 0 ? Fault::Full : Fault::Dead);
        const auto result = reader->backUp(target);
        if (!disk.heal()) {
            EXPECT_TRUE(result);
            break;
        }
        EXPECT_EQ(errorOf(result), ErrorCode::BackupFailed);
        EXPECT_EQ(hearth::testing::readFile(target), good);
    }
}

TEST_F(Faults, aFailedMigrationLeavesAStoreThatCanBeMigrated) {
    std::vector<Migration> steps(shippedMigrations().begin(), shippedMigrations().end());
    const int next = newestSchema(steps) + 1;
    steps.push_back({next, "notes",
                     "CREATE TABLE notes (x INTEGER) STRICT; ALTER TABLE premises ADD COLUMN extra TEXT;"});
    const auto migrate = [&] {
        return guarded([&] { return openFile(path(), Access::Write, clock, steps); });
    };
    FaultyDisk disk;
    bool happened = true;
    for (int step = 1; happened; step += rounds(5, 1)) {
        restore();
        disk.failAt(step, Fault::Dead);
        const bool migrated = migrate().has_value();
        happened = disk.heal();
        EXPECT_EQ(migrated, !happened);
        const auto again = migrate();
        ASSERT_TRUE(again) << codeText(again.error().code);
        EXPECT_EQ(schemaOf(*again->db), next);
        EXPECT_EQ(integrityOf(*again->db, Check::Full), "ok");
    }
}

}  // namespace
}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/file_header.h"
#include "tests/core/store/faults/child.h"
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/faults/in_memory.h"

#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

class TwoProcesses : public SpoiltStore {
  protected:
    [[nodiscard]] static std::string hostName() {
        char name[256] = {};
        gethostname(name, sizeof name - 1);
        return name;
    }
    [[nodiscard]] fs::path lock() const { return path().string() + ".lock"; }
    [[nodiscard]] std::string typed(const Store& from) const {
        const auto file = valueOf(from.visitFile(visit));
        const auto* entry = file.find(reg::subject(file.tests.front().id), reg::Item::TightEnd);
        return entry == nullptr ? "" : entry->text;
    }
    /// Makes the lock look as old as a day.
    void age(const fs::path& file) const {
        fs::last_write_time(file, fs::file_time_type::clock::now() - std::chrono::hours(24));
    }
};

TEST_F(TwoProcesses, oneWritesAndTheOtherReadsAndSaysWhoWrites) {
    Acknowledged said;
    const pid_t writer = inChild([&]() -> int {
        const auto opened = valueOf(Store::open(path(), Access::Write, clock));
        const auto file = valueOf(opened->visitFile(visit));
        for (int i = 1;; ++i) {
            valueOf(opened->saveEntry(
                testEntry(file, reg::Item::TightEnd, std::to_string(i), quantity::UnitCode::Millibar)));
            said.say(i);
            std::this_thread::sleep_for(std::chrono::milliseconds(20));  // nobody types faster
        }
    });
    said.closeWriter();
    ASSERT_TRUE(said.next());
    const auto refused = Store::open(path(), Access::Write, clock);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::StoreLocked);
    EXPECT_THAT(refused.error().details.back(),
                ::testing::HasSubstr(std::to_string(writer) + "@" + hostName()));
    const auto reader = valueOf(Store::open(path(), Access::WriteOrRead, clock));
    EXPECT_EQ(reader->whyReadOnly(), refused.error());
    for (int round = 0; round < rounds(20, 200); ++round) {  // while the other goes on writing
        const int least = said.next().value_or(0);
        EXPECT_GE(std::stoi(typed(*reader)), least);  // what was said to be saved is seen
        EXPECT_TRUE(reader->verify());
    }
    kill(writer, SIGKILL);
    EXPECT_EQ(endOf(writer), "signal 9");
    EXPECT_TRUE(fs::exists(lock()));
    const auto next = valueOf(Store::open(path(), Access::Write, clock));
    EXPECT_FALSE(next->isReadOnly()) << "the lock of a dead process is taken over";
    EXPECT_TRUE(next->verify());
    EXPECT_EQ(typed(*reader), typed(*next));
}

TEST_F(TwoProcesses, ofManyAtOnceOneGetsIt) {
    constexpr int kMany = 6;
    for (int round = 0; round < rounds(5, 50); ++round) {
        std::vector<pid_t> children;
        const auto start = std::chrono::steady_clock::now() + std::chrono::milliseconds(15);
        for (int i = 0; i < kMany; ++i) {
            children.push_back(inChild([&] {
                std::this_thread::sleep_until(start);
                const auto opened = Store::open(path(), Access::Write, clock);
                if (!opened) {
                    return opened.error().code == ErrorCode::StoreLocked ? 1 : 2;
                }
                std::this_thread::sleep_for(std::chrono::milliseconds(300));  // until all have tried
                return 0;
            }));
        }
        int got = 0;
        for (const pid_t child : children) {
            const std::string end = endOf(child);
            EXPECT_TRUE(end == "0" || end == "1") << end;
            got += end == "0" ? 1 : 0;
        }
        EXPECT_EQ(got, 1);
    }
}

// On a shared folder nobody here can know whether a program over there still lives.
TEST_F(TwoProcesses, aLockOfAnotherMachineIsToldAndNeverTaken) {
    hearth::testing::writeFile(lock(), "4711\nhearthledger\noffice-pc\nanother-machine\nanother-boot\n");
    age(lock());
    const auto refused = Store::open(path(), Access::Write, clock);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(),
              (Error{ErrorCode::StoreLocked, {path().string(), "hearthledger 4711@office-pc"}}));
    const auto reader = valueOf(Store::open(path(), Access::WriteOrRead, clock));
    EXPECT_TRUE(reader->isReadOnly());
    EXPECT_TRUE(reader->verify());
    EXPECT_TRUE(fs::exists(lock()));
}

// A program that was killed between making its lock and writing into it would lock the store for ever.
TEST_F(TwoProcesses, aLockThatSaysNothingIsTakenOverWhenNobodyHoldsIt) {
    for (const std::string& text : {std::string(), std::string(40, '\0')}) {
        hearth::testing::writeFile(lock(), text);
        EXPECT_FALSE(valueOf(Store::open(path(), Access::Write, clock))->isReadOnly())
            << "one made just now is waited for";
        hearth::testing::writeFile(lock(), text);
        age(lock());
        const int held = open(lock().c_str(), O_RDWR | O_CLOEXEC);
        ASSERT_EQ(flock(held, LOCK_EX | LOCK_NB), 0);
        EXPECT_EQ(errorOf(Store::open(path(), Access::Write, clock)), ErrorCode::StoreLocked)
            << "its maker lives";
        close(held);
        EXPECT_FALSE(valueOf(Store::open(path(), Access::Write, clock))->isReadOnly());
    }
}

class WhileOpen : public InMemory, public SpoiltStore {
  protected:
    void SetUp() override {
        SpoiltStore::SetUp();
        store = valueOf(Store::open(path(), Access::Write, clock));
    }
    /// Nothing is saved any more and that is said; what the window holds can still be read and backed up.
    void expectRescued() {
        const std::string now = hearth::testing::readFile(path());
        for (const auto& action : actions()) {
            if (std::string(action.name) == "undo" || std::string(action.name) == "undo_pipes" ||
                action.prepare) {
                continue;
            }
            const auto saved = action.run(*store, visit);
            ASSERT_FALSE(saved) << action.name;
            EXPECT_EQ(saved.error(), (Error{ErrorCode::StoreMoved, {path().string()}})) << action.name;
        }
        EXPECT_EQ(hearth::testing::readFile(path()), now) << "the file in its place was left alone";
        expectBackup();
    }
    void expectBackup() {
        EXPECT_TRUE(store->verify());
        const fs::path rescued = inFolder("rescued.hearth");
        valueOf(store->backUp(rescued));
        store.reset();
        EXPECT_EQ(valueOf(Store::inspect(rescued)).records, 1);
        EXPECT_TRUE(valueOf(valueOf(Store::open(rescued, Access::Write, clock))->visitFile(visit)).visit.id ==
                    visit);
    }
    void makeOther() const { valueOf(Store::create(inFolder("other.hearth"), sampleFirm(), clock)); }
};

TEST_F(WhileOpen, aStoreThatIsDeletedIsMissedAndCanBeBackedUp) {
    fs::remove(path());
    EXPECT_EQ(errorOf(layPipes(*store, visit)), ErrorCode::StoreMoved);
    EXPECT_FALSE(fs::exists(path()));
    expectBackup();
}

TEST_F(WhileOpen, aStoreThatIsMovedAwayIsMissed) {
    fs::rename(path(), inFolder("moved.hearth"));
    EXPECT_EQ(errorOf(layPipes(*store, visit)), ErrorCode::StoreMoved);
    store.reset();
    EXPECT_EQ(problemsOf(inFolder("moved.hearth")), "");
    EXPECT_TRUE(valueOf(Store::open(inFolder("moved.hearth"), Access::Write, clock))->verify());
}

TEST_F(WhileOpen, aStoreThatAnotherTakesThePlaceOfIsNotWrittenInto) {
    makeOther();
    fs::rename(inFolder("other.hearth"), path());
    expectRescued();
}

// A file manager that copies over it keeps the file and changes what is in it.
TEST_F(WhileOpen, aStoreThatAnotherIsCopiedOverIsNotWrittenInto) {
    makeOther();
    const std::string other = hearth::testing::readFile(inFolder("other.hearth"));
    hearth::testing::writeFile(path(), other);
    for (int i = 0; i < 2; ++i) {  // and it stays refused
        EXPECT_EQ(errorOf(store->saveFirm(sampleFirm())), ErrorCode::StoreMoved);
        EXPECT_EQ(errorOf(store->undo()), ErrorCode::StoreMoved);
    }
    EXPECT_EQ(hearth::testing::readFile(path()), other);
    store.reset();
    EXPECT_EQ(problemsOf(path()), "");
}

}  // namespace
}  // namespace hearth::store

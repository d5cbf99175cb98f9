// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"

#include "tests/core/store/store_fixture.h"

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

class Backup : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
        static_cast<void>(issueOne(visit));
    }
    Sample sample;
    reg::VisitId visit;
};

TEST_F(Backup, isAStoreOfItsOwnWithEverything) {
    const fs::path target = inFolder("backup.hearth");
    valueOf(store->backUp(target));
    EXPECT_FALSE(fs::exists(target.string() + ".part"));
    const auto copy = valueOf(Store::open(target, Access::Write, clock));
    EXPECT_EQ(valueOf(copy->premises(sample.premises.id)), sample.premises);
    EXPECT_EQ(valueOf(copy->visitFile(visit)).entries, valueOf(store->visitFile(visit)).entries);
    EXPECT_EQ(valueOf(copy->records("")).size(), 1U);
    EXPECT_TRUE(copy->verify());
}

TEST_F(Backup, replacesAnOlderOneOnlyWhenItIsGood) {
    const fs::path target = inFolder("backup.hearth");
    valueOf(store->backUp(target));
    const std::string first = hearth::testing::readFile(target);
    static_cast<void>(issueOne(visit));
    valueOf(store->backUp(target));
    EXPECT_EQ(valueOf(valueOf(Store::open(target, Access::Read, clock))->records("")).size(), 2U);

    // A store whose record was altered is no backup: the older one stays.
    store.reset();
    ASSERT_EQ(sqlOn(path(), "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = x'00'"), "");
    reopen();
    const std::string second = hearth::testing::readFile(target);
    const auto refused = store->backUp(target);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BackupFailed);
    EXPECT_EQ(refused.error().details.at(0), target.string());
    EXPECT_NE(refused.error().details.at(1).find("record_altered"), std::string::npos);
    EXPECT_EQ(hearth::testing::readFile(target), second);
    EXPECT_FALSE(fs::exists(target.string() + ".part"));
}

TEST_F(Backup, isNotMadeOverTheStoreItself) {
    EXPECT_EQ(store->backUp(path()).error(),
              (Error{ErrorCode::BackupFailed, {path().string(), "same_file"}}));
    EXPECT_EQ(errorOf(store->backUp(path().parent_path() / "." / "firm.hearth")), ErrorCode::BackupFailed);
    EXPECT_TRUE(store->verify());
}

TEST_F(Backup, saysThatItCannotBeWritten) {
    EXPECT_EQ(errorOf(store->backUp(inFolder("no such folder") / "backup.hearth")), ErrorCode::BackupFailed);
}

TEST_F(Backup, isMadeOfAStoreThatIsOnlyRead) {
    store.reset();
    const auto reader = valueOf(Store::open(path(), Access::Read, clock));
    valueOf(reader->backUp(inFolder("backup.hearth")));
    EXPECT_TRUE(valueOf(Store::open(inFolder("backup.hearth"), Access::Read, clock))->verify());
}

}  // namespace
}  // namespace hearth::store

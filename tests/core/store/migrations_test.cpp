// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migrations.h"

#include "core/store/file_header.h"
#include "core/store/opening.h"
#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

/// The program of tomorrow: today's steps, and others behind them.
std::vector<Migration> stepsWith(std::vector<Migration> more) {
    std::vector<Migration> steps(shippedMigrations().begin(), shippedMigrations().end());
    steps.insert(steps.end(), more.begin(), more.end());
    return steps;
}

const Migration kNotes{3, "0003_notes",
                       "CREATE TABLE notes (id BLOB PRIMARY KEY NOT NULL, text TEXT NOT NULL) STRICT; "
                       "UPDATE store SET min_reader = 3;"};
const Migration kBroken{4, "0004_broken",
                        "CREATE TABLE more (x INTEGER) STRICT; INSERT INTO nowhere VALUES (1);"};
const Migration kOrphan{4, "0004_orphan", "DELETE FROM premises;"};

class Migrating : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);
        static_cast<void>(issueOne(valueOf(store->startVisit(sampleVisit(sample)))));
        store.reset();
    }
    [[nodiscard]] Result<Opened> openWith(const std::vector<Migration>& steps,
                                          Access access = Access::Write) const {
        return guarded([&] { return openFile(path(), access, clock, steps); });
    }
    [[nodiscard]] std::vector<fs::path> backups() const {
        std::vector<fs::path> found;
        for (const auto& entry : fs::directory_iterator(path().parent_path())) {
            if (entry.path().filename().string().find("-schema2-") != std::string::npos) {
                found.push_back(entry.path());
            }
        }
        return found;
    }

    Sample sample;
};

TEST_F(Migrating, theShippedStepsAreNumberedFromOne) {
    int number = 0;
    for (const auto& step : shippedMigrations()) {
        EXPECT_EQ(step.number, ++number);
        EXPECT_THAT(std::string(step.name), HasSubstr("000" + std::to_string(number)));
        EXPECT_EQ(std::string(step.sql),
                  hearth::testing::readFile(std::string(HEARTH_SOURCE_DIR) + "/resources/sql/" +
                                            std::string(step.name) + ".sql"));
    }
    EXPECT_EQ(number, newestSchema(shippedMigrations()));
}

TEST_F(Migrating, everyTableIsStrictAndKeyedByUuid) {
    EXPECT_EQ(
        askSql(path(),
               "SELECT group_concat(name) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' "
               "AND strict = 0 AND name NOT LIKE 'sqlite_%'"),
        "");
    EXPECT_EQ(askSql(path(), "PRAGMA application_id"), std::to_string(kApplicationId));
    EXPECT_EQ(askSql(path(), "PRAGMA user_version"), "2");
    EXPECT_EQ(askSql(path(), "SELECT hex(substr(id, 7, 1)) LIKE '7%' FROM premises"), "1");
}

TEST_F(Migrating, isNotDoneToAStoreOfToday) {
    const auto opened = openWith(stepsWith({}));
    ASSERT_TRUE(opened);
    EXPECT_TRUE(opened->migrationBackup.empty());
    EXPECT_TRUE(backups().empty());
}

TEST_F(Migrating, bringsAnOlderStoreUpToDateAfterAVerifiedBackup) {
    const std::string before = askSql(path(), "SELECT count(*) FROM changes");
    {
        const auto opened = openWith(stepsWith({kNotes}));
        ASSERT_TRUE(opened);
        EXPECT_EQ(schemaOf(*opened->db), 3);
        EXPECT_EQ(opened->db->number("SELECT count(*) FROM notes"), 0);
        EXPECT_EQ(opened->db->number("SELECT min_reader FROM store"), 3);
        EXPECT_EQ(opened->db->text("SELECT name || ' ' || sha256 FROM migrations WHERE number = 3"),
                  "0003_notes " + record::sha256(kNotes.sql));
        EXPECT_EQ(opened->db->text("SELECT count(*) || '' FROM changes"), before);
        ASSERT_EQ(backups(), std::vector<fs::path>{opened->migrationBackup});
    }
    EXPECT_EQ(backups().front().filename(), "firm-schema2-20261125T094600Z.hearth");
    const auto backup = valueOf(Store::open(backups().front(), Access::Read, clock));
    EXPECT_EQ(valueOf(backup->premises(sample.premises.id)), sample.premises);
    EXPECT_TRUE(backup->verify());
    EXPECT_EQ(errorOf(Store::open(path(), Access::WriteOrRead, clock)),
              ErrorCode::StoreNewer);  // today's program
}

TEST_F(Migrating, aStepThatFailsLeavesTheStoreAtTheStepBefore) {
    const auto refused = openWith(stepsWith({kNotes, kBroken}));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::StoreFailed);
    EXPECT_EQ(askSql(path(), "PRAGMA user_version"), "3");
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM sqlite_schema WHERE name = 'more'"), "0");
    EXPECT_EQ(askSql(path(), "SELECT max(number) FROM migrations"), "3");
    EXPECT_EQ(backups().size(), 1U);
    EXPECT_TRUE(openWith(stepsWith({kNotes})));
}

TEST_F(Migrating, aStepThatLeavesOrphansFails) {
    EXPECT_EQ(errorOf(openWith(stepsWith({kNotes, kOrphan}))), ErrorCode::StoreFailed);
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM premises"), "1");
}

TEST_F(Migrating, whatWasAppliedMustBeWhatTheProgramHolds) {
    const auto steps = stepsWith({kNotes});
    ASSERT_TRUE(openWith(steps));
    auto edited = steps;
    edited.back().sql = "CREATE TABLE notes (other TEXT) STRICT;";
    const std::string before = hearth::testing::readFile(path());
    EXPECT_EQ(openWith(edited).error(), (Error{ErrorCode::MigrationChanged, {"3"}}));
    EXPECT_EQ(hearth::testing::readFile(path()), before);
}

TEST_F(Migrating, isNotDoneWithoutABackup) {
    // A folder by the backup's name is in its way.
    const fs::path part = path().parent_path() / "firm-schema2-20261125T094600Z.hearth.part";
    fs::create_directories(part / "in the way");
    const std::string before = hearth::testing::readFile(path());
    EXPECT_EQ(errorOf(openWith(stepsWith({kNotes}))), ErrorCode::BackupFailed);
    EXPECT_EQ(hearth::testing::readFile(path()), before);
}

TEST_F(Migrating, anOlderStoreIsNotBroughtUpToDateByAReader) {
    const std::string before = hearth::testing::readFile(path());
    EXPECT_EQ(errorOf(openWith(stepsWith({kNotes}), Access::Read)), ErrorCode::StoreReadOnly);
    EXPECT_EQ(hearth::testing::readFile(path()), before);
    EXPECT_TRUE(backups().empty());
}

}  // namespace
}  // namespace hearth::store

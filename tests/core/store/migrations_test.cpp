// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migrations.h"

#include "core/store/file_header.h"
#include "core/store/opening.h"
#include "tests/core/store/store_fixture.h"

#include <fstream>
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

/// Today's schema, and the next one.
int today() {
    return newestSchema(shippedMigrations());
}
int next() {
    return today() + 1;
}

const Migration kNotes{next(), "9998_notes",
                       "CREATE TABLE notes (id BLOB PRIMARY KEY NOT NULL, text TEXT NOT NULL) STRICT; "
                       "UPDATE store SET min_reader = 9998;"};
const Migration kBroken{next() + 1, "9999_broken",
                        "CREATE TABLE more (x INTEGER) STRICT; INSERT INTO nowhere VALUES (1);"};
const Migration kOrphan{next() + 1, "9999_orphan", "DELETE FROM premises;"};

std::string backupName() {
    return "firm-schema" + std::to_string(today()) + "-20261125T094600Z.hearth";
}

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
            if (entry.path().filename().string().find("-schema" + std::to_string(today()) + "-") !=
                std::string::npos) {
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
        EXPECT_THAT(std::string(step.name), HasSubstr(std::string(number < 10 ? "000" : "00") + std::to_string(number)));
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
    EXPECT_EQ(askSql(path(), "PRAGMA user_version"), std::to_string(today()));
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
        EXPECT_EQ(schemaOf(*opened->db), next());
        EXPECT_EQ(opened->db->number("SELECT count(*) FROM notes"), 0);
        EXPECT_EQ(opened->db->number("SELECT min_reader FROM store"), 9998);
        EXPECT_EQ(
            opened->db->text("SELECT name || ' ' || sha256 FROM migrations ORDER BY number DESC LIMIT 1"),
            "9998_notes " + record::sha256(kNotes.sql));
        EXPECT_EQ(opened->db->text("SELECT count(*) || '' FROM changes"), before);
        ASSERT_EQ(backups(), std::vector<fs::path>{opened->migrationBackup});
    }
    EXPECT_EQ(backups().front().filename(), backupName());
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
    EXPECT_EQ(askSql(path(), "PRAGMA user_version"), std::to_string(next()));
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM sqlite_schema WHERE name = 'more'"), "0");
    EXPECT_EQ(askSql(path(), "SELECT max(number) FROM migrations"), std::to_string(next()));
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
    EXPECT_EQ(openWith(edited).error(), (Error{ErrorCode::MigrationChanged, {std::to_string(next())}}));
    EXPECT_EQ(hearth::testing::readFile(path()), before);
}

TEST_F(Migrating, isNotDoneWithoutABackup) {
    // A folder by the backup's name is in its way.
    const fs::path part = path().parent_path() / (backupName() + ".part");
    fs::create_directories(part / "in the way");
    const std::string before = hearth::testing::readFile(path());
    EXPECT_EQ(errorOf(openWith(stepsWith({kNotes}))), ErrorCode::BackupFailed);
    EXPECT_EQ(hearth::testing::readFile(path()), before);
}

TEST_F(Migrating, anOlderStoreIsNotBroughtUpToDateByAReader) {
    const std::string before = hearth::testing::readFile(path());
    EXPECT_EQ(errorOf(openWith(stepsWith({kNotes}), Access::Read)), ErrorCode::StoreOlder);
    EXPECT_EQ(hearth::testing::readFile(path()), before);
    EXPECT_TRUE(backups().empty());
}

/// A store as the program made it when `newest` was its newest schema.
void makeOld(const fs::path& path, int newest) {
    std::string sql = "PRAGMA application_id = " + std::to_string(kApplicationId) + "; BEGIN;";
    for (const auto& step : shippedMigrations()) {
        if (step.number <= newest) {
            sql.append(step.sql);
            sql += "INSERT INTO migrations VALUES (" + std::to_string(step.number) + ", '" +
                   std::string(step.name) + "', '" + record::sha256(step.sql) +
                   "', '2026-11-25T09:46:00.000Z', '0.1.0');";
        }
    }
    sql +=
        "INSERT INTO store (id, created_at, min_reader) VALUES (randomblob(16), '2026-11-25T09:46:00.000Z', "
        "1);"
        "INSERT INTO firm (id, name, line1, line2, town, postcode, registration_number, telephone, email, "
        "country, language, demonstration) SELECT id, 'Ember', '', '', '', '', '', '', '', 'england', 'en', "
        "0 "
        "FROM store; PRAGMA user_version = " +
        std::to_string(newest) + "; COMMIT;";
    std::ofstream(path).close();
    ASSERT_EQ(sqlOn(path, sql), "");
}

// Schema 2 had one entry for each subject and item, and a log without premises or seals.
TEST_F(Migrating, fromSchemaTwoTheLogLearnsWhatBelongsWhere) {
    const auto old = inFolder("old.hearth");
    makeOld(old, 2);
    const std::string rows =
        "INSERT INTO premises (id, line1, line2, town, postcode, country, access_notes) "
        "VALUES (x'01020304050607080910111213141516', '1 Kiln Lane', '', 'Ashwick', '', 'wales', '');"
        "INSERT INTO installations SELECT x'02020304050607080910111213141516', id, 'natural_gas', '', '', "
        "'', "
        "'', '', '', '', '', '', '', '', '', '', '', 'not_said', 'not_said', '' FROM premises;"
        "INSERT INTO changes (id, position, group_id, store, table_name, row_id, field, before, after, by, "
        "at) "
        "VALUES (randomblob(16), 1, randomblob(16), randomblob(16), 'installations', "
        "'02020304-0506-0708-0910-111213141516', 'meter_serial', '', 'E1', 'Tamsin', "
        "'2026-11-25T09:46:00.000Z'), "
        "(randomblob(16), 2, randomblob(16), randomblob(16), 'roles', "
        "'a2020304-0506-0708-0910-111213141516', "
        "'premises', '01020304-0506-0708-0910-111213141516', NULL, 'Tamsin', '2026-11-25T09:46:00.000Z'), "
        "(randomblob(16), 3, randomblob(16), randomblob(16), 'parties', "
        "'b2020304-0506-0708-0910-111213141516', 'name', 'Nell', 'Nella', 'Tamsin', "
        "'2026-11-25T09:46:00.000Z');";
    ASSERT_EQ(sqlOn(old, rows), "");
    const auto opened = valueOf(Store::open(old, Access::Write, clock));
    const reg::PremisesId premises{*uuidFromText("01020304-0506-0708-0910-111213141516")};
    const auto page = valueOf(opened->changesOfPremises(premises));
    ASSERT_EQ(page.lines.size(), 2U);
    EXPECT_EQ(page.lines[0].table, "roles");  // a role that is gone
    EXPECT_EQ(page.lines[1].after, std::optional<std::string>("E1"));
    EXPECT_EQ(errorOf(opened->verify()), ErrorCode::ChangeLogBroken);  // nothing is sealed yet
    valueOf(opened->saveSetting("told", "yes"));
    EXPECT_TRUE(opened->verify());
    EXPECT_EQ(askSql(old, "SELECT count(*) || ' ' || max(position) FROM change_seals"), "1 4");
}

// Each schema that ever left the house becomes the same as a fresh one.
TEST_F(Migrating, everyOlderSchemaBecomesTodays) {
    const std::string schema =
        "SELECT group_concat(sql, '; ') FROM (SELECT sql FROM sqlite_schema ORDER BY type, name)";
    for (int newest = 1; newest < today(); ++newest) {
        const auto old = inFolder("schema" + std::to_string(newest) + ".hearth");
        makeOld(old, newest);
        static_cast<void>(valueOf(Store::open(old, Access::Write, clock)));
        EXPECT_EQ(askSql(old, schema), askSql(path(), schema)) << newest;
        EXPECT_EQ(valueOf(Store::inspect(old)).schema, today());
    }
}

}  // namespace
}  // namespace hearth::store

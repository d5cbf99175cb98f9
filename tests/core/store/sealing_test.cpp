// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sealing.h"

#include "core/store/opening.h"
#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

class Sealing : public KeptTest {
  protected:
    void SetUp() override {
        KeptTest::SetUp();
        store->actAs("Tamsin");
        for (const char* street : {"2 Kiln Lane", "3 Kiln Lane", "4 Kiln Lane"}) {
            clock.advance(std::chrono::minutes(1));
            sample.premises.address.line1 = street;
            valueOf(store->save(sample.premises));
        }
    }
    /// Somebody with another program, who switches our triggers off first.
    void tamper(const std::string& sql) {
        store.reset();
        ASSERT_EQ(sqlOn(path(),
                        "DROP TRIGGER changes_stay; DROP TRIGGER changes_are_kept; DROP TRIGGER "
                        "change_seals_stay; DROP TRIGGER change_seals_are_kept; " +
                            sql),
                  "");
        store = valueOf(Store::open(path(), Access::Write, clock));
    }
    [[nodiscard]] std::string brokenAt() const {
        const auto verdict = store->verify();
        return verdict || verdict.error().code != ErrorCode::ChangeLogBroken
                   ? "whole"
                   : verdict.error().details.front();
    }
    /// Position of the line about that street.
    [[nodiscard]] std::string lineOf(const std::string& street) const {
        return askSql(path(), "SELECT position FROM changes WHERE after = '" + street + "'");
    }
};

TEST_F(Sealing, everyActionEndsWithItsSeal) {
    EXPECT_EQ(askSql(path(), "SELECT count(DISTINCT group_id) FROM changes"),
              askSql(path(), "SELECT count(*) FROM change_seals"));
    EXPECT_EQ(askSql(path(), "SELECT max(position) FROM changes"),
              askSql(path(), "SELECT max(position) FROM change_seals"));
    EXPECT_TRUE(store->verify());
    EXPECT_TRUE(valueOf(Store::inspect(path())).chain);
}

// By a program of another language that knows only the form that sealing.h tells.
TEST_F(Sealing, agreesWithAnotherProgram) {
    valueOf(store->undo());
    const std::string check =
        std::string("python3 ") + HEARTH_SOURCE_DIR + "/tests/core/store/check_seals.py " + path().string();
    EXPECT_EQ(hearth::testing::runCommand(check).text,
              "whole: " + askSql(path(), "SELECT count(*) FROM changes") + " lines\n");
    tamper("UPDATE changes SET by = 'somebody' WHERE after = '3 Kiln Lane'");
    EXPECT_EQ(hearth::testing::runCommand(check).text, "broken: " + lineOf("3 Kiln Lane") + "\n");
}

TEST_F(Sealing, namesTheFirstLineThatWasAltered) {
    for (const char* change : {"before = '9'", "before = NULL", "after = after || ' '", "by = ''",
                               "at = '2026-11-25T09:46:00.001Z'", "field = 'line2'", "table_name = 'parties'",
                               "row_id = 'x'", "premises = NULL", "visit = id", "group_id = id", "store = id",
                               "salt = randomblob(16)", "salt = NULL", "texts = ''"}) {
        const std::string whole = (store.reset(), hearth::testing::readFile(path()));
        store = valueOf(Store::open(path(), Access::Write, clock));
        const std::string line = lineOf("3 Kiln Lane");
        tamper(std::string("UPDATE changes SET ") + change + " WHERE position = " + line);
        EXPECT_EQ(brokenAt(), line) << change;
        EXPECT_EQ(errorOf(valueOf(Store::inspect(path())).chain), ErrorCode::ChangeLogBroken);
        store.reset();
        hearth::testing::writeFile(path(), whole);
        store = valueOf(Store::open(path(), Access::Write, clock));
        EXPECT_TRUE(store->verify());
    }
}

TEST_F(Sealing, aLineTakenOutOrPutInIsFound) {
    const std::string line = lineOf("3 Kiln Lane");
    const std::string next = lineOf("4 Kiln Lane");
    tamper("DELETE FROM changes WHERE position = " + line);
    EXPECT_EQ(brokenAt(), next);  // the first that is not as sealed
}

TEST_F(Sealing, anEndCutOffWithoutItsSealIsFound) {
    const std::string last = lineOf("4 Kiln Lane");
    tamper("DELETE FROM changes WHERE position = " + last);
    EXPECT_EQ(brokenAt(), last);
}

TEST_F(Sealing, aLineAfterTheLastSealIsFound) {
    const std::string last = lineOf("4 Kiln Lane");
    tamper("DELETE FROM change_seals WHERE position = " + last);
    EXPECT_EQ(brokenAt(), last);
}

TEST_F(Sealing, aSealThatWasMadeAnewBreaksTheNext) {
    const std::string line = lineOf("3 Kiln Lane");
    tamper("DELETE FROM change_seals WHERE position = " + line);
    EXPECT_EQ(brokenAt(), line);
}

TEST_F(Sealing, theLogIsNeverChangedThroughTheStoresOwnTriggers) {
    store.reset();
    const std::string line = askSql(path(), "SELECT max(position) FROM changes");
    for (const std::string change :
         {"after = '9'", "before = NULL, after = NULL", "by = ''", "position = 9999",
          "before = NULL, after = NULL, salt = NULL, erased_at = 'x'",
          "after = NULL, salt = NULL, erased_at = 'x', texts = hex(zeroblob(32))"}) {
        EXPECT_NE(sqlOn(path(), "UPDATE changes SET " + change + " WHERE position = " + line), "") << change;
    }
    EXPECT_NE(sqlOn(path(), "DELETE FROM changes WHERE position = " + line), "");
    EXPECT_NE(sqlOn(path(), "UPDATE change_seals SET digest = '' WHERE position = " + line), "");
}

TEST_F(Sealing, textsAreErasedByLawAndTheSealsHold) {
    store.reset();
    {
        auto opened = openFile(path(), Access::Write, clock, shippedMigrations());
        Session session{*opened.db, clock, {}, "office", {}};
        eraseTexts(session, "premises", sample.premises.id.text());
    }
    store = valueOf(Store::open(path(), Access::Write, clock));
    EXPECT_TRUE(store->verify());
    EXPECT_EQ(askSql(path(),
                     "SELECT count(*) FROM changes WHERE coalesce(after, '') || coalesce(before, '') LIKE "
                     "'%Kiln%' AND table_name = 'premises'"),
              "0");
    const auto log = valueOf(store->changes("premises", sample.premises.id.text()));
    ASSERT_FALSE(log.empty());
    EXPECT_EQ(log.back().field, "line1");
    EXPECT_EQ(log.back().after, std::nullopt);
    const std::string erased =
        askSql(path(), "SELECT max(position) FROM changes WHERE erased_at IS NOT NULL");
    tamper("UPDATE changes SET texts = hex(zeroblob(32)) WHERE position = " + erased);
    EXPECT_EQ(brokenAt(), erased);
}

}  // namespace
}  // namespace hearth::store

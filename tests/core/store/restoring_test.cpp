// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_name.h"
#include "core/store/backup_seal.h"
#include "core/store/backups.h"
#include "core/store/file_header.h"
#include "core/store/migrations.h"
#include "core/store/plain_file.h"
#include "tests/core/store/store_fixture.h"

#include <sodium.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using hearth::testing::readFile;
using hearth::testing::writeFile;
using std::chrono_literals::operator""h;

class Restoring : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
        static_cast<void>(issueOne(visit));
        backup = backUp();
        clock.advance(24h);
        changeName("Zofia Wiśniewska");  // after the backup
        static_cast<void>(issueOne(visit));
    }
    fs::path backUp() {
        const auto outcome = runBackup(valueOf(store->backupJob()));
        valueOf(store->noteBackup(outcome));
        return outcome.made;
    }
    void changeName(const std::string& name) {
        sample.customer.name = name;
        valueOf(store->save(sample.customer));
    }
    [[nodiscard]] std::string customer(const fs::path& file) {
        return valueOf(valueOf(Store::open(file, Access::Read, clock))->parties("")).front().name;
    }
    Result<Restored> restore(const fs::path& from, const std::string& passphrase = {}) {
        store.reset();
        return restoreBackup(from, passphrase, path(), clock);
    }

    Sample sample;
    reg::VisitId visit;
    fs::path backup;
};

TEST_F(Restoring, bringsTheBackupBackAndKeepsWhatStood) {
    const std::string before = customer(backup);
    const auto restored = valueOf(restore(backup));
    EXPECT_EQ(customer(path()), before);
    EXPECT_EQ(restored.before.filename().string(), "firm-before-restore-20261126T094600Z.hearth");
    EXPECT_EQ(customer(restored.before), "Zofia Wiśniewska");
    EXPECT_EQ(entriesOf(path().parent_path()).size(), 2U);  // the store and its backups, nothing half-made
    reopen();
    EXPECT_TRUE(store->verify());
    const auto state = valueOf(store->backupState());
    EXPECT_EQ(state.restoredFrom, backup.filename().string());
    EXPECT_EQ(state.restoredAt, clock.now());
    EXPECT_TRUE(state.hasChanged);  // a backup is due of what now is the store

    // And back again: nothing is ever lost by restoring.
    clock.advance(1h);
    valueOf(restore(restored.before));
    EXPECT_EQ(customer(path()), "Zofia Wiśniewska");
    EXPECT_EQ(valueOf(Store::inspect(path())).records, 2);
}

TEST_F(Restoring, beginsASeriesOfItsOwn) {
    const auto lost = valueOf(store->records("")).front().header.record;
    valueOf(restore(backup));
    reopen();
    static_cast<void>(issueOne(visit));
    const auto lines = valueOf(store->records(""));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_NE(lines.at(0).header.series, lines.at(1).header.series);
    for (const auto& line : lines) {
        EXPECT_NE(line.header.record, lost);  // that number was given out and is not given out twice
    }
    EXPECT_TRUE(store->verify());
}

TEST_F(Restoring, worksOnAComputerThatHasNoStoreYet) {
    const fs::path elsewhere = inFolder("other computer") / "data" / "firm.hearth";
    const auto restored = valueOf(restoreBackup(backup, "", elsewhere, clock));
    EXPECT_TRUE(restored.before.empty());
    EXPECT_EQ(customer(elsewhere), customer(backup));
    EXPECT_EQ(entriesOf(elsewhere.parent_path()).size(), 1U);
}

TEST_F(Restoring, opensASealedOneWithItsPassphrase) {
    const std::string passphrase = "kettle harbour violet";
    valueOf(store->setSealing(
        textOf(sealingFor(passphrase, {crypto_pwhash_OPSLIMIT_MIN, crypto_pwhash_MEMLIMIT_MIN}))));
    const fs::path sealed = backUp();
    changeName("Somebody");
    const std::string standing = [&] {
        store.reset();
        return readFile(path());
    }();
    EXPECT_EQ(errorOf(restore(sealed)), ErrorCode::PassphraseMissing);
    EXPECT_EQ(errorOf(restore(sealed, "kettle harbour violets")), ErrorCode::PassphraseWrong);
    EXPECT_EQ(readFile(path()), standing);
    valueOf(restore(sealed, passphrase));
    EXPECT_EQ(customer(path()), "Zofia Wiśniewska");
    EXPECT_FALSE(fs::exists(path().string() + ".restoring"));
}

TEST_F(Restoring, refusesWhatIsNotWholeAndTouchesNothing) {
    store.reset();
    const std::string standing = readFile(path());
    const auto names = entriesOf(backupFolderOf(path()));
    const std::string good = readFile(backup);
    const fs::path bad = inFolder("bad.hearth");
    const auto expectRefused = [&](const std::string& bytes, ErrorCode code) {
        writeFile(bad, bytes);
        const auto restored = restore(bad);
        ASSERT_FALSE(restored);
        EXPECT_EQ(codeText(restored.error().code), codeText(code));
        EXPECT_EQ(readFile(path()), standing);
        EXPECT_EQ(entriesOf(backupFolderOf(path())), names);
    };
    expectRefused("", ErrorCode::StoreNotOurs);
    expectRefused("no store at all", ErrorCode::StoreNotOurs);
    expectRefused(good.substr(0, good.size() / 2), ErrorCode::StoreDamaged);
    EXPECT_EQ(errorOf(restore(inFolder("none"))), ErrorCode::StoreMissing);

    writeFile(bad, good);
    ASSERT_EQ(sqlOn(bad, "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = x'00'"), "");
    expectRefused(readFile(bad), ErrorCode::RecordAltered);
    writeFile(bad, good);
    ASSERT_EQ(sqlOn(bad, "PRAGMA user_version = 999"), "");
    expectRefused(readFile(bad), ErrorCode::StoreNewer);
    EXPECT_EQ(errorOf(restore(path())), ErrorCode::RestoreFailed);
}

TEST_F(Restoring, isRefusedWhileSomebodyHasTheStoreOpen) {
    const auto refused = restoreBackup(backup, "", path(), clock);
    EXPECT_EQ(errorOf(refused), ErrorCode::StoreLocked);
    EXPECT_EQ(valueOf(store->parties("")).front().name, "Zofia Wiśniewska");
}

TEST_F(Restoring, keepsADamagedStoreByteForByte) {
    store.reset();
    std::string bytes = readFile(path());
    for (std::size_t i = 4096; i < bytes.size(); ++i) {
        bytes[i] = 'x';
    }
    writeFile(path(), bytes);
    writeFile(journalOf(path()), "left by a program that was killed");
    const auto restored = valueOf(restore(backup));
    EXPECT_EQ(restored.before.filename().string(), "firm-damaged-20261126T094600Z.hearth");
    EXPECT_EQ(readFile(restored.before), bytes);
    EXPECT_FALSE(fs::exists(journalOf(path())));  // it would be played back into the restored store
    EXPECT_EQ(customer(path()), customer(backup));
    reopen();
    EXPECT_TRUE(store->verify());
}

/// A store as the first version of the program made it.
void makeOldStore(const fs::path& path, const Clock& clock) {
    Connection db(path, Connection::Mode::ReadWrite);
    db.script("PRAGMA application_id = " + std::to_string(kApplicationId));
    applyMigrations(db, shippedMigrations().first(1), clock);
    db.script(
        "INSERT INTO store (id, created_at) VALUES (x'0123456789abcdef0123456789abcdef', '2025-01-01');"
        "INSERT INTO firm VALUES (x'0123456789abcdef0123456789abcdef', 'Old Firm', '', '', '', '', '', '', "
        "'',"
        "'england', 'en', 0)");
}

TEST_F(Restoring, bringsAnOlderStoreUpToDate) {
    const fs::path old = inFolder("old.hearth");
    makeOldStore(old, clock);
    const std::string bytes = readFile(old);
    const auto inside = valueOf(lookInside(old, "", path()));
    EXPECT_EQ(inside.schema, 1);
    EXPECT_EQ(inside.firm, "Old Firm");
    EXPECT_TRUE(inside.check);
    valueOf(restore(old));
    EXPECT_EQ(readFile(old), bytes);
    reopen();
    EXPECT_TRUE(store->migrationBackup().empty());  // it was brought up to date before it took the place
    EXPECT_EQ(valueOf(store->firm()).name, "Old Firm");
}

TEST_F(Restoring, lookingInsideChangesNothing) {
    const auto bytes = readFile(backup);
    const auto written = fs::last_write_time(backup);
    const auto inside = valueOf(lookInside(backup, "", path()));
    EXPECT_EQ(inside.firm, sampleFirm().name);
    EXPECT_FALSE(inside.demonstration);
    EXPECT_EQ(inside.premises, 1);
    EXPECT_EQ(inside.visits, 1);
    EXPECT_EQ(inside.records, 1);
    EXPECT_EQ(inside.newestVisit, sampleVisit(sample).date);
    EXPECT_TRUE(inside.check);
    ASSERT_TRUE(inside.lastChange);
    EXPECT_EQ(instantText(*inside.lastChange), "2026-11-25T09:46:00.000Z");
    EXPECT_EQ(readFile(backup), bytes);
    EXPECT_EQ(fs::last_write_time(backup), written);
    EXPECT_EQ(entriesOf(backup.parent_path()).size(), 1U);
}

TEST_F(Restoring, lookingInsideTellsWhatADamagedOneStillHolds) {
    const fs::path spoilt = inFolder("spoilt.hearth");
    writeFile(spoilt, readFile(backup));
    ASSERT_EQ(sqlOn(spoilt, "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = x'00'"), "");
    const auto inside = valueOf(lookInside(spoilt, "", path()));
    EXPECT_EQ(errorOf(inside.check), ErrorCode::RecordAltered);
    EXPECT_EQ(inside.firm, sampleFirm().name);
    writeFile(spoilt, "nothing of ours");
    EXPECT_EQ(errorOf(lookInside(spoilt, "", path())), ErrorCode::StoreNotOurs);
    EXPECT_EQ(errorOf(lookInside(inFolder("none"), "", path())), ErrorCode::StoreMissing);
}

// Every place of a store that was spoilt: looked into without a crash, and never restored as if it were
// whole, unless nothing of what it holds has changed.
TEST_F(Restoring, spoiltBytesNeverCrash) {
    store.reset();
    const std::string good = readFile(backup);
    const fs::path spoilt = inFolder("spoilt.hearth");
    std::uint64_t random = 4;
    for (int i = 0; i < rounds(60, 500); ++i) {
        random = random * 6364136223846793005ULL + 1442695040888963407ULL;
        std::string bytes = good;
        const std::size_t place = (random >> 20U) % bytes.size();
        if (i % 4 == 0) {
            bytes.resize(place);
        } else {
            bytes = withFlippedBit(std::move(bytes), place, static_cast<unsigned>(random % 8));
        }
        writeFile(spoilt, bytes);
        static_cast<void>(lookInside(spoilt, "", path()));
        static_cast<void>(restore(spoilt));
        EXPECT_TRUE(valueOf(Store::open(path(), Access::Write, clock))->verify()) << place;
        clock.advance(1h);
    }
}

}  // namespace
}  // namespace hearth::store

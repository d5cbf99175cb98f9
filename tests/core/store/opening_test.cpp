// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/opening.h"

#include "core/store/migrations.h"
#include "tests/core/store/as_nobody.h"
#include "tests/core/store/store_fixture.h"

#include <QSqlDatabase>

#include <algorithm>
#include <sqlite3.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using hearth::testing::readFile;
using hearth::testing::writeFile;

/// Names of everything in the store's folder.
std::vector<std::string> namesIn(const fs::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder)) {
        names.push_back(entry.path().filename().string());
    }
    std::sort(names.begin(), names.end());
    return names;
}

class Opening : public StoreTest {
  protected:
    /// Opening fails with that, and neither the file nor its folder has changed by a byte.
    void expectRefused(const Error& expected, Access access = Access::Write) {
        const std::string before = readFile(path());
        const auto names = namesIn(path().parent_path());
        const auto modified = fs::last_write_time(path());
        const auto opened = Store::open(path(), access, clock);
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.error().code, expected.code);
        if (!expected.details.empty()) {
            EXPECT_EQ(opened.error(), expected);
        }
        EXPECT_EQ(readFile(path()), before);
        EXPECT_EQ(fs::last_write_time(path()), modified);
        EXPECT_EQ(namesIn(path().parent_path()), names);
    }
};

TEST_F(Opening, makesTheFolderAndOneFile) {
    const fs::path deep = inFolder("a") / "b" / "store.hearth";
    const auto made = valueOf(Store::create(deep, sampleFirm(), clock));
    EXPECT_EQ(valueOf(made->firm()), sampleFirm());
    EXPECT_EQ(made->path(), deep);
    EXPECT_FALSE(made->isReadOnly());
    EXPECT_TRUE(made->migrationBackup().empty());
    EXPECT_EQ(namesIn(deep.parent_path()), (std::vector<std::string>{"store.hearth", "store.hearth.lock"}));
}

TEST_F(Opening, neverWritesOverWhatIsThere) {
    store.reset();
    const std::string before = readFile(path());
    EXPECT_EQ(errorOf(Store::create(path(), sampleFirm(), clock)), ErrorCode::StoreFailed);
    EXPECT_EQ(readFile(path()), before);
}

TEST_F(Opening, saysThatAFolderCannotBeMade) {
    writeFile(inFolder("file"), "");
    EXPECT_EQ(errorOf(Store::create(inFolder("file") / "store.hearth", sampleFirm(), clock)),
              ErrorCode::StoreFolderUnusable);
}

TEST_F(Opening, saysThatThereIsNoStore) {
    EXPECT_EQ(errorOf(Store::open(inFolder("none"), Access::WriteOrRead, clock)), ErrorCode::StoreMissing);
    EXPECT_FALSE(fs::exists(inFolder("none")));
}

TEST_F(Opening, leavesAloneWhatIsNoStore) {
    store.reset();
    for (const std::string& bytes : {std::string(), std::string("a letter"), std::string(4096, 'x')}) {
        writeFile(path(), bytes);
        expectRefused({ErrorCode::StoreNotOurs, {path().string()}});
        expectRefused({ErrorCode::StoreNotOurs, {path().string()}}, Access::WriteOrRead);
    }
    EXPECT_EQ(errorOf(Store::open(path().parent_path(), Access::Write, clock)), ErrorCode::StoreNotOurs);
}

TEST_F(Opening, leavesAloneAnotherProgramsDatabase) {
    store.reset();
    fs::remove(path());
    writeFile(inFolder("empty"), "");
    fs::rename(inFolder("empty"), path());
    ASSERT_EQ(sqlOn(path(), "PRAGMA application_id = 7; CREATE TABLE notes (text)"), "");
    expectRefused({ErrorCode::StoreNotOurs, {path().string()}});
}

TEST_F(Opening, leavesANewerStoreAsItIs) {
    store.reset();
    const std::string ours = std::to_string(newestSchema(shippedMigrations()));
    const std::string theirs = std::to_string(newestSchema(shippedMigrations()) + 1);
    ASSERT_EQ(sqlOn(path(), "UPDATE store SET min_reader = " + theirs + "; PRAGMA user_version = " + theirs),
              "");
    const Error newer{ErrorCode::StoreNewer, {path().string(), theirs, ours}};
    expectRefused(newer);
    expectRefused(newer, Access::WriteOrRead);
    expectRefused(newer, Access::Read);
    writeFile(path().string() + "-journal", "left by a newer program that was killed");
    expectRefused(newer, Access::Read);
    EXPECT_EQ(errorOf(Store::inspect(path())), ErrorCode::StoreNewer);
}

TEST_F(Opening, readsANewerStoreThatAllowsItAndNeverWrites) {
    const Sample sample = putSample(*store);
    store.reset();
    const int theirs = newestSchema(shippedMigrations()) + 1;
    ASSERT_EQ(sqlOn(path(), "PRAGMA user_version = " + std::to_string(theirs)), "");  // min_reader is not
    const std::string before = readFile(path());
    EXPECT_EQ(errorOf(Store::open(path(), Access::Write, clock)), ErrorCode::StoreNewer);
    const auto reader = valueOf(Store::open(path(), Access::WriteOrRead, clock));
    EXPECT_TRUE(reader->isReadOnly());
    EXPECT_EQ(reader->whyReadOnly().code, ErrorCode::StoreNewer);
    EXPECT_EQ(valueOf(reader->premises(sample.premises.id)), sample.premises);
    EXPECT_EQ(errorOf(reader->save(sample.premises)), ErrorCode::StoreNewer);
    EXPECT_EQ(readFile(path()), before);
}

TEST_F(Opening, leavesADamagedStoreAsItIs) {
    static_cast<void>(putSample(*store));
    store.reset();
    const std::string whole = readFile(path());
    std::string cut = whole.substr(0, whole.size() / 2);
    writeFile(path(), cut);
    expectRefused({ErrorCode::StoreDamaged, {}});
    std::string overwritten = whole;
    overwritten.replace(4096, 8192, 8192, '\xA5');
    writeFile(path(), overwritten);
    expectRefused({ErrorCode::StoreDamaged, {}});
    std::string badHeader = whole;
    badHeader[16] = '\x03';  // a page size that no database has
    writeFile(path(), badHeader);
    expectRefused({ErrorCode::StoreDamaged, {}});
    std::string noSchema = whole;
    noSchema.replace(60, 4, 4, '\0');
    writeFile(path(), noSchema);
    expectRefused({ErrorCode::StoreDamaged, {}});
}

TEST_F(Opening, theSecondProgramReadsAndSaysWhoWrites) {
    const Sample sample = putSample(*store);
    const auto refused = Store::open(path(), Access::Write, clock);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::StoreLocked);
    EXPECT_EQ(refused.error().details.at(0), path().string());
    EXPECT_NE(refused.error().details.at(1).find(std::to_string(getpid())), std::string::npos);

    const auto second = valueOf(Store::open(path(), Access::WriteOrRead, clock));
    EXPECT_TRUE(second->isReadOnly());
    EXPECT_EQ(second->whyReadOnly(), refused.error());
    EXPECT_EQ(valueOf(second->premises(sample.premises.id)), sample.premises);
    EXPECT_EQ(errorOf(second->save(sample.premises)), ErrorCode::StoreLocked);
    EXPECT_EQ(errorOf(second->undo()), ErrorCode::StoreLocked);

    // What the first saves is seen by the second at once, and the second does not hold the first up.
    auto premises = sample.premises;
    premises.address.line1 = "9 Ford End";
    valueOf(store->save(premises));
    EXPECT_EQ(valueOf(second->premises(premises.id)), premises);
    store.reset();
    EXPECT_FALSE(valueOf(Store::open(path(), Access::Write, clock))->isReadOnly());
}

TEST_F(Opening, takesOverFromAProgramThatIsGone) {
    store.reset();
    const std::string lock = path().string() + ".lock";
    writeFile(lock, "999999999\nhearthledger\n" + readFile("/proc/sys/kernel/hostname"));
    reopen();
    EXPECT_FALSE(store->isReadOnly());
}

TEST_F(Opening, aReaderNeedsNoLock) {
    const auto reader = valueOf(Store::open(path(), Access::Read, clock));
    EXPECT_TRUE(reader->isReadOnly());
    EXPECT_EQ(reader->whyReadOnly().code, ErrorCode::StoreReadOnly);
    EXPECT_EQ(errorOf(reader->saveFirm(sampleFirm())), ErrorCode::StoreReadOnly);
}

// File permissions mean nothing to root, so somebody else tries.
TEST_F(Opening, aFileThatMayNotBeWrittenIsRead) {
    const Sample sample = putSample(*store);
    store.reset();
    fs::permissions(path().parent_path(), fs::perms(0777));
    fs::permissions(path(), fs::perms(0444));
    const std::string before = readFile(path());
    EXPECT_TRUE(asNobody([&] {
        const auto refused = Store::open(path(), Access::Write, clock);
        const auto opened = Store::open(path(), Access::WriteOrRead, clock);
        return !refused && refused.error() == Error{ErrorCode::StoreReadOnly, {path().string()}} && opened &&
               (*opened)->isReadOnly() && (*opened)->whyReadOnly().code == ErrorCode::StoreReadOnly &&
               (*opened)->premises(sample.premises.id) == sample.premises &&
               !(*opened)->saveFirm(sampleFirm());
    }));
    EXPECT_EQ(readFile(path()), before);
}

TEST_F(Opening, aStoreInAFolderThatMayNotBeWrittenIsRead) {
    const Sample sample = putSample(*store);
    store.reset();
    fs::permissions(path(), fs::perms(0666));
    fs::permissions(path().parent_path(), fs::perms(0555));
    EXPECT_TRUE(asNobody([&] {
        const auto opened = Store::open(path(), Access::WriteOrRead, clock);
        return opened && (*opened)->isReadOnly() &&
               (*opened)->whyReadOnly().code == ErrorCode::StoreReadOnly &&
               (*opened)->premises(sample.premises.id) == sample.premises;
    }));
    EXPECT_TRUE(asNobody([&] {
        const auto made = Store::create(inFolder("other.hearth"), sampleFirm(), clock);
        return !made && made.error().code == ErrorCode::StoreFolderUnusable;
    }));
    fs::permissions(path().parent_path(), fs::perms(0777));
}

TEST_F(Opening, leavesNoConnectionBehind) {
    store.reset();
    static_cast<void>(Store::open(path(), Access::Read, clock));
    static_cast<void>(Store::open(inFolder("none"), Access::Read, clock));
    for (const auto& descriptor : fs::directory_iterator("/proc/self/fd")) {
        std::error_code gone;  // the iterator's own
        EXPECT_NE(fs::read_symlink(descriptor.path(), gone).parent_path(), path().parent_path());
    }
    EXPECT_TRUE(QSqlDatabase::connectionNames().isEmpty());
}

// Two copies of SQLite in one process undo each other's locks ("How To Corrupt An SQLite Database File",
// section 2.2, sqlite.org/howtocorrupt.html): what the store runs must be the one that the tests link.
TEST(OneSqlite, isInTheProcess) {
    const hearth::testing::TempDir folder;
    const Connection connection(folder / "probe", Connection::Mode::ReadWrite);
    EXPECT_EQ(connection.text("SELECT sqlite_source_id()"), sqlite3_sourceid());
}

TEST(Settings, areThoseOfTheDesign) {
    const hearth::testing::TempDir folder;
    Connection db(folder / "probe", Connection::Mode::ReadWrite);
    EXPECT_EQ(db.text("PRAGMA journal_mode"), "delete");
    EXPECT_EQ(db.number("PRAGMA synchronous"), 3);  // EXTRA
    EXPECT_EQ(db.number("PRAGMA foreign_keys"), 1);
    EXPECT_EQ(db.number("PRAGMA recursive_triggers"), 1);
    EXPECT_EQ(db.number("PRAGMA trusted_schema"), 0);
    EXPECT_EQ(db.number("PRAGMA cell_size_check"), 1);
    EXPECT_EQ(db.number("PRAGMA busy_timeout"), 5000);
    EXPECT_THROW(db.run("SELECT \"no such column\""), Failure);
    db.script("CREATE TABLE t (x)");
    db.script("PRAGMA journal_mode = OFF");  // refused silently on a defensive connection
    EXPECT_EQ(db.text("PRAGMA journal_mode"), "delete");
    EXPECT_THROW(db.script("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = ''"), Failure);
}

}  // namespace
}  // namespace hearth::store

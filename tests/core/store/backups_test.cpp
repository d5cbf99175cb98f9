// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backups.h"

#include "core/store/backup_name.h"
#include "core/store/backup_seal.h"
#include "core/store/plain_file.h"
#include "tests/core/store/as_nobody.h"
#include "tests/core/store/store_fixture.h"

#include <sodium.h>
#include <thread>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using Occasion = BackupOccasion;
using std::chrono_literals::operator""h;

/// Cheap keys for a passphrase.
std::string cheapSealing(const std::string& passphrase) {
    return textOf(sealingFor(passphrase, {crypto_pwhash_OPSLIMIT_MIN, crypto_pwhash_MEMLIMIT_MIN}));
}

class BackupsOfAStore : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
        static_cast<void>(issueOne(visit));
        fs::create_directories(second);
    }
    /// What a program does: the job from the store, carried out, and noted.
    BackupOutcome backUp() {
        const auto outcome = runBackup(valueOf(store->backupJob()));
        valueOf(store->noteBackup(outcome));
        return outcome;
    }
    [[nodiscard]] bool isDue(Occasion occasion) { return valueOf(store->backupDue(occasion)).has_value(); }
    void change() {
        sample.customer.name += "a";
        valueOf(store->save(sample.customer));
    }
    [[nodiscard]] std::vector<std::string> namesOf(const fs::path& folder) {
        auto names = entriesOf(folder);
        std::sort(names.begin(), names.end());
        return names;
    }

    Sample sample;
    reg::VisitId visit;
    const fs::path second = inFolder("stick");
};

TEST_F(BackupsOfAStore, oneIsMadeBesideTheStoreAndRemembered) {
    const auto before = valueOf(store->backupState());
    EXPECT_FALSE(before.lastAt);
    EXPECT_TRUE(before.hasChanged);
    EXPECT_FALSE(before.isTroubled());

    const auto outcome = backUp();
    EXPECT_FALSE(outcome.failure);
    EXPECT_EQ(outcome.made.parent_path(), backupFolderOf(path()));
    EXPECT_EQ(outcome.made.filename().string(),
              "firm-backup-" + backupTagOf(path()) + "-20261125T094600Z.hearth");
    EXPECT_EQ(namesOf(backupFolderOf(path())).size(), 1U);  // nothing half-made beside it
    EXPECT_EQ(fs::status(backupFolderOf(path())).permissions(), fs::perms::owner_all);

    reopen();
    const auto state = valueOf(store->backupState());
    EXPECT_EQ(state.lastAt, clock.now());
    EXPECT_EQ(state.last, outcome.made);
    EXPECT_FALSE(state.hasChanged);
    const auto inside = valueOf(lookInside(outcome.made, "", path()));
    EXPECT_TRUE(inside.check);
    EXPECT_EQ(inside.records, 1);
}

TEST_F(BackupsOfAStore, areDueWhenSomethingChanged) {
    EXPECT_TRUE(isDue(Occasion::Closing));
    EXPECT_TRUE(isDue(Occasion::DayGoesOn));  // never any yet
    static_cast<void>(backUp());
    for (const auto occasion : {Occasion::Closing, Occasion::DayGoesOn, Occasion::AfterMuch}) {
        EXPECT_FALSE(isDue(occasion));
    }
    clock.advance(25h);
    EXPECT_FALSE(isDue(Occasion::DayGoesOn));  // nothing to keep
    change();
    EXPECT_TRUE(isDue(Occasion::DayGoesOn));
    static_cast<void>(backUp());
    change();
    EXPECT_FALSE(isDue(Occasion::DayGoesOn));  // not every minute
    EXPECT_TRUE(isDue(Occasion::Closing));
    EXPECT_TRUE(isDue(Occasion::AfterMuch));
    clock.set(clock.now() - 240h);
    EXPECT_TRUE(isDue(Occasion::DayGoesOn));  // a clock that was set back stops nothing
}

TEST_F(BackupsOfAStore, everyKindOfChangeCounts) {
    const std::pair<const char*, std::function<void()>> changes[] = {
        {"entry",
         [&] {
             valueOf(store->saveEntry(testEntry(valueOf(store->visitFile(visit)), reg::Item::TightStart,
                                                "20.7", quantity::UnitCode::Millibar)));
         }},
        {"undo", [&] { EXPECT_TRUE(valueOf(store->undo())); }},
        {"record", [&] { static_cast<void>(issueOne(visit)); }},
        {"event",
         [&] { valueOf(store->noteEvent(valueOf(store->recordsOf(visit)).front().id, "printed", "")); }},
        {"key", [&] { valueOf(store->makeSigningKey("quiet lamp under stairs")); }},
        {"signature",
         [&] {
             store->signWith(valueOf(store->openSigningKey("quiet lamp under stairs")));
             EXPECT_EQ(valueOf(store->signWaiting(1)), 1);
             store->signWith(std::nullopt);
         }},
        {"rule",
         [&] {
             valueOf(store->save(rulebook::FirmEntry{
                 {rulebook::Rule::NoMovementElectronic, {}, {}},
                 quantity::Figure{valueOf(quantity::Decimal::parse("0.20")), quantity::UnitCode::Millibar},
                 "Tamsin Ember",
                 calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)},
                 "own copy"}));
         }},
    };
    for (const auto& [name, make] : changes) {
        static_cast<void>(backUp());
        clock.advance(1h);
        make();
        EXPECT_TRUE(isDue(Occasion::Closing)) << name;
    }
}

TEST_F(BackupsOfAStore, oneThatWasRemovedIsMadeAnew) {
    fs::remove(backUp().made);
    EXPECT_TRUE(isDue(Occasion::Closing));
}

TEST_F(BackupsOfAStore, aDemonstrationNeedsNone) {
    store.reset();
    auto firm = sampleFirm();
    firm.demonstration = true;
    store = valueOf(Store::create(inFolder("demo.hearth"), firm, clock));
    EXPECT_FALSE(isDue(Occasion::Closing));
    EXPECT_FALSE(backUp().failure);  // by hand it can be had
}

TEST_F(BackupsOfAStore, theOldestAreLetGoOfInBothFolders) {
    valueOf(store->setSecondFolder(second));
    hearth::testing::writeFile(second / "firm-backup-000000-20200101T000000Z.hearth", "another's");
    for (int day = 0; day < 10; ++day) {
        change();
        static_cast<void>(backUp());
        clock.advance(24h);
    }
    // 25 November to 4 December 2026: seven days, the Sunday before (29 November is among the days), 30
    // November for its month, and the Wednesday that began it is no end of anything.
    EXPECT_EQ(namesOf(backupFolderOf(path())).size(), 7U);
    EXPECT_EQ(namesOf(second).size(), 8U);
    EXPECT_TRUE(fs::exists(second / "firm-backup-000000-20200101T000000Z.hearth"));
}

TEST_F(BackupsOfAStore, theSecondFolderHasTheSameBytes) {
    valueOf(store->setSecondFolder(second));
    const auto outcome = backUp();
    EXPECT_EQ(outcome.copied, second / outcome.made.filename());
    EXPECT_EQ(hearth::testing::readFile(outcome.copied), hearth::testing::readFile(outcome.made));
    EXPECT_EQ(valueOf(store->backupState()).secondAt, clock.now());
}

TEST_F(BackupsOfAStore, aSecondFolderThatIsGoneIsSaidAndTheFirstCounts) {
    valueOf(store->setSecondFolder(second));
    fs::remove_all(second);
    const auto outcome = backUp();
    EXPECT_FALSE(outcome.failure);
    EXPECT_FALSE(outcome.made.empty());
    const Error missing{ErrorCode::BackupFolderMissing, {second.string()}};
    EXPECT_EQ(outcome.secondFailure, missing);
    EXPECT_FALSE(fs::exists(second));  // not made: the stick would be hidden behind it
    reopen();
    auto state = valueOf(store->backupState());
    EXPECT_EQ(state.secondFailure, missing);
    EXPECT_TRUE(state.isTroubled());
    EXPECT_FALSE(state.hasChanged);

    // The stick is back: it gets the copy that it lacks, and all is well.
    fs::create_directories(second);
    const auto job = valueOf(store->backupDue(Occasion::DayGoesOn));
    ASSERT_TRUE(job);
    EXPECT_EQ(job->copyOnly, outcome.made);
    valueOf(store->noteBackup(runBackup(*job)));
    state = valueOf(store->backupState());
    EXPECT_FALSE(state.isTroubled());
    EXPECT_EQ(state.last, outcome.made);
    EXPECT_EQ(namesOf(second).size(), 1U);
    EXPECT_FALSE(isDue(Occasion::Closing));
}

TEST_F(BackupsOfAStore, aFolderThatCannotBeUsedIsRefusedWhenItIsChosen) {
    EXPECT_EQ(errorOf(store->setSecondFolder(inFolder("none"))), ErrorCode::BackupFolderMissing);
    static_cast<void>(backUp());
    EXPECT_EQ(store->setSecondFolder(backupFolderOf(path())).error(),
              (Error{ErrorCode::BackupNotCopied, {backupFolderOf(path()).string(), "same_folder"}}));
    EXPECT_TRUE(valueOf(store->backupState()).secondFolder.empty());
}

TEST_F(BackupsOfAStore, aDamagedStoreIsSaidAndPushesNothingOut) {
    const auto good = backUp();
    store.reset();
    ASSERT_EQ(sqlOn(path(), "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = x'00'"), "");
    reopen();
    change();
    const auto outcome = backUp();
    ASSERT_TRUE(outcome.failure);
    EXPECT_EQ(outcome.failure->code, ErrorCode::BackupSourceDamaged);
    EXPECT_EQ(outcome.failure->details.at(0), path().string());
    EXPECT_EQ(namesOf(backupFolderOf(path())), std::vector<std::string>{good.made.filename().string()});
    reopen();
    const auto state = valueOf(store->backupState());
    EXPECT_EQ(state.failure, outcome.failure);
    EXPECT_EQ(state.last, good.made);
    EXPECT_TRUE(isDue(Occasion::Closing));
    EXPECT_FALSE(isDue(Occasion::DayGoesOn));  // not every quarter of an hour
    clock.advance(1h);
    EXPECT_TRUE(isDue(Occasion::DayGoesOn));
}

TEST_F(BackupsOfAStore, anAttachmentThatWasAlteredIsFound) {
    static_cast<void>(
        valueOf(store->attach({"visits", visit.bytes, "flue.jpg", "image/jpeg", "picture", "", false, ""})));
    EXPECT_FALSE(backUp().failure);
    store.reset();
    ASSERT_EQ(sqlOn(path(), "UPDATE attachment_bytes SET bytes = x'00'"), "");
    reopen();
    const auto outcome = runBackup(valueOf(store->backupJob()));
    ASSERT_TRUE(outcome.failure);
    EXPECT_EQ(outcome.failure->details.at(1), "flue.jpg");
}

TEST_F(BackupsOfAStore, aRowThatBelongsToNothingIsFound) {
    store.reset();
    ASSERT_EQ(sqlOn(path(), "PRAGMA foreign_keys = OFF; DELETE FROM premises"), "");
    reopen();
    EXPECT_TRUE(runBackup(valueOf(store->backupJob())).failure);
}

TEST_F(BackupsOfAStore, aReaderMakesOneButLeavesTheNotes) {
    store.reset();
    store = valueOf(Store::open(path(), Access::Read, clock));
    const auto outcome = runBackup(valueOf(store->backupJob()));
    EXPECT_FALSE(outcome.failure);
    EXPECT_EQ(errorOf(store->noteBackup(outcome)), ErrorCode::StoreReadOnly);
    EXPECT_FALSE(isDue(Occasion::Closing));
    EXPECT_EQ(errorOf(store->setSecondFolder(second)), ErrorCode::StoreReadOnly);
}

TEST_F(BackupsOfAStore, aFailureIsSeenThoughTheStoreCannotNoteIt) {
    store.reset();
    store = valueOf(Store::open(path(), Access::Read, clock));
    BackupOutcome outcome;
    outcome.at = clock.now();
    outcome.failure = Error{ErrorCode::BackupFolderFull, {"/x"}};
    EXPECT_FALSE(store->noteBackup(outcome));
    EXPECT_EQ(valueOf(store->backupState()).failure, outcome.failure);
}

TEST_F(BackupsOfAStore, oneIsMadeWhileAnotherThreadWorks) {
    const auto job = valueOf(store->backupJob());
    BackupOutcome outcome;
    std::thread copying([&] { outcome = runBackup(job); });
    for (int i = 0; i < 30; ++i) {
        change();
    }
    copying.join();
    EXPECT_FALSE(outcome.failure) << codeText(outcome.failure->code);
    valueOf(store->noteBackup(outcome));
    // Its mark is that of what it holds, not that of the moment when it is noted.
    const auto inside = valueOf(lookInside(outcome.made, "", path()));
    EXPECT_TRUE(inside.check);
    change();
    EXPECT_TRUE(valueOf(store->backupState()).hasChanged);
}

TEST_F(BackupsOfAStore, areSealedWithoutThePassphraseAndOpenedWithIt) {
    const std::string passphrase = "kettle harbour violet";
    valueOf(store->setSealing(cheapSealing(passphrase)));
    EXPECT_TRUE(valueOf(store->backupState()).isSealed);
    valueOf(store->setSecondFolder(second));
    const auto outcome = backUp();
    ASSERT_FALSE(outcome.failure);
    EXPECT_EQ(outcome.made.extension(), ".sealed");
    EXPECT_EQ(namesOf(backupFolderOf(path())).size(), 1U);  // no plain one beside it
    EXPECT_EQ(hearth::testing::readFile(outcome.copied), hearth::testing::readFile(outcome.made));
    EXPECT_EQ(hearth::testing::readFile(outcome.made).find("SQLite format"), std::string::npos);

    EXPECT_EQ(errorOf(lookInside(outcome.copied, "", path())), ErrorCode::PassphraseMissing);
    EXPECT_EQ(errorOf(lookInside(outcome.copied, "kettle harbour", path())), ErrorCode::PassphraseWrong);
    const auto inside = valueOf(lookInside(outcome.copied, passphrase, path()));
    EXPECT_TRUE(inside.check);
    EXPECT_EQ(inside.firm, sampleFirm().name);
    EXPECT_FALSE(fs::exists(path().string() + ".looking"));

    valueOf(store->setSealing(""));
    clock.advance(1h);
    EXPECT_EQ(backUp().made.extension(), ".hearth");
    EXPECT_EQ(errorOf(store->setSealing("nonsense")), ErrorCode::StoreFailed);
}

TEST_F(BackupsOfAStore, thePassphraseStandsNowhere) {
    const std::string passphrase = "kettle harbour violet";
    valueOf(store->setSealing(valueOf(makeSealing(passphrase))));
    static_cast<void>(backUp());
    store.reset();
    for (const auto& entry : fs::recursive_directory_iterator(path().parent_path())) {
        if (entry.is_regular_file()) {
            EXPECT_EQ(hearth::testing::readFile(entry.path()).find(passphrase), std::string::npos);
        }
    }
    EXPECT_EQ(errorOf(makeSealing("too short")), ErrorCode::PassphraseShort);
}

TEST_F(BackupsOfAStore, areListedNewestFirstWhereverTheyLie) {
    valueOf(store->setSecondFolder(second));
    const auto first = backUp();
    clock.advance(24h);
    change();
    const auto next = backUp();
    fs::remove(first.made);  // only its copy is left
    hearth::testing::writeFile(path().parent_path() / "firm-schema1-20261001T000000Z.hearth", "");
    hearth::testing::writeFile(second / "office-backup-000000-20260101T000000Z.hearth.sealed", "");
    hearth::testing::writeFile(second / "letters.odt", "");
    const auto found = findBackups(path(), second);
    ASSERT_EQ(found.size(), 4U);
    EXPECT_EQ(found.at(0).path, next.made);
    EXPECT_TRUE(found.at(0).isFromHere);
    EXPECT_EQ(found.at(1).path, first.copied);
    EXPECT_EQ(found.at(2).kind, BackupKind::BeforeMigration);
    EXPECT_TRUE(found.at(3).isSealed);
    EXPECT_FALSE(found.at(3).isFromHere);
    EXPECT_EQ(findBackups(inFolder("nowhere") / "firm.hearth").size(), 0U);
}

TEST_F(BackupsOfAStore, anyFileCanBeAskedAbout) {
    store.reset();
    const auto file = valueOf(backupFileAt(path()));
    EXPECT_EQ(file.kind, BackupKind::Regular);
    EXPECT_FALSE(file.isSealed);
    EXPECT_GT(file.size, 0U);
    EXPECT_EQ(errorOf(backupFileAt(inFolder("none"))), ErrorCode::StoreMissing);
}

}  // namespace
}  // namespace hearth::store

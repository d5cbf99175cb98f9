// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_name.h"

#include "tests/core/store/store_fixture.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>
#include <set>

namespace hearth::store {
namespace {

using ::testing::UnorderedElementsAre;

TEST(BackupName, isReadAsItIsWritten) {
    const std::string names[] = {
        "firm-backup-3f9a1c-20261125T094610Z.hearth",
        "firm-backup-3f9a1c-20261125T094610Z-2.hearth",
        "firm-backup-3f9a1c-20261125T094610Z.hearth.sealed",
        "firm-before-restore-20261125T094610Z.hearth",
        "firm-damaged-20261125T094610Z.hearth",
        "old-backup-abcdef-backup-3f9a1c-20261125T094610Z.hearth",
        "Ŵern-backup-3f9a1c-20240229T235959Z-999.hearth",
    };
    for (const auto& name : names) {
        const auto parsed = parseBackupName(name);
        ASSERT_TRUE(parsed) << name;
        EXPECT_EQ(textOf(*parsed), name);
    }
    const auto migration = parseBackupName("firm-schema12-20261125T094610Z.hearth");
    ASSERT_TRUE(migration);
    EXPECT_EQ(migration->kind, BackupKind::BeforeMigration);
    EXPECT_EQ(migration->stem, "firm");
    EXPECT_EQ(instantText(migration->madeAt), "2026-11-25T09:46:10.000Z");
}

TEST(BackupName, isNoOtherName) {
    const char* const names[] = {
        "",
        "firm.hearth",
        ".hearth",
        "backup-3f9a1c-20261125T094610Z.hearth",            // no store
        "-backup-3f9a1c-20261125T094610Z.hearth",           // no store
        "firm-backup-3f9a1-20261125T094610Z.hearth",        // a digit short
        "firm-backup-3f9a1C-20261125T094610Z.hearth",       // a capital
        "firm-backup-3f9a1c-20261131T094610Z.hearth",       // no such day
        "firm-backup-3f9a1c-20261125T250000Z.hearth",       // no such hour
        "firm-backup-3f9a1c-20261125T094610.hearth",        // no zone
        "firm-backup-3f9a1c-20261125T094610Z-1.hearth",     // the first has no count
        "firm-backup-3f9a1c-20261125T094610Z.hearth.part",  // in the making
        "firm-backup-3f9a1c-20261125T094610Z copy.hearth",  // somebody's copy
        "firm-backup-3f9a1c-20261125T094610Z.hearth.sealed.gz",
        "firm-before-restore-20261125T094610Z.hearth.sealed",  // never sealed
        "firm-schema-20261125T094610Z.hearth",
        "holiday photographs",
    };
    for (const char* name : names) {
        EXPECT_FALSE(parseBackupName(name)) << name;
    }
}

TEST(BackupTag, tellsStoresApartAndStaysWithThePlace) {
    EXPECT_EQ(backupTagOf("/a/firm.hearth"), backupTagOf("/a/../a/firm.hearth"));
    EXPECT_NE(backupTagOf("/a/firm.hearth"), backupTagOf("/b/firm.hearth"));
    EXPECT_EQ(backupTagOf("/a/firm.hearth").size(), 6U);
}

Instant at(const std::string& text) {
    Instant instant{};
    EXPECT_TRUE(parseInstant(text + ":00.000Z", instant)) << text;
    return instant;
}

std::string nameAt(Instant instant, const std::string& tag = "3f9a1c") {
    return textOf(BackupName{"firm", BackupKind::Regular, tag, instant, 1, false});
}

std::vector<std::string> kept(const std::vector<std::string>& names, Instant now) {
    const std::string newest = names.empty() ? "" : *std::max_element(names.begin(), names.end());
    const auto gone = backupsToLetGo(names, "firm", "3f9a1c", newest, now);
    std::vector<std::string> left;
    for (const auto& name : names) {
        if (std::find(gone.begin(), gone.end(), name) == gone.end()) {
            left.push_back(name);
        }
    }
    return left;
}

// A year and a half of working days, each with one backup in the evening, let go day by day as the program
// does.
TEST(Rotation, keepsSevenDaysFourWeeksAndTwelveMonths) {
    std::vector<std::string> names;
    const Instant first = at("2025-05-30T17:00");
    Instant now{};
    for (int day = 0; day < 545; ++day) {
        now = first + std::chrono::hours(24 * day);
        names.push_back(nameAt(now));
        names = kept(names, now);
    }
    EXPECT_EQ(instantText(now), "2026-11-25T17:00:00.000Z");
    std::vector<std::string> days;
    for (const auto& name : names) {
        days.push_back(name.substr(std::string("firm-backup-3f9a1c-").size(), 8));
    }
    // By hand: 25 November 2026 is a Wednesday. Seven days back to the 19th; the newest of the weeks before
    // it are Sundays (22nd, 15th, 8th); the newest of the eleven months before it are their last days.
    EXPECT_THAT(days, UnorderedElementsAre("20261125", "20261124", "20261123", "20261122", "20261121",
                                           "20261120", "20261119", "20261115", "20261108", "20261031",
                                           "20260930", "20260831", "20260731", "20260630", "20260531",
                                           "20260430", "20260331", "20260228", "20260131", "20251231"));
}

TEST(Rotation, keepsTheNewestOfADay) {
    const std::vector<std::string> names{nameAt(at("2026-11-25T08:00")), nameAt(at("2026-11-25T12:00")),
                                         nameAt(at("2026-11-25T17:00"))};
    EXPECT_THAT(kept(names, at("2026-11-25T18:00")), UnorderedElementsAre(names.back()));
}

TEST(Rotation, lettingGoDoesNotTouchWhatIsNotOurs) {
    std::vector<std::string> names{"firm-before-restore-20200101T000000Z.hearth",
                                   "firm-schema1-20200101T000000Z.hearth",
                                   "firm-damaged-20200101T000000Z.hearth",
                                   "other-backup-3f9a1c-20200101T000000Z.hearth",
                                   "firm-backup-000000-20200101T000000Z.hearth",
                                   "firm.hearth",
                                   "letters.odt"};
    const auto others = names;
    for (int day = 0; day < 100; ++day) {
        names.push_back(nameAt(at("2026-01-01T12:00") + std::chrono::hours(24 * day)));
    }
    const auto left = kept(names, at("2026-06-01T12:00"));
    for (const auto& other : others) {
        EXPECT_NE(std::find(left.begin(), left.end(), other), left.end()) << other;
    }
    EXPECT_LT(left.size(), names.size());
}

// A clock that was wrong once must not push the good ones out.
TEST(Rotation, doesNotCountTheFuture) {
    std::vector<std::string> names;
    for (int day = 0; day < 30; ++day) {
        names.push_back(nameAt(at("2036-01-01T12:00") + std::chrono::hours(24 * day)));
    }
    const std::string yesterday = nameAt(at("2026-11-24T17:00"));
    const std::string today = nameAt(at("2026-11-25T17:00"));
    names.insert(names.end(), {yesterday, today});
    EXPECT_THAT(backupsToLetGo(names, "firm", "3f9a1c", today, at("2026-11-25T17:00")),
                UnorderedElementsAre());
}

/// A heap of backups of this store and others over some years, with a seed.
struct Heap {
    std::vector<std::string> names;
    Instant now;
};
Heap heapBy(unsigned seed) {
    std::mt19937 random(seed);
    const auto below = [&](unsigned end) { return static_cast<int>(random() % end); };
    Heap heap{{}, at("2026-11-25T17:00")};
    const int count = 1 + below(60);
    for (int i = 0; i < count; ++i) {
        const auto back = std::chrono::minutes(below(3) == 0 ? below(60 * 24 * 900) : below(60 * 24 * 20));
        heap.names.push_back(nameAt(heap.now - back + std::chrono::hours(below(10) == 0 ? 48 : 0),
                                    below(5) == 0 ? "000000" : "3f9a1c"));
    }
    std::sort(heap.names.begin(), heap.names.end());
    heap.names.erase(std::unique(heap.names.begin(), heap.names.end()), heap.names.end());
    return heap;
}

TEST(Rotation, holdsItsLaws) {
    for (unsigned seed = 1; seed <= 2000; ++seed) {
        const Heap heap = heapBy(seed);
        std::vector<std::string> past;
        for (const auto& name : heap.names) {
            const auto parsed = parseBackupName(name);
            if (parsed->tag == "3f9a1c" && parsed->madeAt <= heap.now) {
                past.push_back(name);
            }
        }
        std::shuffle(past.begin(), past.end(), std::mt19937(seed));
        const std::string just = past.empty() ? "" : past.front();
        const auto gone = backupsToLetGo(heap.names, "firm", "3f9a1c", just, heap.now);
        const std::set<std::string> goneSet(gone.begin(), gone.end());
        EXPECT_EQ(goneSet.size(), gone.size());
        EXPECT_EQ(goneSet.count(just), 0U);
        for (const auto& name : gone) {  // only ours, only from the past
            EXPECT_NE(std::find(past.begin(), past.end(), name), past.end()) << name;
        }
        if (!past.empty()) {
            EXPECT_EQ(goneSet.count(*std::max_element(past.begin(), past.end())), 0U) << seed;
        }
        EXPECT_LE(past.size() - gone.size(), 7U + 4U + 12U + 1U);
        // Done twice it does nothing more, and the order that a folder gives its names in does not matter.
        std::vector<std::string> left;
        for (const auto& name : heap.names) {
            if (goneSet.count(name) == 0) {
                left.push_back(name);
            }
        }
        EXPECT_TRUE(backupsToLetGo(left, "firm", "3f9a1c", just, heap.now).empty()) << seed;
        auto reversed = heap.names;
        std::reverse(reversed.begin(), reversed.end());
        const auto again = backupsToLetGo(reversed, "firm", "3f9a1c", just, heap.now);
        EXPECT_EQ(std::set<std::string>(again.begin(), again.end()), goneSet);
    }
}

}  // namespace
}  // namespace hearth::store

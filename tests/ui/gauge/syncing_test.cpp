// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/syncing.h"

#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"
#include "ui/gauge/journal.h"

#include <QElapsedTimer>
#include <QTest>

#include <atomic>
#include <gtest/gtest.h>
#include <mutex>

namespace hearth::ui::gauge {
namespace {

constexpr int kSyncWait = 20000;

QString folderText(const testing::TempDir& folder) {
    return QString::fromStdString(folder.path().string());
}

// The power can't be cut here; that the system was asked for the file's bytes, and that it said that they are
// on the disk, can be seen.
TEST(Syncing, PutsAJournalOntoTheDiskAfterEachFlush) {
    const testing::TempDir folder;
    const FixedClock clock = testing::fixedClock("2026-11-25", "09:46");
    const auto journal = Journal::begin(folderText(folder), {"Blue gauge", SourceKind::Serial, clock.now()});
    ASSERT_NE(journal, nullptr);
    exchange::LineReading line;
    line.value = quantity::Decimal(2050, 2);
    line.unit = quantity::UnitCode::Millibar;
    for (int i = 1; i <= 3; ++i) {
        journal->reading(std::chrono::milliseconds(100 * i), line);
        ASSERT_TRUE(journal->flush());
        const auto size = QFileInfo(journal->path()).size();
        EXPECT_TRUE(QTest::qWaitFor([&] { return journal->syncing().onDisk() == size; }, kSyncWait)) << i;
    }
}

// A disk that hangs: nothing waits for it, and what was asked meanwhile is done once.
TEST(Syncing, MakesNobodyWaitForASlowDisk) {
    const testing::TempDir folder;
    QFile file(folderText(folder) + QStringLiteral("/x"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const auto disk = std::make_shared<std::mutex>();
    const auto begun = std::make_shared<std::atomic<int>>(0);
    disk->lock();
    QElapsedTimer took;
    {
        Syncing syncing(file.handle(), folderText(folder), [disk, begun](int) {
            ++*begun;
            const std::lock_guard waits(*disk);
            return true;
        });
        syncing.ask();
        ASSERT_TRUE(QTest::qWaitFor([&] { return *begun == 1; }, kSyncWait));
        took.start();
        for (int i = 0; i < 1000; ++i) {
            syncing.ask();
        }
        EXPECT_LT(took.elapsed(), 1000);
        EXPECT_EQ(syncing.times(), 0);
        disk->unlock();
        ASSERT_TRUE(QTest::qWaitFor([&] { return syncing.times() == 2; }, kSyncWait));
        disk->lock();
        syncing.ask();
        ASSERT_TRUE(QTest::qWaitFor([&] { return *begun == 3; }, kSyncWait));
        took.restart();
    }
    EXPECT_LT(took.elapsed(), 1000) << "not at its end either";
    disk->unlock();
    EXPECT_EQ(*begun, 3) << "a thousand asked are one";
}

TEST(Syncing, SaysThatADiskRefuses) {
    const testing::TempDir folder;
    const FixedClock clock = testing::fixedClock("2026-11-25", "09:46");
    const auto journal = Journal::begin(folderText(folder), {"Blue gauge", SourceKind::Serial, clock.now()},
                                        {}, [](int) { return false; });
    ASSERT_NE(journal, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return journal->syncing().hasFailed(); }, kSyncWait));
    EXPECT_EQ(journal->syncing().onDisk(), 0);
    journal->mark({GaugeEvent::Timing, std::chrono::milliseconds(5)});
    EXPECT_FALSE(journal->flush()) << "so that it can be said";
}

}  // namespace
}  // namespace hearth::ui::gauge

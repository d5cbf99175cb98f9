// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/backup_runner.h"

#include "tests/ui/support/firm_bench.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

using hearth::testing::FirmBench;
using hearth::testing::need;

TEST(BackupRunner, makesOneBesideTheWorkAndKeepsWhatCameOfIt) {
    FirmBench bench;
    BackupRunner runner(*bench.store);
    QSignalSpy done(&runner, &BackupRunner::done);
    ASSERT_TRUE(runner.start(need(bench.store->backupJob())));
    EXPECT_TRUE(runner.isBusy());
    EXPECT_FALSE(runner.start(need(bench.store->backupJob()))) << "one at a time";
    static_cast<void>(bench.addPremises("14 Tallow Lane"));  // the work goes on
    ASSERT_TRUE(done.wait());
    EXPECT_FALSE(runner.isBusy());
    EXPECT_TRUE(need(bench.store->backupState()).lastAt);
}

TEST(BackupRunner, makesOneOnlyWhenItIsDue) {
    FirmBench bench;
    BackupRunner runner(*bench.store);
    ASSERT_TRUE(runner.startIfDue(store::BackupOccasion::Closing));
    runner.finish();
    EXPECT_FALSE(runner.startIfDue(store::BackupOccasion::Closing));
    static_cast<void>(bench.addPremises("14 Tallow Lane"));
    EXPECT_TRUE(runner.startIfDue(store::BackupOccasion::Closing));
}

TEST(BackupRunner, waitsForOneThatIsBeingMade) {
    FirmBench bench;
    {
        BackupRunner runner(*bench.store);
        ASSERT_TRUE(runner.start(need(bench.store->backupJob())));
    }
    EXPECT_TRUE(need(bench.store->backupState()).lastAt);
    BackupRunner runner(*bench.store);
    QSignalSpy done(&runner, &BackupRunner::done);
    ASSERT_TRUE(runner.start(need(bench.store->backupJob())));
    runner.finish();
    EXPECT_EQ(done.count(), 1);
    QApplication::processEvents();
    EXPECT_EQ(done.count(), 1) << "said once";
}

}  // namespace
}  // namespace hearth::ui::shell

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/files.h"
#include "ui/gauge/journal.h"

#include <QProcess>
#include <QTest>

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

TEST(Kill, LosesASecondOfARecordingAtMost) {
    for (const int after : {1700, 2450, 3100}) {
        const testing::TempDir folder;
        const auto path = QString::fromStdString(folder.path().string());
        QProcess driver;
        driver.start(QStringLiteral(HEARTH_RECORD_DRIVER), {path});
        ASSERT_TRUE(driver.waitForStarted());
        QTest::qWait(after);
        EXPECT_TRUE(leftJournals(path).empty()) << "it still lives";
        driver.kill();  // SIGKILL
        ASSERT_TRUE(driver.waitForFinished());
        const auto said = driver.readAllStandardOutput().split('\n');
        ASSERT_GT(said.size(), 5);
        const int last = said[said.size() - 2].toInt();

        ASSERT_EQ(leftJournals(path).size(), 2U);
        const auto left = leftRecordings(path, false, 5);
        ASSERT_EQ(left.size(), 1U) << "both gauges' are one recording";
        ASSERT_EQ(left[0].taken.beside.size(), 1U);
        for (const auto* trace : {&left[0].taken.trace, &left[0].taken.beside[0].trace}) {
            EXPECT_GE(static_cast<int>(trace->size()), last - 10) << "ten a second";
            for (std::size_t i = 0; i < trace->size(); ++i) {
                EXPECT_NEAR((*trace)[i].pressure.in(quantity::kMillibar), 0.01 * static_cast<double>(i + 1),
                            1e-9);
            }
        }
        std::printf("killed after %d ms: %d readings taken, %zu and %zu on the disk\n", after, last,
                    left[0].taken.trace.size(), left[0].taken.beside[0].trace.size());
    }
}

}  // namespace
}  // namespace hearth::ui::gauge

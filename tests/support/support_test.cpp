// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>
#include <stdexcept>

namespace hearth::testing {
namespace {

TEST(TempDir, isThereWhileTheTestRunsAndGoneAfterwards) {
    std::filesystem::path path;
    {
        const TempDir folder;
        path = folder.path();
        writeFile(folder / "note.txt", "kept");
        EXPECT_EQ(readFile(folder / "note.txt"), "kept");
    }
    EXPECT_FALSE(std::filesystem::exists(path));
}

TEST(TempDir, isAnotherOneEachTime) {
    const TempDir one;
    const TempDir two;
    EXPECT_NE(one.path(), two.path());
}

TEST(Files, aMissingFileFailsTheTest) {
    const TempDir folder;
    EXPECT_THROW((void)readFile(folder / "none"), std::runtime_error);
    EXPECT_THROW(writeFile(folder.path(), "a folder is no file"), std::runtime_error);
}

TEST(RunCommand, givesTextAndExitCode) {
    EXPECT_EQ(runCommand("printf word").text, "word");
    EXPECT_EQ(runCommand("exit 3").exitCode, 3);
    EXPECT_EQ(runCommand("no-such-program-at-all 2>/dev/null").exitCode, 127);
}

TEST(FixedClockAt, standsAtTheWallTimeInLondon) {
    EXPECT_EQ(instantText(fixedClock("2026-11-25", "09:46").now()), "2026-11-25T09:46:00.000Z");
    EXPECT_EQ(instantText(fixedClock("2026-07-01", "09:46").now()), "2026-07-01T08:46:00.000Z");
    EXPECT_THROW((void)fixedClock("2026-02-30"), std::invalid_argument);
    EXPECT_THROW((void)fixedClock("2026-02-28", "9"), std::invalid_argument);
}

}  // namespace
}  // namespace hearth::testing

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/program.h"
#include "tests/system/display.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

/// The program on a display, by keys alone, from its very first start.
namespace {

using hearth::testing::Display;
using hearth::testing::Program;
using hearth::testing::readFile;
using hearth::testing::writeFile;
using ::testing::HasSubstr;

TEST(FirstStartTest, AStoreThatCannotBeOpenedIsSaidAndLeftAlone) {
    const Display display;
    Program program;
    program.environment().insert(QStringLiteral("DISPLAY"), display.name());
    const auto store = program.home() / "firm.hearth";
    writeFile(store, std::string(5000, 'x'));
    QProcess window;
    window.setProcessEnvironment(program.environment());
    window.start(QStringLiteral(HEARTH_PROGRAM),
                 {QStringLiteral("--store"), QString::fromStdString(store.string())});
    ASSERT_TRUE(display.waitForWindow("The store can.t be opened"));
    display.press("Return");
    ASSERT_TRUE(window.waitForFinished(30000));
    EXPECT_EQ(window.exitStatus(), QProcess::NormalExit);
    EXPECT_EQ(window.exitCode(), 3);
    EXPECT_THAT(window.readAllStandardError().toStdString(), HasSubstr("firm.hearth"));
    EXPECT_EQ(readFile(store), std::string(5000, 'x'));
}

}  // namespace

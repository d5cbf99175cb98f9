// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/program.h"

#include <QRegularExpression>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

/// The door without a display, by the real program.
namespace {

using hearth::testing::Program;
using hearth::testing::readFile;
using hearth::testing::runCommand;
using hearth::testing::writeFile;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

/// The rest of the line after `before`.
std::string after(const std::string& before, const std::string& text) {
    const auto at = text.find(before);
    if (at == std::string::npos) {
        return {};
    }
    const auto begin = at + before.size();
    return text.substr(begin, text.find('\n', begin) - begin);
}

void expectMainJob(const Program::Run& run) {
    EXPECT_EQ(run.exitCode, 0) << run.error;
    EXPECT_THAT(run.error, IsEmpty());
    for (const char* said : {"No display was found", "Demonstration firm", "Let-by: pass", "Tightness: pass",
                             "Limit: ", "Verdict: pass", "Issued record ", "To open the window"}) {
        EXPECT_THAT(run.out, HasSubstr(said));
    }
    const std::string pdf = after("Its PDF: ", run.out);
    ASSERT_TRUE(std::filesystem::exists(pdf)) << pdf;
    std::string number = after("Issued record ", run.out);
    number.pop_back();  // the full stop
    // poppler's reader
    EXPECT_THAT(runCommand("pdftotext '" + pdf + "' -").text, HasSubstr(number));
}

TEST(NoDisplayTest, DoesTheMainJobOnTheDemonstrationFirm) {
    const Program program;
    expectMainJob(program.run(QStringList{}));
    EXPECT_FALSE(std::filesystem::exists(program.dataFolder() / "firm.hearth")) << "nobody's firm was set up";
}

TEST(NoDisplayTest, DoesItAgain) {
    const Program program;
    expectMainJob(program.run(QStringList{}));
    expectMainJob(program.run(QStringList{}));
}

TEST(NoDisplayTest, ADisplayThatCannotBeReachedIsNone) {
    Program program;
    program.environment().insert(QStringLiteral("DISPLAY"), QStringLiteral(":987"));
    expectMainJob(program.run(QStringList{}));
}

TEST(NoDisplayTest, AFolderThatCannotBeMadeIsSaid) {
    const Program program;
    std::filesystem::create_directories(program.dataFolder().parent_path());
    writeFile(program.dataFolder(), "a file where the folder should be");
    const auto run = program.run(QStringList{});
    EXPECT_EQ(run.exitCode, 3);
    EXPECT_THAT(run.error, HasSubstr("hearthledger"));
    EXPECT_EQ(readFile(program.dataFolder()), "a file where the folder should be");
}

TEST(NoDisplayTest, ACopyDamagedByAnythingIsReplaced) {
    const Program program;
    std::filesystem::create_directories(program.dataFolder() / "without-display");
    writeFile(program.dataFolder() / "without-display" / "demonstration.hearth", "rubbish");
    expectMainJob(program.run(QStringList{}));
}

}  // namespace

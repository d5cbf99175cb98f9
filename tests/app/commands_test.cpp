// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include "core/store/store.h"
#include "tests/app/program.h"
#include "tests/support/fixed_clock.h"

#include <QCryptographicHash>
#include <QRegularExpression>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <string>
#include <vector>

/// The commands, by the real program on the demonstration firm's store.
namespace {

using hearth::testing::Program;
using hearth::testing::readFile;
using hearth::testing::runCommand;
using hearth::testing::writeFile;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    for (const auto& line : QString::fromStdString(text).split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        lines.push_back(line.toStdString());
    }
    return lines;
}

std::string firstWord(const std::string& line) {
    return line.substr(0, line.find(' '));
}

class CommandsTest : public ::testing::Test {
  protected:
    /// Made once: it takes some seconds. Each test works on a copy.
    static void SetUpTestSuite() {
        s_original = std::make_unique<Program>();
        const auto made = s_original->run("demonstration --into " + s_original->home().path().string());
        ASSERT_EQ(made.exitCode, 0) << made.error;
    }
    static void TearDownTestSuite() { s_original.reset(); }

    void SetUp() override {
        std::filesystem::copy_file(s_original->home() / "demonstration.hearth", m_store);
    }

    [[nodiscard]] Program::Run run(const std::string& line) const {
        return m_program.run(line + " --store " + m_store.string());
    }
    [[nodiscard]] std::string firstVisit(const std::string& words) const {
        return firstWord(run("visits " + words).out);
    }
    /// A visit whose record has been issued, and the record's number.
    [[nodiscard]] std::string someRecord() const { return firstWord(run("records").out); }

    static std::unique_ptr<Program> s_original;
    Program m_program;
    std::filesystem::path m_store = m_program.home() / "demonstration.hearth";
};

std::unique_ptr<Program> CommandsTest::s_original;

TEST_F(CommandsTest, VisitsAndRecordsAreListed) {
    const auto visits = run("visits");
    EXPECT_EQ(visits.exitCode, 0) << visits.error;
    EXPECT_GE(linesOf(visits.out).size(), 12U);
    const auto records = run("records");
    EXPECT_EQ(records.exitCode, 0) << records.error;
    EXPECT_GE(linesOf(records.out).size(), 10U);
    EXPECT_THAT(records.out, HasSubstr("revision 1"));
}

TEST_F(CommandsTest, WordsNarrowTheList) {
    const auto found = run("visits maltings");
    EXPECT_EQ(found.exitCode, 0);
    EXPECT_THAT(linesOf(found.out), Not(IsEmpty()));
    for (const auto& line : linesOf(found.out)) {
        EXPECT_THAT(line, HasSubstr("Maltings"));
    }
    const auto none = run("visits nosuchstreet");
    EXPECT_EQ(none.exitCode, 0);
    EXPECT_THAT(none.out, IsEmpty());
    EXPECT_THAT(none.error, Not(IsEmpty()));
}

TEST_F(CommandsTest, JudgingGivesTheVerdictAsExitCode) {
    int passes = 0;
    int others = 0;
    for (const auto& line : linesOf(run("visits").out)) {
        const auto judged = run("judge " + firstWord(line));
        const bool isPass = judged.out.find("Verdict: pass") != std::string::npos;
        EXPECT_THAT(judged.out, HasSubstr("Verdict: ")) << line;
        EXPECT_EQ(judged.exitCode, isPass ? 0 : 1) << line;
        EXPECT_THAT(judged.error, IsEmpty());
        ++(isPass ? passes : others);
    }
    EXPECT_GT(passes, 0);
    EXPECT_GT(others, 0);
}

TEST_F(CommandsTest, JudgingNamesLimitsAndTheirSource) {
    std::string all;
    for (const auto& line : linesOf(run("visits").out)) {
        all += run("judge " + firstWord(line)).out;
    }
    for (const char* said :
         {"(+)", "[x]", "/!\\", "(-)", "Limit: ", "IGEM/UP/1B", "mbar", "Demonstration firm"}) {
        EXPECT_THAT(all, HasSubstr(said));
    }
    EXPECT_THAT(all, Not(HasSubstr("\x1b["))) << "colours only on a terminal";
}

TEST_F(CommandsTest, AVisitHasToBeNamedClearly) {
    const auto none = run("judge nosuchstreet");
    EXPECT_EQ(none.exitCode, 1);
    EXPECT_THAT(none.error, HasSubstr("nosuchstreet"));
    const auto many = run("judge maltings");
    EXPECT_EQ(many.exitCode, 1);
    EXPECT_THAT(many.error, HasSubstr("Maltings"));
    EXPECT_THAT(many.out, IsEmpty());
}

TEST_F(CommandsTest, AnIncompleteDraftIsNotIssued) {
    std::string draft;
    for (const auto& line : linesOf(run("visits").out)) {
        if (line.find(" open ") != std::string::npos &&
            run("judge " + firstWord(line)).out.find("still lacks") != std::string::npos) {
            draft = firstWord(line);
        }
    }
    ASSERT_FALSE(draft.empty());
    const auto before = linesOf(run("records").out).size();
    const auto refused = run("issue " + draft);
    EXPECT_EQ(refused.exitCode, 1);
    EXPECT_THAT(refused.out, IsEmpty());
    EXPECT_THAT(refused.error, HasSubstr("Missing:\n  - "));
    EXPECT_EQ(linesOf(run("records").out).size(), before);
}

TEST_F(CommandsTest, ARecordsPdfIsTheOneThatWasIssued) {
    const std::string number = someRecord();
    const auto first = m_program.home() / "first.pdf";
    const auto second = m_program.home() / "second.pdf";
    EXPECT_EQ(run("pdf " + number + " --to " + first.string()).exitCode, 0);
    EXPECT_EQ(run("pdf " + number + " --to " + second.string()).exitCode, 0);
    EXPECT_EQ(readFile(first), readFile(second));
    EXPECT_EQ(readFile(first).substr(0, 5), "%PDF-");
    // poppler's reader
    EXPECT_THAT(runCommand("pdftotext '" + first.string() + "' -").text, HasSubstr(number));
}

TEST_F(CommandsTest, APdfIntoAFolderGetsAName) {
    const auto folder = m_program.home() / "out";
    std::filesystem::create_directory(folder);
    const std::string number = someRecord();
    const auto written = run("pdf " + number + " --to " + folder.string());
    EXPECT_EQ(written.exitCode, 0) << written.error;
    const std::string path = linesOf(written.out).at(0);
    EXPECT_THAT(path, HasSubstr(number));
    EXPECT_TRUE(std::filesystem::exists(path));
}

TEST_F(CommandsTest, AFileThatHoldsSomethingElseIsNotLost) {
    const auto target = m_program.home() / "mine.pdf";
    writeFile(target, "something of mine");
    const std::string command = "pdf " + someRecord() + " --to " + target.string();
    const auto refused = run(command);
    EXPECT_EQ(refused.exitCode, 3);
    EXPECT_THAT(refused.error, HasSubstr("mine.pdf"));
    EXPECT_EQ(readFile(target), "something of mine");
    EXPECT_EQ(run(command + " --replace").exitCode, 0);
    EXPECT_EQ(readFile(target).substr(0, 5), "%PDF-");
    EXPECT_EQ(run(command).exitCode, 0) << "the same again is no harm";
}

TEST_F(CommandsTest, ARevisionReplacesItsRecordAndBothStayReadable) {
    const std::string number = someRecord();
    std::string visit;
    for (const auto& line : linesOf(run("visits").out)) {
        const auto tried = run("issue " + firstWord(line) + " --revises " + number + " --reason address");
        if (tried.exitCode == 0) {
            visit = firstWord(line);
            EXPECT_THAT(tried.out, HasSubstr(number));
            EXPECT_THAT(tried.out, HasSubstr("revision 2"));
            break;
        }
    }
    ASSERT_FALSE(visit.empty());
    const auto newer = m_program.home() / "new.pdf";
    const auto older = m_program.home() / "old.pdf";
    EXPECT_EQ(run("pdf " + number + " --to " + newer.string()).exitCode, 0);
    EXPECT_EQ(run("pdf " + number + " --revision 1 --to " + older.string()).exitCode, 0);
    EXPECT_NE(readFile(newer), readFile(older));
    EXPECT_THAT(runCommand("pdftotext '" + newer.string() + "' -").text,
                HasSubstr("Replaces revision 1 of " + number + ": address"));
    EXPECT_EQ(run("health").exitCode, 2) << "health takes stores as words";
    EXPECT_EQ(m_program.run("health " + m_store.string()).exitCode, 0);
}

TEST_F(CommandsTest, AnUnknownRecordIsSaid) {
    const auto target = m_program.home() / "none.pdf";
    const auto refused = run("pdf ZZZ-999999 --to " + target.string());
    EXPECT_EQ(refused.exitCode, 1);
    EXPECT_THAT(refused.error, HasSubstr("ZZZ-999999"));
    EXPECT_FALSE(std::filesystem::exists(target));
}

TEST_F(CommandsTest, ARecordThatWasLetGoIsNotDamageAndItsPdfIsRefused) {
    const std::string number = someRecord();
    {
        const hearth::FixedClock later = hearth::testing::fixedClock("2040-01-01");
        const auto store = hearth::store::Store::open(m_store, hearth::store::Access::Write, later);
        ASSERT_TRUE(store);
        const auto id = (*store)->recordByNumber(number);
        ASSERT_TRUE(id && *id);
        ASSERT_TRUE((*store)->letGo({{**id}, {}}));
    }
    const auto target = m_program.home() / "none.pdf";
    const auto refused = run("pdf " + number + " --to " + target.string());
    EXPECT_EQ(refused.exitCode, 1);
    EXPECT_THAT(refused.error, HasSubstr(number + " was erased on 1 Jan 2040"));
    EXPECT_FALSE(std::filesystem::exists(target));
    EXPECT_THAT(run("records").out, HasSubstr("erased"));
    const auto health = m_program.run("health " + m_store.string());
    EXPECT_EQ(health.exitCode, 0);
    EXPECT_THAT(health.out, HasSubstr("with numbers and digests kept: 1"));
}

TEST_F(CommandsTest, ABackupIsAStore) {
    const auto copy = m_program.home() / "copy.hearth";
    const auto made = run("backup --to " + copy.string());
    EXPECT_EQ(made.exitCode, 0) << made.error;
    EXPECT_EQ(m_program.run("health " + copy.string()).exitCode, 0);
    const auto bytes = readFile(copy);
    EXPECT_EQ(run("backup --to " + copy.string()).exitCode, 3);
    EXPECT_EQ(readFile(copy), bytes);
}

TEST_F(CommandsTest, ABackupIsMadeBesideTheStoreLookedIntoAndRestored) {
    const auto made = run("backup");
    ASSERT_EQ(made.exitCode, 0) << made.error;
    const std::string backup = linesOf(made.out).at(0);
    ASSERT_TRUE(std::filesystem::exists(backup)) << backup;
    const auto records = run("records").out;
    const std::string number = someRecord();
    for (const auto& line : linesOf(run("visits").out)) {  // the one that the record is of
        static_cast<void>(run("issue " + firstWord(line) + " --revises " + number + " --reason address"));
    }
    EXPECT_NE(run("records").out, records);
    const auto bytes = readFile(m_store);

    const auto look = run("restore " + backup + " --look");
    EXPECT_EQ(look.exitCode, 0) << look.error;
    EXPECT_THAT(look.out, HasSubstr("Newest visit"));
    EXPECT_EQ(readFile(m_store), bytes);

    const auto restored = run("restore " + backup);
    EXPECT_EQ(restored.exitCode, 0) << restored.error;
    EXPECT_THAT(restored.error, HasSubstr("-before-restore-"));
    EXPECT_EQ(run("records").out, records);
    EXPECT_EQ(m_program.run("health " + m_store.string()).exitCode, 0);
    EXPECT_EQ(run("restore " + (m_program.home() / "none.hearth").string()).exitCode, 3);
}

TEST_F(CommandsTest, ReadingChangesNoByteOfAStore) {
    const auto before = readFile(m_store);
    for (const char* command : {"visits", "records", "judge maltings"}) {
        static_cast<void>(run(command));
    }
    EXPECT_EQ(m_program.run("health " + m_store.string()).exitCode, 0);
    EXPECT_EQ(readFile(m_store), before);
}

std::string blankNumber(const std::string& path) {
    const auto at = path.rfind(" B-");
    return at == std::string::npos ? std::string() : path.substr(at + 1, std::string("B-KTM-000001").size());
}

TEST_F(CommandsTest, BlanksHaveNumbersOfTheirOwnRun) {
    const std::string into = " --into " + m_program.home().path().string();
    const auto three = linesOf(run("blank warning_notice --copies 3" + into).out);
    ASSERT_EQ(three.size(), 3U);
    const auto letters = blankNumber(three[0]).substr(0, 6);
    EXPECT_EQ(blankNumber(three[0]), letters + "000001");
    EXPECT_EQ(blankNumber(three[2]), letters + "000003");
    EXPECT_EQ(readFile(three[2]).substr(0, 5), "%PDF-");
    const auto other = linesOf(run("blank landlord_safety" + into).out);
    ASSERT_EQ(other.size(), 1U);
    EXPECT_EQ(blankNumber(other[0]), letters + "000004") << "one run for all kinds";
    const auto more = linesOf(run("blank landlord_safety --blocks 3" + into).out);
    const auto text = hearth::testing::runCommand("pdftotext '" + more[0] + "' -").text;
    EXPECT_THAT(text, ::testing::HasSubstr("Appliance 3 of 3"));
    const auto records = run("records").out;
    EXPECT_EQ(
        records,
        s_original->run("records --store " + (s_original->home() / "demonstration.hearth").string()).out)
        << "a blank is no record and takes no number of theirs";
}

TEST_F(CommandsTest, ABlankSpeaksTheLanguageThatIsAskedFor) {
    const std::string into = " --into " + m_program.home().path().string();
    const auto polish = linesOf(run("blank warning_notice --wording pl" + into).out);
    ASSERT_EQ(polish.size(), 1U);
    EXPECT_THAT(readFile(polish[0]), HasSubstr("/Lang (pl)"));
    const auto both = linesOf(run("blank warning_notice --wording en+cy" + into).out);
    ASSERT_EQ(both.size(), 1U);
    EXPECT_THAT(readFile(both[0]), HasSubstr("/Lang (en)"));
    EXPECT_EQ(run("blank warning_notice --wording fr" + into).exitCode, 2);
}

TEST_F(CommandsTest, ABlankWithoutAPlaceTakesNoNumber) {
    const auto file = m_program.home() / "in_the_way";
    writeFile(file, "x");
    const auto refused = run("blank warning_notice --into " + file.string() + "/deep");
    EXPECT_EQ(refused.exitCode, 3);
    EXPECT_THAT(refused.error, HasSubstr("the folder can't be made"));
    const auto made =
        linesOf(run("blank warning_notice --into " + (m_program.home() / "new/deep").string()).out);
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(blankNumber(made[0]).substr(6), "000001");
    EXPECT_EQ(readFile(made[0]).substr(0, 5), "%PDF-");
}

TEST_F(CommandsTest, ACopyOfTheStoreElsewhereBeginsARunOfItsOwn) {
    const std::string into = " --into " + m_program.home().path().string();
    const auto here = linesOf(run("blank warning_notice --copies 2" + into).out);
    ASSERT_EQ(here.size(), 2U);
    const auto elsewhere = m_program.home() / "copy.hearth";
    std::filesystem::copy_file(m_store, elsewhere);
    const auto there =
        linesOf(m_program.run("blank owner_safety" + into + " --store " + elsewhere.string()).out);
    ASSERT_EQ(there.size(), 1U);
    EXPECT_EQ(blankNumber(there[0]).substr(6), "000001") << "it does not go on from the other's last";
}

TEST_F(CommandsTest, ABlankThatThereIsNotIsToldWhichThereAre) {
    const auto unknown = run("blank reminder_letter --into " + m_program.home().path().string());
    EXPECT_EQ(unknown.exitCode, 1);
    EXPECT_THAT(unknown.error, HasSubstr("warning_notice"));
    EXPECT_EQ(run("blank warning_notice --copies 0 --into x").exitCode, 2);
    EXPECT_EQ(run("blank owner_safety --blocks 7 --into x").exitCode, 2);
    EXPECT_EQ(run("blank warning_notice").exitCode, 2) << "it needs a folder";
}

TEST_F(CommandsTest, TheDemonstrationIsMadeOnce) {
    const auto folder = m_program.home() / "demo folder";
    const QStringList command{QStringLiteral("demonstration"), QStringLiteral("--into"),
                              QString::fromStdString(folder.string())};
    const auto first = m_program.run(command);
    ASSERT_EQ(first.exitCode, 0) << first.error;
    const auto store = folder / "demonstration.hearth";
    EXPECT_EQ(linesOf(first.out), std::vector{store.string()});
    const auto bytes = readFile(store);
    const auto second = m_program.run(command);
    EXPECT_EQ(second.exitCode, 0);
    EXPECT_EQ(linesOf(second.out), std::vector{store.string()});
    EXPECT_THAT(second.error, Not(IsEmpty()));
    EXPECT_EQ(readFile(store), bytes);
}

TEST_F(CommandsTest, AnInterruptedDemonstrationIsMadeAgain) {
    const auto folder = m_program.home() / "half";
    std::filesystem::create_directory(folder);
    writeFile(folder / "demonstration.hearth", "half a file");
    writeFile(folder / "demonstration.hearth.unfinished", "");
    EXPECT_EQ(m_program.run("demonstration --into " + folder.string()).exitCode, 0);
    EXPECT_EQ(m_program.run("health " + (folder / "demonstration.hearth").string()).exitCode, 0);
    EXPECT_FALSE(std::filesystem::exists(folder / "demonstration.hearth.unfinished"));
}

TEST_F(CommandsTest, SomethingElseOfThatNameIsLeftAlone) {
    const auto folder = m_program.home() / "other";
    std::filesystem::create_directory(folder);
    writeFile(folder / "demonstration.hearth", "a letter to a friend");
    const auto refused = m_program.run("demonstration --into " + folder.string());
    EXPECT_EQ(refused.exitCode, 3);
    EXPECT_THAT(refused.error, HasSubstr("demonstration.hearth"));
    EXPECT_EQ(readFile(folder / "demonstration.hearth"), "a letter to a friend");
}

TEST_F(CommandsTest, UsageHelpAndVersion) {
    EXPECT_EQ(m_program.run("jugde").exitCode, 2);
    EXPECT_THAT(m_program.run("jugde").error, HasSubstr("jugde"));
    EXPECT_EQ(m_program.run("--help").exitCode, 0);
    EXPECT_THAT(m_program.run("--help").out, HasSubstr("hearthledger judge VISIT"));
    EXPECT_THAT(m_program.run("--version").out, HasSubstr("Hearthledger "));
}

}  // namespace

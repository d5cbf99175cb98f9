// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/stores.h"
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

/// Stores that can't be used, by the real program: a sentence, exit code 3, the file untouched.
namespace {

using hearth::testing::Program;
using hearth::testing::readFile;
using hearth::testing::writeFile;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

class StoreTroubleTest : public ::testing::Test {
  protected:
    static void SetUpTestSuite() {
        s_original = std::make_unique<Program>();
        ASSERT_EQ(s_original->run("demonstration --into " + s_original->home().path().string()).exitCode, 0);
    }
    static void TearDownTestSuite() { s_original.reset(); }

    void SetUp() override {
        std::filesystem::copy_file(s_original->home() / "demonstration.hearth", m_store);
    }

    /// Every command that needs the store says so, and leaves every file of the folder as it was.
    void expectRefused(const std::string& word) const {
        const auto before = readFile(m_store);
        for (const char* command :
             {"visits", "records", "judge maltings", "issue maltings", "pdf ZZZ-1 --to out.pdf"}) {
            const auto run = m_program.run(std::string(command) + " --store " + m_store.string());
            EXPECT_EQ(run.exitCode, 3) << command << ": " << run.error;
            EXPECT_THAT(run.error, HasSubstr(word)) << command;
            EXPECT_THAT(run.out, IsEmpty()) << command;
        }
        EXPECT_EQ(readFile(m_store), before);
        EXPECT_FALSE(std::filesystem::exists(m_store.string() + "-journal"));
    }

    static std::unique_ptr<Program> s_original;
    Program m_program;
    std::filesystem::path m_store = m_program.home() / "firm.hearth";
};

std::unique_ptr<Program> StoreTroubleTest::s_original;

TEST_F(StoreTroubleTest, NotThere) {
    std::filesystem::remove(m_store);
    const auto run = m_program.run("visits --store " + m_store.string());
    EXPECT_EQ(run.exitCode, 3);
    EXPECT_THAT(run.error, HasSubstr("firm.hearth"));
    EXPECT_FALSE(std::filesystem::exists(m_store)) << "a slip of the pen makes no store";
}

TEST_F(StoreTroubleTest, NoStoreAtAll) {
    writeFile(m_store, std::string(5000, 'x'));
    expectRefused("firm.hearth");
}

TEST_F(StoreTroubleTest, OfANewerVersion) {
    std::string bytes = readFile(m_store);
    // SQLite's file format: the user version is the 4-byte big-endian integer at offset 60
    // (sqlite.org/fileformat2.html)
    bytes[60] = 0;
    bytes[61] = 0;
    bytes[62] = 0x7f;
    bytes[63] = 0x7f;
    writeFile(m_store, bytes);
    // That newer program let version 1 read its store: then it is read, and said; nothing is written.
    for (const auto& [command, exitCode] : {std::pair("visits", 0), {"records", 0}, {"issue maltings", 3}}) {
        const auto run = m_program.run(std::string(command) + " --store " + m_store.string());
        EXPECT_EQ(run.exitCode, exitCode) << command;
        EXPECT_THAT(run.error, HasSubstr("32639")) << command;
    }
    EXPECT_EQ(readFile(m_store), bytes);
}

TEST_F(StoreTroubleTest, Damaged) {
    std::string bytes = readFile(m_store);
    // the first page's tree of tables, right behind the file's header
    std::fill(bytes.begin() + 100, bytes.begin() + 400, '\xa5');
    writeFile(m_store, bytes);
    expectRefused("firm.hearth");
    EXPECT_EQ(m_program.run("health " + m_store.string()).exitCode, 3);
}

TEST_F(StoreTroubleTest, ABitFlippedInARecordIsFoundByHealthAndOnOpening) {
    std::string bytes = readFile(m_store);
    const auto at = bytes.find("%PDF-1.4");
    ASSERT_NE(at, std::string::npos);
    bytes[at + 200] = static_cast<char>(bytes[at + 200] ^ 1);
    writeFile(m_store, bytes);
    const auto health = m_program.run("health " + m_store.string());
    EXPECT_EQ(health.exitCode, 3);
    EXPECT_THAT(health.out, HasSubstr("DAMAGED"));
    EXPECT_EQ(m_program.run("visits --store " + m_store.string()).exitCode, 0)
        << "the rest can still be read";
}

TEST_F(StoreTroubleTest, ThatCannotBeWrittenCanBeRead) {
    if (::geteuid() == 0) {
        GTEST_SKIP() << "nothing is read-only to the superuser; the store's own tests cover it with a fault "
                        "in the file system";
    }
    std::filesystem::permissions(m_store, std::filesystem::perms::owner_read);
    std::filesystem::permissions(m_program.home().path(),
                                 std::filesystem::perms::owner_read | std::filesystem::perms::owner_exec);
    const auto visits = m_program.run("visits --store " + m_store.string());
    const auto issue = m_program.run("issue maltings --store " + m_store.string());
    std::filesystem::permissions(m_program.home().path(), std::filesystem::perms::owner_all);
    EXPECT_EQ(visits.exitCode, 0) << visits.error;
    EXPECT_EQ(issue.exitCode, 3);
    EXPECT_THAT(issue.error, Not(IsEmpty()));
}

/// A limit on the size of files stands in for a full disk: writing fails in the same place.
TEST_F(StoreTroubleTest, ADiskWithoutRoomLosesNothing) {
    const auto before = readFile(m_store);
    const auto records = m_program.run("records --store " + m_store.string()).out;
    const std::string number = records.substr(0, records.find(' '));
    std::string visits = m_program.run("visits --store " + m_store.string()).out;
    int refused = 0;
    for (const auto& line : QString::fromStdString(visits).split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const std::string command = "trap '' XFSZ; ulimit -f 1; exec " HEARTH_PROGRAM " issue " +
                                    line.section(QLatin1Char(' '), 0, 0).toStdString() + " --revises " +
                                    number + " --reason x --store " + m_store.string();
        const auto run = m_program.run({QStringLiteral("-c"), QString::fromStdString(command)},
                                       QStringLiteral("/bin/bash"));
        EXPECT_NE(run.exitCode, 0);
        EXPECT_THAT(run.error, Not(IsEmpty()));
        refused += run.exitCode == 3 ? 1 : 0;
    }
    EXPECT_GT(refused, 0) << "no record came as far as being written";
    EXPECT_EQ(m_program.run("health " + m_store.string()).exitCode, 0);
    EXPECT_EQ(readFile(m_store), before);
}

}  // namespace

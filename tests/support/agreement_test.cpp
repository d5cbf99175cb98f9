// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/agreement.h"

#include "tests/support/files.h"

#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace hearth::testing {
namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

std::vector<std::string> linesIn(const TempDir& folder) {
    std::vector<std::string> lines;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        EXPECT_EQ(entry.path().filename().string().substr(0, 19), "test_tests_support-") << entry.path();
        EXPECT_EQ(entry.path().extension(), ".tsv");
        lines.push_back(readFile(entry.path()));
    }
    return lines;
}

using Lines = std::vector<std::string>;

TEST(Agreement, keepsTheLargestDeviationAndLeavesOneLine) {
    const TempDir folder;
    {
        Agreement agreement("Heat", "EN 1, Table 2", "MJ/m3", 0.25, folder.path());
        agreement.hold("a", 34.875, 35.0);
        agreement.hold("b", 20.25, 20.0);  // at the limit
        agreement.hold("c", 7.0, 7.0);
    }
    EXPECT_EQ(linesIn(folder), Lines{"Heat\tEN 1, Table 2\t3\t0.25\t0.25\tMJ/m3\n"});
}

TEST(Agreement, relativeDeviationsAreInPerCentOfTheirs) {
    const TempDir folder;
    {
        Agreement agreement("Heat", "EN 1, Table 2", "%", 25, folder.path());
        agreement.holdRelative("a", 5.0, 4.0);
        agreement.holdRelative("b", -3.0, -4.0);
    }
    EXPECT_EQ(linesIn(folder), Lines{"Heat\tEN 1, Table 2\t2\t25\t25\t%\n"});
}

TEST(Agreement, whatDeviatesMoreFailsAndIsNamed) {
    const TempDir folder;
    const auto holding = [&folder](double ours, double theirs) {
        Agreement("Heat", "EN 1", "MJ/m3", 0.25, folder.path()).hold("G20", ours, theirs);
    };
    EXPECT_NONFATAL_FAILURE(holding(35.5, 35.0), "Heat, G20: ours 35.5, published 35");
    EXPECT_NONFATAL_FAILURE(holding(34.74, 35.0), "Heat, G20");
    EXPECT_NONFATAL_FAILURE(holding(kNan, 35.0), "Heat, G20");
    EXPECT_EQ(linesIn(folder), Lines{"Heat\tEN 1\t1\tinf\t0.25\tMJ/m3\n"});
    EXPECT_NONFATAL_FAILURE(
        Agreement("Ratio", "EN 1", "%", 1.0, folder.path()).holdRelative("none", 1.0, 0.0), "Ratio, none");
}

TEST(Agreement, aCheckOfNothingFails) {
    const TempDir folder;
    EXPECT_NONFATAL_FAILURE(Agreement("Heat", "EN 1", "", 1.0, folder.path()), "nothing was held");
}

TEST(Agreement, needsANameAndASource) {
    const TempDir folder;
    const auto named = [&folder](const char* check, const char* source) {
        Agreement(check, source, "", 1.0, folder.path()).hold("a", 1, 1);
    };
    EXPECT_NONFATAL_FAILURE(named("Heat", ""), "a name and a source");
    EXPECT_NONFATAL_FAILURE(named("", "EN 1"), "a name and a source");
    EXPECT_NONFATAL_FAILURE(named("Heat\t1", "EN 1"), "a name and a source");
}

TEST(Agreement, theSameCheckAgainstAnotherSourceIsAnother) {
    const TempDir folder;
    Agreement("Heat", "EN 1", "", 1.0, folder.path()).hold("a", 1, 1);
    Agreement("Heat", "EN 2", "", 1.0, folder.path()).hold("a", 1, 1);
    EXPECT_EQ(linesIn(folder).size(), 2U);
}

// Two tests of one program by the same name: whichever runs first takes the line, and the other may not.
class AgreementTwice : public ::testing::Test {
  protected:
    static void takeTheLine() { Agreement("Heat", "EN 1", "", 1.0, folder().path()).hold("a", 1, 1); }
    static const TempDir& folder() {
        static const TempDir theFolder;
        return theFolder;
    }
    static bool s_isTaken;
};
bool AgreementTwice::s_isTaken = false;

TEST_F(AgreementTwice, inOneTestReplacesItsOwn) {
    takeTheLine();
    takeTheLine();
    s_isTaken = true;
    EXPECT_EQ(linesIn(folder()).size(), 1U);
}

TEST_F(AgreementTwice, inAnotherTestFails) {
    if (!s_isTaken) {
        GTEST_SKIP() << "runs after inOneTestReplacesItsOwn only";
    }
    EXPECT_NONFATAL_FAILURE(takeTheLine(), "two tests check this by the same name");
}

}  // namespace
}  // namespace hearth::testing

// SPDX-License-Identifier: GPL-3.0-or-later
// The script that makes the table of agreement, on small runs of its own.
#include "tests/support/files.h"

#include <gtest/gtest.h>
#include <string>

namespace hearth::testing {
namespace {

constexpr int kSkipped = 77;

class AgreementTable : public ::testing::Test {
  protected:
    void SetUp() override {
        std::filesystem::create_directories(m_folder / "run/ran");
        line("core_gas", "1", "Heat|value\tEN 437, Table 2\t3\t0.0123\t0.02\tMJ/m3");
        line("core_air", "1", "Air\tEN 1, example\t2\t1e-17\t0.5\t%");
        ran("core_gas");
        ran("core_air");
        document("");
        EXPECT_EQ(table("update").exitCode, 0);
    }

    void line(const std::string& test, const std::string& key, const std::string& text) const {
        writeFile(m_folder / ("run/test_" + test + '-' + key + ".tsv"), text + '\n');
    }
    void ran(const std::string& test) const {
        writeFile(m_folder / ("run/ran/" + test + ".xml"), "<testsuites/>");
    }
    void document(const std::string& section) const {
        writeFile(m_folder / "D.md",
                  "# Before\n\n<!-- agreement: written by the target agreement_table -->\n" + section +
                      "<!-- end of agreement -->\n\nAfter.\n");
    }
    [[nodiscard]] std::string shown() const { return readFile(m_folder / "D.md"); }

    [[nodiscard]] CommandOutput table(const std::string& action, const std::string& environment = "") const {
        const std::string file = action == "collect" ? "" : " '" + (m_folder / "D.md").string() + "'";
        return runCommand("env -u GTEST_FILTER " + environment +
                          " python3 '" HEARTH_SOURCE_DIR "/tests/support/agreement_table.py' '" +
                          (m_folder / "run").string() + "' " + action + file + " core/gas core/air 2>&1");
    }
    /// What the comparison says against; empty when it agrees.
    [[nodiscard]] std::string difference() const {
        const auto output = table("compare");
        EXPECT_EQ(output.exitCode == 0, output.text.find(" values\n") != std::string::npos) << output.text;
        return output.exitCode == 0 ? "" : output.text;
    }
    void expectDifference(const std::string& words) const {
        EXPECT_NE(difference().find(words), std::string::npos) << difference();
        EXPECT_EQ(table("compare").exitCode, 1);
    }

    TempDir m_folder;
};

TEST_F(AgreementTable, isSortedAndRoundedAndHasItsUnits) {
    const std::string rows =
        "| Check | Published source | Values | Largest deviation | Allowed |\n"
        "|---|---|---:|---:|---:|\n"
        "| Air | EN 1, example | 2 | 0 % | 0.5 % |\n"
        "| Heat\\|value | EN 437, Table 2 | 3 | 0.012 MJ/m3 | 0.02 MJ/m3 |\n";
    EXPECT_EQ(readFile(m_folder / "run/agreement.md"), rows);
    EXPECT_EQ(shown(), "# Before\n\n<!-- agreement: written by the target agreement_table -->\n" + rows +
                           "<!-- end of agreement -->\n\nAfter.\n");
    EXPECT_EQ(difference(), "");
}

TEST_F(AgreementTable, smallChangesOfTheArithmeticAreNoDifference) {
    line("core_gas", "1", "Heat|value\tEN 437, Table 2\t3\t0.0119\t0.02\tMJ/m3");
    line("core_air", "1", "Air\tEN 1, example\t2\t3e-8\t0.5\t%");
    EXPECT_EQ(difference(), "");
}

TEST_F(AgreementTable, anotherDeviationCountOrLimitIsADifference) {
    line("core_gas", "1", "Heat|value\tEN 437, Table 2\t3\t0.0145\t0.02\tMJ/m3");
    expectDifference("shown 3 | 0.012 MJ/m3 | 0.02 MJ/m3; found 3 | 0.015 MJ/m3 | 0.02 MJ/m3");
    line("core_gas", "1", "Heat|value\tEN 437, Table 2\t4\t0.0123\t0.02\tMJ/m3");
    expectDifference("found 4 | ");
    line("core_gas", "1", "Heat|value\tEN 437, Table 2\t3\t0.0123\t0.03\tMJ/m3");
    expectDifference("0.03 MJ/m3");
    line("core_gas", "1", "Heat|value\tEN 437, Table 2\t3\t0.0123\t0.02\tkWh/m3");
    expectDifference("kWh/m3");
}

TEST_F(AgreementTable, aCheckThatCameOrWentIsADifference) {
    line("core_air", "2", "Louvre\tEN 2\t1\t0\t1\t");
    expectDifference("not shown: Louvre (EN 2)");
    std::filesystem::remove(m_folder / "run/test_core_air-2.tsv");
    EXPECT_EQ(difference(), "");
    line("core_air", "1", "Air\tEN 1, another example\t2\t1e-17\t0.5\t%");
    expectDifference("not found by the run: Air (EN 1, example)");
}

TEST_F(AgreementTable, whatIsBeyondItsLimitOrTwiceThereFailsByItself) {
    line("core_air", "2", "Air\tEN 1, example\t2\t0\t0.5\t%");
    EXPECT_EQ(table("collect").exitCode, 1);
    line("core_air", "2", "Louvre\tEN 2\t1\t1.01\t1\tmm");
    EXPECT_NE(table("collect").text.find("Louvre (EN 2): 1.01, beyond 1 mm"), std::string::npos);
    line("core_air", "2", "Louvre\tEN 2\t1\tinf\t1\tmm");
    EXPECT_EQ(table("update").exitCode, 1);
    line("core_air", "2", "Louvre\tEN 2\t1\tnan\t1\tmm");
    EXPECT_EQ(table("collect").exitCode, 1);
    line("core_air", "2", "Louvre\tEN 2\t1\t0\t1\tmm");
    EXPECT_EQ(table("collect").exitCode, 0);
    line("core_burner", "1", "Rate\tEN 3\t1\t0\t1\tmm");
    EXPECT_EQ(table("collect").exitCode, 1) << "a program that is not among the tests";
}

TEST_F(AgreementTable, partsOfARunAreNotCompared) {
    line("core_gas", "1", "Heat|value\tEN 437, Table 2\t3\t0.0145\t0.02\tMJ/m3");
    EXPECT_EQ(table("compare", "GTEST_FILTER=A.*").exitCode, kSkipped);
    for (const std::string report : {"", "<testsuites>"}) {
        writeFile(m_folder / "run/ran/core_air.xml", report);
        EXPECT_EQ(table("compare").exitCode, kSkipped) << "ended before its end";
    }
    std::filesystem::remove(m_folder / "run/ran/core_air.xml");
    const auto output = table("compare");
    EXPECT_EQ(output.exitCode, kSkipped);
    EXPECT_NE(output.text.find("only some of the tests ran"), std::string::npos) << output.text;
    EXPECT_NE(output.text.find("core/air"), std::string::npos) << output.text;
    const auto before = shown();
    EXPECT_EQ(table("update").exitCode, kSkipped);
    EXPECT_EQ(shown(), before) << "a table of parts is not written";
    line("core_gas", "1", "Heat|value\tEN 437, Table 2\t3\t0.0245\t0.02\tMJ/m3");
    EXPECT_EQ(table("compare").exitCode, 1) << "beyond its limit, whatever else ran";
}

TEST_F(AgreementTable, aDocumentWithoutTheSectionIsAFailure) {
    writeFile(m_folder / "D.md", "# Before\n");
    EXPECT_EQ(table("compare").exitCode, 1);
    EXPECT_EQ(table("update").exitCode, 1);
}

TEST_F(AgreementTable, isShortOnATerminal) {
    const auto output = runCommand("python3 '" HEARTH_SOURCE_DIR "/tests/support/agreement_table.py' '" +
                                   (m_folder / "run").string() + "' print");
    EXPECT_EQ(output.text,
              "== agreement with published figures: 2 checks, 5 values\n"
              "Air: 0 % at most, of 0.5 % allowed (2; EN 1, example)\n"
              "Heat|value: 0.012 MJ/m3 at most, of 0.02 MJ/m3 allowed (3; EN 437, Table 2)\n");
}

}  // namespace
}  // namespace hearth::testing

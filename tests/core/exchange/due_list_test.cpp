// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: RFC 4180 and RFC 8259. Both are read back by Python's own modules.
#include "core/exchange/due_list.h"

#include "tests/support/files.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

std::vector<DueRow> twoRows() {
    DueRow full;
    full.state = calendar::DueState::Overdue;
    full.deadline = calendar::fromIso("2026-06-01");
    full.lastCheck = calendar::fromIso("2025-06-01");
    full.line1 = "1 Mill Lane, \"The Barn\"";
    full.line2 = "=1+1";
    full.landlord = "Zofia Wiśniewska";
    full.letters = 2;
    return {full, DueRow{}};
}

std::string python(const std::string& script, const std::string& bytes) {
    const testing::TempDir folder;
    testing::writeFile(folder / "list", bytes);
    testing::writeFile(folder / "read.py", script);
    const auto said = testing::runCommand("LC_ALL=C.UTF-8 python3 '" + (folder / "read.py").string() + "' '" +
                                          (folder / "list").string() + "'");
    EXPECT_EQ(said.exitCode, 0) << said.text;
    return said.text;
}

TEST(DueList, AsCsvIsReadByAnotherReader) {
    const auto said = python(
        "import csv, sys\n"
        "for row in csv.DictReader(open(sys.argv[1], newline='')):\n"
        "    print(row['state'], row['deadline'], row['line1'], row['line2'], row['landlord'], "
        "row['letters'])\n",
        dueCsv(twoRows()));
    EXPECT_EQ(said,
              "overdue 2026-06-01 1 Mill Lane, \"The Barn\" '=1+1 Zofia Wiśniewska 2\nnot_known     0\n");
}

TEST(DueList, AsJsonIsReadByAnotherReader) {
    const auto said = python(
        "import json, sys\n"
        "for row in json.load(open(sys.argv[1])):\n"
        "    print(row['state'], row['deadline'], row['window_opens'], row['line2'], row['letters'] + 1)\n",
        dueJson(twoRows()));
    EXPECT_EQ(said, "overdue 2026-06-01 None =1+1 3\nnot_known None None None 1\n");
    EXPECT_EQ(dueJson({}), "[]\n");
}

}  // namespace
}  // namespace hearth::exchange

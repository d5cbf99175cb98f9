// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: RFC 4180 and RFC 8259. Both are read back by Python's own modules.
#include "core/exchange/duty_list.h"

#include "tests/support/files.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

std::vector<DutyRow> twoDuties() {
    DutyRow copy;
    copy.overdue = true;
    copy.by = calendar::fromIso("2026-11-17");
    copy.from = calendar::fromIso("2026-10-20");
    copy.what = "Zofia Wiśniewska";
    copy.which = "A-000017";
    copy.line1 = "1 Mill Lane, \"The Barn\"";
    DutyRow notice;
    notice.kind = calendar::DutyKind::OpenNotice;
    notice.what = "=1+1";
    return {copy, notice};
}

std::string dutiesInPython(const std::string& script, const std::string& bytes) {
    const testing::TempDir folder;
    testing::writeFile(folder / "list", bytes);
    testing::writeFile(folder / "read.py", script);
    const auto said = testing::runCommand("LC_ALL=C.UTF-8 python3 '" + (folder / "read.py").string() + "' '" +
                                          (folder / "list").string() + "'");
    EXPECT_EQ(said.exitCode, 0) << said.text;
    return said.text;
}

TEST(DutyList, AsCsvIsReadByAnotherReader) {
    EXPECT_EQ(
        dutiesInPython("import csv, sys\n"
                       "for row in csv.DictReader(open(sys.argv[1], newline='')):\n"
                       "    print(row['duty'], row['state'], row['by'], row['counts_from'], row['what'], "
                       "row['which'], row['line1'], '36(6)' in row['source'])\n",
                       dutyCsv(twoDuties())),
        "tenant_copy overdue 2026-11-17 2026-10-20 Zofia Wiśniewska A-000017 1 Mill Lane, \"The Barn\" "
        "True\nopen_notice open   '=1+1   False\n");
}

TEST(DutyList, AsJsonIsReadByAnotherReader) {
    EXPECT_EQ(dutiesInPython("import json, sys\n"
                             "for row in json.load(open(sys.argv[1])):\n"
                             "    print(row['duty'], row['by'], row['what'], row['town'])\n",
                             dutyJson(twoDuties())),
              "tenant_copy 2026-11-17 Zofia Wiśniewska None\nopen_notice None =1+1 None\n");
}

}  // namespace
}  // namespace hearth::exchange

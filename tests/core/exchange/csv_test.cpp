// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: RFC 4180, section 2, rules 1 to 7 with their own examples. The habits of spreadsheets are
// common practice, no source. What is written is read back by Python's csv module, which is not ours.
#include "core/exchange/csv.h"

#include "tests/support/files.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

using hearth::testing::runCommand;
using hearth::testing::TempDir;
using hearth::testing::writeFile;
using Rows = std::vector<std::vector<std::string>>;

Rows cellsOf(const CsvTable& table) {
    Rows rows;
    for (const auto& row : table.rows) {
        rows.push_back(row.cells);
    }
    return rows;
}

struct Habit {
    const char* name;
    std::string text;
    Rows rows;
    char separator = ',';
};

TEST(Csv, readsWhatRfc4180Shows) {
    const std::vector<Habit> rules{
        {"rule 1", "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        {"rule 2: no line end", "aaa,bbb,ccc\r\nzzz,yyy,xxx", {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        {"rule 5", "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        {"rule 6",
         "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx",
         {{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        {"rule 7", "\"aaa\",\"b\"\"bb\",\"ccc\"", {{"aaa", "b\"bb", "ccc"}}},
    };
    for (const auto& one : rules) {
        EXPECT_EQ(cellsOf(readCsv(one.text)), one.rows) << one.name;
    }
}

TEST(Csv, copesWithTheHabitsOfSpreadsheets) {
    const std::vector<Habit> habits{
        {"semicolons, decimal commas",
         "a;b\r\n1,5;2,5\r\n3,5;x\r\n",
         {{"a", "b"}, {"1,5", "2,5"}, {"3,5", "x"}},
         ';'},
        {"tabs", "a\tb, c\n1\t2\n", {{"a", "b, c"}, {"1", "2"}}, '\t'},
        {"tabs, an empty first cell", "a\tb\n\t2\n", {{"a", "b"}, {"", "2"}}, '\t'},
        {"sep= line", "sep=;\r\na;b\r\n", {{"a", "b"}}, ';'},
        {"marked UTF-8 before a quoted heading", "\xEF\xBB\xBF\"Name\",x\r\n", {{"Name", "x"}}},
        {"carriage returns alone", "a,b\rc,d\r", {{"a", "b"}, {"c", "d"}}},
        {"line feeds in cells, CRLF between rows",
         "a,\"1 High St\nLeeds\"\r\nb,c\r\n",
         {{"a", "1 High St\nLeeds"}, {"b", "c"}}},
        {"empty cells at the end", "a,b,\r\n1,,\r\n", {{"a", "b", ""}, {"1", "", ""}}},
        {"empty lines and rows of commas", "a,b\r\n\r\n,\r\nc,d\r\n\r\n", {{"a", "b"}, {"", ""}, {"c", "d"}}},
        {"inches in a cell", "pipe,2\" steel\r\n22,x\r\n", {{"pipe", "2\" steel"}, {"22", "x"}}},
        {"blanks after the comma", "a, b\r\n1, \"2, 3\"\r\n", {{"a", "b"}, {"1", "2, 3"}}},
        {"rows of unequal length",
         "a,b,c\r\n1\r\n1,2,3,4\r\n",
         {{"a", "b", "c"}, {"1"}, {"1", "2", "3", "4"}}},
        {"one column", "a\r\nb\r\n", {{"a"}, {"b"}}},
        {"semicolons with a comma in most cells",
         "n;a\r\nx;1, High St\r\ny;2, High St\r\nz;3 Low Rd\r\n",
         {{"n", "a"}, {"x", "1, High St"}, {"y", "2, High St"}, {"z", "3 Low Rd"}},
         ';'},
        {"nothing", "", {}},
    };
    for (const auto& one : habits) {
        const auto table = readCsv(one.text);
        EXPECT_EQ(cellsOf(table), one.rows) << one.name;
        EXPECT_EQ(table.separator, one.separator) << one.name;
        EXPECT_EQ(table.openQuote, std::nullopt) << one.name;
        for (const auto& row : table.rows) {
            EXPECT_FALSE(row.strangeQuote) << one.name;
        }
    }
}

TEST(Csv, knowsTheLineOfEachRow) {
    const auto table = readCsv("a,b\r\n\r\n\"1\r\n2\r\n3\",x\r\ny,z\r\n");
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[0].line, 1);
    EXPECT_EQ(table.rows[1].line, 3);
    EXPECT_EQ(table.rows[2].line, 6);
    EXPECT_EQ(readCsv("sep=,\na,b\n").rows.front().line, 2);
    EXPECT_EQ(readCsv("a,b\rc,d").rows.back().line, 2);
}

TEST(Csv, saysWhereAQuotationMarkIsNeverClosed) {
    const auto table = readCsv("a,b\r\nc,\"d\r\ne,f\r\n");
    EXPECT_EQ(table.openQuote, 2);
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[1].cells, (std::vector<std::string>{"c", "d\r\ne,f\r\n"}));
}

TEST(Csv, marksTheRowWhereAQuotationMarkClosesTooEarly) {
    const auto table = readCsv("a,b\r\n\"Flat 2\" High St,Leeds\r\n\"x\",y\r\nc,d\r\n");
    ASSERT_GE(table.rows.size(), 2U);
    EXPECT_FALSE(table.rows[0].strangeQuote);
    EXPECT_TRUE(table.rows[1].strangeQuote);
    EXPECT_EQ(table.rows.back().cells, (std::vector<std::string>{"c", "d"}));
    EXPECT_FALSE(table.rows.back().strangeQuote);
}

TEST(Csv, doesAsItIsTold) {
    EXPECT_EQ(cellsOf(readCsv("a;b,c\r\n", {std::nullopt, ';'})), (Rows{{"a", "b,c"}}));
    EXPECT_EQ(cellsOf(readCsv("\xC3\xA9", {Encoding::Windows1252, std::nullopt})), (Rows{{"Ã©"}}));
}

/// OWASP, "CSV Injection": = + - @ tab and carriage return.
TEST(Csv, makesFormulasHarmlessAndTellsThemAgain) {
    for (const std::string text :
         {"=1+1", "+44 113 496 0000", "-x", "@SUM(A1)", "\tx", "\rx", "'=1", "''-2"}) {
        const std::string safe = harmless(text);
        EXPECT_EQ(safe, "'" + text);
        EXPECT_EQ(withoutGuard(safe), text);
    }
    for (const std::string text : {"", "plain", "1-2", "'tis", "O'Neill", "'"}) {
        EXPECT_EQ(harmless(text), text);
        EXPECT_EQ(withoutGuard(text), text);
    }
    EXPECT_EQ(csvLine({{"-0.25", CsvCell::Kind::Number}, {"-0.25"}}), "-0.25,'-0.25\r\n");
}

TEST(Csv, isReadByAnotherReaderAsItWasWritten) {
    const std::vector<std::string> cells{"plain",   "a,b", "a;b",     "say \"so\"", "two\r\nlines",
                                         " blank ", "",    "Tŷ Gŵyn", "O'Neill",    "a\tb"};
    std::vector<CsvCell> line;
    for (const auto& cell : cells) {
        line.push_back({cell});
    }
    const std::string text = csvLine(line);
    EXPECT_EQ(cellsOf(readCsv(text, {std::nullopt, ','})), (Rows{cells}));
    const TempDir folder;
    writeFile(folder / "a.csv", std::string(kUtf8Mark) + text);
    const auto answer = runCommand("python3 -c \"import csv,json;print(json.dumps(list(csv.reader(open('" +
                                   (folder / "a.csv").string() +
                                   "',encoding='utf-8-sig',newline=''),strict=True)),ensure_ascii=False))\"");
    EXPECT_EQ(answer.text,
              "[[\"plain\", \"a,b\", \"a;b\", \"say \\\"so\\\"\", \"two\\r\\nlines\", \" blank \", \"\", "
              "\"Tŷ Gŵyn\", \"O'Neill\", \"a\\tb\"]]\n");
}

}  // namespace
}  // namespace hearth::exchange

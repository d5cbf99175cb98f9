// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/file_text.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Tables as comma-separated values (RFC 4180), with the habits of spreadsheets. Cells are cut by the library
/// libcsv; encodings, separators and line numbers are ours.
namespace hearth::exchange {

struct CsvRow {
    int line = 0;  // of the file, from 1, where the row begins
    std::vector<std::string> cells;
    /// Letters follow a closing quotation mark: where the cell was meant to end can't be told, and it may
    /// have taken in what follows.
    bool strangeQuote = false;
    bool operator==(const CsvRow&) const = default;
};

struct CsvTable {
    std::vector<CsvRow> rows;  // empty lines left out
    char separator = ',';
    Encoding encoding = Encoding::Utf8;
    int unreadable = 0;  // letters that the encoding lacks
    /// The line of a quotation mark that is never closed: what follows it is one cell, so nothing after that
    /// line can be relied on.
    std::optional<int> openQuote;
};

/// What is not left to guessing.
struct CsvForm {
    std::optional<Encoding> encoding;
    std::optional<char> separator;
};

/// Reads a table. The separator, unless said, is the one of , ; tab | that cuts the first rows most evenly; a
/// first line "sep=;" says it, as spreadsheets do. Line ends are CRLF, LF or CR. Blanks around a cell without
/// quotation marks are dropped (RFC 4180 section 2.4 keeps them, spreadsheets' users don't mean them); a
/// quotation mark within such a cell is a letter. Source: RFC 4180 section 2; the rest common practice, no
/// source. Checked: csv_test.cpp.
[[nodiscard]] CsvTable readCsv(std::string_view bytes, const CsvForm& form = {});

/// A cell to write. A spreadsheet takes a text that begins with = + - @ tab or CR for a formula and runs it
/// (OWASP, "CSV Injection"), so such a text gets an apostrophe before it, which spreadsheets take for "text"
/// and people see; a number that is one (`Number`) stays as it is, its minus too.
struct CsvCell {
    enum class Kind { Text, Number };
    std::string text;
    Kind kind = Kind::Text;
};

/// One row with its CRLF: separated by commas, quoted where RFC 4180 section 2.6 wants it or blanks at an end
/// would be lost, quotation marks doubled.
[[nodiscard]] std::string csvLine(const std::vector<CsvCell>& cells);
/// The text of a cell made harmless.
[[nodiscard]] std::string harmless(std::string_view text);
/// Takes that apostrophe away again from what we, or a spreadsheet, put it before.
[[nodiscard]] std::string_view withoutGuard(std::string_view text);
/// The byte order mark by which spreadsheets know UTF-8.
inline constexpr std::string_view kUtf8Mark = "\xEF\xBB\xBF";

}  // namespace hearth::exchange

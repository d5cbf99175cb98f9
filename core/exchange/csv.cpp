// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"

#include <algorithm>
#include <array>
#include <csv.h>
#include <map>
#include <new>
#include <utility>

namespace hearth::exchange {
namespace {

constexpr std::array kSeparators{',', ';', '\t', '|'};

/// The library's parser, fed byte by byte: so each row knows on which line it begins, and what the library
/// forgives is seen.
class CsvCutter {
  public:
    explicit CsvCutter(char separator) {
        csv_init(&m_parser, 0);
        csv_set_delim(&m_parser, static_cast<unsigned char>(separator));
    }
    ~CsvCutter() { csv_free(&m_parser); }
    CsvCutter(const CsvCutter&) = delete;
    CsvCutter& operator=(const CsvCutter&) = delete;

    void cut(std::string_view text, int firstLine, std::size_t mostRows) {
        m_line = firstLine;
        for (std::size_t at = 0; at < text.size() && m_rows.size() < mostRows; ++at) {
            if (m_parser.pstate == kRowNotBegun) {
                m_row.line = m_line;
            }
            feed(text[at]);
            const bool endsLine = text[at] == '\n' || (text[at] == '\r' && text.substr(at + 1, 1) != "\n");
            m_line += endsLine ? 1 : 0;
        }
        if (m_rows.size() < mostRows) {
            if (isInQuotes()) {
                m_open = m_row.line;
            }
            csv_fini(&m_parser, takeCell, takeRow, this);
        }
    }

    [[nodiscard]] std::vector<CsvRow>& rows() { return m_rows; }
    [[nodiscard]] std::optional<int> openQuote() const { return m_open; }

  private:
    // The library's states (libcsv.c); its header does not name them, so csv_test.cpp holds what is built on
    // them.
    static constexpr int kRowNotBegun = 0;
    static constexpr int kCellBegun = 2;
    static constexpr int kCellMightHaveEnded = 3;

    [[nodiscard]] bool isInQuotes() const { return m_parser.pstate == kCellBegun && m_parser.quoted != 0; }

    void feed(char letter) {
        const bool hadEnded = m_parser.pstate == kCellMightHaveEnded;
        if (csv_parse(&m_parser, &letter, 1, takeCell, takeRow, this) != 1) {
            throw std::bad_alloc();  // the library fails in nothing else here
        }
        if (hadEnded && isInQuotes() && letter != '"') {
            m_row.strangeQuote = true;
        }
    }

    static void takeCell(void* text, std::size_t length, void* self) {
        static_cast<CsvCutter*>(self)->m_row.cells.emplace_back(static_cast<const char*>(text), length);
    }
    static void takeRow(int /*end*/, void* self) {
        auto& cutter = *static_cast<CsvCutter*>(self);
        cutter.m_rows.push_back(std::move(cutter.m_row));
        cutter.m_row = {};
    }

    csv_parser m_parser{};
    int m_line = 1;
    CsvRow m_row;
    std::vector<CsvRow> m_rows;
    std::optional<int> m_open;
};

/// How evenly a separator cuts: the rows of the commonest width, where that is more than one cell.
std::pair<std::size_t, std::size_t> evenness(std::string_view text, char separator) {
    constexpr std::size_t kSomeRows = 50;
    CsvCutter cutter(separator);
    cutter.cut(text, 1, kSomeRows);
    std::map<std::size_t, std::size_t> rowsByWidth;
    for (const auto& row : cutter.rows()) {
        ++rowsByWidth[row.cells.size()];
    }
    std::pair<std::size_t, std::size_t> best{0, 0};
    for (const auto& [width, rows] : rowsByWidth) {
        if (width > 1) {
            best = std::max(best, std::pair(rows, width));
        }
    }
    return best;
}

char guessSeparator(std::string_view text) {
    char best = kSeparators.front();
    std::pair<std::size_t, std::size_t> bestEvenness{0, 0};
    for (const char separator : kSeparators) {
        if (const auto found = evenness(text, separator); found > bestEvenness) {
            bestEvenness = found;
            best = separator;
        }
    }
    return best;
}

/// "sep=;" in a first line of its own, which is no row.
std::optional<char> saidSeparator(std::string_view& text) {
    std::string_view rest = text;
    const bool quoted = rest.substr(0, 1) == "\"";
    rest.remove_prefix(quoted ? 1 : 0);
    if (rest.substr(0, 4) != "sep=" || rest.size() < 6) {
        return std::nullopt;
    }
    const char separator = rest[4];
    rest.remove_prefix(5);
    rest.remove_prefix(quoted && rest.substr(0, 1) == "\"" ? 1 : 0);
    if (std::find(kSeparators.begin(), kSeparators.end(), separator) == kSeparators.end() ||
        rest.find_first_of("\r\n") != 0) {
        return std::nullopt;
    }
    rest.remove_prefix(rest.substr(0, 2) == "\r\n" ? 2 : 1);
    text = rest;
    return separator;
}

bool wantsQuotes(std::string_view text) {
    constexpr std::string_view kBlanks = " \t";
    return text.find_first_of(",;\"\r\n\t") != std::string_view::npos ||
           (!text.empty() && (kBlanks.find(text.front()) != std::string_view::npos ||
                              kBlanks.find(text.back()) != std::string_view::npos));
}

/// The text would be run as a formula once its leading apostrophes were taken away.
bool looksLikeFormula(std::string_view text) {
    const std::size_t first = text.find_first_not_of('\'');
    return first != std::string_view::npos &&
           std::string_view("=+-@\t\r").find(text[first]) != std::string_view::npos;
}

}  // namespace

CsvTable readCsv(std::string_view bytes, const CsvForm& form) {
    CsvTable table;
    const FileText file = readFileText(bytes, form.encoding);
    table.encoding = file.encoding;
    table.unreadable = file.unreadable;
    std::string_view text = file.utf8;
    const auto said = saidSeparator(text);
    table.separator = form.separator ? *form.separator : said ? *said : guessSeparator(text);
    CsvCutter cutter(table.separator);
    cutter.cut(text, said ? 2 : 1, static_cast<std::size_t>(-1));
    table.rows = std::move(cutter.rows());
    table.openQuote = cutter.openQuote();
    return table;
}

std::string harmless(std::string_view text) {
    return std::string(looksLikeFormula(text) ? "'" : "").append(text);
}

std::string_view withoutGuard(std::string_view text) {
    return text.substr(0, 1) == "'" && looksLikeFormula(text) ? text.substr(1) : text;
}

std::string csvLine(const std::vector<CsvCell>& cells) {
    std::string line;
    for (const auto& cell : cells) {
        if (&cell != &cells.front()) {
            line.push_back(',');
        }
        const std::string text = cell.kind == CsvCell::Kind::Number ? cell.text : harmless(cell.text);
        if (!wantsQuotes(text)) {
            line.append(text);
            continue;
        }
        line.push_back('"');
        for (const char letter : text) {
            line.append(letter == '"' ? 2 : 1, letter);
        }
        line.push_back('"');
    }
    return line.append("\r\n");
}

}  // namespace hearth::exchange

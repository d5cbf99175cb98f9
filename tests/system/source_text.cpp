// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/system/source_text.h"

#include "tests/support/files.h"

#include <algorithm>
#include <cctype>
#include <filesystem>

namespace hearth::testing {
namespace {

bool isWordLetter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

/// Goes through the text once; each step takes one comment, literal or character.
class Scanner {
  public:
    explicit Scanner(std::string_view text) : m_text(text) { m_result.code.reserve(text.size()); }

    CodeText run() {
        while (m_at < m_text.size()) {
            if (sees("//")) {
                blankUntil(std::min(m_text.find('\n', m_at), m_text.size()));
            } else if (sees("/*")) {
                const std::size_t end = m_text.find("*/", m_at + 2);
                blankUntil(end == std::string_view::npos ? m_text.size() : end + 2);
            } else if (m_text[m_at] == '#' && isFirstOnLine() && isInclude()) {
                keepIncludeLine();
            } else if (m_text[m_at] == '"') {
                isRaw() ? rawLiteral() : literal();
            } else if (m_text[m_at] == '\'' && !isDigitSeparator()) {
                blankUntil(endOfQuoted('\''));
            } else {
                keep();
            }
        }
        return std::move(m_result);
    }

  private:
    [[nodiscard]] bool sees(std::string_view word) const { return m_text.substr(m_at, word.size()) == word; }

    [[nodiscard]] bool isFirstOnLine() const {
        const std::string_view before = m_text.substr(0, m_at);
        const std::size_t last = before.find_last_not_of(" \t");
        return last == std::string_view::npos || before[last] == '\n';
    }

    [[nodiscard]] bool isInclude() const {
        std::string_view rest = m_text.substr(m_at + 1);
        rest.remove_prefix(std::min(rest.find_first_not_of(" \t"), rest.size()));
        return rest.substr(0, 7) == "include";
    }

    /// An include's path stays as it is.
    void keepIncludeLine() {
        const std::size_t end = std::min(m_text.find('\n', m_at), m_text.find("//", m_at));
        while (m_at < std::min(end, m_text.size())) {
            keep();
        }
    }

    void keep() {
        const char c = m_text[m_at];
        if (std::isspace(static_cast<unsigned char>(c)) == 0) {
            m_isAfterLiteral = false;
        }
        m_line += c == '\n' ? 1U : 0U;
        m_result.code += c;
        ++m_at;
    }

    void blankUntil(std::size_t end) {
        for (; m_at < end; ++m_at) {
            m_line += m_text[m_at] == '\n' ? 1U : 0U;
            m_result.code += m_text[m_at] == '\n' ? '\n' : ' ';
        }
    }

    /// Past the closing quote of what begins at m_at; an open one ends with its line.
    [[nodiscard]] std::size_t endOfQuoted(char quote) const {
        for (std::size_t at = m_at + 1; at < m_text.size(); ++at) {
            if (m_text[at] == '\\') {
                ++at;
            } else if (m_text[at] == quote) {
                return at + 1;
            } else if (m_text[at] == '\n') {
                return at;
            }
        }
        return m_text.size();
    }

    [[nodiscard]] bool isRaw() const {
        if (m_at == 0 || m_text[m_at - 1] != 'R') {
            return false;
        }
        std::size_t start = m_at - 1;
        while (start > 0 && isWordLetter(m_text[start - 1])) {
            --start;
        }
        const std::string_view prefix = m_text.substr(start, m_at - start);
        return prefix == "R" || prefix == "LR" || prefix == "uR" || prefix == "UR" || prefix == "u8R";
    }

    /// Between digits: 1'000'000.
    [[nodiscard]] bool isDigitSeparator() const {
        std::size_t start = m_at;
        while (start > 0 && (isWordLetter(m_text[start - 1]) || m_text[start - 1] == '\'')) {
            --start;
        }
        return start < m_at && std::isdigit(static_cast<unsigned char>(m_text[start])) != 0;
    }

    void literal() {
        const std::size_t end = endOfQuoted('"');
        const std::size_t length = end - m_at >= 2 ? end - m_at - 2 : 0;
        take(m_text.substr(m_at + 1, length), end);
    }

    void rawLiteral() {
        const std::size_t open = std::min(m_text.find('(', m_at), m_text.size());
        const std::string close = ')' + std::string(m_text.substr(m_at + 1, open - m_at - 1)) + '"';
        const std::size_t end = m_text.find(close, open);
        if (end == std::string_view::npos) {
            take(m_text.substr(m_at + 1), m_text.size());
        } else {
            take(m_text.substr(open + 1, end - open - 1), end + close.size());
        }
    }

    void take(std::string_view content, std::size_t end) {
        if (m_isAfterLiteral) {
            m_result.literals.back().text += content;
        } else {
            m_result.literals.push_back({m_line, std::string(content)});
        }
        blankUntil(end);
        m_isAfterLiteral = true;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    bool m_isAfterLiteral = false;
    CodeText m_result;
};

}  // namespace

std::vector<SourceFile> sourceFiles(const std::vector<std::string>& folders,
                                    const std::vector<std::string>& endings) {
    namespace fs = std::filesystem;
    const fs::path root = HEARTH_SOURCE_DIR;
    std::vector<SourceFile> files;
    for (const auto& folder : folders) {
        if (!fs::is_directory(root / folder)) {
            continue;
        }
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            const std::string name = entry.path().filename().string();
            const bool isWanted = std::any_of(endings.begin(), endings.end(), [&](const std::string& ending) {
                return name.size() >= ending.size() && name.substr(name.size() - ending.size()) == ending;
            });
            if (entry.is_regular_file() && isWanted) {
                files.push_back({fs::relative(entry.path(), root).generic_string(), readFile(entry.path())});
            }
        }
    }
    std::sort(files.begin(), files.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
    return files;
}

CodeText takeApart(std::string_view text) {
    return Scanner(text).run();
}

std::size_t lineAt(std::string_view text, std::size_t place) {
    const std::string_view before = text.substr(0, place);
    return static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')) + 1;
}

std::size_t lineCount(std::string_view text) {
    const auto ends = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
    return text.empty() || text.back() == '\n' ? ends : ends + 1;
}

}  // namespace hearth::testing

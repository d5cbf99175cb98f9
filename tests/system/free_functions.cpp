// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/system/free_functions.h"

#include <algorithm>
#include <cctype>
#include <regex>
#include <set>

namespace hearth::testing {
namespace {

std::vector<std::string_view> splitLines(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        lines.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

std::string_view trimmed(std::string_view text) {
    const std::size_t first = std::min(text.find_first_not_of(" \t\n"), text.size());
    const std::size_t last = text.find_last_not_of(" \t\n");
    return last == std::string_view::npos ? std::string_view() : text.substr(first, last - first + 1);
}

/// The /// lines directly above `line` (from 1), joined.
std::string docAbove(const std::vector<std::string_view>& lines, std::size_t line) {
    std::size_t first = line - 1;
    while (first > 0 && trimmed(lines[first - 1]).substr(0, 3) == "///") {
        --first;
    }
    std::string doc;
    for (std::size_t at = first; at + 1 < line; ++at) {
        doc += ' ';
        doc += trimmed(trimmed(lines[at]).substr(3));
    }
    return doc;
}

/// Past the bracket that closes the one at `open`.
std::size_t pastClosing(std::string_view code, std::size_t open, char opening, char closing) {
    int depth = 0;
    for (std::size_t at = open; at < code.size(); ++at) {
        depth += code[at] == opening ? 1 : (code[at] == closing ? -1 : 0);
        if (depth == 0) {
            return at + 1;
        }
    }
    return code.size();
}

/// Without attributes, template parameters and arguments, whose parentheses are not the function's: `template
/// <class T> std::function<int(T)> f(T t)` declares f.
std::string withoutAngles(std::string_view head) {
    std::string plain;
    for (std::size_t at = 0; at < head.size();) {
        if (head.substr(at, 2) == "[[") {
            at = std::min(head.find("]]", at), head.size() - 2) + 2;
        } else if (head[at] == '<') {
            at = pastClosing(head, at, '<', '>');
            plain += ' ';
        } else {
            plain += head[at++];
        }
    }
    return plain;
}

/// The name of the function that a declaration's head declares; empty when it declares something else.
std::string functionName(std::string_view head) {
    head = head.substr(0, head.find('{'));  // what stands in braces are members, values or default arguments
    static const std::regex operatorHead(R"(\boperator\s*(\(\)|[^\s(]+|\s\w+)\s*\()");
    static const std::regex other(R"(^\s*(using|typedef|static_assert|friend|class|struct|union|enum)\b)");
    static const std::regex named(R"(([A-Za-z_]\w*)\s*$)");
    const std::string whole(head);
    std::smatch found;
    if (std::regex_search(whole, found, operatorHead)) {
        return "operator" + std::string(trimmed(found[1].str()));
    }
    const std::string plain = withoutAngles(head);
    const std::size_t paren = plain.find('(');
    const std::string before = plain.substr(0, paren);
    if (paren == std::string::npos || std::regex_search(plain, other) ||
        before.find_first_of("={") != std::string::npos || !std::regex_search(before, found, named)) {
        return "";
    }
    const std::string name = found[1];
    // A constant that is made by its constructor: `inline constexpr Unit kBar(1e5);`
    const bool isConstant =
        name.size() > 1 && name[0] == 'k' && std::isupper(static_cast<unsigned char>(name[1])) != 0;
    return isConstant ? "" : name;
}

/// Goes through a header's code, declaration by declaration; namespaces are entered, all other braces are
/// passed over.
class Declarations {
  public:
    explicit Declarations(std::string_view header)
        : m_lines(splitLines(header)), m_code(takeApart(header).code) {}

    std::vector<FreeFunction> run() {
        static const std::regex isNamespace(R"(^\s*(inline\s+)?namespace\b[^=]*$)");
        static const std::regex isType(R"(\b(class|struct|union|enum)\b[^()]*$)");
        std::size_t start = skipToCode(0);
        for (std::size_t at = start; at < m_code.size();) {
            const std::string head = m_code.substr(start, at - start);
            const char c = m_code[at];
            if (c == '{' && std::regex_match(head, isNamespace)) {
                at = start = skipToCode(at + 1);
            } else if (c == '}') {  // of a namespace
                at = start = skipToCode(at + 1);
            } else if (c == '{') {
                at = pastClosing(m_code, at, '{', '}');
                const bool isBody = !functionName(head).empty() && !std::regex_search(head, isType);
                if (isBody) {
                    keep(head, start, at - 1);
                    at = start = skipToCode(at);
                }
            } else if (c == '(') {
                at = pastClosing(m_code, at, '(', ')');
            } else if (c == ';') {
                keep(head, start, at);
                at = start = skipToCode(at + 1);
            } else {
                ++at;
            }
        }
        return std::move(m_functions);
    }

  private:
    /// The next place that is neither blank nor a preprocessor line.
    [[nodiscard]] std::size_t skipToCode(std::size_t at) const {
        while (at < m_code.size()) {
            at = std::min(m_code.find_first_not_of(" \t\n", at), m_code.size());
            if (at < m_code.size() && m_code[at] == '#') {
                at = std::min(m_code.find('\n', at), m_code.size());
                continue;
            }
            break;
        }
        return at;
    }

    void keep(const std::string& head, std::size_t start, std::size_t last) {
        const std::size_t line = lineAt(m_code, start);
        std::string doc = docAbove(m_lines, line);
        if (doc.empty() && line == m_lastLine + 1) {
            doc = m_lastDoc;
        }
        if (std::string name = functionName(head); !name.empty()) {
            m_functions.push_back({std::move(name), line, doc});
        }
        m_lastDoc = std::move(doc);
        m_lastLine = lineAt(m_code, last);
    }

    std::vector<std::string_view> m_lines;
    std::string m_code;
    std::string m_lastDoc;
    std::size_t m_lastLine = 0;
    std::vector<FreeFunction> m_functions;
};

bool namesASource(const std::string& doc) {
    static const std::regex source(R"(\bSource:\s*\w)");
    return std::regex_search(doc, source);
}

std::set<std::string> wordsOf(const std::string& code) {
    static const std::regex word(R"([A-Za-z_]\w*)");
    std::set<std::string> words;
    for (auto it = std::sregex_iterator(code.begin(), code.end(), word); it != std::sregex_iterator(); ++it) {
        words.insert(it->str());
    }
    return words;
}

}  // namespace

std::vector<FreeFunction> freeFunctions(std::string_view header) {
    return Declarations(header).run();
}

std::string namespaceDoc(std::string_view header) {
    const auto lines = splitLines(header);
    for (std::size_t at = 0; at < lines.size(); ++at) {
        if (lines[at].substr(0, 10) == "namespace ") {
            return docAbove(lines, at + 1);
        }
    }
    return "";
}

std::vector<std::string> sourceSlips(const SourceFile& header) {
    std::vector<std::string> slips;
    if (namesASource(namespaceDoc(header.text))) {
        return slips;
    }
    for (const auto& function : freeFunctions(header.text)) {
        if (!namesASource(function.doc)) {
            slips.push_back(
                header.path + ':' + std::to_string(function.line) + ": " + function.name +
                ": no \"Source: ...\" in the /// block directly above it (or above the declarations "
                "that it follows without an empty line, or above the file's namespace). Name the "
                "publication and its clause, or \"textbook\", \"common practice, no source\", \"from "
                "memory\", \"none needed: \" and why");
        }
    }
    return slips;
}

std::vector<std::string> untestedSlips(const SourceFile& header, const std::vector<SourceFile>& tests) {
    std::set<std::string> used;
    for (const auto& test : tests) {
        used.merge(wordsOf(takeApart(test.text).code));
    }
    std::vector<std::string> slips;
    std::set<std::string> told;
    for (const auto& function : freeFunctions(header.text)) {
        const bool isOperator = function.name.substr(0, 8) == "operator";
        if (!isOperator && !used.contains(function.name) && told.insert(function.name).second) {
            slips.push_back(header.path + ':' + std::to_string(function.line) + ": " + function.name +
                            ": no test of tests/" + header.path.substr(0, header.path.rfind('/')) +
                            " uses it by name");
        }
    }
    return slips;
}

}  // namespace hearth::testing

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/system/function_length.h"

#include "tests/system/source_text.h"

#include <algorithm>
#include <cctype>
#include <regex>

namespace hearth::testing {
namespace {

constexpr std::size_t kLongestAccess = 80;  // "Q_OBJECT", blanks and "private Q_SLOTS" are shorter

enum class Block { Scope, Function, Other };

/// Preprocessor lines, with the lines that they continue on, are no part of any head or body.
std::string withoutDirectives(std::string code) {
    bool isDirective = false;
    for (std::size_t start = 0; start < code.size();) {
        const std::size_t end = std::min(code.find('\n', start), code.size());
        const std::size_t first = std::min(code.find_first_not_of(" \t", start), end);
        isDirective = isDirective || (first < end && code[first] == '#');
        const bool goesOn = isDirective && end > start && code[end - 1] == '\\';
        if (isDirective) {
            std::fill(code.begin() + static_cast<std::ptrdiff_t>(start),
                      code.begin() + static_cast<std::ptrdiff_t>(end), ' ');
        }
        isDirective = goesOn;
        start = end + 1;
    }
    return code;
}

/// `head` without template parameters and attributes, whose words and brackets say nothing of what follows.
std::string plainHead(std::string_view head) {
    std::string plain;
    for (std::size_t at = 0; at < head.size();) {
        if (head.substr(at, 2) == "[[") {
            at = std::min(head.find("]]", at), head.size() - 2) + 2;
            continue;
        }
        if (head.substr(at, 8) == "template") {
            std::size_t open = std::min(head.find('<', at), head.size());
            int depth = 0;
            do {
                if (open < head.size()) {
                    depth += head[open] == '<' ? 1 : (head[open] == '>' ? -1 : 0);
                }
                ++open;
            } while (depth > 0 && open < head.size());
            at = std::min(open, head.size());
            continue;
        }
        plain += head[at++];
    }
    return plain;
}

int depthAtEnd(std::string_view text) {
    int depth = 0;
    for (const char c : text) {
        depth += c == '(' ? 1 : (c == ')' ? -1 : 0);
    }
    return depth;
}

/// Whether the brace after `head` opens an initializer of a constructor's list, as in `A() : m_b{1} {`.
bool isMemberInitializer(const std::string& head) {
    const std::size_t parameters = head.find(')');
    if (parameters == std::string::npos) {
        return false;
    }
    const std::string_view rest = std::string_view(head).substr(parameters);
    bool hasColon = false;
    for (std::size_t at = 0; at < rest.size(); ++at) {
        const bool isDouble = rest.substr(at, 2) == "::";
        hasColon = hasColon || (rest[at] == ':' && !isDouble);
        at += isDouble ? 1 : 0;
    }
    const std::size_t last = head.find_last_not_of(" \t\n");
    const char before = last == std::string::npos ? ' ' : head[last];
    return hasColon &&
           (std::isalnum(static_cast<unsigned char>(before)) != 0 || before == '_' || before == '>');
}

Block blockAfter(std::string_view wholeHead) {
    static const std::regex scope(R"(\b(namespace|class|struct|union)\b)");
    static const std::regex enumeration(R"(\benum\b)");
    const std::string head = plainHead(wholeHead);
    const std::size_t paren = head.find('(');
    const std::string start = head.substr(0, paren);
    if (std::regex_search(start, enumeration)) {
        return Block::Other;
    }
    if (std::regex_search(start, scope) ||
        (paren == std::string::npos && start.find("extern") != std::string::npos)) {
        return Block::Scope;
    }
    const bool isCall = paren == std::string::npos || depthAtEnd(head) > 0;
    return isCall || isMemberInitializer(head) ? Block::Other : Block::Function;
}

/// Whether the colon after `head` ends an access specifier, which is no part of the function that follows.
bool isAccess(std::string_view head) {
    static const std::regex access(
        R"(\s*(Q_OBJECT\s+)?(public|protected|private|Q_SIGNALS)(\s+Q_SLOTS)?\s*)");
    return std::regex_match(head.begin(), head.end(), access);
}

std::size_t closingBrace(std::string_view code, std::size_t open) {
    int depth = 0;
    for (std::size_t at = open; at < code.size(); ++at) {
        depth += code[at] == '{' ? 1 : (code[at] == '}' ? -1 : 0);
        if (depth == 0) {
            return at;
        }
    }
    return code.size();
}

std::string onOneLine(std::string_view head) {
    std::string line;
    for (const char c : head) {
        const bool isBlank = std::isspace(static_cast<unsigned char>(c)) != 0;
        if (!isBlank || (!line.empty() && line.back() != ' ')) {
            line += isBlank ? ' ' : c;
        }
    }
    return line.substr(0, 80);
}

FunctionLength measured(std::string_view code, std::size_t headStart, std::size_t open, std::size_t close) {
    const std::string_view head = code.substr(headStart, open - headStart);
    const std::size_t first = headStart + std::min(head.find_first_not_of(" \t\n"), head.size());
    FunctionLength function;
    function.head = onOneLine(head);
    function.line = lineAt(code, first);
    function.lines = lineAt(code, close) - function.line + 1;
    return function;
}

}  // namespace

std::vector<FunctionLength> functionLengths(std::string_view text) {
    const std::string code = withoutDirectives(takeApart(text).code);
    std::vector<FunctionLength> functions;
    std::size_t headStart = 0;
    for (std::size_t at = 0; at < code.size(); ++at) {
        const char c = code[at];
        if (c == ':' && at - headStart < kLongestAccess &&
            isAccess(std::string_view(code).substr(headStart, at - headStart))) {
            headStart = at + 1;
        }
        if (c == '}' ||
            (c == ';' && depthAtEnd(std::string_view(code).substr(headStart, at - headStart)) <= 0)) {
            headStart = at + 1;
        }
        if (c != '{') {
            continue;
        }
        const Block block = blockAfter(std::string_view(code).substr(headStart, at - headStart));
        if (block == Block::Scope) {
            headStart = at + 1;
            continue;
        }
        const std::size_t close = closingBrace(code, at);
        if (block == Block::Function) {
            functions.push_back(measured(code, headStart, at, close));
            headStart = close + 1;
        }
        at = close;
    }
    return functions;
}

}  // namespace hearth::testing

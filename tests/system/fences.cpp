// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/system/fences.h"

#include <algorithm>
#include <map>
#include <optional>
#include <regex>
#include <set>
#include <sstream>
#include <utility>

namespace hearth::testing {
namespace {

using Folders = std::set<std::string>;

Folders operator+(Folders a, const Folders& b) {
    a.insert(b.begin(), b.end());
    return a;
}

/// Who may include whom; a folder may always include itself and core/base. All else is forbidden.
const std::map<std::string, Folders>& layers() {
    static const Folders computing{"core/gas", "core/pipework", "core/tightness", "core/burner", "core/air"};
    static const Folders ground{"core/quantity", "core/calendar", "core/rulebook"};
    static const Folders belowRecord = ground + computing + Folders{"core/register", "core/judging"};
    static const Folders upToRecord = belowRecord + Folders{"core/record"};
    static const Folders wholeCore = upToRecord + Folders{"core/store", "core/exchange"};
    static const Folders placeNeeds =
        wholeCore + Folders{"ui/input", "ui/paper", "ui/words", "ui/look", "ui/shell", "ui"};
    static const std::map<std::string, Folders> table{
        {"core/base", {}},
        {"core/quantity", {}},
        {"core/calendar", {}},
        {"core/rulebook", {"core/quantity", "core/calendar"}},
        {"core/gas", ground},
        {"core/pipework", ground},
        {"core/air", ground},
        {"core/tightness", ground + Folders{"core/pipework"}},
        {"core/burner", ground + Folders{"core/gas"}},
        {"core/register", ground},
        {"core/judging", ground + computing + Folders{"core/register"}},
        {"core/record", belowRecord},
        {"core/store", upToRecord},
        {"core/exchange", upToRecord},
        {"resources", {}},
        {"ui/look", upToRecord + Folders{"resources"}},
        {"ui/words", upToRecord + Folders{"resources"}},
        {"ui/paper", upToRecord + Folders{"ui/look", "ui/words", "ui", "resources"}},
        {"ui/input", upToRecord + Folders{"ui/look", "ui/words", "ui"}},
        {"ui/shell", wholeCore + Folders{"ui/look", "ui/words", "ui/paper", "ui/input", "ui"}},
        {"ui/gauge", placeNeeds},
        {"ui/visit", placeNeeds + Folders{"ui/gauge"}},
        {"ui/premises", placeNeeds},
        {"ui/due", placeNeeds},
        {"ui/records", placeNeeds},
        {"ui/rulebook", placeNeeds},
        {"ui/firm", placeNeeds + Folders{"ui/gauge"}},
        {"ui/workings", placeNeeds},
        {"ui", {}},
    };
    return table;
}

bool startsWith(std::string_view text, std::string_view start) {
    return text.substr(0, start.size()) == start;
}

bool endsWith(std::string_view text, std::string_view end) {
    return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

struct Include {
    std::size_t line;
    bool isQuoted;
    std::string path;
};

std::string_view withoutBlanksBefore(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of(" \t"), text.size()));
    return text;
}

/// `#include <path>` or `#include "path"`, blanks where the language allows them.
std::optional<Include> includeOn(std::string_view line, std::size_t number) {
    constexpr std::string_view kWord = "include";
    line = withoutBlanksBefore(line);
    if (line.empty() || line.front() != '#') {
        return std::nullopt;
    }
    line = withoutBlanksBefore(line.substr(1));
    if (!startsWith(line, kWord)) {
        return std::nullopt;
    }
    line = withoutBlanksBefore(line.substr(kWord.size()));
    const bool isQuoted = startsWith(line, "\"");
    const std::size_t end = line.find(isQuoted ? '"' : '>', 1);
    if ((!isQuoted && !startsWith(line, "<")) || end == std::string_view::npos) {
        return std::nullopt;
    }
    return Include{number, isQuoted, std::string(line.substr(1, end - 1))};
}

std::vector<Include> includesOf(const SourceFile& file) {
    std::vector<Include> includes;
    std::istringstream code(takeApart(file.text).code);
    std::size_t number = 0;
    for (std::string line; std::getline(code, line);) {
        if (auto include = includeOn(line, ++number)) {
            includes.push_back(std::move(*include));
        }
    }
    return includes;
}

std::string slip(const SourceFile& file, std::size_t line, const std::string& what) {
    return file.path + ':' + std::to_string(line) + ": " + what;
}

std::string nameWithoutModule(const std::string& header) {
    const std::size_t slash = header.rfind('/');
    return slash == std::string::npos ? header : header.substr(slash + 1);
}

bool isQtHeader(const std::string& header) {
    static const std::regex pattern(R"((Q[A-Z]|Qt[A-Z]\w*/|q[a-z]+\.h$).*)");
    return std::regex_match(header, pattern) && header != "qrencode.h";
}

bool isSqlHeader(const std::string& header) {
    return startsWith(header, "QtSql") || startsWith(nameWithoutModule(header), "QSql") ||
           header == "sqlite3.h";
}

bool hasQt(const std::string& folder) {
    return folder == "core/store" || folder == "core/exchange" || !startsWith(folder, "core/");
}

/// Why this header may not be included from that folder; empty when it may.
std::string whyForeign(const std::string& folder, const Include& include) {
    static const std::set<std::string> unreadable{"format", "ranges", "source_location"};
    static const std::regex umbrella(R"(Qt(\w+/Qt)?(Core|Gui|Widgets|Sql|Svg|PrintSupport|Test))");
    const std::string& header = include.path;
    if (unreadable.contains(header)) {
        return "clang-tidy 14 can't read it";
    }
    if (std::regex_match(header, umbrella)) {
        return "an umbrella header";
    }
    if (isSqlHeader(header) && folder != "core/store") {
        return "only core/store knows SQL";
    }
    if (isQtHeader(header) && !hasQt(folder)) {
        return "this folder is plain C++";
    }
    const bool isPrinter = nameWithoutModule(header) == "QPrinter" || header == "qprinter.h";
    return isPrinter && folder != "ui/paper" ? "the printer is ui/paper's" : "";
}

/// Why `folder` may not use what `target` holds; empty when it may.
std::string whyNotBelow(const std::string& folder, const std::string& target) {
    const auto row = layers().find(folder);
    if (folder == "app" || target == folder || (target == "core/base" && folder != "ui")) {
        return "";
    }
    if (row == layers().end()) {
        return folder + " is not in the table of layers";
    }
    return row->second.contains(target) ? "" : folder + " may not use " + target;
}

std::string whyMisplaced(const std::string& folder, const Include& include) {
    const std::string& path = include.path;
    const bool isOurs = startsWith(path, "core/") || startsWith(path, "ui/") || startsWith(path, "app/") ||
                        startsWith(path, "resources/");
    if (!isOurs) {
        return include.isQuoted && !endsWith(path, ".moc") ? "own headers are named from the root" : "";
    }
    if (!include.isQuoted) {
        return "own headers stand in quotes";
    }
    return whyNotBelow(folder, folderOf(path));
}

}  // namespace

std::string folderOf(const std::string& path) {
    const std::size_t top = path.find('/');
    const std::size_t second = top == std::string::npos ? top : path.find('/', top + 1);
    const std::string first = path.substr(0, top);
    return first == "app" || first == "resources" || second == std::string::npos ? first
                                                                                 : path.substr(0, second);
}

std::vector<std::string> layerSlips(const SourceFile& file) {
    std::vector<std::string> slips;
    for (const auto& include : includesOf(file)) {
        if (const std::string why = whyMisplaced(folderOf(file.path), include); !why.empty()) {
            slips.push_back(slip(file, include.line, include.path + ": " + why));
        }
    }
    return slips;
}

std::vector<std::string> linkSlips(const SourceFile& file) {
    static const std::regex library(R"(\b(Hearth|Qt6)::(core_|ui_)?(\w+))");
    const std::string folder = folderOf(file.path);
    std::vector<std::string> slips;
    for (auto it = std::sregex_iterator(file.text.begin(), file.text.end(), library);
         it != std::sregex_iterator(); ++it) {
        const std::string layer = (*it)[2];
        const std::string name = (*it)[3];
        std::string why;
        if ((*it)[1] == "Hearth") {
            why = whyNotBelow(folder, layer.empty() ? name : layer.substr(0, layer.size() - 1) + '/' + name);
        } else if (!hasQt(folder)) {
            why = "this folder is plain C++";
        } else if (name == "Sql" && folder != "core/store") {
            why = "only core/store knows SQL";
        }
        if (!why.empty()) {
            slips.push_back(slip(file, lineAt(file.text, static_cast<std::size_t>(it->position())),
                                 it->str() + ": " + why));
        }
    }
    return slips;
}

std::vector<std::string> foreignHeaderSlips(const SourceFile& file) {
    std::vector<std::string> slips;
    for (const auto& include : includesOf(file)) {
        if (const std::string why = whyForeign(folderOf(file.path), include); !why.empty()) {
            slips.push_back(slip(file, include.line, include.path + ": " + why));
        }
    }
    return slips;
}

bool includesPrinter(const SourceFile& file) {
    const auto includes = includesOf(file);
    return std::any_of(includes.begin(), includes.end(),
                       [](const Include& include) { return nameWithoutModule(include.path) == "QPrinter"; });
}

std::vector<std::string> colourSlips(const SourceFile& file) {
    static const std::regex inText(R"(#([0-9A-Fa-f]{8}|[0-9A-Fa-f]{6}|[0-9A-Fa-f]{3,4})(?![0-9A-Za-z]))");
    static const std::regex inCode(
        R"(\bQt::((dark|light)?(Red|Green|Blue|Cyan|Magenta|Yellow|Gray)|red|green|blue|cyan|magenta|yellow|gray|black|white)\b)"
        R"(|\bQColor(Constants::|\s+\w+)?\s*[({]\s*[0-9]|\bQColorConstants::|\bqRgba?\s*\(\s*[0-9]|\bQColor::from\w+\(\s*[0-9])");
    if (folderOf(file.path) == "ui/look") {
        return {};
    }
    std::vector<std::string> slips;
    const CodeText parts = takeApart(file.text);
    for (const auto& literal : parts.literals) {
        if (literal.text.find('#') != std::string::npos && std::regex_search(literal.text, inText)) {
            slips.push_back(slip(file, literal.line, "a colour outside ui/look: " + literal.text));
        }
    }
    std::istringstream code(parts.code);
    std::size_t number = 0;
    for (std::string line; std::getline(code, line);) {
        ++number;
        std::smatch found;
        const bool isWorthALook = line.find("Qt::") != std::string::npos ||
                                  line.find("QColor") != std::string::npos ||
                                  line.find("qRgb") != std::string::npos;
        if (isWorthALook && std::regex_search(line, found, inCode)) {
            slips.push_back(slip(file, number, "a colour outside ui/look: " + found.str()));
        }
    }
    return slips;
}

std::vector<std::string> sqlSlips(const SourceFile& file) {
    // In capitals, as the project writes SQL: small letters would find sentences ("select a name from the
    // list").
    static const std::regex statement(
        R"(\b(SELECT|INSERT\s+(OR|INTO)|UPDATE\s+\w+\s+SET|DELETE\s+FROM|(CREATE|DROP|ALTER)\s+(TABLE|INDEX|VIEW|TRIGGER))"
        R"(|PRAGMA|VACUUM|BEGIN\s+(IMMEDIATE|EXCLUSIVE|TRANSACTION)|ROLLBACK|SAVEPOINT)\b)");
    if (folderOf(file.path) == "core/store") {
        return {};
    }
    std::vector<std::string> slips;
    for (const auto& literal : takeApart(file.text).literals) {
        if (std::regex_search(literal.text, statement)) {
            slips.push_back(slip(file, literal.line, "SQL outside core/store: " + literal.text));
        }
    }
    return slips;
}

std::vector<std::string> formSlips(const SourceFile& file) {
    std::vector<std::string> slips;
    const std::size_t firstEnd = file.text.find('\n');
    std::string head = file.text.substr(0, firstEnd);
    if (startsWith(head, "#!") && firstEnd != std::string::npos) {  // a script's second line
        head = file.text.substr(firstEnd + 1, file.text.find('\n', firstEnd + 1) - firstEnd - 1);
    }
    if (!endsWith(head, "SPDX-License-Identifier: GPL-3.0-or-later")) {
        slips.push_back(slip(file, 1, "the licence line is missing"));
    }
    const std::string code = takeApart(file.text).code;
    if (endsWith(file.path, ".h") && code.find("\n#pragma once\n") == std::string::npos) {
        slips.push_back(slip(file, 1, "#pragma once is missing"));
    }
    return slips;
}

std::vector<std::string> topLevelSlips(const std::vector<std::string>& paths) {
    static const std::set<std::string> known{"CMakeLists.txt", "README.md", "DEVELOPERS.md", "app",
                                             "core",           "ui",        "resources",     "tests",
                                             "translations"};
    std::set<std::string> slips;
    for (const auto& path : paths) {
        const std::string top = path.substr(0, path.find('/'));
        if (!top.empty() && top.front() != '.' && !known.contains(top)) {
            slips.insert(top);
        }
    }
    return {slips.begin(), slips.end()};
}

}  // namespace hearth::testing

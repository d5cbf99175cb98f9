// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/difference.h"

#include "core/record/pairing.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace hearth::record {
namespace {

/// One thing that a page says, with what it is known by.
struct Said {
    std::string part;
    std::string caption;
    std::string text;
};

std::string joinedLines(const std::vector<std::string>& lines) {
    std::string text;
    for (const auto& line : lines) {
        if (!line.empty()) {
            text += (text.empty() ? "" : "\n") + line;
        }
    }
    return text;
}

/// In two languages a line is told as one: "date / dyddiad".
std::string inEachLine(const std::string& text) {
    std::string told;
    for (std::size_t from = 0; from <= text.size();) {
        const auto end = std::min(text.find('\n', from), text.size());
        told += (from > 0 ? "\n" : "") + inOneLine(std::string_view(text).substr(from, end - from));
        from = end + 1;
    }
    return told;
}

std::string outcomeOf(rulebook::Outcome outcome) {
    return std::string(rulebook::outcomeText(outcome));
}

/// Enough of a picture's digest to tell it from another by eye.
constexpr std::size_t kShortDigest = 12;

/// Takes a document apart.
class Taken {
  public:
    explicit Taken(const Document& document) {
        for (const auto& text : {document.title, document.subtitle, document.firm, document.caution}) {
            add({}, {}, text);
        }
        for (const auto& block : document.blocks) {
            std::visit([this](const auto& one) { take(one); }, block);
        }
    }
    [[nodiscard]] const std::vector<Said>& all() const { return m_all; }

  private:
    void add(const std::string& part, const std::string& caption, const std::string& text) {
        if (!text.empty()) {
            m_all.push_back({inOneLine(part), inOneLine(caption), inEachLine(text)});
        }
    }
    void take(const Headline& headline) {
        std::vector<std::string> lines{headline.sentence};
        lines.insert(lines.end(), headline.details.begin(), headline.details.end());
        add({}, {}, joinedLines(lines));
    }
    void take(const FieldGrid& grid) {
        for (const auto& field : grid.fields) {
            add(grid.title, field.caption, joinedLines(field.lines));
        }
    }
    void take(const Table& table) {
        for (const auto& row : table.rows) {
            takeRow(table, row, row.empty() ? std::string() : row.front());
        }
        takeRow(table, table.total, table.total.empty() ? std::string() : table.total.front());
        add(table.title, {}, table.note);
    }
    void takeRow(const Table& table, const std::vector<std::string>& row, const std::string& name) {
        for (std::size_t i = 1; i < row.size(); ++i) {
            const std::string column = i < table.columns.size() ? table.columns[i].title : std::string();
            add(table.title, name + (column.empty() ? "" : ", " + column), row[i]);
        }
        if (row.size() == 1) {
            add(table.title, {}, name);
        }
    }
    void take(const FindingList& list) {
        for (const auto& line : list.findings) {
            std::vector<std::string> lines{line.measured, line.why};
            lines.insert(lines.end(), line.notes.begin(), line.notes.end());
            lines.insert(lines.end(), line.sources.begin(), line.sources.end());
            const std::string said = joinedLines(lines);
            add(list.title, line.title, said.empty() ? outcomeOf(line.outcome) : said);
        }
    }
    void take(const Paragraph& paragraph) { add(paragraph.title, {}, paragraph.text); }
    void take(const Statements& statements) {
        for (const auto& one : statements.statements) {
            std::vector<std::string> lines{one.text};
            lines.insert(lines.end(), one.details.begin(), one.details.end());
            add(statements.title, one.caption, joinedLines(lines));
        }
    }
    void take(const Alert& alert) { add({}, alert.word, joinedLines({alert.grade, alert.meaning})); }
    /// Not its date: another letter is written on another day.
    void take(const LetterHead& head) {
        add({}, {}, joinedLines(head.sender));
        add({}, {}, joinedLines(head.recipient));
        add({}, {}, head.subject);
    }
    void take(const WriteIn&) {}  // empty lines to write on say nothing
    void take(const Plots&) {}    // drawn from what is told in figures beside it
    void take(const Pictures& pictures) {
        for (const auto& one : pictures.pictures) {
            add(pictures.title, one.of, joinedLines({one.caption, one.digest.substr(0, kShortDigest)}));
        }
    }
    void take(const Diagram& diagram) {
        for (const auto& section : diagram.sections) {
            auto lines = section.end;
            lines.insert(lines.begin(), {section.above, section.below});
            add({}, section.number, joinedLines(lines));
        }
    }
    void take(const Signatures& signatures) {
        for (const auto& one : signatures.signatures) {
            add({}, one.caption, joinedLines({one.name, one.detail}));
        }
    }

    std::vector<Said> m_all;
};

/// Part, caption, and the how manyeth of that name it is.
using Key = std::tuple<std::string, std::string, int>;

std::vector<std::pair<Key, std::string>> keyed(const std::vector<Said>& all) {
    std::map<std::pair<std::string, std::string>, int> seen;
    std::vector<std::pair<Key, std::string>> result;
    for (const auto& one : all) {
        const int which = seen[{one.part, one.caption}]++;
        result.emplace_back(Key{one.part, one.caption, which}, one.text);
    }
    return result;
}

}  // namespace

std::vector<Difference> differencesOf(const Document& before, const Document& after) {
    const auto old = keyed(Taken(before).all());
    const auto now = keyed(Taken(after).all());
    const std::map<Key, std::string> oldByKey(old.begin(), old.end());
    const std::map<Key, std::string> nowByKey(now.begin(), now.end());
    std::vector<Difference> differences;
    for (const auto& [key, text] : now) {
        const auto was = oldByKey.find(key);
        const std::string beforeText = was == oldByKey.end() ? std::string() : was->second;
        if (beforeText != text) {
            differences.push_back({std::get<0>(key), std::get<1>(key), beforeText, text});
        }
    }
    for (const auto& [key, text] : old) {
        if (nowByKey.find(key) == nowByKey.end()) {
            differences.push_back({std::get<0>(key), std::get<1>(key), text, {}});
        }
    }
    return differences;
}

}  // namespace hearth::record

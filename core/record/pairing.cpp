// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/pairing.h"

#include <algorithm>
#include <cctype>
#include <utility>

namespace hearth::record {
namespace {

using Lines = std::vector<std::string>;

/// "25 November 2026": a value, whose month's name in another language would say the same twice.
bool isDateAlone(std::string_view text) {
    const auto first = text.find(' ');
    const auto last = text.rfind(' ');
    const auto isNumber = [](std::string_view part) {
        return !part.empty() && std::all_of(part.begin(), part.end(),
                                            [](unsigned char letter) { return std::isdigit(letter) != 0; });
    };
    if (first == std::string_view::npos || first == last) {
        return false;
    }
    const auto month = text.substr(first + 1, last - first - 1);
    return first <= 2 && text.size() - last == 5 && isNumber(text.substr(0, first)) &&
           isNumber(text.substr(last + 1)) &&
           std::all_of(month.begin(), month.end(),
                       [](unsigned char letter) { return std::isalpha(letter) != 0; });
}

/// A term of the law stays in English, with its translation after it in brackets: below the English only
/// that. "At Risk" and "At Risk (mewn perygl)" give "mewn perygl".
std::string withoutTerm(const std::string& first, const std::string& beside) {
    const std::size_t open = first.size() + 1;
    if (beside.size() < open + 2 || beside.compare(0, open + 1, first + " (") != 0) {
        return beside;
    }
    int depth = 0;
    for (std::size_t i = open; i < beside.size(); ++i) {
        depth += beside[i] == '(' ? 1 : beside[i] == ')' ? -1 : 0;
        if (depth == 0) {
            return i + 1 == beside.size() ? beside.substr(open + 1, i - open - 1) : beside;
        }
    }
    return beside;
}

/// The parts of a line that a middle dot divides.
std::vector<std::string_view> dottedParts(std::string_view line) {
    constexpr std::string_view kDot = " \u00B7 ";
    std::vector<std::string_view> parts;
    for (auto at = line.find(kDot); at != std::string_view::npos; at = line.find(kDot)) {
        parts.push_back(line.substr(0, at));
        line.remove_prefix(at + kDot.size());
    }
    parts.push_back(line);
    return parts;
}

/// Of a line in parts only those that differ: a name and a number beside a word stand once.
std::string differingParts(const std::string& first, const std::string& beside) {
    const auto here = dottedParts(first);
    const auto there = dottedParts(beside);
    if (here.size() != there.size()) {
        return beside;
    }
    std::string parts;
    for (std::size_t i = 0; i < here.size(); ++i) {
        if (here[i] != there[i]) {
            parts +=
                (parts.empty() ? "" : " \u00B7 ") + withoutTerm(std::string(here[i]), std::string(there[i]));
        }
    }
    return parts;
}

void pair(std::string& first, const std::string& beside) {
    if (first.empty()) {
        first = beside;
    } else if (!beside.empty() && beside != first && !isDateAlone(first)) {
        const std::string below = differingParts(first, beside);
        first += kBeside;
        first += below;
    }
}

/// Line by line; where there are not as many, all of the one and then all of the other.
void pair(Lines& first, const Lines& beside) {
    if (first == beside) {
        return;
    }
    if (first.size() != beside.size()) {
        first.insert(first.end(), beside.begin(), beside.end());
        return;
    }
    for (std::size_t i = 0; i < first.size(); ++i) {
        pair(first[i], beside[i]);
    }
}

void pair(CaptionedValue& first, const CaptionedValue& beside) {
    pair(first.caption, beside.caption);
    pair(first.lines, beside.lines);
}

void pair(Column& first, const Column& beside) {
    pair(first.title, beside.title);
}

void pair(FindingLine& first, const FindingLine& beside) {
    pair(first.title, beside.title);
    pair(first.measured, beside.measured);
    pair(first.why, beside.why);
    pair(first.notes, beside.notes);
    pair(first.sources, beside.sources);
}

void pair(Signature& first, const Signature& beside) {
    pair(first.caption, beside.caption);
    pair(first.name, beside.name);
    pair(first.detail, beside.detail);
}

void pair(Statement& first, const Statement& beside) {
    pair(first.caption, beside.caption);
    pair(first.text, beside.text);
    pair(first.details, beside.details);
}

void pair(WriteField& first, const WriteField& beside) {
    pair(first.caption, beside.caption);
    pair(first.ticks, beside.ticks);
}

/// Whether each part has one that answers it.
template <class Part>
bool answers(const std::vector<Part>& first, const std::vector<Part>& beside) {
    return first.size() == beside.size();
}

template <class Part>
void pairEach(std::vector<Part>& first, const std::vector<Part>& beside) {
    for (std::size_t i = 0; i < first.size(); ++i) {
        pair(first[i], beside[i]);
    }
}

bool pairBlock(Headline& first, const Headline& beside) {
    pair(first.sentence, beside.sentence);
    pair(first.details, beside.details);
    return true;
}

bool pairBlock(FieldGrid& first, const FieldGrid& beside) {
    if (!answers(first.fields, beside.fields)) {
        return false;
    }
    pair(first.title, beside.title);
    pairEach(first.fields, beside.fields);
    return true;
}

bool pairBlock(Table& first, const Table& beside) {
    const bool isSame = answers(first.columns, beside.columns) && answers(first.rows, beside.rows) &&
                        std::equal(first.rows.begin(), first.rows.end(), beside.rows.begin(),
                                   [](const Lines& a, const Lines& b) { return answers(a, b); });
    if (!isSame) {
        return false;
    }
    pair(first.title, beside.title);
    pairEach(first.columns, beside.columns);
    pairEach(first.rows, beside.rows);
    pair(first.total, beside.total);
    pair(first.note, beside.note);
    return true;
}

bool pairBlock(FindingList& first, const FindingList& beside) {
    if (!answers(first.findings, beside.findings)) {
        return false;
    }
    pair(first.title, beside.title);
    pairEach(first.findings, beside.findings);
    return true;
}

bool pairBlock(Paragraph& first, const Paragraph& beside) {
    pair(first.title, beside.title);
    pair(first.text, beside.text);
    return true;
}

bool pairBlock(Signatures& first, const Signatures& beside) {
    if (!answers(first.signatures, beside.signatures)) {
        return false;
    }
    pairEach(first.signatures, beside.signatures);
    return true;
}

bool pairBlock(Statements& first, const Statements& beside) {
    if (!answers(first.statements, beside.statements)) {
        return false;
    }
    pair(first.title, beside.title);
    pairEach(first.statements, beside.statements);
    return true;
}

bool pairBlock(Alert& first, const Alert& beside) {
    pair(first.word, beside.word);
    pair(first.grade, beside.grade);
    pair(first.meaning, beside.meaning);
    pair(first.toTick, beside.toTick);
    return true;
}

bool pairBlock(LetterHead& first, const LetterHead& beside) {
    pair(first.sender, beside.sender);
    pair(first.recipient, beside.recipient);
    pair(first.date, beside.date);
    pair(first.subject, beside.subject);
    return true;
}

bool pairBlock(WriteIn& first, const WriteIn& beside) {
    if (!answers(first.fields, beside.fields)) {
        return false;
    }
    pair(first.title, beside.title);
    pairEach(first.fields, beside.fields);
    return true;
}

template <class Named>
void pairNames(std::vector<Named>& first, const std::vector<Named>& beside) {
    for (std::size_t i = 0; i < first.size(); ++i) {
        pair(first[i].name, beside[i].name);
    }
}

/// Its words; what is drawn is the same in both.
bool pairPlot(Plot& first, const Plot& beside) {
    const bool isSame = answers(first.series, beside.series) && answers(first.limits, beside.limits) &&
                        answers(first.bands, beside.bands) && answers(first.marks, beside.marks) &&
                        answers(first.stretches, beside.stretches) &&
                        answers(first.x.ticks, beside.x.ticks) && answers(first.y.ticks, beside.y.ticks);
    if (!isSame) {
        return false;
    }
    pair(first.title, beside.title);
    pair(first.x.title, beside.x.title);
    pair(first.y.title, beside.y.title);
    for (std::size_t i = 0; i < first.x.ticks.size(); ++i) {
        pair(first.x.ticks[i].text, beside.x.ticks[i].text);
    }
    pairNames(first.series, beside.series);
    pairNames(first.limits, beside.limits);
    pairNames(first.bands, beside.bands);
    pairNames(first.marks, beside.marks);
    pairNames(first.stretches, beside.stretches);
    return true;
}

bool pairBlock(Plots& first, const Plots& beside) {
    bool isSame = answers(first.plots, beside.plots);
    for (std::size_t i = 0; isSame && i < first.plots.size(); ++i) {
        isSame = pairPlot(first.plots[i], beside.plots[i]);
    }
    pair(first.title, beside.title);
    pair(first.note, beside.note);
    return isSame;
}

bool pairBlock(Pictures& first, const Pictures& beside) {
    if (!answers(first.pictures, beside.pictures)) {
        return false;
    }
    pair(first.title, beside.title);
    for (std::size_t i = 0; i < first.pictures.size(); ++i) {
        pair(first.pictures[i].of, beside.pictures[i].of);
        pair(first.pictures[i].caption, beside.pictures[i].caption);
    }
    return true;
}

bool pairBlock(Diagram& first, const Diagram& beside) {
    if (!answers(first.sections, beside.sections) || !answers(first.notes, beside.notes)) {
        return false;
    }
    pair(first.title, beside.title);
    pair(first.start, beside.start);
    pair(first.goesOn, beside.goesOn);
    pairEach(first.notes, beside.notes);
    for (std::size_t i = 0; i < first.sections.size(); ++i) {
        auto& section = first.sections[i];
        const auto& other = beside.sections[i];
        if (!answers(section.end, other.end)) {
            return false;
        }
        pair(section.above, other.above);
        pair(section.below, other.below);
        pairEach(section.end, other.end);
    }
    return true;
}

bool pairBlock(Block& first, const Block& beside) {
    return std::visit(
        [&beside](auto& block) {
            const auto* answer = std::get_if<std::decay_t<decltype(block)>>(&beside);
            return answer != nullptr && pairBlock(block, *answer);
        },
        first);
}

std::vector<Block> pairedBlocks(std::vector<Block> first, const std::vector<Block>& beside) {
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < std::max(first.size(), beside.size()); ++i) {
        const bool isPair = i < first.size() && i < beside.size() && pairBlock(first[i], beside[i]);
        if (i < first.size()) {
            blocks.push_back(std::move(first[i]));
        }
        if (!isPair && i < beside.size()) {
            blocks.push_back(beside[i]);
        }
    }
    return blocks;
}

}  // namespace

PartedText parted(std::string_view text) {
    const auto at = text.find(kBeside);
    return at == std::string_view::npos ? PartedText{text, {}}
                                        : PartedText{text.substr(0, at), text.substr(at + 1)};
}

std::string pairedText(const std::string& first, const std::string& beside) {
    std::string both = first;
    pair(both, beside);
    return both;
}

std::string inOneLine(std::string_view text) {
    const auto parts = parted(text);
    return std::string(parts.first) + (parts.beside.empty() ? "" : " / " + std::string(parts.beside));
}

Document pairedDocument(Document first, const Document& beside) {
    first.language += '+' + beside.language;
    pair(first.title, beside.title);
    pair(first.subtitle, beside.subtitle);
    pair(first.firm, beside.firm);
    pair(first.issued, beside.issued);
    pair(first.banner, beside.banner);
    pair(first.caution, beside.caution);
    pair(first.pageWord, beside.pageWord);
    pair(first.revisionWord, beside.revisionWord);
    pair(first.digestWord, beside.digestWord);
    pair(first.supersedes, beside.supersedes);
    first.blocks = pairedBlocks(std::move(first.blocks), beside.blocks);
    return first;
}

}  // namespace hearth::record

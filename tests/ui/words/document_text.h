// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"

#include <algorithm>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

/// Everything that stands in a document, for tests.
namespace hearth::testing {

class TextCollector {
  public:
    void add(const std::string& text) {
        if (!text.empty()) {
            texts.push_back(text);
        }
    }
    void add(const std::vector<std::string>& several) {
        for (const auto& text : several) {
            add(text);
        }
    }
    void operator()(const record::Headline& block) {
        add(block.sentence);
        add(block.details);
    }
    void operator()(const record::FieldGrid& block) {
        add(block.title);
        for (const auto& field : block.fields) {
            add(field.caption);
            add(field.lines);
        }
    }
    void operator()(const record::Table& block) {
        add(block.title);
        for (const auto& column : block.columns) {
            add(column.title);
        }
        for (const auto& row : block.rows) {
            add(row);
        }
        add(block.total);
        add(block.note);
    }
    void operator()(const record::FindingList& block) {
        add(block.title);
        for (const auto& finding : block.findings) {
            add(finding.title);
            add(finding.measured);
            add(finding.why);
            add(finding.notes);
            add(finding.sources);
        }
    }
    void operator()(const record::Paragraph& block) {
        add(block.title);
        add(block.text);
    }
    void operator()(const record::Statements& block) {
        add(block.title);
        for (const auto& statement : block.statements) {
            add(statement.caption);
            add(statement.text);
            add(statement.details);
        }
    }
    void operator()(const record::Signatures& block) {
        for (const auto& signature : block.signatures) {
            add(signature.caption);
            add(signature.name);
            add(signature.detail);
        }
    }
    void operator()(const record::Alert& block) {
        add(block.word);
        add(block.grade);
        add(block.toTick);
        add(block.meaning);
    }
    void operator()(const record::LetterHead& block) {
        add(block.sender);
        add(block.recipient);
        add(block.date);
        add(block.subject);
    }
    void operator()(const record::WriteIn& block) {
        add(block.title);
        for (const auto& field : block.fields) {
            add(field.caption);
            add(field.ticks);
        }
    }
    void operator()(const record::Plots& block) {
        add(block.title);
        for (const auto& plot : block.plots) {
            add(plot.title);
            for (const auto* axis : {&plot.y, &plot.x}) {
                add(axis->title);
                addEach(axis->ticks, [](const auto& tick) { return tick.text; });
            }
            const auto name = [](const auto& part) { return part.name; };
            addEach(plot.series, name);
            addEach(plot.limits, name);
            addEach(plot.bands, name);
            addEach(plot.marks, name);
        }
        add(block.note);
    }
    void operator()(const record::Pictures& block) {
        add(block.title);
        for (const auto& picture : block.pictures) {
            add(picture.of);
            add(picture.caption);
        }
    }
    void operator()(const record::Diagram& block) {
        add(block.title);
        add(block.start);
        for (const auto& section : block.sections) {
            add(section.above);
            add(section.below);
            add(section.end);
        }
        add(block.notes);
    }
    template <class Parts, class Text>
    void addEach(const Parts& parts, Text text) {
        for (const auto& part : parts) {
            add(text(part));
        }
    }

    std::vector<std::string> texts;
};

[[nodiscard]] inline std::vector<std::string> textsOf(const record::Document& document) {
    TextCollector collector;
    for (const auto* text : {&document.title, &document.subtitle, &document.firm, &document.issued,
                             &document.banner, &document.caution}) {
        collector.add(*text);
    }
    for (const auto& block : document.blocks) {
        std::visit(collector, block);
    }
    return collector.texts;
}

/// `text` stands somewhere, whole or as a part.
[[nodiscard]] inline bool shows(const record::Document& document, const std::string& text) {
    const auto texts = textsOf(document);
    return std::any_of(texts.begin(), texts.end(),
                       [&](const std::string& t) { return t.find(text) != std::string::npos; });
}

template <class Block>
[[nodiscard]] std::vector<Block> blocksOf(const record::Document& document) {
    std::vector<Block> blocks;
    for (const auto& block : document.blocks) {
        if (const auto* found = std::get_if<Block>(&block)) {
            blocks.push_back(*found);
        }
    }
    return blocks;
}

[[nodiscard]] inline std::optional<record::CaptionedValue> fieldOf(const record::Document& document,
                                                                   const std::string& caption) {
    for (const auto& grid : blocksOf<record::FieldGrid>(document)) {
        for (const auto& field : grid.fields) {
            if (field.caption == caption) {
                return field;
            }
        }
    }
    return std::nullopt;
}

[[nodiscard]] inline std::optional<record::Table> tableOf(const record::Document& document,
                                                          const std::string& title) {
    for (const auto& table : blocksOf<record::Table>(document)) {
        if (table.title == title) {
            return table;
        }
    }
    return std::nullopt;
}

}  // namespace hearth::testing

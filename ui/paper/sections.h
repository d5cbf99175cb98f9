// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "ui/paper/flow.h"
#include "ui/paper/type_setter.h"

#include <vector>

/// Each kind of block as groups that can be cut into pages.
namespace hearth::ui::paper {

/// What a section needs to set itself.
struct Setting {
    const TypeSetter& type;
    double width = 0;       // of the text area, millimetres
    double proofWidth = 0;  // at its right end, beside the signatures; none where nothing is proved
    double proofHeight = 0;
    double bodyTop = 0;              // of the first page
    TextStyle text = styles::kText;  // of paragraphs
};

void addHeadline(std::vector<Group>& groups, const record::Headline& block, const Setting& setting);
void addFieldGrid(std::vector<Group>& groups, const record::FieldGrid& block, const Setting& setting);
void addTable(std::vector<Group>& groups, const record::Table& block, const Setting& setting);
void addFindings(std::vector<Group>& groups, const record::FindingList& block, const Setting& setting);
void addParagraph(std::vector<Group>& groups, const record::Paragraph& block, const Setting& setting);
void addStatements(std::vector<Group>& groups, const record::Statements& block, const Setting& setting);
void addSignatures(std::vector<Group>& groups, const record::Signatures& block, const Setting& setting);
void addAlert(std::vector<Group>& groups, const record::Alert& block, const Setting& setting);
void addLetterHead(std::vector<Group>& groups, const record::LetterHead& block, const Setting& setting);
void addWriteIn(std::vector<Group>& groups, const record::WriteIn& block, const Setting& setting);
void addPlots(std::vector<Group>& groups, const record::Plots& block, const Setting& setting);
void addPictures(std::vector<Group>& groups, const record::Pictures& block, const Setting& setting);

void addDiagram(std::vector<Group>& groups, const record::Diagram& block, const Setting& setting);

[[nodiscard]] std::vector<Group> groupsOf(const record::Document& document, const Setting& setting);

// What the sections share.

/// A fine rule over the page and a title below it, kept with what follows. Without a title: nothing.
void addSectionTitle(std::vector<Group>& groups, const std::string& title, const Setting& setting);
/// One slice a line, moved right by `x`.
[[nodiscard]] std::vector<Slice> slicesOf(std::vector<TextItem> lines, const TextStyle& style, double x = 0);
/// Blank space as a slice.
[[nodiscard]] Slice gap(double height);
/// The space above a section, millimetres.
inline constexpr double kSectionGap = 2.8;

/// Several texts beside each other, line by line: slice k holds the k-th line of each.
struct Cell {
    std::vector<TextItem> lines;
    double x = 0;
};
[[nodiscard]] std::vector<Slice> sideBySide(std::vector<Cell> cells, double lineHeight);

}  // namespace hearth::ui::paper

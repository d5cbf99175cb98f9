// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/pairing.h"
#include "ui/paper/sections.h"

namespace hearth::ui::paper {

namespace {

constexpr double kMark = 4.4;
constexpr double kMarkRoom = 6;
constexpr double kStatementGap = 1.4;
/// Where the answers begin, of the width: below each other, so that an eye runs down them.
constexpr double kAnswerShare = 0.295;
constexpr double kAnswerGap = 3;
/// Lines of a statement that stays with the others: a longer one is parted over pages.
constexpr std::size_t kMostStatementLines = 12;

/// The caption to the left, the answer in large ink beside it with its shape before it, details below that.
Group groupOf(const record::Statement& statement, const Setting& setting) {
    const double x = setting.width * kAnswerShare;
    const double answerX = x + (statement.outcome ? kMarkRoom : 0);
    TextStyle ink = styles::kStatement;
    if (statement.outcome) {
        ink.role = look::inkOf(*statement.outcome);
    }
    Cell caption{setting.type.set(settable(statement.caption), styles::kWhy, x - kAnswerGap), 0};
    for (TextItem& line : caption.lines) {
        const double down = ink.baseline() - styles::kWhy.baseline();
        line.origin.ry() += down;
        line.box.translate(0, down);
    }
    Cell answer{setting.type.set(settable(statement.text), ink, setting.width - answerX), answerX};
    std::vector<TextItem> details;
    for (const std::string& detail : statement.details) {
        append(details, setting.type.set(settable(detail), styles::kText, setting.width - answerX));
    }
    // Beside a caption of more lines than the answer they leave no hole.
    auto next = details.begin();
    for (; next != details.end() && answer.lines.size() < caption.lines.size(); ++next) {
        answer.lines.push_back(std::move(*next));
    }
    details.erase(details.begin(), next);
    Group group;
    group.slices = sideBySide({std::move(caption), std::move(answer)}, ink.lineHeight());
    if (group.slices.empty()) {
        group.slices.push_back(gap(ink.lineHeight()));
    }
    auto below = slicesOf(std::move(details), styles::kText, answerX);
    for (Slice& slice : below) {
        for (Item& item : slice.items) {
            std::get<TextItem>(item).column = 1;  // read after the answer, with it
        }
    }
    append(group.slices, std::move(below));
    if (statement.outcome) {
        const double middle = ink.lineHeight() / 2;
        group.slices.front().items.emplace_back(
            ShapeItem{QRectF(x, middle - kMark / 2, kMark, kMark), *statement.outcome});
    }
    return group;
}

}  // namespace

void addStatements(std::vector<Group>& groups, const record::Statements& block, const Setting& setting) {
    addSectionTitle(groups, block.title, setting);
    if (block.title.empty() && !groups.empty()) {
        groups.back().staysWithNext = true;  // they answer to what stands above them
    }
    bool isFirst = true;
    for (const record::Statement& statement : block.statements) {
        Group group = groupOf(statement, setting);
        group.spaceBefore = !isFirst || block.title.empty() ? kStatementGap : 0;
        const bool isLong = group.slices.size() > kMostStatementLines;
        group.keep = isLong ? Keep::Flowing : Keep::Together;
        // In two languages each is long enough to stand for itself.
        const bool isPaired = statement.text.find(record::kBeside) != std::string::npos;
        group.staysWithNext = !isLong && !isPaired && &statement != &block.statements.back();
        groups.push_back(std::move(group));
        isFirst = false;
    }
}

}  // namespace hearth::ui::paper

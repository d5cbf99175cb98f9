// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/table_section.h"

#include "ui/paper/sections.h"

#include <algorithm>
#include <numeric>

namespace hearth::ui::paper {

namespace {

constexpr double kColumnGap = 4;
constexpr double kRowPadding = 0.45;
/// So few rows are read together, and stay so.
constexpr std::size_t kMostShortRows = 6;
constexpr double kMostForWord = 0.35;  // of the table's width

const std::string& textAt(const std::vector<std::string>& row, std::size_t column) {
    static const std::string empty;
    return column < row.size() ? row[column] : empty;
}

/// The longest unbreakable word of each column.
std::vector<double> leastWidths(const record::Table& table, const TypeSetter& type, double width) {
    std::vector<double> least(table.columns.size(), 0);
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        least[i] = type.longestWord(settable(table.columns[i].title), styles::kHead);
        for (const auto& row : table.rows) {
            least[i] = std::max(least[i], type.longestWord(settable(textAt(row, i)), styles::kCell));
        }
        least[i] = std::max(least[i], type.longestWord(settable(textAt(table.total, i)), styles::kTotal));
        // One endless word must not starve the other columns: beyond this it is broken.
        least[i] = std::min(least[i] + 0.2, kMostForWord * width);
    }
    return least;
}

struct Columns {
    std::vector<double> x;
    std::vector<double> width;
};

Columns columnsOf(const record::Table& table, const Setting& setting) {
    std::vector<double> weights;
    for (const record::Column& column : table.columns) {
        weights.push_back(std::max(column.weight, 0.05));
    }
    const double gaps = kColumnGap * (static_cast<double>(weights.size()) - 1);
    Columns columns;
    columns.width =
        shareWidths(weights, leastWidths(table, setting.type, setting.width), setting.width - gaps);
    double x = 0;
    for (const double width : columns.width) {
        columns.x.push_back(x);
        x += width + kColumnGap;
    }
    return columns;
}

std::vector<Slice> rowSlices(const record::Table& table, const std::vector<std::string>& texts,
                             const Columns& columns, const TextStyle& style, const TypeSetter& type) {
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        Cell cell{type.set(settable(textAt(texts, i)), style, columns.width[i]), columns.x[i]};
        if (table.columns[i].align == record::Align::Right) {
            for (TextItem& line : cell.lines) {
                alignRight(line, columns.width[i]);
            }
        }
        cells.push_back(std::move(cell));
    }
    return sideBySide(std::move(cells), style.lineHeight());
}

Group headOf(const record::Table& table, const Columns& columns, const Setting& setting) {
    std::vector<std::string> titles;
    for (const record::Column& column : table.columns) {
        titles.push_back(column.title);
    }
    Group head;
    head.staysWithNext = true;
    head.slices = rowSlices(table, titles, columns, styles::kHead, setting.type);
    head.slices.push_back({0.7, {RuleItem{{0, 0.5}, setting.width, 0.25, look::Role::Ink}}});
    return head;
}

Group rowOf(const record::Table& table, const std::vector<std::string>& texts, const Columns& columns,
            const Setting& setting) {
    Group row;
    row.slices.push_back(gap(kRowPadding));
    append(row.slices, rowSlices(table, texts, columns, styles::kCell, setting.type));
    row.slices.push_back(
        {kRowPadding, {RuleItem{{0, kRowPadding - 0.06}, setting.width, 0.12, look::Role::Line}}});
    return row;
}

constexpr double kPenRow = 7.4;

/// An empty row for a pen, its cells parted by fine lines.
Group penRow(const Columns& columns, const Setting& setting) {
    Slice slice{kPenRow, {RuleItem{{0, kPenRow - 0.12}, setting.width, 0.12, look::Role::SoftInk}}};
    for (std::size_t i = 1; i < columns.x.size(); ++i) {
        slice.items.emplace_back(
            RuleItem{{columns.x[i] - kColumnGap / 2, 0}, 0.12, kPenRow, look::Role::Line});
    }
    Group row;
    row.slices.push_back(std::move(slice));
    return row;
}

/// The total's words may reach over the empty cells beside them.
Columns reaching(Columns columns, const record::Table& table) {
    for (std::size_t i = 0; i + 1 < table.columns.size(); ++i) {
        if (textAt(table.total, i).empty() || table.columns[i].align == record::Align::Right) {
            continue;
        }
        for (std::size_t next = i + 1; next < table.columns.size() && textAt(table.total, next).empty();
             ++next) {
            columns.width[i] = columns.x[next] + columns.width[next] - columns.x[i];
        }
    }
    return columns;
}

Group totalOf(const record::Table& table, const Columns& columns, const Setting& setting) {
    Group total;
    total.slices.push_back({kRowPadding + 0.2, {RuleItem{{0, 0.06}, setting.width, 0.25, look::Role::Ink}}});
    append(total.slices,
           rowSlices(table, table.total, reaching(columns, table), styles::kTotal, setting.type));
    return total;
}

}  // namespace

std::vector<double> shareWidths(const std::vector<double>& weights, const std::vector<double>& least,
                                double width) {
    const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
    std::vector<double> shares(weights.size());
    for (std::size_t i = 0; i < weights.size(); ++i) {
        shares[i] = width * weights[i] / sum;
    }
    double lacking = 0;
    double spare = 0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        lacking += std::max(0.0, least[i] - shares[i]);
        spare += std::max(0.0, shares[i] - least[i]);
    }
    if (lacking <= 0 || spare <= 0) {
        return shares;
    }
    // Columns with room give in proportion to their room; where all of it is not enough, words will be
    // broken.
    const double given = std::min(1.0, lacking / spare);
    const double got = std::min(1.0, spare / lacking);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const double difference = least[i] - shares[i];
        shares[i] += difference > 0 ? difference * got : difference * given;
    }
    return shares;
}

void addTable(std::vector<Group>& groups, const record::Table& block, const Setting& setting) {
    if (block.columns.empty()) {
        return;
    }
    addSectionTitle(groups, block.title, setting);
    const Columns columns = columnsOf(block, setting);
    const auto head = std::make_shared<const Group>(headOf(block, columns, setting));
    groups.push_back(*head);
    groups.back().spaceBefore = block.title.empty() ? kSectionGap : 0;
    const bool isShort = block.rows.size() <= kMostShortRows;
    std::size_t rowsLeft = block.rows.size();
    for (const auto& texts : block.rows) {
        groups.push_back(rowOf(block, texts, columns, setting));
        groups.back().head = head;
        groups.back().staysWithNext = isShort && rowsLeft-- > 1;
    }
    for (int i = 0; i < block.toWrite; ++i) {
        groups.push_back(penRow(columns, setting));
        groups.back().head = head;
    }
    if (!block.total.empty()) {
        groups.back().staysWithNext = true;
        groups.push_back(totalOf(block, columns, setting));
        groups.back().head = head;
    }
    if (!block.note.empty()) {
        groups.back().staysWithNext = true;
        Group note;
        note.spaceBefore = 0.7;
        note.keep = Keep::Flowing;
        note.slices =
            slicesOf(setting.type.set(settable(block.note), styles::kSource, setting.width), styles::kSource);
        groups.push_back(std::move(note));
    }
}

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sections.h"

#include "core/record/pairing.h"

#include <algorithm>
#include <span>

namespace hearth::ui::paper {

namespace {

using styles::kCaption;

constexpr double kGutter = 5;
/// Longer lines than this are hard to read back to the start of the next.
constexpr double kMostMeasure = 158;

constexpr double kHeadlineShape = 6.2;
constexpr double kHeadlineIndent = 9.2;
constexpr double kGridRowGap = 0.9;
constexpr double kPairedRowGap = 1.8;  // a value's second language lies between
/// Rows of a grid that is read at one glance, and stays together.
constexpr std::size_t kMostShortGrid = 4;
/// Lines of a paragraph that is not worth parting.
constexpr std::size_t kMostShort = 6;

/// A field of a row, with its column.
struct Spot {
    const record::CaptionedValue* field = nullptr;
    double x = 0;
    double width = 0;
};

/// A value as it stands below its caption: an absent one is a dash with the reason, softly.
Cell valueCell(const record::CaptionedValue& field, const Setting& setting, double x, double width) {
    const TextStyle& style = field.absent ? styles::kAbsent : styles::kValue;
    std::vector<std::string> lines = field.lines;
    if (lines.empty()) {
        lines.emplace_back();
    }
    if (field.absent) {
        lines[0] = lines[0].empty() ? "—" : "— " + lines[0];
    }
    Cell cell{{}, x};
    for (const std::string& line : lines) {
        for (TextItem& item : setting.type.set(settable(line), style, width)) {
            cell.lines.push_back(std::move(item));
        }
    }
    return cell;
}

/// Fields beside each other: captions, then values.
Group gridRow(const std::vector<Spot>& row, const Setting& setting) {
    std::vector<Cell> captions;
    std::vector<Cell> values;
    for (const Spot& spot : row) {
        captions.push_back({setting.type.set(settable(spot.field->caption), kCaption, spot.width), spot.x});
        values.push_back(valueCell(*spot.field, setting, spot.x, spot.width));
    }
    // A caption of one line beside one of two stands just above its value.
    std::size_t most = 0;
    for (const Cell& cell : captions) {
        most = std::max(most, cell.lines.size());
    }
    Group group;
    std::vector<Slice> captionSlices(most);
    for (Slice& slice : captionSlices) {
        slice.height = kCaption.lineHeight();
    }
    for (std::size_t c = 0; c < captions.size(); ++c) {
        Cell& cell = captions[c];
        const std::size_t skip = most - cell.lines.size();
        for (std::size_t i = 0; i < cell.lines.size(); ++i) {
            cell.lines[i].column = static_cast<int>(c);
            captionSlices[skip + i].items.push_back(moved(std::move(cell.lines[i]), {cell.x, 0}));
        }
    }
    group.slices = std::move(captionSlices);
    append(group.slices, sideBySide(std::move(values), styles::kValue.lineHeight()));
    return group;
}

/// Values of one line stand closer than addresses do: this many beside each other, and one that is too long
/// for its column reaches over the next.
constexpr int kNarrowColumns = 5;
constexpr double kNarrowGutter = 4;

double spanWidth(int span, const Setting& setting) {
    const double column = (setting.width - kNarrowGutter * (kNarrowColumns - 1)) / kNarrowColumns;
    return column * span + kNarrowGutter * (span - 1);
}

/// How many columns a value wants.
int spanOf(const record::CaptionedValue& field, const Setting& setting) {
    const double wanted =
        field.lines.empty() ? 0 : setting.type.widthOf(settable("— " + field.lines.front()), styles::kValue);
    int span = 1;
    while (span < kNarrowColumns && spanWidth(span, setting) < wanted) {
        ++span;
    }
    return span;
}

using Fields = std::span<const record::CaptionedValue>;

/// Fields in rows, in their order.
void addRows(std::vector<std::vector<Spot>>& rows, Fields fields, const Setting& setting) {
    int next = kNarrowColumns;
    for (const record::CaptionedValue& field : fields) {
        const int span = spanOf(field, setting);
        if (next + span > kNarrowColumns) {
            rows.emplace_back();
            next = 0;
        }
        const double x = next == 0 ? 0 : spanWidth(next, setting) + kNarrowGutter;
        rows.back().push_back({&field, x, spanWidth(span, setting)});
        next += span;
    }
}

/// Rows of as many columns as the document wants: for values of several lines.
void addEvenRows(std::vector<std::vector<Spot>>& rows, Fields fields, std::size_t columns,
                 const Setting& setting) {
    const double gutters = kGutter * static_cast<double>(columns - 1);
    const double width = (setting.width - gutters) / static_cast<double>(columns);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (i % columns == 0) {
            rows.emplace_back();
        }
        rows.back().push_back({&fields[i], static_cast<double>(i % columns) * (width + kGutter), width});
    }
}

/// Even rows down to the last value of several lines; what follows stands closer.
std::vector<std::vector<Spot>> rowsOf(const record::FieldGrid& block, const Setting& setting) {
    const auto columns = static_cast<std::size_t>(std::clamp(block.columns, 1, 6));
    const auto hasLines = [](const record::CaptionedValue& field) { return field.lines.size() > 1; };
    const auto last = std::find_if(block.fields.rbegin(), block.fields.rend(), hasLines);
    const auto tall = static_cast<std::size_t>(block.fields.rend() - last);
    const std::size_t even = std::min((tall + columns - 1) / columns * columns, block.fields.size());
    const Fields fields(block.fields);
    std::vector<std::vector<Spot>> rows;
    addEvenRows(rows, fields.first(even), columns, setting);
    addRows(rows, fields.subspan(even), setting);
    return rows;
}

/// A few words stand on the line of their title, where there is room: "Remarks — none given".
bool putBesideTitle(Group& title, const record::Paragraph& block, const TextStyle& style,
                    const Setting& setting) {
    const double x = setting.type.widthOf(settable(block.title), styles::kSection) + kGutter;
    const QString text = settable(block.text);
    if (text.isEmpty() || x + setting.type.widthOf(text, style) > setting.width) {
        return false;
    }
    auto lines = setting.type.set(text, style, setting.width - x);
    if (lines.size() != 1) {
        return false;
    }
    const auto titleLine = std::find_if(title.slices.begin(), title.slices.end(),
                                        [](const Slice& slice) { return !slice.isForBetween; });
    const double down = styles::kSection.baseline() - style.baseline();
    titleLine->items.push_back(moved(std::move(lines.front()), {x, down}));
    title.staysWithNext = false;
    return true;
}

/// Of the k-th lines of all cells: the usual one, unless each has its own.
double heightOfLine(const std::vector<Cell>& cells, std::size_t k, double usual) {
    double most = 0;
    for (const Cell& cell : cells) {
        if (k < cell.lines.size()) {
            most = std::max(most, cell.lines[k].height > 0 ? cell.lines[k].height : usual);
        }
    }
    return most > 0 ? most : usual;
}

}  // namespace

std::vector<Slice> slicesOf(std::vector<TextItem> lines, const TextStyle& style, double x) {
    return sideBySide({Cell{std::move(lines), x}}, style.lineHeight());
}

Slice gap(double height) {
    return {height, {}};
}

std::vector<Slice> sideBySide(std::vector<Cell> cells, double lineHeight) {
    std::size_t most = 0;
    for (const Cell& cell : cells) {
        most = std::max(most, cell.lines.size());
    }
    std::vector<Slice> slices(most);
    for (std::size_t k = 0; k < most; ++k) {
        slices[k].height = heightOfLine(cells, k, lineHeight);
        for (std::size_t c = 0; c < cells.size(); ++c) {
            Cell& cell = cells[c];
            if (k < cell.lines.size()) {
                cell.lines[k].column = static_cast<int>(c);
                slices[k].items.push_back(moved(std::move(cell.lines[k]), {cell.x, 0}));
            }
        }
    }
    return slices;
}

void addSectionTitle(std::vector<Group>& groups, const std::string& title, const Setting& setting) {
    if (title.empty()) {
        return;
    }
    Group group;
    group.spaceBefore = kSectionGap;
    group.staysWithNext = true;
    group.slices.push_back({1.3, {RuleItem{{0, 0.1}, setting.width, 0.2, look::Role::Line}}, true});
    append(group.slices,
           slicesOf(setting.type.set(settable(title), styles::kSection, setting.width), styles::kSection));
    group.slices.push_back(gap(0.6));
    groups.push_back(std::move(group));
}

void addHeadline(std::vector<Group>& groups, const record::Headline& block, const Setting& setting) {
    const double width = setting.width - kHeadlineIndent;
    Group group;
    group.spaceBefore = kSectionGap;
    append(group.slices, slicesOf(setting.type.set(settable(block.sentence), styles::kSentence, width),
                                  styles::kSentence, kHeadlineIndent));
    if (group.slices.empty()) {
        group.slices.push_back(gap(styles::kSentence.lineHeight()));
    }
    const double middle = styles::kSentence.lineHeight() / 2;
    group.slices.front().items.emplace_back(
        ShapeItem{QRectF(0, middle - kHeadlineShape / 2, kHeadlineShape, kHeadlineShape), block.outcome});
    if (!block.details.empty()) {
        group.slices.push_back(gap(0.6));
    }
    for (const std::string& detail : block.details) {
        append(group.slices,
               slicesOf(setting.type.set(settable(detail), styles::kDetail, std::min(width, kMostMeasure)),
                        styles::kDetail, kHeadlineIndent));
    }
    groups.push_back(std::move(group));
}

void addFieldGrid(std::vector<Group>& groups, const record::FieldGrid& block, const Setting& setting) {
    addSectionTitle(groups, block.title, setting);
    bool isFirst = true;
    const bool isPaired =
        std::any_of(block.fields.begin(), block.fields.end(), [](const record::CaptionedValue& field) {
            return field.caption.find(record::kBeside) != std::string::npos;
        });
    const double rowGap = isPaired ? kPairedRowGap : kGridRowGap;
    const auto add = [&](Group row) {
        row.spaceBefore = !isFirst ? rowGap : block.title.empty() ? kSectionGap : 0;
        groups.push_back(std::move(row));
        isFirst = false;
    };
    const auto rows = rowsOf(block, setting);
    for (const std::vector<Spot>& row : rows) {
        add(gridRow(row, setting));
        groups.back().staysWithNext = rows.size() <= kMostShortGrid && &row != &rows.back();
    }
}

void addParagraph(std::vector<Group>& groups, const record::Paragraph& block, const Setting& setting) {
    TextStyle style = setting.text;
    style.isBold = block.strong;
    addSectionTitle(groups, block.title, setting);
    if (!block.title.empty() && putBesideTitle(groups.back(), block, style, setting)) {
        return;
    }
    Group group;
    group.spaceBefore = block.title.empty() ? kSectionGap * 0.6 : 0;
    group.slices =
        slicesOf(setting.type.set(settable(block.text), style, std::min(setting.width, kMostMeasure)), style);
    group.keep = group.slices.size() > kMostShort ? Keep::Flowing : Keep::Together;
    if (!group.slices.empty()) {
        groups.push_back(std::move(group));
    }
}

std::vector<Group> groupsOf(const record::Document& document, const Setting& setting) {
    struct Adder {
        std::vector<Group>& groups;
        const Setting& setting;
        void operator()(const record::Headline& block) { addHeadline(groups, block, setting); }
        void operator()(const record::FieldGrid& block) { addFieldGrid(groups, block, setting); }
        void operator()(const record::Table& block) { addTable(groups, block, setting); }
        void operator()(const record::FindingList& block) { addFindings(groups, block, setting); }
        void operator()(const record::Paragraph& block) { addParagraph(groups, block, setting); }
        void operator()(const record::Signatures& block) { addSignatures(groups, block, setting); }
        void operator()(const record::Statements& block) { addStatements(groups, block, setting); }
        void operator()(const record::Alert& block) { addAlert(groups, block, setting); }
        void operator()(const record::LetterHead& block) { addLetterHead(groups, block, setting); }
        void operator()(const record::WriteIn& block) { addWriteIn(groups, block, setting); }
        void operator()(const record::Plots& block) { addPlots(groups, block, setting); }
        void operator()(const record::Pictures& block) { addPictures(groups, block, setting); }
        void operator()(const record::Diagram& block) { addDiagram(groups, block, setting); }
    };
    std::vector<Group> groups;
    for (const record::Block& block : document.blocks) {
        std::visit(Adder{groups, setting}, block);
    }
    return groups;
}

}  // namespace hearth::ui::paper

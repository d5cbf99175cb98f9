// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sections.h"

#include <algorithm>
#include <optional>

namespace hearth::ui::paper {

namespace {

constexpr double kShape = 4.0;
constexpr double kIndent = 5.8;
constexpr double kBetween = 1.0;
constexpr double kReasonGap = 3;
// Where the measured value and the reason begin, of the width.
constexpr double kTitleShare = 0.295;
constexpr double kFoundShare = 0.605;
/// Notes and sources are read after the columns above them.
constexpr int kBelowColumns = 3;

/// Lines one below the other, each with its own height.
std::vector<Slice> below(const std::vector<std::string>& texts, const TextStyle& style, double x,
                         const Setting& setting) {
    std::vector<Slice> slices;
    for (const std::string& text : texts) {
        append(slices, slicesOf(setting.type.set(settable(text), style, setting.width - x), style, x));
    }
    for (Slice& slice : slices) {
        for (Item& item : slice.items) {
            if (auto* line = std::get_if<TextItem>(&item)) {
                line->column = kBelowColumns;
            }
        }
    }
    return slices;
}

/// A reason that takes fewer lines across the width below the title than beside it.
bool isLongReason(const QString& reason, std::size_t linesBeside, const Setting& setting) {
    return setting.type.set(reason, styles::kWhy, setting.width - kIndent).size() + 1 < linesBeside;
}

/// Where a reason begins that stands in one line with what was measured: all at the same place, but for one
/// that has room only close behind it. Nothing: it has no room there.
std::optional<double> besideFrom(const QString& measured, const QString& reason, const Setting& setting) {
    if (measured.isEmpty() || measured.contains(QChar::LineSeparator)) {
        return std::nullopt;
    }
    const double from = setting.width * kTitleShare;
    const double behind = from + setting.type.widthOf(measured, styles::kValue) + kReasonGap;
    const double usual = setting.width * kFoundShare;
    const double room = setting.width - setting.type.widthOf(reason, styles::kWhy);
    if (behind <= usual && usual <= room) {
        return usual;
    }
    return behind <= room ? std::optional(behind) : std::nullopt;
}

/// What was found, what was measured, and why, beside each other where that takes one line; a longer reason
/// stands below the measured value, or below the title where that saves lines. Below all of it notes, and the
/// limits with where they are from.
Group groupOf(const record::FindingLine& finding, const Setting& setting) {
    TextStyle titleStyle = styles::kFinding;
    titleStyle.role = look::inkOf(finding.outcome);
    const double measuredX = setting.width * kTitleShare;
    const double end = setting.width + kReasonGap;
    const QString measured = settable(finding.measured);
    const QString reason = settable(finding.why);
    const auto whyX = besideFrom(measured, reason, setting);
    const double down = titleStyle.baseline() - styles::kWhy.baseline();
    const auto cell = [&](const QString& text, const TextStyle& style, double x, double until) {
        Cell made{setting.type.set(text, style, until - x - kReasonGap), x};
        for (TextItem& line : made.lines) {
            const double by = style.points == titleStyle.points ? 0 : down;
            line.origin.ry() += by;
            line.box.translate(0, by);
        }
        return made;
    };
    std::vector<Cell> cells;
    cells.push_back(cell(settable(finding.title), titleStyle, kIndent, measuredX));
    cells.push_back(cell(measured, styles::kValue, measuredX, whyX.value_or(end)));
    Cell why = cell(reason, styles::kWhy, whyX.value_or(measuredX), end);
    const bool isBelow = measured.isEmpty() && isLongReason(reason, why.lines.size(), setting);
    if (whyX) {
        cells.push_back(std::move(why));
    } else if (!isBelow) {
        append(cells.back().lines, std::move(why.lines));
    }

    Group group;
    group.slices = sideBySide(std::move(cells), titleStyle.lineHeight());
    if (group.slices.empty()) {
        group.slices.push_back(gap(titleStyle.lineHeight()));
    }
    if (isBelow) {
        append(group.slices, below({finding.why}, styles::kWhy, kIndent, setting));
    }
    append(group.slices, below(finding.notes, styles::kNote, kIndent, setting));
    append(group.slices, below(finding.sources, styles::kSource, kIndent, setting));
    const double middle = titleStyle.lineHeight() / 2;
    group.slices.front().items.emplace_back(
        ShapeItem{QRectF(0, middle - kShape / 2, kShape, kShape), finding.outcome});
    return group;
}

}  // namespace

void addFindings(std::vector<Group>& groups, const record::FindingList& block, const Setting& setting) {
    addSectionTitle(groups, block.title, setting);
    bool isFirst = true;
    for (const record::FindingLine& finding : block.findings) {
        Group group = groupOf(finding, setting);
        group.spaceBefore = !isFirst ? kBetween : block.title.empty() ? kSectionGap : 0;
        groups.push_back(std::move(group));
        isFirst = false;
    }
}

}  // namespace hearth::ui::paper

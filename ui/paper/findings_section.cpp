// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sections.h"

#include <algorithm>

namespace hearth::ui::paper {

namespace {

constexpr double kShape = 4.0;
constexpr double kIndent = 6.6;
constexpr double kBetween = 3.0;
constexpr double kTitleGap = 6;  // least between title and measured value on one line
constexpr double kMostMeasureWidth = 152;

/// Shape and title; the measured value at the right of the same line where both fit, below where they don't.
std::vector<Slice> headSlices(const record::FindingLine& finding, const Setting& setting) {
    const double width = setting.width - kIndent;
    const QString title = settable(finding.title);
    const QString measured = settable(finding.measured);
    const double titleWidth = setting.type.widthOf(title, styles::kFinding);
    const double measuredWidth = measured.isEmpty() ? 0 : setting.type.widthOf(measured, styles::kValue);
    const bool isOneLine = titleWidth + kTitleGap + measuredWidth <= width;

    TextStyle titleStyle = styles::kFinding;
    titleStyle.role = look::inkOf(finding.outcome);
    std::vector<Slice> slices = slicesOf(setting.type.set(title, titleStyle, width), titleStyle, kIndent);
    if (slices.empty()) {
        slices.push_back(gap(titleStyle.lineHeight()));
    }
    const double middle = titleStyle.lineHeight() / 2;
    slices.front().items.emplace_back(
        ShapeItem{QRectF(0, middle - kShape / 2, kShape, kShape), finding.outcome});
    if (measured.isEmpty()) {
        return slices;
    }
    std::vector<TextItem> lines = setting.type.set(measured, styles::kValue, width);
    if (isOneLine && lines.size() == 1) {
        alignRight(lines.front(), width);
        const double down = styles::kFinding.baseline() - styles::kValue.baseline();
        slices.front().items.push_back(moved(std::move(lines.front()), {kIndent, down}));
    } else {
        append(slices, slicesOf(std::move(lines), styles::kValue, kIndent));
    }
    return slices;
}

Group groupOf(const record::FindingLine& finding, const Setting& setting) {
    const double width = std::min(setting.width - kIndent, kMostMeasureWidth);
    Group group;
    group.slices = headSlices(finding, setting);
    const auto add = [&](const std::string& text, const TextStyle& style) {
        append(group.slices, slicesOf(setting.type.set(settable(text), style, width), style, kIndent));
    };
    add(finding.why, styles::kWhy);
    for (const std::string& note : finding.notes) {
        add(note, styles::kNote);
    }
    for (const std::string& source : finding.sources) {
        add(source, styles::kSource);
    }
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

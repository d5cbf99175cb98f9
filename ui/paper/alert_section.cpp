// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sections.h"

namespace hearth::ui::paper {

namespace {

constexpr double kAlertFrame = 1.1;
constexpr double kAlertPadding = 3.6;
constexpr double kAlertMark = 15;
constexpr double kAlertText = kAlertPadding + kAlertMark + 4.4;
constexpr double kAlertGap = 0.7;
constexpr double kBelowFrame = 1.4;
constexpr double kTickBox = 4.2;
constexpr double kTickGap = 6.4;

/// Boxes to cross, with what they stand for: beside each other where there is room.
std::vector<Slice> gradesToTick(const std::vector<std::string>& grades, const Setting& setting,
                                double width) {
    const TextStyle& style = styles::kAlertGrade;
    std::vector<Slice> slices;
    double x = 0;
    int column = 0;
    for (const std::string& grade : grades) {
        const double wide = kTickGap + setting.type.widthOf(settable(grade), style);
        auto lines = slicesOf(setting.type.set(settable(grade), style, width - kTickGap), style);
        if (slices.empty() || lines.size() > 1 || x + wide > width) {
            append(slices, std::vector<Slice>(lines.size(), gap(style.lineHeight())));
            x = 0;
        }
        const std::size_t from = slices.size() - lines.size();
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (Item& item : lines[i].items) {
                std::get<TextItem>(item).column = column;
                slices[from + i].items.push_back(moved(std::move(item), {kAlertText + x + kTickGap, 0}));
            }
        }
        if (!lines.empty()) {
            const double top = (style.lineHeight() - kTickBox) / 2;
            slices[from].items.emplace_back(
                FrameItem{QRectF(kAlertText + x, top, kTickBox, kTickBox), 0.35, look::Role::Ink});
        }
        x += wide + kTickGap;
        ++column;
    }
    return slices;
}

}  // namespace

/// A thick frame over the whole width, the outcome's shape as high as two lines, the word beside it: what is
/// seen before anything is read, in one colour too.
void addAlert(std::vector<Group>& groups, const record::Alert& block, const Setting& setting) {
    const double width = setting.width - kAlertText - kAlertPadding;
    Group group;
    group.spaceBefore = kSectionGap;
    group.slices.push_back(gap(kAlertPadding));
    TextStyle loud = styles::kAlertWord;
    loud.role = look::inkOf(block.outcome);
    append(group.slices, slicesOf(setting.type.set(settable(block.word), loud, width), loud, kAlertText));
    append(group.slices, slicesOf(setting.type.set(settable(block.grade), styles::kAlertGrade, width),
                                  styles::kAlertGrade, kAlertText));
    append(group.slices, gradesToTick(block.toTick, setting, width));
    group.slices.push_back(gap(kAlertGap));
    append(group.slices, slicesOf(setting.type.set(settable(block.meaning), styles::kAlertMeaning, width),
                                  styles::kAlertMeaning, kAlertText));
    const double least = kAlertMark + 2 * kAlertPadding;
    group.slices.push_back(gap(std::max(kAlertPadding, least - group.height())));
    const double height = group.height();
    auto& first = group.slices.front().items;
    first.emplace_back(
        FrameItem{QRectF(0, 0, setting.width, height), kAlertFrame, look::inkOf(block.outcome)});
    first.emplace_back(
        ShapeItem{QRectF(kAlertPadding, (height - kAlertMark) / 2, kAlertMark, kAlertMark), block.outcome});
    group.slices.push_back(gap(kBelowFrame));
    groups.push_back(std::move(group));
}

}  // namespace hearth::ui::paper

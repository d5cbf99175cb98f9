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

/// A box to cross, with what it stands for.
std::vector<Slice> gradeToTick(const std::string& grade, const Setting& setting, double width) {
    auto slices = slicesOf(setting.type.set(settable(grade), styles::kAlertGrade, width - kTickGap),
                           styles::kAlertGrade, kAlertText + kTickGap);
    if (!slices.empty()) {
        const double middle = styles::kAlertGrade.lineHeight() / 2;
        slices.front().items.emplace_back(
            FrameItem{QRectF(kAlertText, middle - kTickBox / 2, kTickBox, kTickBox), 0.35, look::Role::Ink});
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
    append(group.slices, slicesOf(setting.type.set(settable(block.word), styles::kAlertWord, width),
                                  styles::kAlertWord, kAlertText));
    append(group.slices, slicesOf(setting.type.set(settable(block.grade), styles::kAlertGrade, width),
                                  styles::kAlertGrade, kAlertText));
    for (const std::string& grade : block.toTick) {
        append(group.slices, gradeToTick(grade, setting, width));
    }
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

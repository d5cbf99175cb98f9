// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sections.h"

namespace hearth::ui::paper {

namespace {

// An A4 sheet folded in three, in an envelope of 110 mm by 220 mm with its window at the left: what stands
// between these two heights shows through it, wherever the sheet slips to. Common practice, no source.
constexpr double kWindowTop = 50;
constexpr double kWindowBottom = 84;
constexpr double kWindowWidth = 80;
constexpr double kBelowDate = 5;

}  // namespace

void addLetterHead(std::vector<Group>& groups, const record::LetterHead& block, const Setting& setting) {
    const TextStyle& style = styles::kLetter;
    Group group;
    group.slices.push_back(gap(std::max(0.0, kWindowTop - setting.bodyTop)));
    for (const std::string& line : block.recipient) {
        append(group.slices, slicesOf(setting.type.set(settable(line), style, kWindowWidth), style));
    }
    group.slices.push_back(
        gap(std::max(2 * style.lineHeight(), kWindowBottom - setting.bodyTop - group.height())));
    append(group.slices, slicesOf(setting.type.set(settable(block.date), style, setting.width), style));
    groups.push_back(std::move(group));
    if (!block.subject.empty()) {
        Group subject;
        subject.spaceBefore = kBelowDate;
        subject.staysWithNext = true;
        subject.slices = slicesOf(
            setting.type.set(settable(block.subject), styles::kStatement, setting.width), styles::kStatement);
        groups.push_back(std::move(subject));
    }
}

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/pen_strokes.h"
#include "ui/paper/sections.h"

#include <algorithm>

namespace hearth::ui::paper {

namespace {

constexpr double kSignatureGutter = 10;
constexpr int kMostSignatures = 3;
/// Above the line: for a pen, and for what was drawn on the screen.
constexpr double kPenRoom = 8.5;
constexpr double kDrawnRoom = 14;

/// Signatures beside each other.
Group signatureRow(const record::Signatures& block, std::size_t from, std::size_t to, double width,
                   const TypeSetter& type) {
    std::vector<Cell> captions;
    std::vector<Cell> names;
    std::vector<Cell> details;
    Slice room = gap(kPenRoom);
    Slice line{1.4, {}};
    for (std::size_t i = from; i < to; ++i) {
        const record::Signature& one = block.signatures[i];
        const double x = static_cast<double>(i - from) * (width + kSignatureGutter);
        captions.push_back({type.set(settable(one.caption), styles::kCaption, width), x});
        names.push_back({type.set(settable(one.name), styles::kValue, width), x});
        details.push_back({type.set(settable(one.detail), styles::kCaption, width), x});
        line.items.emplace_back(RuleItem{{x, 0.1}, width, 0.2, look::Role::Ink});
        auto strokes = drawnStrokes(one.strokes, QRectF(x, 0, width, kDrawnRoom));
        if (!strokes.empty()) {
            room.height = kDrawnRoom;
            append(room.items, std::move(strokes));
        }
    }
    Group group;
    group.spaceBefore = kSectionGap;
    append(group.slices, sideBySide(std::move(captions), styles::kCaption.lineHeight()));
    group.slices.push_back(std::move(room));
    group.slices.push_back(std::move(line));
    append(group.slices, sideBySide(std::move(names), styles::kValue.lineHeight()));
    append(group.slices, sideBySide(std::move(details), styles::kCaption.lineHeight()));
    return group;
}

}  // namespace

void addSignatures(std::vector<Group>& groups, const record::Signatures& block, const Setting& setting) {
    const std::size_t count = block.signatures.size();
    if (count > 0 && !groups.empty()) {
        groups.back().staysWithNext = true;  // signatures alone on a page would sign nothing that is read
    }
    const auto columns = std::clamp<std::size_t>(count, 2, kMostSignatures);
    const double gutters = kSignatureGutter * static_cast<double>(columns - 1);
    const double width = (setting.width - setting.proofWidth - gutters) / static_cast<double>(columns);
    for (std::size_t from = 0; from < count; from += columns) {
        Group group = signatureRow(block, from, std::min(from + columns, count), width, setting.type);
        group.staysWithNext = from + columns < count;
        if (group.height() < setting.proofHeight) {
            group.slices.push_back(gap(setting.proofHeight - group.height()));
        }
        groups.push_back(std::move(group));
    }
}

}  // namespace hearth::ui::paper

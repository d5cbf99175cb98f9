// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/plot.h"
#include "ui/paper/sections.h"

#include <algorithm>

namespace hearth::ui::paper {

namespace {

constexpr std::size_t kMostBeside = 3;
constexpr double kBetweenPlots = 6;
constexpr double kAreaHeight = 18;
/// A plot alone is not as wide as the page: its lines would be flat.
constexpr double kMostWide = 120;

/// Plots beside each other; a reader goes down one before the next.
Group plotRow(const std::vector<record::Plot>& plots, std::size_t from, std::size_t to, double width,
              const TypeSetter& type) {
    Slice slice;
    for (std::size_t i = from; i < to; ++i) {
        SetPlot set = setPlot(plots[i], type, width, kAreaHeight);
        const auto column = static_cast<int>(i - from);
        for (Item& item : set.items) {
            if (auto* text = std::get_if<TextItem>(&item)) {
                text->column = column;
            }
            slice.items.push_back(moved(std::move(item), {column * (width + kBetweenPlots), 0}));
        }
        slice.height = std::max(slice.height, set.height);
    }
    Group group;
    group.slices.push_back(std::move(slice));
    return group;
}

}  // namespace

void addPlots(std::vector<Group>& groups, const record::Plots& block, const Setting& setting) {
    if (block.plots.empty()) {
        return;
    }
    addSectionTitle(groups, block.title, setting);
    const std::size_t beside = std::min(block.plots.size(), kMostBeside);
    const double gaps = kBetweenPlots * static_cast<double>(beside - 1);
    const double width = std::min(kMostWide, (setting.width - gaps) / static_cast<double>(beside));
    for (std::size_t from = 0; from < block.plots.size(); from += beside) {
        groups.push_back(
            plotRow(block.plots, from, std::min(from + beside, block.plots.size()), width, setting.type));
        groups.back().spaceBefore = from > 0 || block.title.empty() ? kSectionGap : 0;
    }
    if (!block.note.empty()) {
        groups.back().staysWithNext = true;
        Group note;
        note.spaceBefore = 0.7;
        note.slices =
            slicesOf(setting.type.set(settable(block.note), styles::kSource, setting.width), styles::kSource);
        groups.push_back(std::move(note));
    }
}

}  // namespace hearth::ui::paper

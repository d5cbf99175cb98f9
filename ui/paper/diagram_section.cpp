// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/diagram.h"
#include "ui/paper/sections.h"

namespace hearth::ui::paper {

void addDiagram(std::vector<Group>& groups, const record::Diagram& block, const Setting& setting) {
    if (block.sections.empty()) {
        return;
    }
    addSectionTitle(groups, block.title, setting);
    Group tree;
    tree.spaceBefore = block.title.empty() ? kSectionGap : 0;
    tree.slices = diagramRows(block, setting.type, setting.width);
    tree.staysWithNext = !block.notes.empty();
    groups.push_back(std::move(tree));
    for (const auto& text : block.notes) {
        Group note;
        note.slices =
            slicesOf(setting.type.set(settable(text), styles::kSource, setting.width), styles::kSource);
        groups.push_back(std::move(note));
    }
}

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/diagram.h"
#include "ui/paper/flow.h"
#include "ui/paper/type_setter.h"

#include <vector>

/// The sketch of the pipework, in a section of a record and in the window alike.
namespace hearth::ui::paper {

/// One slice a row of the tree, top down; nothing is cut off. Texts break into lines within their column;
/// columns that would be narrower than can be read are left out, and what stood in them follows as a list.
[[nodiscard]] std::vector<Slice> diagramRows(const record::Diagram& diagram, const TypeSetter& type,
                                             double width);

/// From this width on the whole tree is drawn.
[[nodiscard]] double wholeDiagramWidth(const record::Diagram& diagram);

/// The same in one piece, for the window: its items from its top left corner, and how high it came out.
struct SetDiagram {
    std::vector<Item> items;
    double height = 0;
};
[[nodiscard]] SetDiagram setDiagram(const record::Diagram& diagram, const TypeSetter& type, double width);

}  // namespace hearth::ui::paper

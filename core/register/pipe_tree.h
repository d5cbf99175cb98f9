// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"

#include <cstddef>
#include <vector>

namespace hearth::reg {

/// Where a section is drawn: sections after one another stand in columns from the meter, branches in rows
/// below.
struct DrawnSection {
    std::size_t index = 0;  // in the list
    int column = 0;
    int row = 0;
    int fromRow = 0;    // the row that it leaves from
    bool isEnd = true;  // nothing goes on from it
};

struct DrawnTree {
    std::vector<DrawnSection> sections;  // in the order of drawing
    int columns = 0;
    int rows = 0;
};

/// The list of sections as a tree from the meter. The first that goes on from a section stays in its row. A
/// section whose feeder is not in the list, or that would feed itself, is drawn from the meter.
[[nodiscard]] DrawnTree drawTree(const std::vector<PipeSection>& sections);

/// Whether `section` may go on from `after`: another section of the list that is not fed by it.
[[nodiscard]] bool mayFollow(const std::vector<PipeSection>& sections, PipeSectionId section,
                             PipeSectionId after);

/// The list without one section: what went on from it goes on from what fed it.
[[nodiscard]] std::vector<PipeSection> without(std::vector<PipeSection> sections, std::size_t index);

}  // namespace hearth::reg

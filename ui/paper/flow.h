// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/page.h"

#include <memory>
#include <vector>

/// From what can be cut to pages: pure arithmetic of heights, knows nothing of fonts.
namespace hearth::ui::paper {

/// The smallest thing that is never cut: one line across the page with all that stands on it.
struct Slice {
    double height = 0;  // millimetres
    std::vector<Item> items;
    bool isForBetween = false;  // parts what is above from what is below: left out at the top of a page
};

enum class Keep { Together, Flowing };

/// Slices that belong together: a table row, a finding, a paragraph.
struct Group {
    std::vector<Slice> slices;
    double spaceBefore = 0;             // not at the top of a page
    Keep keep = Keep::Together;         // goes over to the next page whole, unless it is taller than a page
    bool staysWithNext = false;         // a heading
    std::shared_ptr<const Group> head;  // stands above it again when it begins or goes on on a new page

    [[nodiscard]] double height() const;
};

struct Placed {
    const Group* group = nullptr;
    const Slice* slice = nullptr;
    double y = 0;  // from the top of the page's body
};

struct FlowPage {
    std::vector<Placed> slices;
    double used = 0;
};

/// Heights of the body of the first page and of the others.
struct BodyHeights {
    double first = 0;
    double others = 0;
};

/// At least one page. The groups must outlive the result.
[[nodiscard]] std::vector<FlowPage> flow(const std::vector<Group>& groups, const BodyHeights& heights);

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/pipe_tree.h"

#include <algorithm>

namespace hearth::reg {

namespace {

const PipeSection* pipeOf(const std::vector<PipeSection>& sections, PipeSectionId id) {
    const auto at =
        std::find_if(sections.begin(), sections.end(), [&](const PipeSection& s) { return s.id == id; });
    return at == sections.end() ? nullptr : &*at;
}

/// The feeder, if following the feeders from it ends at the meter.
const PipeSection* feederOf(const std::vector<PipeSection>& sections, const PipeSection& section) {
    const PipeSection* first = section.after ? pipeOf(sections, *section.after) : nullptr;
    const PipeSection* at = first;
    for (std::size_t steps = 0; at != nullptr; ++steps) {
        if (steps > sections.size()) {
            return nullptr;  // a ring
        }
        at = at->after ? pipeOf(sections, *at->after) : nullptr;
    }
    return first;
}

class TreeDrawing {
  public:
    explicit TreeDrawing(const std::vector<PipeSection>& sections) : m_sections(sections) {}

    DrawnTree draw() {
        branch(nullptr, 0, 0);
        m_tree.rows = m_tree.sections.empty() ? 0 : m_nextRow;
        return std::move(m_tree);
    }

  private:
    /// Draws what `feeder` feeds; gives whether there was anything.
    bool branch(const PipeSection* feeder, int column, int fromRow) {
        bool any = false;
        for (std::size_t index = 0; index < m_sections.size(); ++index) {
            if (feederOf(m_sections, m_sections[index]) != feeder) {
                continue;
            }
            const int row = any || m_nextRow == 0 ? m_nextRow : fromRow;
            m_nextRow = std::max(m_nextRow, row + 1);
            m_tree.columns = std::max(m_tree.columns, column + 1);
            const std::size_t at = m_tree.sections.size();
            m_tree.sections.push_back({index, column, row, fromRow, true});
            m_tree.sections[at].isEnd = !branch(&m_sections[index], column + 1, row);
            any = true;
        }
        return any;
    }

    const std::vector<PipeSection>& m_sections;
    DrawnTree m_tree;
    int m_nextRow = 0;
};

}  // namespace

DrawnTree drawTree(const std::vector<PipeSection>& sections) {
    return TreeDrawing(sections).draw();
}

bool mayFollow(const std::vector<PipeSection>& sections, PipeSectionId section, PipeSectionId after) {
    const PipeSection* at = pipeOf(sections, after);
    if (at == nullptr) {
        return false;
    }
    for (std::size_t steps = 0; at != nullptr && steps <= sections.size(); ++steps) {
        if (at->id == section) {
            return false;
        }
        at = at->after ? pipeOf(sections, *at->after) : nullptr;
    }
    return at == nullptr;
}

std::vector<PipeSection> without(std::vector<PipeSection> sections, std::size_t index) {
    const PipeSection gone = sections[index];
    sections.erase(sections.begin() + static_cast<std::ptrdiff_t>(index));
    for (std::size_t at = 0; at < sections.size(); ++at) {
        sections[at].position = static_cast<int>(at);
        if (sections[at].after == gone.id) {
            sections[at].after = gone.after;
        }
    }
    return sections;
}

}  // namespace hearth::reg

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/flow.h"

#include <algorithm>

namespace hearth::ui::paper {

namespace {

/// Sums of tenths of millimetres must not push a line off a page that it exactly fits.
constexpr double kSlack = 1e-6;
/// A flowing group leaves no single line behind, and takes none alone along.
constexpr std::size_t kLeastLines = 2;
/// A head that is a third of a page is not worth repeating.
constexpr double kMostHeadShare = 0.33;
/// What is taller than this share of a page flows: kept together it would leave a hole, or part from its
/// heading.
constexpr double kMostTogether = 0.6;

double heightOf(const std::vector<Slice>& slices, std::size_t from, std::size_t to) {
    double sum = 0;
    for (std::size_t i = from; i < to; ++i) {
        sum += slices[i].height;
    }
    return sum;
}

class Flow {
  public:
    Flow(const std::vector<Group>& groups, const BodyHeights& heights)
        : m_groups(groups), m_heights(heights) {
        m_pages.emplace_back();
    }

    std::vector<FlowPage> run() {
        for (std::size_t i = 0; i < m_groups.size(); ++i) {
            place(i);
        }
        return std::move(m_pages);
    }

  private:
    [[nodiscard]] double body() const { return m_pages.size() == 1 ? m_heights.first : m_heights.others; }
    [[nodiscard]] double room() const { return body() - m_pages.back().used + kSlack; }
    [[nodiscard]] bool isAtTop() const { return m_pages.back().slices.empty(); }

    /// What must fit below for the group to begin here; a heading counts what it stays with.
    [[nodiscard]] double least(std::size_t index) const {
        const Group& group = m_groups[index];
        const bool flows = group.keep == Keep::Flowing || group.height() > kMostTogether * m_heights.others;
        const std::size_t lines = flows ? std::min(kLeastLines, group.slices.size()) : group.slices.size();
        double needed = heightOf(group.slices, 0, lines);
        if (group.staysWithNext && index + 1 < m_groups.size()) {
            needed += m_groups[index + 1].spaceBefore + least(index + 1);
        }
        return needed;
    }

    void put(const Group& group, const Slice& slice) {
        FlowPage& page = m_pages.back();
        if (slice.isForBetween && page.slices.empty()) {
            return;
        }
        page.slices.push_back({&group, &slice, page.used});
        page.used += slice.height;
    }

    void turnPage(const Group& group) {
        m_pages.emplace_back();
        m_isFresh = true;
        if (group.head && group.head->height() <= kMostHeadShare * body()) {
            for (const Slice& slice : group.head->slices) {
                put(*group.head, slice);
            }
        }
    }

    void place(std::size_t index) {
        const Group& group = m_groups[index];
        if (!isAtTop() && group.spaceBefore + least(index) > room()) {
            turnPage(group);
        } else if (!isAtTop()) {
            m_pages.back().used += group.spaceBefore;
        }
        std::size_t next = 0;
        while (next < group.slices.size()) {
            next = putWhatFits(group, next);
            if (next < group.slices.size()) {
                turnPage(group);
            }
        }
    }

    /// From `begin` on; gives the first slice that is for the next page. At least one goes down on a fresh
    /// page.
    std::size_t putWhatFits(const Group& group, std::size_t begin) {
        std::size_t end = begin;
        double taken = 0;
        while (end < group.slices.size() && taken + group.slices[end].height <= room()) {
            taken += group.slices[end].height;
            ++end;
        }
        const std::size_t left = group.slices.size() - end;
        if (left > 0 && left < kLeastLines && end - begin > kLeastLines) {
            --end;
        }
        end = std::max(end, begin + (m_isFresh ? 1U : 0U));
        for (std::size_t i = begin; i < end; ++i) {
            put(group, group.slices[i]);
            m_isFresh = false;
        }
        return end;
    }

    const std::vector<Group>& m_groups;
    BodyHeights m_heights;
    std::vector<FlowPage> m_pages;
    /// Nothing but a repeated head on the page: then a slice goes down whatever its height, or it never
    /// would.
    bool m_isFresh = true;
};

}  // namespace

double Group::height() const {
    return heightOf(slices, 0, slices.size());
}

std::vector<FlowPage> flow(const std::vector<Group>& groups, const BodyHeights& heights) {
    return Flow(groups, heights).run();
}

}  // namespace hearth::ui::paper

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCache>

#include <algorithm>
#include <functional>
#include <iterator>
#include <utility>
#include <vector>

namespace hearth::ui::shell {

/// The rows of a long list, read a page at a time as they are asked for; the last few pages are held.
template <class Row>
class Paged {
  public:
    using Read = std::function<std::vector<Row>(int first, int count)>;

    void readBy(Read read) {
        m_pages.clear();
        m_read = std::move(read);
    }
    /// Good until another row is asked for.
    [[nodiscard]] const Row& at(int row) const {
        have(row, row);
        const auto* rows = m_pages.object(row / kPage);
        static const Row kGone;  // somebody took rows away underneath
        const auto in = static_cast<std::size_t>(row % kPage);
        return rows != nullptr && in < rows->size() ? (*rows)[in] : kGone;
    }
    /// Reads what is missing of these in one go: a view that lies over two pages asks once.
    void have(int first, int last) const {
        int from = first / kPage;
        int until = std::min(last / kPage, from + kPagesHeld / 2);
        while (from <= until && m_pages.contains(from)) {
            ++from;
        }
        while (until > from && m_pages.contains(until)) {
            --until;
        }
        if (from > until) {
            return;
        }
        auto rows = m_read(from * kPage, (until - from + 1) * kPage);
        auto next = rows.begin();
        for (int page = from; page <= until; ++page) {
            const auto end = next + std::min<std::ptrdiff_t>(kPage, rows.end() - next);
            m_pages.insert(page,
                           new std::vector<Row>(std::make_move_iterator(next), std::make_move_iterator(end)));
            next = end;
        }
    }

  private:
    static constexpr int kPage = 64;
    static constexpr int kPagesHeld = 12;
    Read m_read;
    mutable QCache<int, std::vector<Row>> m_pages{kPagesHeld};
};

}  // namespace hearth::ui::shell

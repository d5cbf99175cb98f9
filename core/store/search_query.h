// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/search_index.h"

#include <string>
#include <string_view>
#include <vector>

namespace hearth::store {

/// What somebody typed to find something: words begun, in any order. A number may be typed with blanks or
/// without, a telephone number with the country's code or without.
class SearchQuery {
  public:
    explicit SearchQuery(std::string_view typed);

    [[nodiscard]] bool isEmpty() const { return m_parts.empty(); }
    enum class Words { Whole, Begun };
    /// For MATCH: every part in whichever way.
    [[nodiscard]] std::string expression(Indexed kind, Words words) const;

    /// A part of it: any of the ways, of which all words must be there.
    using Way = std::vector<std::string>;
    using Part = std::vector<Way>;
    [[nodiscard]] const std::vector<Part>& parts() const { return m_parts; }

  private:
    std::vector<Part> m_parts;
};

/// An SQL condition that `column` is a row that `search` finds, the newest `most` of them; "TRUE" for no
/// words. The values for its marks are appended to `values`.
[[nodiscard]] std::string matching(Indexed kind, std::string_view search, std::string_view column, int most,
                                   Cells& values);

}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/search_query.h"

#include "core/base/digits.h"

#include <algorithm>
#include <cctype>

namespace hearth::store {
namespace {

bool hasDigit(const std::string& word) {
    return std::any_of(word.begin(), word.end(), isDigit);
}

/// It may be a piece of a number that is kept without that blank.
bool isLikeCode(const std::string& word) {
    constexpr std::size_t kFewLetters = 3;
    return word.size() <= kFewLetters || hasDigit(word);
}

void addWay(SearchQuery::Part& part, SearchQuery::Way way) {
    if (std::find(part.begin(), part.end(), way) == part.end()) {
        part.push_back(std::move(way));
    }
}

/// The words of a run one by one; or all as one word, which may be a telephone number.
SearchQuery::Part partOf(const SearchQuery::Way& run) {
    SearchQuery::Part part;
    addWay(part, run);
    std::string joined;
    for (const auto& word : run) {
        joined += word;
    }
    if (hasDigit(joined)) {
        addWay(part, {joined});
    }
    if (std::all_of(joined.begin(), joined.end(), isDigit)) {
        addWay(part, {nationalDigits(joined)});
    }
    return part;
}

std::string wordExpression(char letter, const std::string& word, SearchQuery::Words words) {
    return std::string("\"") + letter + word + (words == SearchQuery::Words::Begun ? "\" *" : "\"");
}

}  // namespace

SearchQuery::SearchQuery(std::string_view typed) {
    Way run;
    const auto endRun = [&] {
        const bool mayJoin = std::any_of(run.begin(), run.end(), hasDigit);
        if (mayJoin) {
            m_parts.push_back(partOf(run));
        } else {
            for (const auto& word : run) {
                m_parts.push_back({{word}});
            }
        }
        run.clear();
    };
    for (const auto& word : typedWords(typed)) {
        if (isLikeCode(word)) {
            run.push_back(word);
            continue;
        }
        endRun();
        m_parts.push_back({{word}});
    }
    endRun();
}

std::string SearchQuery::expression(Indexed kind, Words words) const {
    std::string all;
    for (const auto& part : m_parts) {
        std::string either;
        for (const auto& way : part) {
            std::string each;
            for (const auto& word : way) {
                each.append(each.empty() ? "" : " AND ")
                    .append(wordExpression(indexedLetter(kind), word, words));
            }
            either.append(either.empty() ? "(" : " OR (").append(each).append(")");
        }
        all.append(all.empty() ? "(" : " AND (").append(either).append(")");
    }
    return all;
}

std::string matching(Indexed kind, std::string_view search, std::string_view column, int most,
                     Cells& values) {
    const SearchQuery query(search);
    if (query.isEmpty()) {
        return "TRUE";
    }
    values.emplace_back(query.expression(kind, SearchQuery::Words::Begun));
    values.emplace_back(std::int64_t{most});
    return std::string(column) +
           " IN (SELECT t.row FROM search_text AS s JOIN search_things AS t ON t.thing = s.rowid"
           " WHERE s.search_text MATCH ? ORDER BY s.rowid DESC LIMIT ?)";
}

}  // namespace hearth::store

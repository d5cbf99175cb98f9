// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/finder.h"

#include "core/store/hit_reader.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace hearth::store {
namespace {

/// The newest so many of each way of looking are ranked.
constexpr std::int64_t kRanked = 40;

/// Better is greater.
struct Rank {
    int wholeWords = 0;
    int rarity = 0;
    std::int64_t thing = 0;
    [[nodiscard]] auto key() const { return std::tie(wholeWords, rarity, thing); }
};

struct Candidate {
    UuidBytes row{};
    Rank rank;
    SearchField field = SearchField::Numbers;  // the rarest that matched
};

using Texts = std::array<std::string, kSearchFields>;

/// How a word stands in a thing's text, which is its words, each behind its kind's letter and a blank.
enum class Stands { Not, Begun, Whole };
Stands standsIn(const std::string& text, char letter, const std::string& word) {
    Stands best = Stands::Not;
    const std::string sought = letter + word;
    for (std::size_t at = text.find(sought); at != std::string::npos; at = text.find(sought, at + 1)) {
        const std::size_t end = at + sought.size();
        if (at != 0 && text[at - 1] != ' ') {
            continue;
        }
        if (end == text.size() || text[end] == ' ') {
            return Stands::Whole;
        }
        best = Stands::Begun;
    }
    return best;
}

struct WayRank {
    bool found = true;
    bool whole = true;
    SearchField rarest = SearchField::Towns;
};

WayRank rankOfWay(const Texts& texts, char letter, const SearchQuery::Way& way) {
    WayRank rank;
    for (const auto& word : way) {
        Stands best = Stands::Not;
        std::size_t field = kSearchFields;
        for (std::size_t i = 0; i < kSearchFields; ++i) {
            const Stands stands = standsIn(texts.at(i), letter, word);
            if (stands > best) {
                best = stands;
                field = i;
            }
        }
        if (best == Stands::Not) {
            return {false, false, SearchField::Towns};
        }
        rank.whole = rank.whole && best == Stands::Whole;
        rank.rarest = std::min(rank.rarest, static_cast<SearchField>(field));
    }
    return rank;
}

void rankCandidate(Candidate& candidate, const Texts& texts, char letter, const SearchQuery& query) {
    candidate.field = SearchField::Towns;
    for (const auto& part : query.parts()) {
        WayRank best{false, false, SearchField::Towns};
        for (const auto& way : part) {
            const WayRank rank = rankOfWay(texts, letter, way);
            const auto better = [](const WayRank& r) {
                return std::tuple(r.found, r.whole, -static_cast<int>(r.rarest));
            };
            if (better(rank) > better(best)) {
                best = rank;
            }
        }
        candidate.rank.wholeWords += best.whole ? 1 : 0;
        candidate.rank.rarity += static_cast<int>(SearchField::Towns) - static_cast<int>(best.rarest);
        candidate.field = std::min(candidate.field, best.rarest);
    }
}

/// Ranked candidates of one kind.
class Candidates {
  public:
    Candidates(const Connection& db, Indexed kind, const SearchQuery& query)
        : m_db(db), m_kind(kind), m_query(query) {
        const std::string begun = query.expression(kind, SearchQuery::Words::Begun);
        if (take(query.expression(kind, SearchQuery::Words::Whole)) < kRanked &&
            take("{numbers names} : (" + begun + ")") < kRanked) {
            take(begun);
        }
        std::sort(m_found.begin(), m_found.end(),
                  [](const Candidate& a, const Candidate& b) { return a.rank.key() > b.rank.key(); });
    }
    [[nodiscard]] const std::vector<Candidate>& found() const { return m_found; }

  private:
    /// Gives how many the expression has, kRanked for that many or more.
    std::int64_t take(const std::string& expression) {
        std::int64_t count = 0;
        m_db.query(
            "SELECT t.row, t.thing, s.numbers, s.names, s.streets, s.towns FROM search_text AS s "
            "JOIN search_things AS t ON t.thing = s.rowid WHERE s.search_text MATCH ? "
            "ORDER BY s.rowid DESC LIMIT ?",
            {expression, kRanked}, [&](const Columns& row) {
                ++count;
                Candidate candidate;
                candidate.row = row.uuid(0);
                candidate.rank.thing = row.integer(1);
                if (isKnown(candidate.rank.thing)) {
                    return;
                }
                rankCandidate(candidate, {row.text(2), row.text(3), row.text(4), row.text(5)},
                              indexedLetter(m_kind), m_query);
                m_found.push_back(candidate);
            });
        return count;
    }
    [[nodiscard]] bool isKnown(std::int64_t thing) const {
        return std::any_of(m_found.begin(), m_found.end(),
                           [&](const Candidate& known) { return known.rank.thing == thing; });
    }

    const Connection& m_db;
    Indexed m_kind;
    const SearchQuery& m_query;
    std::vector<Candidate> m_found;
};

struct Group {
    Rank best;
    std::vector<Hit> hits;
};

Group groupOf(const Connection& db, Indexed kind, const SearchQuery& query, std::size_t most, bool& more) {
    const Candidates candidates(db, kind, query);
    Group group;
    for (const auto& candidate : candidates.found()) {
        if (group.hits.size() == most) {
            more = true;
            break;
        }
        if (auto hit = readHit(db, kind, candidate.row, candidate.field, query)) {
            if (group.hits.empty()) {
                group.best = candidate.rank;
            }
            group.hits.push_back(std::move(*hit));
        }
    }
    return group;
}

}  // namespace

Hits findHits(const Connection& db, const std::string& typed, std::size_t most) {
    const SearchQuery query(typed);
    Hits found;
    if (query.isEmpty()) {
        return found;
    }
    std::vector<Group> groups;
    for (const auto kind : {Indexed::Premises, Indexed::Party, Indexed::Visit, Indexed::Record}) {
        groups.push_back(groupOf(db, kind, query, most, found.more));
    }
    std::stable_sort(groups.begin(), groups.end(), [](const Group& a, const Group& b) {
        return std::tie(a.best.wholeWords, a.best.rarity) > std::tie(b.best.wholeWords, b.best.rarity);
    });
    for (auto& group : groups) {
        std::move(group.hits.begin(), group.hits.end(), std::back_inserter(found.hits));
    }
    return found;
}

}  // namespace hearth::store

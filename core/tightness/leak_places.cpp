// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/leak_places.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>
#include <glpk.h>
#include <memory>
#include <optional>
#include <utility>

namespace hearth::tightness {

using quantity::Flow;
using quantity::kLitrePerHour;

namespace {

/// What is nearer to nought than this is nought: the solver's own tolerance, in l/h.
constexpr double kNought = 1e-7;

struct Bounds {
    double least = 0.0;
    double most = 0.0;
};

/// A test in terms of the groups, in l/h.
struct GroupedTest {
    std::vector<std::size_t> groups;
    double least = 0.0;
    double most = 0.0;
};

std::vector<bool> reachedBy(std::span<const ReachedLeak> tests, std::size_t place) {
    std::vector<bool> by;
    by.reserve(tests.size());
    for (const auto& test : tests) {
        by.push_back(place < test.reaches.size() && test.reaches[place]);
    }
    return by;
}

/// The leaks of the groups, none below nought, and what the tests say of their sums. The library counts
/// from 1.
class Programme {
  public:
    Programme(const std::vector<GroupedTest>& tests, std::size_t groups)
        : m_problem(glp_create_prob(), &glp_delete_prob) {
        glp_add_rows(m_problem.get(), static_cast<int>(tests.size()));
        glp_add_cols(m_problem.get(), static_cast<int>(groups));
        for (int group = 1; group <= static_cast<int>(groups); ++group) {
            glp_set_col_bnds(m_problem.get(), group, GLP_LO, 0.0, 0.0);
        }
        int row = 0;
        for (const auto& test : tests) {
            std::vector<int> columns{0};
            for (const auto group : test.groups) {
                columns.push_back(static_cast<int>(group) + 1);
            }
            const std::vector<double> ones(columns.size(), 1.0);
            const bool isFixed = !(test.least < test.most);
            glp_set_row_bnds(m_problem.get(), ++row, isFixed ? GLP_FX : GLP_DB, test.least, test.most);
            glp_set_mat_row(m_problem.get(), row, static_cast<int>(test.groups.size()), columns.data(),
                            ones.data());
        }
    }

    /// Nothing: no leaks could have made these readings.
    [[nodiscard]] std::optional<Bounds> boundsOf(std::size_t group) {
        const auto least = solve(group, GLP_MIN);
        const auto most = solve(group, GLP_MAX);
        return least && most ? std::optional(Bounds{*least, *most}) : std::nullopt;
    }

  private:
    std::optional<double> solve(std::size_t group, int direction) {
        const int column = static_cast<int>(group) + 1;
        glp_set_obj_dir(m_problem.get(), direction);
        glp_set_obj_coef(m_problem.get(), column, 1.0);
        glp_smcp how;
        glp_init_smcp(&how);
        how.msg_lev = GLP_MSG_OFF;
        const int failed = glp_simplex(m_problem.get(), &how);
        const bool isSolved = failed == 0 && glp_get_status(m_problem.get()) == GLP_OPT;
        const double value = glp_get_obj_val(m_problem.get());
        glp_set_obj_coef(m_problem.get(), column, 0.0);
        return isSolved ? std::optional(std::abs(value) < kNought ? 0.0 : value) : std::nullopt;
    }

    std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> m_problem;
};

std::optional<std::vector<Bounds>> boundsBy(const std::vector<GroupedTest>& tests, std::size_t groups) {
    Programme programme(tests, groups);
    std::vector<Bounds> all;
    for (std::size_t group = 0; group < groups; ++group) {
        const auto bounds = programme.boundsOf(group);
        if (!bounds) {
            return std::nullopt;
        }
        all.push_back(*bounds);
    }
    return all;
}

LeakPlacesSay say(const std::vector<GroupedTest>& tests, const std::vector<Bounds>& bounds) {
    const auto leaking =
        std::count_if(bounds.begin(), bounds.end(), [](const Bounds& of) { return of.least > 0.0; });
    if (leaking > 0) {
        return leaking == 1 ? LeakPlacesSay::OneLeaks : LeakPlacesSay::SeveralLeak;
    }
    const bool any =
        std::any_of(tests.begin(), tests.end(), [](const GroupedTest& test) { return test.least > 0.0; });
    return any ? LeakPlacesSay::Somewhere : LeakPlacesSay::NoneShown;
}

std::vector<GroupedTest> groupedTests(std::span<const ReachedLeak> tests,
                                      const std::vector<std::vector<bool>>& patterns) {
    std::vector<GroupedTest> grouped;
    for (std::size_t test = 0; test < tests.size(); ++test) {
        const auto& leak = tests[test].leak;
        GroupedTest one{{}, leak.least.in(kLitrePerHour), leak.most.in(kLitrePerHour)};
        for (std::size_t group = 0; group < patterns.size(); ++group) {
            if (patterns[group][test]) {
                one.groups.push_back(group);
            }
        }
        grouped.push_back(std::move(one));
    }
    return grouped;
}

/// Places by what reached them.
struct Grouping {
    std::vector<std::vector<bool>> patterns;
    std::vector<LeakPlace> groups;
    std::vector<std::size_t> notReached;
};

Grouping groupingOf(std::span<const ReachedLeak> tests, std::size_t places) {
    Grouping found;
    for (std::size_t place = 0; place < places; ++place) {
        auto by = reachedBy(tests, place);
        if (std::find(by.begin(), by.end(), true) == by.end()) {
            found.notReached.push_back(place);
            continue;
        }
        const auto known = std::find(found.patterns.begin(), found.patterns.end(), by);
        const auto group = static_cast<std::size_t>(known - found.patterns.begin());
        if (known == found.patterns.end()) {
            found.patterns.push_back(std::move(by));
            found.groups.emplace_back();
        }
        found.groups[group].places.push_back(place);
    }
    return found;
}

}  // namespace

LeakPlaces leakPlaces(std::span<const ReachedLeak> tests, std::size_t places) {
    LeakPlaces found;
    auto [patterns, groups, notReached] = groupingOf(tests, places);
    found.notReached = std::move(notReached);
    if (tests.size() < 2 || groups.size() < 2) {
        return found;
    }
    const auto grouped = groupedTests(tests, patterns);
    const auto bounds = boundsBy(grouped, patterns.size());
    if (!bounds) {
        found.says = LeakPlacesSay::Disagree;
        return found;
    }
    found.says = say(grouped, *bounds);
    found.groups = std::move(groups);
    for (std::size_t group = 0; group < bounds->size(); ++group) {
        found.groups[group].least = Flow((*bounds)[group].least, kLitrePerHour);
        found.groups[group].most = Flow((*bounds)[group].most, kLitrePerHour);
    }
    return found;
}

bool couldAllHold(std::span<const ReachedLeak> tests, std::size_t places) {
    const auto grouping = groupingOf(tests, places);
    // Where nothing is reached there is nothing that could contradict.
    return grouping.groups.empty() ||
           Programme(groupedTests(tests, grouping.patterns), grouping.groups.size()).boundsOf(0).has_value();
}

}  // namespace hearth::tightness

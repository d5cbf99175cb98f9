// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/sizing.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <numbers>
#include <utility>

namespace hearth::pipework {

using quantity::PressureChange;
using rulebook::Say;

namespace {

/// A size that a section may take.
struct SizeOption {
    const Tube* tube;
    double drop;  // Pa
    double mass;  // kg more than now
};

/// A way to size the part of the tree that begins with a section.
struct SizedPart {
    double drop;       // Pa, the worst route from the section's beginning
    double mass;       // kg more than now
    const Tube* tube;  // of the section itself
    double rest;       // Pa: what the parts after it may lose
};

bool staysBelow(double drop, double limit) {
    return rulebook::holds(drop, rulebook::Comparison::Below, limit);
}

/// Only what no other beats in both; by rising drop, so falling mass.
template <class Way>
void keepUnbeaten(std::vector<Way>& ways) {
    std::sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) {
        return a.drop != b.drop ? a.drop < b.drop : a.mass < b.mass;
    });
    std::size_t kept = 0;
    for (std::size_t i = 0; i < ways.size(); ++i) {
        if (kept == 0 || ways[i].mass < ways[kept - 1].mass) {
            ways[kept++] = ways[i];
        }
    }
    ways.erase(ways.begin() + static_cast<std::ptrdiff_t>(kept), ways.end());
}

/// An even spread of `keeps` of them, first and last among them. Whether that left some out.
bool thinOut(std::vector<SizedPart>& ways, std::size_t keeps) {
    if (ways.size() <= keeps || keeps < 2) {
        return false;
    }
    const std::size_t last = ways.size() - 1;
    for (std::size_t i = 0; i < keeps; ++i) {
        ways[i] = ways[i * last / (keeps - 1)];
    }
    ways.erase(ways.begin() + static_cast<std::ptrdiff_t>(keeps), ways.end());
    return true;
}

/// What the parts that go on from a section cost together if none may lose more than `drop`.
struct Onward {
    double drop;
    double mass;
};

std::vector<Onward> together(const std::vector<const std::vector<SizedPart>*>& parts) {
    if (parts.empty()) {
        return {{0.0, 0.0}};
    }
    struct Step {
        double drop;
        std::size_t part;
        double mass;
    };
    std::vector<Step> steps;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        for (const auto& way : *parts[i]) {
            steps.push_back({way.drop, i, way.mass});
        }
    }
    std::sort(steps.begin(), steps.end(), [](const Step& a, const Step& b) { return a.drop < b.drop; });
    std::vector<std::optional<double>> mass(parts.size());
    std::size_t possible = 0;
    std::vector<Onward> onward;
    for (const auto& step : steps) {
        possible += mass[step.part] ? 0U : 1U;
        mass[step.part] = step.mass;
        if (possible == parts.size()) {
            double sum = 0.0;
            for (const auto& one : mass) {
                sum += *one;
            }
            onward.push_back({step.drop, sum});
        }
    }
    keepUnbeaten(onward);
    return onward;
}

/// The search over one tree.
class SizeSearch {
  public:
    SizeSearch(const Tree& tree, const DropReport& now, const DropConditions& conditions, std::size_t keeps)
        : m_tree(tree), m_keeps(keeps), m_onward(tree.sections().size()), m_ways(tree.sections().size()) {
        for (std::size_t i = 0; i < tree.sections().size(); ++i) {
            m_options.push_back(optionsOf(tree.sections()[i], now.sections[i], conditions));
            if (const auto feeder = tree.sections()[i].after) {
                m_onward[*feeder].push_back(i);
            }
        }
    }

    /// The sections' tubes for the least mass with every route below `limit` (Pa); nothing when there is
    /// none.
    std::optional<std::vector<const Tube*>> least(double limit) {
        const auto order = m_tree.feedersFirst();
        for (auto it = order.rbegin(); it != order.rend(); ++it) {
            m_ways[*it] = waysFrom(*it, limit);
            if (m_ways[*it].empty()) {
                return std::nullopt;
            }
        }
        std::vector<const Tube*> chosen(order.size());
        std::vector<double> mayLose(order.size(), limit);
        for (const auto i : order) {
            const auto& ways = m_ways[i];
            const auto beyond =
                std::upper_bound(ways.begin(), ways.end(), mayLose[i],
                                 [](double most, const SizedPart& way) { return most < way.drop; });
            const auto& way = *std::prev(beyond);
            chosen[i] = way.tube;
            for (const auto next : m_onward[i]) {
                mayLose[next] = way.rest;
            }
        }
        return chosen;
    }

    [[nodiscard]] bool thinned() const { return m_thinned; }

  private:
    static std::vector<SizeOption> optionsOf(const TreeSection& section, const SectionDrop& now,
                                             const DropConditions& conditions) {
        std::vector<SizeOption> options{{section.tube, now.drop->base(), 0.0}};
        const double metres = section.length->in(quantity::kMetre);
        for (const Tube* larger : largerSizes(*section.tube)) {
            const auto drop = sectionDrop(resized(section, *larger), now.flow, conditions).drop;
            if (drop) {
                const double mass = (*massPerMetre(*larger) - *massPerMetre(*section.tube)) * metres;
                options.push_back({larger, drop->base(), mass});
            }
        }
        keepUnbeaten(options);
        return options;
    }

    std::vector<SizedPart> waysFrom(std::size_t section, double limit) {
        std::vector<const std::vector<SizedPart>*> parts;
        for (const auto next : m_onward[section]) {
            parts.push_back(&m_ways[next]);
        }
        std::vector<SizedPart> ways;
        const auto onward = together(parts);
        for (const auto& option : m_options[section]) {
            for (const auto& rest : onward) {
                if (staysBelow(option.drop + rest.drop, limit)) {
                    ways.push_back(
                        {option.drop + rest.drop, option.mass + rest.mass, option.tube, rest.drop});
                }
            }
        }
        keepUnbeaten(ways);
        m_thinned = thinOut(ways, m_keeps) || m_thinned;
        return ways;
    }

    const Tree& m_tree;
    std::size_t m_keeps;
    std::vector<std::vector<std::size_t>> m_onward;
    std::vector<std::vector<SizeOption>> m_options;
    std::vector<std::vector<SizedPart>> m_ways;
    bool m_thinned = false;
};

/// The most of any route's drop with twice its uncertainty, Pa.
double worstWithUncertainty(const DropReport& report) {
    double worst = 0.0;
    for (const auto& route : report.routes) {
        worst = std::max(worst, route.drop->base() + quantity::kCoverage * route.uncertainty.base());
    }
    return worst;
}

Tree withTubes(const Tree& tree, const std::vector<const Tube*>& tubes) {
    Tree changed = tree;
    for (std::size_t i = 0; i < tubes.size(); ++i) {
        if (tubes[i] != tree.sections()[i].tube) {
            changed.replace(i, resized(tree.sections()[i], *tubes[i]));
        }
    }
    return changed;
}

/// The size next below, back to what is there now.
const Tube* stepBack(const Tube& now, const Tube* chosen) {
    const Tube* before = &now;
    for (const Tube* larger : largerSizes(now)) {
        if (larger == chosen) {
            break;
        }
        before = larger;
    }
    return before;
}

/// Takes back what is larger than need be, one size at a time, while every route still passes.
void stepBackWherePossible(const Tree& tree, FlowBasis basis, const DropConditions& conditions, double limit,
                           std::vector<const Tube*>& tubes) {
    bool changed = true;
    while (changed) {
        changed = false;
        for (std::size_t i = 0; i < tubes.size(); ++i) {
            if (tubes[i] == tree.sections()[i].tube) {
                continue;
            }
            auto smaller = tubes;
            smaller[i] = stepBack(*tree.sections()[i].tube, tubes[i]);
            const auto report = pressureDrops(withTubes(tree, smaller), basis, conditions);
            if (report.complete && staysBelow(worstWithUncertainty(report), limit)) {
                tubes = std::move(smaller);
                changed = true;
            }
        }
    }
}

void takeTubes(const Tree& tree, FlowBasis basis, const DropConditions& conditions,
               const std::vector<const Tube*>& tubes, Sizing& sizing) {
    for (std::size_t i = 0; i < tubes.size(); ++i) {
        const auto& section = tree.sections()[i];
        if (tubes[i] != section.tube) {
            sizing.changes.push_back({i, section.tube, tubes[i]});
            sizing.extraMass += (*massPerMetre(*tubes[i]) - *massPerMetre(*section.tube)) *
                                section.length->in(quantity::kMetre);
        }
    }
    sizing.after = pressureDrops(withTubes(tree, tubes), basis, conditions);
    sizing.outcome = SizingOutcome::Enlarged;
}

}  // namespace

std::optional<double> massPerMetre(const Tube& tube) {
    if (!tube.hasDimensions()) {
        return std::nullopt;
    }
    double density = 0.0;  // kg/m3
    switch (tube.family) {
        case TubeFamily::Copper:
            density = 8960.0;
            break;
        case TubeFamily::SteelMedium:
        case TubeFamily::SteelHeavy:
            density = 7850.0;
            break;
        case TubeFamily::PeSdr11:
        case TubeFamily::PeSdr176:
            density = 950.0;
            break;
        case TubeFamily::Corrugated:
            return std::nullopt;
    }
    constexpr double kSquareMillimetre = 1e-6;
    return std::numbers::pi * tube.wall * (tube.outside - tube.wall) * kSquareMillimetre * density;
}

std::vector<const Tube*> largerSizes(const Tube& tube) {
    std::vector<const Tube*> larger;
    if (!tube.hasDimensions()) {
        return larger;
    }
    for (const auto& each : tubes()) {
        const bool fits =
            each.family == tube.family && each.nominal > tube.nominal && each.bore() > tube.bore();
        // The common wall of a size stands before its others in the table.
        const bool there = std::any_of(larger.begin(), larger.end(),
                                       [&](const Tube* known) { return known->nominal == each.nominal; });
        if (fits && !there) {
            larger.push_back(&each);
        }
    }
    std::sort(larger.begin(), larger.end(),
              [](const Tube* a, const Tube* b) { return a->bore() < b->bore(); });
    return larger;
}

Sizing enlarge(const Tree& tree, FlowBasis basis, const DropConditions& conditions, PressureChange limit,
               std::size_t keeps) {
    Sizing sizing;
    sizing.after = pressureDrops(tree, basis, conditions);
    if (!sizing.after.complete) {
        return sizing;
    }
    const double most = limit.base();
    if (staysBelow(worstWithUncertainty(sizing.after), most)) {
        sizing.outcome = SizingOutcome::PassesAlready;
        sizing.leastProved = true;
        return sizing;
    }
    SizeSearch search(tree, sizing.after, conditions, keeps);
    // The search knows no uncertainty: where that is what breaks the limit, it is given less to lose.
    constexpr int kRounds = 20;
    double mayLose = most;
    for (int round = 0; round < kRounds && mayLose > 0.0; ++round) {
        auto tubes = search.least(mayLose);
        if (!tubes) {
            break;
        }
        const auto report = pressureDrops(withTubes(tree, *tubes), basis, conditions);
        const double worst = worstWithUncertainty(report);
        if (staysBelow(worst, most)) {
            sizing.leastProved = round == 0 && !search.thinned();
            if (!sizing.leastProved) {
                stepBackWherePossible(tree, basis, conditions, most, *tubes);
            }
            takeTubes(tree, basis, conditions, *tubes, sizing);
            return sizing;
        }
        constexpr double kStep = 1e-6;
        mayLose -= std::max(worst - most, most * kStep);
    }
    sizing.outcome = SizingOutcome::NotPossible;
    return sizing;
}

std::vector<rulebook::Sentence> sizingAdvice(const Tree& tree, const Sizing& sizing) {
    std::vector<rulebook::Sentence> advice;
    for (const auto& change : sizing.changes) {
        advice.push_back(
            {Say::PipeEnlarge,
             {tree.nameOf(change.section), std::string(change.from->label), std::string(change.to->label)}});
    }
    return advice;
}

}  // namespace hearth::pipework

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/vent_judge.h"

#include "core/air/figures.h"
#include "core/air/known_rules.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"

#include <algorithm>
#include <cassert>
#include <iterator>

namespace hearth::air {

using quantity::kSquareCentimetre;
using quantity::Uncertain;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Provenance;
using rulebook::Rule;
using rulebook::Say;
using rulebook::Sentence;

std::optional<Uncertain> areaThere(const std::vector<Vent>& vents, double wallFactor) {
    assert(wallFactor >= 1.0);
    Uncertain sum;
    for (const auto& vent : vents) {
        if (!vent.freeArea || !vent.leadsTo) {
            return std::nullopt;
        }
        const Uncertain one{vent.freeArea->in(kSquareCentimetre),
                            vent.uncertainty.value_or(quantity::Area()).in(kSquareCentimetre)};
        sum = sum + (vent.leadsTo == VentLeadsTo::Outside ? one : one / wallFactor);
    }
    return sum;
}

std::vector<Sentence> lackOfVents(const std::vector<Vent>& vents) {
    std::vector<Sentence> missing;
    for (const auto& vent : vents) {
        if (vent.freeArea.unreadable) {
            addOnce(missing, {Say::ReadingUnusable});
        } else if (!vent.freeArea) {
            addOnce(missing, {Say::VentVentsMissing});
        }
        if (!vent.leadsTo) {
            addOnce(missing, {Say::VentLeadsMissing});
        }
    }
    return missing;
}

Counted countVents(const std::vector<Vent>& vents, KnownRules& known, std::vector<Sentence>& steps) {
    Counted counted;
    counted.missing = lackOfVents(vents);
    const bool inside = std::any_of(vents.begin(), vents.end(), [](const Vent& vent) {
        return vent.leadsTo && vent.leadsTo != VentLeadsTo::Outside;
    });
    double factor = 1.0;
    if (inside) {
        const auto entered = known.factor(Rule::VentThroughWallFactor);
        if (!entered || *entered < 1.0) {
            addOnce(counted.missing, {Say::LimitMissing});
        } else {
            factor = *entered;
        }
    }
    if (!counted.missing.empty()) {
        return counted;
    }
    for (const auto& vent : vents) {
        if (vent.leadsTo != VentLeadsTo::Outside) {
            steps.push_back(
                {Say::VentStepThroughWall,
                 {figureOf(*vent.freeArea), plainFigure(factor, 2), figureOf(*vent.freeArea / factor)}});
        }
    }
    counted.there = areaThere(vents, factor);
    return counted;
}

std::vector<Vent> ventsAt(const std::vector<Vent>& vents, VentLevel level) {
    std::vector<Vent> found;
    std::copy_if(vents.begin(), vents.end(), std::back_inserter(found),
                 [&](const Vent& vent) { return vent.level == level; });
    return found;
}

Finding ventState(const std::vector<Vent>& vents) {
    const auto any = [&](std::optional<bool> Vent::*state, bool value) {
        return std::any_of(vents.begin(), vents.end(),
                           [&](const Vent& vent) { return vent.*state == value; });
    };
    const auto allSaid = [&](std::optional<bool> Vent::*state) {
        return std::all_of(vents.begin(), vents.end(),
                           [&](const Vent& vent) { return (vent.*state).has_value(); });
    };
    Finding finding{FindingKind::VentSound};
    std::vector<Sentence> faults;
    if (any(&Vent::blocked, true)) {
        faults.push_back({Say::VentBlocked});
    }
    if (any(&Vent::closable, true)) {
        faults.push_back({Say::VentClosable});
    }
    if (any(&Vent::flyScreen, true)) {
        faults.push_back({Say::VentFlyScreen});
    }
    if (any(&Vent::unsound, true)) {
        faults.push_back({Say::VentUnsound});
    }
    const bool unsleeved = any(&Vent::sleeved, false);
    const bool said = allSaid(&Vent::blocked) && allSaid(&Vent::closable) && allSaid(&Vent::flyScreen);
    if (!faults.empty()) {
        finding.outcome = Outcome::Fail;
    } else if (!said) {
        faults.push_back({Say::VentStateUnknown});
    } else if (unsleeved) {
        finding.outcome = Outcome::LookAgain;
    } else {
        finding.outcome = Outcome::Pass;
        faults.push_back({Say::VentIsSound});
    }
    if (unsleeved) {
        faults.push_back({Say::VentNotSleeved});
    }
    finding.why = faults.front();
    finding.notes.assign(faults.begin() + 1, faults.end());
    return finding;
}

void concludeLacking(Finding& finding, const std::vector<Sentence>& missing) {
    if (missing.empty()) {
        rulebook::concludeOpen(finding, {Say::ReadingMissing});
        return;
    }
    rulebook::concludeOpen(finding, missing.front());
    finding.notes.insert(finding.notes.begin(), missing.begin() + 1, missing.end());
}

const Entry& leastKnown(const std::vector<Entry>& entries) {
    assert(!entries.empty());
    const auto rank = [](const Entry& entry) {
        switch (entry.provenance) {
            case Provenance::Memory:
                return 2;
            case Provenance::Secondary:
                return 1;
            default:
                return 0;
        }
    };
    return *std::max_element(entries.begin(), entries.end(),
                             [&](const Entry& a, const Entry& b) { return rank(a) < rank(b); });
}

void judgeArea(Finding& finding, const std::vector<Entry>& entries, quantity::Area needed,
               const Uncertain& there) {
    for (const auto& entry : entries) {
        rulebook::restOn(finding, entry);
    }
    finding.limit = figureOf(needed);
    finding.comparison = rulebook::Comparison::AtLeast;
    const auto figure = figureOf(quantity::Area(there.value, kSquareCentimetre));
    finding.measured = figure;
    if (finding.limits.empty()) {
        rulebook::concludeOpen(finding, {Say::LimitMissing});
        return;
    }
    if (needed == quantity::Area()) {
        rulebook::concludeWithin(finding, {Say::VentNotNeeded});
        return;
    }
    switch (rulebook::standing(there, finding.comparison, needed.in(kSquareCentimetre))) {
        case rulebook::Standing::Within:
            rulebook::concludeWithin(finding, {Say::VentEnough, {figure, *finding.limit}});
            break;
        case rulebook::Standing::Near: {
            const quantity::Area margin(quantity::expanded(there), kSquareCentimetre);
            rulebook::concludeAtLimit(finding, {Say::VentNear, {figure, *finding.limit, figureOf(margin)}});
            break;
        }
        case rulebook::Standing::Beyond:
            rulebook::concludeBeyond(finding, leastKnown(finding.limits),
                                     {Say::VentTooSmall, {figure, *finding.limit}});
            break;
    }
}

}  // namespace hearth::air

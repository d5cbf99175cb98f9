// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/permitted_leak.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <utility>

namespace hearth::tightness {

using quantity::Flow;
using quantity::Volume;
using rulebook::Entry;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// The rule's entry, laid under the finding whether it has a value or not: so it can be named as missing.
const Entry* layUnder(Permitted& permitted, Rule rule, const RulesInForce& rules) {
    const Entry* entry = rules.find(rule);
    if (entry != nullptr) {
        permitted.entries.push_back(entry);
        restOn(permitted.finding, *entry);
    }
    return entry != nullptr && entry->isKnown() ? entry : nullptr;
}

void takeFixed(Permitted& permitted, Rule rule, const RulesInForce& rules) {
    const Entry* entry = layUnder(permitted, rule, rules);
    permitted.limit = entry == nullptr ? std::nullopt : rulebook::flowOf(*entry);
}

void takeRoom(Permitted& permitted, Volume room, const RulesInForce& rules) {
    const Entry* each = layUnder(permitted, Rule::LeakTypeB, rules);
    const auto factor = each == nullptr ? std::nullopt : rulebook::factorOf(*each);
    permitted.limit = factor ? leakForRoom(*factor, room) : std::nullopt;
    const Entry* large = rules.known(Rule::LeakTypeC);
    const auto most = large == nullptr ? std::nullopt : rulebook::flowOf(*large);
    if (permitted.limit && most && *permitted.limit > *most) {
        permitted.limit = most;
        permitted.entries.push_back(large);
        restOn(permitted.finding, *large);
        permitted.finding.notes.push_back({Say::RoomCappedAsTypeC, {figureOf(room)}});
    }
}

/// Why a room does not count as a large one, or can't be shown to.
std::optional<Sentence> largeRoomDoubt(Permitted& permitted, Volume room, const RulesInForce& rules) {
    const Entry* least = layUnder(permitted, Rule::LargeRoomLeast, rules);
    const auto volume = least == nullptr ? std::nullopt : rulebook::volumeOf(*least);
    if (!volume) {
        return Sentence{Say::LargeRoomUnproved, {figureOf(room)}};
    }
    const bool large = rulebook::holds(room.in(quantity::kCubicMetre), rulebook::Comparison::AtLeast,
                                       volume->in(quantity::kCubicMetre));
    return large ? std::nullopt
                 : std::optional(Sentence{Say::LargeRoomTooSmall, {figureOf(room), limitOf(*least)}});
}

/// Existing pipework in a room that is said to be ventilated, or where that is not said. A doubt leaves the
/// figure as what a leak can't be beyond in any case.
std::optional<Sentence> takeVentilated(Permitted& permitted, const Surroundings& place,
                                       const RulesInForce& rules) {
    const bool large = *place.area == AreaType::TypeC;
    const bool sized = place.room && *place.room > Volume{};
    if (large) {
        takeFixed(permitted, Rule::LeakTypeC, rules);
    } else if (sized) {
        takeRoom(permitted, *place.room, rules);
    }
    if (!place.ventilated) {
        return Sentence{Say::VentilationUnknown};
    }
    if (!sized) {
        return Sentence{Say::RoomVolumeUnknown};
    }
    return large && permitted.limit ? largeRoomDoubt(permitted, *place.room, rules) : std::nullopt;
}

/// The figure for the place; what is said when the place does not decide it.
std::optional<Sentence> takeExisting(Permitted& permitted, const Surroundings& place,
                                     const RulesInForce& rules) {
    switch (*place.area) {
        case AreaType::TypeA:
            takeFixed(permitted, Rule::LeakTypeA, rules);
            return std::nullopt;
        case AreaType::Outside:
            takeFixed(permitted, Rule::LeakOutside, rules);
            return std::nullopt;
        case AreaType::Buried:
            takeFixed(permitted, Rule::LeakBuried, rules);
            return std::nullopt;
        case AreaType::TypeB:
        case AreaType::TypeC:
            break;
    }
    if (place.ventilated == false) {
        takeFixed(permitted, Rule::LeakTypeA, rules);
        permitted.finding.notes.push_back({Say::RoomAsTypeA});
        return std::nullopt;
    }
    return takeVentilated(permitted, place, rules);
}

}  // namespace

std::optional<Flow> leakForRoom(double perCubicMetre, Volume room) {
    const double space = room.in(quantity::kCubicMetre);
    const bool valid = perCubicMetre > 0.0 && space > 0.0;
    return valid ? std::optional(Flow(perCubicMetre * space, quantity::kCubicMetrePerHour)) : std::nullopt;
}

Permitted permittedLeak(const Surroundings& place, const RulesInForce& rules) {
    Permitted permitted;
    std::optional<Sentence> doubt;
    if (!place.work) {
        doubt = Sentence{Say::WorkUnknown};
    } else if (*place.work == Work::New) {
        takeFixed(permitted, Rule::LeakNew, rules);
    } else if (!place.area) {
        doubt = Sentence{Say::AreaTypeUnknown};
    } else {
        doubt = takeExisting(permitted, place, rules);
    }
    auto& finding = permitted.finding;
    if (permitted.limit) {
        finding.limit = figureOf(*permitted.limit);
    }
    if (doubt) {
        permitted.unproved = permitted.limit.has_value();
        concludeOpen(finding, *std::move(doubt));
    } else if (!permitted.limit) {
        concludeOpen(finding, {Say::LimitMissing});
    } else {
        concludeWithin(finding, {Say::PermittedLeakIs, {*finding.limit}});
    }
    return permitted;
}

}  // namespace hearth::tightness

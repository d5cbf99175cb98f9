// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/larger_test.h"

#include "core/quantity/uncertain.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <algorithm>
#include <utility>

namespace hearth::tightness {

using quantity::Duration;
using quantity::Flow;
using quantity::GaugePressure;
using quantity::PressureChange;
using quantity::Volume;
using rulebook::Comparison;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// The rule's entry, also when it is empty: so that it can be named as missing.
const Entry* namedEntry(std::vector<const Entry*>& entries, Rule rule, const RulesInForce& rules) {
    const Entry* entry = rules.find(rule);
    if (entry != nullptr) {
        entries.push_back(entry);
    }
    return entry != nullptr && entry->isKnown() ? entry : nullptr;
}

std::optional<double> namedFactor(std::vector<const Entry*>& entries, Rule rule, const RulesInForce& rules) {
    const Entry* entry = namedEntry(entries, rule, rules);
    return entry == nullptr ? std::nullopt : rulebook::factorOf(*entry);
}

void restOnAll(Finding& finding, const std::vector<const Entry*>& entries) {
    for (const auto* entry : entries) {
        restOn(finding, *entry);
    }
}

std::optional<Sentence> volumeLack(const Given<Volume>& volume) {
    if (volume.unreadable) {
        return Sentence{Say::ReadingUnusable};
    }
    return volume && *volume > Volume{} ? std::nullopt : std::optional(Sentence{Say::VolumeUnknown});
}

/// What the time of a test goes by, once it is known.
struct TimeInput {
    PressureChange readable;
    Volume volume;
    double factor;
};

/// In a ventilated room that is not large; the time for a large one where that is the longer, since the
/// permitted leak is capped by it.
std::optional<Duration> timeInRoom(NeededTime& needed, const TimeInput& input, Volume room,
                                   const RulesInForce& rules) {
    const auto factor = namedFactor(needed.entries, Rule::TimeFactorRoom, rules);
    auto time =
        factor ? timeForTypeB(input.readable, input.volume, input.factor, *factor, room) : std::nullopt;
    const Entry* large = rules.known(Rule::TimeFactorLargeRoom);
    const auto largeFactor = large == nullptr ? std::nullopt : rulebook::factorOf(*large);
    const auto capped =
        largeFactor ? timeForTypeC(input.readable, input.volume, input.factor, *largeFactor) : std::nullopt;
    if (time && capped && *capped > *time) {
        needed.entries.push_back(large);
        time = capped;
    }
    return time;
}

/// By the place; nothing where it has no formula that was read (in the open, buried).
std::optional<Duration> timeForPlace(NeededTime& needed, const TimeInput& input, const Surroundings& place,
                                     const RulesInForce& rules) {
    const bool room = place.area == AreaType::TypeB || place.area == AreaType::TypeC;
    if (place.work == Work::New || place.area == AreaType::TypeA || (room && place.ventilated == false)) {
        return timeForTypeA(input.readable, input.volume, input.factor);
    }
    if (place.area == AreaType::TypeB) {
        return timeInRoom(needed, input, *place.room, rules);
    }
    if (place.area == AreaType::TypeC) {
        const auto factor = namedFactor(needed.entries, Rule::TimeFactorLargeRoom, rules);
        return factor ? timeForTypeC(input.readable, input.volume, input.factor, *factor) : std::nullopt;
    }
    return std::nullopt;
}

/// What of the place is not said, or does not hold.
std::optional<Sentence> placeLack(const Surroundings& place, const RulesInForce& rules) {
    const auto permitted = permittedLeak(place, rules);
    const auto say = permitted.finding.why.say;
    const bool unsaid = say == Say::WorkUnknown || say == Say::AreaTypeUnknown ||
                        say == Say::VentilationUnknown || say == Say::RoomVolumeUnknown;
    return unsaid || permitted.unproved ? std::optional(permitted.finding.why) : std::nullopt;
}

/// A stage read on the gauge: its change and what can be read at all.
struct ReadStage {
    Change fall;
    PressureChange movement;
    const Entry* entry = nullptr;
};

std::optional<ReadStage> readStage(Finding& finding, const LargerTest& test, const Stage& stage,
                                   const RulesInForce& rules) {
    const auto readable = readableMovement(test.gauge, rules);
    if (!readable.movement) {
        concludeOpen(finding, readable.finding.why);
        return std::nullopt;
    }
    if (auto absent = absence(stage.start, stage.end)) {
        concludeOpen(finding, *absent);
        return std::nullopt;
    }
    restOn(finding, *readable.entry);
    return ReadStage{changeBetween(asGauge(*test.gauge, *readable.movement), *stage.start, *stage.end),
                     *readable.movement, readable.entry};
}

/// A stage's time against its least; false, with the finding closed, when it is missing or too short.
bool stageTimeHolds(Finding& finding, const Given<Duration>& took, Rule rule, Say tooShort,
                    const RulesInForce& rules) {
    if (auto absent = absence(took)) {
        concludeOpen(finding, *absent);
        return false;
    }
    const Entry* entry = rules.find(rule);
    if (entry != nullptr) {
        restOn(finding, *entry);
    }
    const auto least = entry == nullptr ? std::nullopt : rulebook::durationOf(*entry);
    if (!least) {
        concludeOpen(finding, {Say::LimitMissing});
        return false;
    }
    if (!rulebook::holds(took->in(quantity::kSecond), Comparison::AtLeast, least->in(quantity::kSecond))) {
        concludeOpen(finding, {tooShort, {minutesOf(*took), limitOf(*entry)}});
        return false;
    }
    return true;
}

Sentence nearMovement(const Change& change, const ReadStage& read) {
    return {Say::AtLimit, {figureOf(change), limitOf(*read.entry), uncertaintyOf(change)}};
}

/// A share of the operating pressure; nothing, with the finding closed, when either is not known.
std::optional<GaugePressure> shareOfOperating(Finding& finding, const LargerTest& test, Rule rule,
                                              const RulesInForce& rules) {
    if (!test.operating) {
        concludeOpen(finding, {Say::OperatingPressureUnknown});
        return std::nullopt;
    }
    const Entry* entry = rules.known(rule);
    const auto share = entry == nullptr ? std::nullopt : rulebook::factorOf(*entry);
    if (!share) {
        concludeOpen(finding, {Say::LimitMissing});
        return std::nullopt;
    }
    restOn(finding, *entry);
    return GaugePressure(*share * test.operating->in(quantity::kMillibar), quantity::kMillibar);
}

/// From where it was let by: with no room for a readable rise it shows nothing.
bool letByStartHolds(Finding& finding, const LargerTest& test, const ReadStage& read,
                     const RulesInForce& rules) {
    const auto half = shareOfOperating(finding, test, Rule::LargerLetByShare, rules);
    if (!half) {
        return false;
    }
    const auto& start = *test.letBy.start;
    if (*test.operating - start.pressure <= read.movement + read.fall.uncertainty) {
        concludeOpen(finding, {Say::LetByNotBelow, {figureOf(start), figureOf(*test.operating)}});
        return false;
    }
    finding.notes.push_back({Say::LetByFrom, {figureOf(start), figureOf(*half)}});
    return true;
}

}  // namespace

NeededTime neededTime(const LargerTest& test, const RulesInForce& rules) {
    NeededTime needed;
    const auto readable = readableMovement(test.gauge, rules);
    if (!readable.movement) {
        needed.lack = readable.finding.why;
        return needed;
    }
    needed.entries.push_back(readable.entry);
    if (auto lack = volumeLack(test.volume)) {
        needed.lack = *lack;
        return needed;
    }
    if (!test.medium) {
        needed.lack = {Say::TestMediumUnknown};
        return needed;
    }
    if (auto lack = placeLack(test.place, rules)) {
        needed.lack = *lack;
        return needed;
    }
    const bool gas = *test.medium == TestMedium::FuelGas;
    const auto factor = namedFactor(needed.entries, gas ? Rule::TimeFactorGas : Rule::TimeFactorAir, rules);
    const auto exact =
        factor ? timeForPlace(needed, {*readable.movement, *test.volume, *factor}, test.place, rules)
               : std::nullopt;
    const Entry* leastEntry = namedEntry(needed.entries, Rule::LargerLeastTime, rules);
    const auto least = leastEntry == nullptr ? std::nullopt : rulebook::durationOf(*leastEntry);
    if (!exact || !least) {
        needed.lack = {Say::LimitMissing};
        return needed;
    }
    needed.time = wholeMinutes(*exact, *least);
    return needed;
}

Finding largerLetBy(const LargerTest& test, const RulesInForce& rules) {
    Finding finding{FindingKind::LetBy};
    const auto read = readStage(finding, test, test.letBy, rules);
    if (!read) {
        return finding;
    }
    const auto rise = read->fall.reversed();
    finding.measured = figureOf(rise);
    const auto stands = standing(rise, read->movement);
    if (stands == Standing::Beyond) {
        concludeBeyond(finding, *read->entry, {Say::LetByFound, {figureOf(rise), limitOf(*read->entry)}});
        return finding;
    }
    if (!letByStartHolds(finding, test, *read, rules) ||
        !stageTimeHolds(finding, test.letBy.took, Rule::LargerLetByTime, Say::LetByTooShort, rules)) {
        return finding;
    }
    const auto falls = standing(read->fall, read->movement);
    if (stands == Standing::AtLimit) {
        concludeAtLimit(finding, nearMovement(rise, *read));
    } else if (falls == Standing::Beyond) {
        concludeAtLimit(finding, {Say::LetByFall, {figureOf(read->fall)}});
    } else if (falls == Standing::AtLimit) {
        concludeAtLimit(finding, nearMovement(read->fall, *read));
    } else {
        concludeWithin(finding, {Say::LetByNone, {figureOf(rise), figureOf(*test.letBy.start)}});
    }
    return finding;
}

Finding largerSettling(const LargerTest& test, const RulesInForce& rules) {
    Finding finding{FindingKind::Settling};
    const auto read = readStage(finding, test, test.settle, rules);
    if (!read) {
        return finding;
    }
    finding.measured = figureOf(read->fall);
    if (!stageTimeHolds(finding, test.settle.took, Rule::LargerSettleTime, Say::SettleTooShort, rules)) {
        return finding;
    }
    const auto moved = read->fall.fall < PressureChange{} ? read->fall.reversed() : read->fall;
    switch (standing(moved, read->movement)) {
        case Standing::Beyond:
            concludeAtLimit(finding, {Say::NotSettled, {figureOf(read->fall), limitOf(*read->entry)}});
            break;
        case Standing::AtLimit:
            concludeAtLimit(finding, nearMovement(moved, *read));
            break;
        case Standing::Within:
            concludeWithin(finding, {Say::Settled, {figureOf(read->fall)}});
            break;
    }
    return finding;
}

Finding largerTestPressure(const LargerTest& test, const RulesInForce& rules) {
    Finding finding{FindingKind::TestPressure};
    if (auto absent = absence(test.test.start)) {
        concludeOpen(finding, *absent);
        return finding;
    }
    const auto& start = *test.test.start;
    finding.measured = figureOf(start);
    const auto needed = shareOfOperating(finding, test, Rule::LargerTestShare, rules);
    if (!needed) {
        return finding;
    }
    finding.limit = figureOf(*needed);
    // How far above is a locked-up regulator was not read: what can't be read on the gauge is none.
    const auto above = start.pressure - *needed;
    const auto readable = readableMovement(test.gauge, rules).movement.value_or(PressureChange{});
    const bool noRegulator = test.medium == TestMedium::Air || test.medium == TestMedium::Nitrogen;
    const std::vector<rulebook::Argument> arguments{figureOf(start), *finding.limit};
    if (!rulebook::holds(start.pressure.in(quantity::kMillibar), Comparison::AtLeast,
                         needed->in(quantity::kMillibar))) {
        concludeOpen(finding, {Say::TestPressureLow, arguments});
    } else if (above > readable && !noRegulator) {
        concludeAtLimit(finding, {Say::TestPressureHigh, arguments});
    } else {
        concludeWithin(finding, {Say::TestPressureGood, {figureOf(start)}});
    }
    return finding;
}

Finding largerTestTime(const LargerTest& test, const RulesInForce& rules) {
    Finding finding{FindingKind::TestTime};
    const auto needed = neededTime(test, rules);
    restOnAll(finding, needed.entries);
    finding.limit.reset();
    finding.comparison = Comparison::AtLeast;
    if (test.test.took) {
        finding.measured = minutesOf(*test.test.took);
    }
    if (!needed.time) {
        concludeOpen(finding, needed.lack);
        return finding;
    }
    finding.limit = minutesOf(*needed.time);
    if (auto absent = absence(test.test.took)) {
        concludeOpen(finding, *absent);
        return finding;
    }
    const std::vector<rulebook::Argument> arguments{*finding.measured, *finding.limit};
    if (rulebook::holds(test.test.took->in(quantity::kSecond), Comparison::AtLeast,
                        needed.time->in(quantity::kSecond))) {
        concludeWithin(finding, {Say::TestLongEnough, arguments});
    } else {
        concludeOpen(finding, {Say::TestTooShort, arguments});
    }
    return finding;
}

namespace {

/// The fall as a leak by the standard's factor, with what it is known to.
struct LeakSeen {
    ReadStage read;
    Flow rate;
    Flow uncertainty;  // that of the change; the volume's own is not in it
    Flow smallest;
};

std::optional<LeakSeen> leakSeen(Finding& finding, const LargerTest& test, const RulesInForce& rules) {
    const auto read = readStage(finding, test, test.test, rules);
    if (!read) {
        return std::nullopt;
    }
    if (auto lack = volumeLack(test.volume)) {
        concludeOpen(finding, *lack);
        return std::nullopt;
    }
    if (auto absent = absence(test.test.took)) {
        concludeOpen(finding, *absent);
        return std::nullopt;
    }
    if (!test.medium) {
        concludeOpen(finding, {Say::TestMediumUnknown});
        return std::nullopt;
    }
    const bool gas = *test.medium == TestMedium::FuelGas;
    std::vector<const Entry*> entries;
    const auto factor = namedFactor(entries, gas ? Rule::LeakFactorGas : Rule::LeakFactorAir, rules);
    restOnAll(finding, entries);
    if (!factor) {
        concludeOpen(finding, {Say::LimitMissing});
        return std::nullopt;
    }
    const auto byFall = [&](PressureChange fall) {
        return leakByFactor(*factor, fall, *test.volume, *test.test.took);
    };
    const auto rate = byFall(read->fall.fall);
    const auto smallest = smallestLeak(*factor, read->movement, *test.volume, *test.test.took);
    if (!rate || !smallest) {
        concludeOpen(finding, {Say::ReadingUnusable});
        return std::nullopt;
    }
    return LeakSeen{*read, *rate, *byFall(read->fall.uncertainty), *smallest};
}

/// What keeps the test from passing: a stage that has no verdict or is wrong, in the order of the work.
std::optional<Sentence> largerLack(const LargerTest& test, const LargerFindings& found) {
    if (!test.smell) {
        return Sentence{Say::SmellUnknown};
    }
    for (const auto* before : {&found.readable, &found.permitted, &found.letBy, &found.settling,
                               &found.pressure, &found.time, &found.longest}) {
        if (before->outcome == Outcome::NoVerdict || before->outcome == Outcome::Fail) {
            return before->why;
        }
    }
    return std::nullopt;
}

/// A stage that is to be looked at again leaves no pass.
void carryLooks(Finding& finding, const LargerFindings& found) {
    for (const auto* before : {&found.readable, &found.permitted, &found.letBy, &found.settling,
                               &found.pressure, &found.time, &found.longest}) {
        if (before->outcome == Outcome::LookAgain && finding.outcome == Outcome::Pass) {
            finding.notes.insert(finding.notes.begin(), std::exchange(finding.why, before->why));
            finding.outcome = Outcome::LookAgain;
        }
    }
}

void judgeLeak(Finding& finding, const LargerTest& test, const LargerFindings& found,
               const Permitted& permitted, const RulesInForce& rules) {
    const auto seen = leakSeen(finding, test, rules);
    finding.limit = permitted.limit ? std::optional(figureOf(*permitted.limit)) : std::nullopt;
    finding.comparison = Comparison::AtMost;
    if (!seen) {
        return;
    }
    restOnAll(finding, permitted.entries);
    finding.measured = figureOf(seen->rate);
    finding.notes.push_back({Say::SmallestLeakSeen, {figureOf(seen->smallest)}});
    auto where = rulebook::Standing::Near;
    std::vector<rulebook::Argument> arguments;
    if (permitted.limit) {
        const auto unit = quantity::kLitrePerHour;
        where = rulebook::standing({seen->rate.in(unit), seen->uncertainty.in(unit) / quantity::kCoverage},
                                   Comparison::AtMost, permitted.limit->in(unit));
        arguments = {*finding.measured, *finding.limit};
        if (where == rulebook::Standing::Beyond) {
            concludeBeyond(finding, *permitted.entries.front(), {Say::LeakBeyond, arguments});
            return;
        }
    }
    if (auto lack = largerLack(test, found)) {
        concludeOpen(finding, *std::move(lack));
        return;
    }
    const auto rise = seen->read.fall.reversed();
    if (standing(rise, seen->read.movement) == Standing::Beyond) {
        concludeAtLimit(finding, {Say::RiseDuringTest, {figureOf(rise)}});
    } else if (where == rulebook::Standing::Near) {
        arguments.push_back(figureOf(seen->uncertainty));
        concludeAtLimit(finding, {Say::LeakAtLimit, arguments});
    } else {
        concludeWithin(finding, {Say::LeakWithin, arguments});
        carryLooks(finding, found);
    }
}

}  // namespace

LargerFindings largerTightness(const LargerTest& test, const RulesInForce& rules) {
    const auto needed = neededTime(test, rules);
    const auto permitted = permittedLeak(test.place, rules);
    LargerFindings found{readableMovement(test.gauge, rules).finding,
                         largerLetBy(test, rules),
                         largerSettling(test, rules),
                         largerTestPressure(test, rules),
                         largerTestTime(test, rules),
                         longestTest(test.gauge, needed.time, rules),
                         permitted.finding,
                         Finding{FindingKind::Tightness}};
    judgeLeak(found.tightness, test, found, permitted, rules);
    if (test.smell == true) {
        found.tightness.outcome = Outcome::Fail;
        found.tightness.why = {Say::SmellFails};
    }
    return found;
}

}  // namespace hearth::tightness

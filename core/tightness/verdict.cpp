// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/verdict.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"
#include "core/tightness/grounds.h"
#include "core/tightness/leak_rate.h"
#include "core/tightness/retest.h"

#include <utility>

namespace hearth::tightness {

using rulebook::Edition;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Gas;
using rulebook::graver;
using rulebook::noVerdict;
using rulebook::Outcome;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// What has not been said of the test, or was done so that it says nothing.
std::optional<Say> lackIn(const Conduct& conduct) {
    if (!conduct.smell) {
        return Say::SmellUnknown;
    }
    if (!conduct.work) {
        return Say::WorkUnknown;
    }
    if (!conduct.extent) {
        return Say::ExtentUnknown;
    }
    if (!conduct.appliances) {
        return Say::AppliancesUnknown;
    }
    if (*conduct.appliances != Appliances::Connected) {
        return std::nullopt;
    }
    if (!conduct.pilots) {
        return Say::PilotsUnknown;
    }
    return *conduct.pilots == Pilots::LeftLit ? std::optional(Say::PilotsLeftLit) : std::nullopt;
}

/// Why the readings can't be judged, though they are there.
std::optional<Sentence> closedBy(const Preceding& before) {
    for (const auto* finding : {before.scope, before.letBy}) {
        if (finding != nullptr && finding->outcome == Outcome::Fail) {
            return finding->why;
        }
    }
    // The scope that is not known is its own finding; the stages must have been right before readings mean
    // anything.
    for (const auto* finding : {before.letBy, before.settling, before.pressure, before.time}) {
        if (finding == nullptr) {
            return Sentence{Say::ReadingMissing};
        }
        if (finding->outcome == Outcome::NoVerdict || finding->outcome == Outcome::Fail ||
            finding->why.say == Say::LetByFound) {
            return finding->why;
        }
    }
    return std::nullopt;
}

/// The drop that may be allowed once the pipework is known to be clear of movement.
Finding byAllowedDrop(const Movement& movement, const TightnessInput& input, const RulesInForce& rules) {
    if (rules.edition() == Edition::Up1bEd3 && rules.gas() == Gas::NaturalGas) {
        return byDropClass(movement.change, input.part, rules);
    }
    // The firm's own bands are the standard's words; the short-cut only spares working out a volume.
    const bool bandsCanDecide = rules.known(rulebook::Rule::DropByVolume) != nullptr && input.part.volume;
    if (!bandsCanDecide) {
        if (auto shortCut = byShortCut(movement.change, rules)) {
            return *std::move(shortCut);
        }
    }
    return byBands(movement.change, input.part, rules);
}

/// Edition 4: first the repeat, then the drop; both must hold, and the graver of the two counts.
Finding afterRetest(const Movement& movement, const TightnessInput& input, const Finding& retest,
                    const RulesInForce& rules) {
    if (retest.outcome == Outcome::NoVerdict) {
        return noVerdict(FindingKind::Tightness, retest.why);
    }
    auto drop = byAllowedDrop(movement, input, rules);
    for (const auto& limit : retest.limits) {
        restOn(drop, limit);
    }
    if (graver(drop.outcome, retest.outcome) != drop.outcome) {
        drop.notes.insert(drop.notes.begin(), std::exchange(drop.why, retest.why));
        drop.outcome = retest.outcome;
    } else if (drop.outcome != Outcome::NoVerdict) {
        drop.notes.push_back(retest.why);
    }
    return drop;
}

Finding existingConnected(const Movement& movement, const TightnessInput& input,
                          const std::optional<Finding>& retest, const RulesInForce& rules) {
    if (retest && retest->outcome == Outcome::Fail) {
        Finding finding = *retest;
        finding.kind = FindingKind::Tightness;
        return finding;
    }
    const bool third = rules.edition() == Edition::Up1bEd3;
    if (standing(movement) == Standing::Beyond) {
        if (third) {
            return byAllowedDrop(movement, input, rules);
        }
        if (!retest) {
            auto finding = noVerdict(FindingKind::Tightness, fallSentence(Say::RetestNeeded, movement));
            restOn(finding, *movement.threshold);
            return finding;
        }
        return afterRetest(movement, input, *retest, rules);
    }
    auto still = byNoMovement(movement, Say::RetestNeeded);
    if (still.outcome == Outcome::Pass) {
        return still;
    }
    if (third) {
        return better(std::move(still), byAllowedDrop(movement, input, rules));
    }
    return retest ? better(std::move(still), afterRetest(movement, input, *retest, rules)) : still;
}

Finding judged(const Movement& movement, const TightnessInput& input, const std::optional<Finding>& retest,
               const RulesInForce& rules) {
    if (auto rise = byRise(FindingKind::Tightness, movement)) {
        return *rise;
    }
    if (*input.conduct.work == Work::New) {
        return byNoMovement(movement, Say::FallOnNewWork);
    }
    if (*input.conduct.appliances != Appliances::Connected) {
        return byNoMovement(movement, Say::FallOnIsolated);
    }
    return existingConnected(movement, input, retest, rules);
}

void noteWorth(Finding& finding, const Movement& movement, const TightnessInput& input) {
    const auto& change = movement.change;
    if (change.fall <= quantity::PressureChange{}) {
        return;
    }
    const auto start = input.test.start->pressure;
    if (input.part.volume) {
        const auto accuracy = input.gauge->accuracy;
        const auto leak = leakRate({*input.part.volume, change, start, *input.test.took, accuracy,
                                    input.assumed, input.volumeOff, input.gauge->drift});
        finding.notes.push_back({Say::LeakRate, {figureOf(leak.rate), figureOf(leak.uncertainty)}});
        if (!input.volumeOff) {
            finding.notes.push_back({Say::VolumeTakenAsExact});
        }
    }
    if (standing(movement) == Standing::Within) {
        return;
    }
    const auto cooling = coolingFor(change.fall, start);
    if (cooling <= input.assumed) {
        finding.notes.push_back({Say::TemperatureExplains, {figureOf(cooling)}});
    } else {
        finding.notes.push_back(
            {Say::TemperatureDoesNotExplain, {figureOf(cooling), figureOf(input.assumed)}});
    }
}

void addNotes(Finding& finding, const Movement& movement, const TightnessInput& input) {
    noteWorth(finding, movement, input);
    const bool drifts = input.settled && standing({*input.settled, movement.threshold}) == Standing::Beyond &&
                        standing(movement) == Standing::Beyond;
    if (drifts) {
        finding.notes.push_back({Say::StartDrifting});
    }
    const bool isolatedNewWork =
        *input.conduct.work == Work::New && *input.conduct.appliances == Appliances::Isolated;
    if (isolatedNewWork && finding.outcome != Outcome::Fail) {
        finding.notes.push_back({Say::NewWorkRetestAppliances});
    }
    if (finding.outcome == Outcome::Fail) {
        finding.notes.push_back({Say::DoFailNoSmell});
    }
}

bool wasEntered(const Stage& stage) {
    return stage.start.isEntered() || stage.end.isEntered() || stage.took.isEntered();
}

/// What keeps the readings from being judged at all.
std::optional<Sentence> lackOf(const TightnessInput& input, const Preceding& before) {
    if (auto lack = lackIn(input.conduct)) {
        return Sentence{*lack};
    }
    if (!input.gauge) {
        return Sentence{Say::GaugeNotChosen};
    }
    if (auto absent = absence(input.test.start, input.test.end, input.test.took)) {
        return absent;
    }
    return closedBy(before);
}

/// Whether the repeat is what an Edition 4 verdict still waits for.
bool needsRetest(const Movement& movement, const TightnessInput& input, const RulesInForce& rules) {
    return rules.edition() == Edition::Up1bEd4 && *input.conduct.work == Work::Existing &&
           *input.conduct.appliances == Appliances::Connected && standing(movement) == Standing::Beyond;
}

/// Whether the table of bands decided, or would have.
bool restsOnBands(const Finding& finding) {
    for (const auto& limit : finding.limits) {
        if (limit.key.rule == rulebook::Rule::DropByVolume) {
            return true;
        }
    }
    return false;
}

}  // namespace

TightnessFindings tightness(const TightnessInput& input, const Preceding& before, const RulesInForce& rules) {
    TightnessFindings out;
    Finding& finding = out.tightness;
    if (wasEntered(input.retest)) {
        out.retest = isolatedRetest(input.retest, input.gauge, input.lowPressureExplained, rules);
    }
    std::optional<Change> change;
    if (input.gauge && input.test.start && input.test.end) {
        change = changeBetween(*input.gauge, *input.test.start, *input.test.end);
        finding.measured = figureOf(*change);
    }
    if (input.conduct.smell == true) {
        finding.outcome = Outcome::Fail;
        finding.why = {Say::SmellFails};
        return out;
    }
    if (auto lack = lackOf(input, before)) {
        concludeOpen(finding, *lack);
        return out;
    }
    const Movement movement{*change, movementThreshold(*input.gauge, rules)};
    if (movement.threshold == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return out;
    }
    finding = judged(movement, input, out.retest, rules);
    finding.measured = figureOf(*change);
    addNotes(finding, movement, input);
    if (!out.retest && needsRetest(movement, input, rules)) {
        out.retest = noVerdict(FindingKind::IsolatedRetest, fallSentence(Say::RetestNeeded, movement));
    }
    if (restsOnBands(finding)) {
        out.bands = bandLookUp(input.part, rules);
    }
    return out;
}

}  // namespace hearth::tightness

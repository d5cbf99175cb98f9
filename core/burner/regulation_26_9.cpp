// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/regulation_26_9.h"

#include "core/rulebook/conclude.h"

#include <algorithm>
#include <utility>

namespace hearth::burner {

using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

namespace {

/// What has come together so far: matters, and whether one of them is wrong or missing.
struct Reg26Tally {
    std::vector<rulebook::Sentence> matters;
    std::optional<Say> firstWrong;
    std::optional<Say> firstMissing;

    void addWrong(Say say) {
        matters.push_back({say});
        firstWrong = firstWrong.value_or(say);
    }
    void addMissing(Say say) {
        matters.push_back({say});
        firstMissing = firstMissing.value_or(say);
    }
};

/// (a), (b) or (d). That there is none is an answer for a flue only.
void examineReg26(Reg26Tally& tally, const std::optional<Examined>& answer, bool mayBeNone, Say missing,
                  Say wrong) {
    if (answer == Examined::Wrong) {
        tally.addWrong(wrong);
    } else if (!answer || (answer == Examined::NotFitted && !mayBeNone)) {
        tally.addMissing(missing);
    }
}

bool isReg26Judged(const std::optional<Outcome>& reading) {
    return reading == Outcome::Pass || reading == Outcome::LookAgain;
}

void examineReg26Combustion(Reg26Tally& tally, const AppliancesExamination& appliance) {
    if (!appliance.whyNotPracticable) {
        tally.addMissing(Say::Reg26NoReason);
        return;
    }
    if (appliance.whyNotPracticable == NotPracticable::Other && appliance.whyInWords.empty()) {
        tally.addMissing(Say::Reg26ReasonWords);
    }
    if (!appliance.combustion) {
        tally.addMissing(Say::Reg26CombustionNot);
    } else if (*appliance.combustion == Outcome::NoVerdict) {
        tally.addMissing(Say::Reg26ReadingOpen);
    } else if (isReg26Judged(appliance.combustion)) {
        tally.matters.push_back({Say::Reg26CombustionInstead});
    }
}

/// (c), or (ca) in its place.
void examineReg26Readings(Reg26Tally& tally, const AppliancesExamination& appliance) {
    const auto& pressure = appliance.operatingPressure;
    const auto& heat = appliance.heatInput;
    const auto& combustion = appliance.combustion;
    // A failing reading is never outweighed by another that is good.
    if (pressure == Outcome::Fail || heat == Outcome::Fail || combustion == Outcome::Fail) {
        tally.addWrong(Say::Reg26ReadingFails);
    }
    if (!pressure && !heat) {
        if (combustion || appliance.whyNotPracticable) {
            examineReg26Combustion(tally, appliance);
        } else {
            tally.addMissing(Say::Reg26PressureOrHeat);
        }
        return;
    }
    if (appliance.bothNecessary && (!pressure || !heat)) {
        tally.addMissing(Say::Reg26BothNeeded);
    }
    const bool open = pressure == Outcome::NoVerdict || heat == Outcome::NoVerdict;
    const bool enough = appliance.bothNecessary ? isReg26Judged(pressure) && isReg26Judged(heat)
                                                : isReg26Judged(pressure) || isReg26Judged(heat);
    if (open && !enough) {
        tally.addMissing(Say::Reg26ReadingOpen);
    }
}

bool asksReg26Look(const AppliancesExamination& appliance) {
    return appliance.operatingPressure == Outcome::LookAgain || appliance.heatInput == Outcome::LookAgain ||
           appliance.combustion == Outcome::LookAgain;
}

}  // namespace

Regulation26 examinedUnder26(const AppliancesExamination& appliance) {
    if (appliance.notAsked) {
        return {Asked::DoesNotApply, {Say::Reg26DoesNotApply}, {}};
    }
    Reg26Tally tally;
    examineReg26(tally, appliance.flue, true, Say::Reg26FlueNot, Say::Reg26FlueWrong);
    examineReg26(tally, appliance.combustionAir, false, Say::Reg26AirNot, Say::Reg26AirWrong);
    examineReg26Readings(tally, appliance);
    examineReg26(tally, appliance.operation, false, Say::Reg26OperationNot, Say::Reg26OperationWrong);
    if (asksReg26Look(appliance)) {
        tally.matters.push_back({Say::Reg26ReadingLook});
    }
    if (tally.firstWrong) {
        tally.matters.push_back({Say::Reg26TellDefect});
        return {Asked::NotSatisfied, {*tally.firstWrong}, std::move(tally.matters)};
    }
    if (tally.firstMissing) {
        return {Asked::NotYet, {*tally.firstMissing}, std::move(tally.matters)};
    }
    return {Asked::Satisfied, {Say::Reg26Satisfied}, std::move(tally.matters)};
}

Finding regulation26Finding(const AppliancesExamination& appliance) {
    const auto examined = examinedUnder26(appliance);
    Finding finding{FindingKind::Regulation26};
    finding.why = examined.why;
    for (const auto& matter : examined.matters) {
        if (!(matter == examined.why)) {
            finding.notes.push_back(matter);
        }
    }
    switch (examined.state) {
        case Asked::Satisfied:
            finding.outcome = asksReg26Look(appliance) ? Outcome::LookAgain : Outcome::Pass;
            break;
        case Asked::NotSatisfied:
            finding.outcome = Outcome::Fail;
            break;
        case Asked::NotYet:
            finding.outcome = Outcome::NoVerdict;
            break;
        case Asked::DoesNotApply:
            // 26(10) is from memory: nothing passes on it.
            finding.outcome = Outcome::LookAgain;
            break;
    }
    return finding;
}

}  // namespace hearth::burner

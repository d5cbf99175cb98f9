// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/regulation_26_9.h"
#include "core/judging/asking.h"

namespace hearth::judging {

using burner::Examined;
using reg::Item;
namespace choice = reg::choice;

namespace {

std::optional<Examined> examined(const Readings& once, Item item) {
    return once.choice<Examined>(item, {{choice::kGood, Examined::Good},
                                        {choice::kWrong, Examined::Wrong},
                                        {choice::kNotFitted, Examined::NotFitted}});
}

/// How a reading was judged; "not read" is the same as nothing said.
std::optional<rulebook::Outcome> reading(const Readings& once, Item item) {
    return once.choice<rulebook::Outcome>(item, {{choice::kInOrder, rulebook::Outcome::Pass},
                                                 {choice::kWrong, rulebook::Outcome::Fail},
                                                 {choice::kLookAgain, rulebook::Outcome::LookAgain}});
}

}  // namespace

void answerRegulation26(Asking& asking) {
    const auto& once = asking.once;
    burner::AppliancesExamination appliance;
    appliance.notAsked = once.choice<burner::NotAsked>(
        Item::ExaminedNotAsked, {{choice::kDisconnected, burner::NotAsked::DirectDisconnection},
                                 {choice::kHarmlessPurging, burner::NotAsked::HarmlessPurging}});
    appliance.flue = examined(once, Item::ExaminedFlue);
    appliance.combustionAir = examined(once, Item::ExaminedAir);
    appliance.operatingPressure = reading(once, Item::ExaminedPressure);
    appliance.heatInput = reading(once, Item::ExaminedHeatInput);
    // An answer that can't be read is the stricter one.
    appliance.bothNecessary = once.yesNo(Item::ExaminedBoth).value_or(once.isEntered(Item::ExaminedBoth));
    appliance.combustion = reading(once, Item::ExaminedCombustion);
    appliance.whyNotPracticable = once.choice<burner::NotPracticable>(
        Item::WhyNeither, {{choice::kNoMeter, burner::NotPracticable::NoMeterNoTestPoint},
                           {choice::kMeterNotReached, burner::NotPracticable::MeterNotAccessible},
                           {choice::kDisplayDead, burner::NotPracticable::MeterDisplayDead},
                           {choice::kOther, burner::NotPracticable::Other}});
    appliance.whyInWords = std::string(once.text(Item::WhyNeitherTaken));
    appliance.operation = examined(once, Item::ExaminedOperation);
    asking.find(burner::regulation26Finding(appliance),
                {Item::ExaminedFlue, Item::ExaminedAir, Item::ExaminedPressure, Item::ExaminedHeatInput,
                 Item::ExaminedBoth, Item::ExaminedCombustion, Item::WhyNeither, Item::WhyNeitherTaken,
                 Item::ExaminedOperation, Item::ExaminedNotAsked});
}

}  // namespace hearth::judging

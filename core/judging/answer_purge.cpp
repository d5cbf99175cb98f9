// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/fuel.h"
#include "core/judging/asking.h"
#include "core/judging/worked_figures.h"
#include "core/pipework/figures.h"
#include "core/pipework/purge.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/tightness/figures.h"
#include "core/tightness/purge.h"

namespace hearth::judging {

using reg::Item;
namespace choice = reg::choice;

namespace {

/// A volume that was typed, without what its last digit is worth.
rulebook::Given<quantity::Volume> volumeTyped(const Readings& once, Item item) {
    return once.volume(item);
}

/// At the typed flow, or at what the typed burner takes.
void showTime(Asking& asking, quantity::Volume volume) {
    if (const auto flow = asking.once.flow(Item::PurgeFlow)) {
        if (const auto time = pipework::purgeTime(volume, flow->value)) {
            asking.work(Derived::PurgeTime, pipework::figureOf(*time), "volume over flow");
        }
        return;
    }
    const auto burner = asking.once.power<quantity::GrossPower>(Item::PurgeBurner);
    if (!burner) {
        return;
    }
    gas::FuelInput known;
    if (const auto billed = asking.once.heatValue<quantity::GrossHeatValue>(Item::GasHeatValue)) {
        known.gross = billed->value;
    }
    if (const auto fuel = asking.got(gas::fuelOf(asking.inForce, known))) {
        if (const auto time = pipework::purgeTimeThroughBurner(volume, burner->value, fuel->gross)) {
            asking.work(Derived::PurgeTime, pipework::figureOf(*time),
                        "volume times calorific value over heat input; air goes first, so it is the least");
        }
    }
}

/// The edition of IGEM/UP/1B that is in force on the day.
rulebook::RulesInForce smallRules(const Asking& asking) {
    const auto edition =
        rulebook::editionsAllowedOn(asking.sheet.on()).only().value_or(rulebook::Edition::Up1bEd4);
    return {asking.book, edition, asking.gas, asking.sheet.on()};
}

void answerSmall(Asking& asking) {
    tightness::TestedPart part;
    part.meter = pipework::meterByCode(asking.once.code(Item::PurgeMeter));
    if (const auto* tube = pipework::tubeByCode(asking.once.code(Item::SectionTube))) {
        part.largestNominal = tube->nominal;
        part.nominalKnown = tube->nominal > 0.0;
    }
    if (const auto known = volumeTyped(asking.once, Item::PurgeVolumeKnown)) {
        part.volume = *known;
    }
    const auto rules = smallRules(asking);
    const auto need = tightness::purgeNeed(part, rules);
    const bool isEntered = need.entry != nullptr && need.entry->isKnown();
    auto finding =
        rulebook::noVerdict(rulebook::FindingKind::Purge,
                            {isEntered ? rulebook::Say::ReadingMissing : rulebook::Say::LimitMissing});
    if (need.volume) {
        asking.work(Derived::PurgeVolume, tightness::shortFigureOf(*need.volume),
                    "IGEM/UP/1B, by the entry named");
        showTime(asking, *need.volume);
        rulebook::concludeOpen(finding,
                               {rulebook::Say::PurgeVolumeNeeded, {tightness::shortFigureOf(*need.volume)}});
    }
    if (need.entry != nullptr) {
        rulebook::restOn(finding, *need.entry);
    }
    asking.find(std::move(finding), {Item::PurgeMeter, Item::SectionTube, Item::PurgeVolumeKnown});
}

pipework::LargePurgeInput largeInput(const Readings& once) {
    pipework::LargePurgeInput input;
    input.meter = pipework::meterByCode(once.code(Item::PurgeMeter));
    if (const auto pipes = volumeTyped(once, Item::PurgePipes)) {
        input.volume.pipes = *pipes;
        input.volume.fittings = quantity::Volume{};
    }
    pipework::SectionInput largest;
    largest.tube = pipework::tubeByCode(once.code(Item::SectionTube));
    if (largest.tube != nullptr) {
        const pipework::SectionInput sections[] = {largest};
        pipework::takeLargestPipe(input, sections);
    }
    input.plateCyclic = volumeTyped(once, Item::PurgePlate);
    input.passed = volumeTyped(once, Item::PurgePassed);
    if (const auto flow = once.flow(Item::PurgeFlow)) {
        input.flow = flow->value;
        input.flowUncertainty = quantity::Flow::fromBase(quantity::rectangular(flow->digit.base() / 2.0));
    } else if (flow.unreadable) {
        input.flow = rulebook::Given<quantity::Flow>::unusable();
    }
    if (const auto end = once.share(Item::PurgeEndGas)) {
        input.endGas = end->value;
        input.endUncertainty = quantity::Share::fromBase(quantity::rectangular(end->digit.base() / 2.0));
    } else if (end.unreadable) {
        input.endGas = rulebook::Given<quantity::Share>::unusable();
    }
    return input;
}

void answerLargePurge(Asking& asking) {
    const auto input = largeInput(asking.once);
    const auto need = pipework::largePurgeNeed(input, asking.inForce);
    constexpr std::string_view kUp1 = "IGE/UP/1, from memory";
    if (need.volume) {
        asking.work(Derived::PurgeVolume, pipework::figureOf(*need.volume), kUp1);
        showTime(asking, *need.volume);
    }
    if (const auto least = pipework::leastPurgeFlow(input, asking.inForce); least.flow) {
        asking.work(Derived::PurgeFlowLeast, pipework::figureOf(*least.flow), kUp1);
    }
    asking.find(pipework::judgeLargePurgeVolume(input, asking.inForce),
                {Item::PurgePassed, Item::PurgePipes, Item::PurgeMeter, Item::PurgePlate});
    asking.find(pipework::judgePurgeFlow(input, asking.inForce), {Item::PurgeFlow, Item::SectionTube});
    asking.find(pipework::judgePurgeEnd(input, asking.inForce), {Item::PurgeEndGas});
}

}  // namespace

void answerPurge(Asking& asking) {
    if (asking.once.code(Item::PurgeSize) == choice::kLarger) {
        answerLargePurge(asking);
    } else {
        answerSmall(asking);
    }
}

}  // namespace hearth::judging

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/asking.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/tightness/figures.h"
#include "core/tightness/larger_test.h"
#include "core/tightness/preparation.h"
#include "core/tightness/standard_choice.h"
#include "core/tightness/strength.h"

#include <utility>

namespace hearth::judging {

namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Say;
using tightness::AreaType;
using tightness::Given;
using tightness::LargerGauge;
using tightness::LargerGaugeKind;
using tightness::TestMedium;

constexpr std::string_view kLargerSource = "IGE/UP/1 Edition 2, from memory";
constexpr std::string_view kStrengthSource =
    "IGE/UP/1A Edition 2 by a maintenance firm's policy page; IGE/UP/1 from memory";

Given<quantity::GaugePressure> largerPressure(const Readings& once, Item item) {
    const auto read = once.pressure(item);
    if (!read) {
        return read.unreadable ? Given<quantity::GaugePressure>::unusable()
                               : Given<quantity::GaugePressure>();
    }
    return read->pressure;
}

Given<quantity::Duration> largerTime(const Readings& once, Item item) {
    const auto read = once.duration(item);
    if (!read) {
        return read.unreadable ? Given<quantity::Duration>::unusable() : Given<quantity::Duration>();
    }
    return read->value;
}

tightness::Stage largerStage(const Readings& once, Item start, Item end, Item took) {
    return {once.pressure(start), once.pressure(end), largerTime(once, took)};
}

LargerGauge tabledGauge(LargerGaugeKind kind, double range, std::optional<int> decimals = std::nullopt) {
    return {kind, quantity::PressureChange(range, quantity::kMillibar), decimals, std::nullopt};
}

/// Each choice is a row of the table of readable movements, range and all; another gauge has none.
std::optional<LargerGauge> largerGauge(const Readings& once, Item item) {
    namespace choice = reg::choice;
    return once.choice<LargerGauge>(
        item, {{choice::kWater, tabledGauge(LargerGaugeKind::Water, 120)},
               {choice::kHeavyFluid, tabledGauge(LargerGaugeKind::DenseFluid, 200)},
               {choice::kMercury, tabledGauge(LargerGaugeKind::Mercury, 1000)},
               {choice::kElectronic1, tabledGauge(LargerGaugeKind::Electronic, 200, 1)},
               {choice::kElectronic2, tabledGauge(LargerGaugeKind::Electronic, 200, 2)},
               {choice::kElectronic1Wide, tabledGauge(LargerGaugeKind::Electronic, 2000, 1)},
               {choice::kElectronic0, tabledGauge(LargerGaugeKind::Electronic, 20000, 0)},
               {choice::kOther, tabledGauge(LargerGaugeKind::Electronic, 0, 0)}});
}

/// Air and nitrogen have the same factors; which of the two does not matter here.
std::optional<TestMedium> largerMedium(const Readings& once, Item item) {
    return once.choice<TestMedium>(
        item, {{reg::choice::kFuelGas, TestMedium::FuelGas}, {reg::choice::kAirOrNitrogen, TestMedium::Air}});
}

tightness::Surroundings surroundings(const Readings& once) {
    namespace choice = reg::choice;
    return {once.choice<tightness::Work>(Item::LargerWork, {{choice::kNew, tightness::Work::New},
                                                            {choice::kExisting, tightness::Work::Existing}}),
            once.choice<AreaType>(Item::LargerArea, {{choice::kAreaA, AreaType::TypeA},
                                                     {choice::kAreaB, AreaType::TypeB},
                                                     {choice::kAreaC, AreaType::TypeC},
                                                     {choice::kOutdoors, AreaType::Outside},
                                                     {choice::kBuried, AreaType::Buried}}),
            once.volume(Item::LargerRoomVolume).value, once.yesNo(Item::LargerVentilated)};
}

tightness::LargerTest largerTest(const Readings& once) {
    return {largerGauge(once, Item::LargerGauge),
            once.volume(Item::PurgeVolumeKnown),
            surroundings(once),
            largerMedium(once, Item::LargerMedium),
            largerPressure(once, Item::LargerOperatingPressure),
            largerStage(once, Item::LargerLetByStart, Item::LargerLetByEnd, Item::LargerLetByTook),
            largerStage(once, Item::LargerSettleStart, Item::LargerSettleEnd, Item::LargerSettleTook),
            largerStage(once, Item::LargerStart, Item::LargerEnd, Item::LargerTook),
            once.yesNo(Item::LargerSmell)};
}

tightness::ScopeInput largerScope(const Readings& once) {
    tightness::ScopeInput input;
    input.volume = once.volume(Item::PurgeVolumeKnown).value;
    if (const auto pipe = once.length(Item::PurgePipe)) {
        input.largestNominal = pipe->value.in(quantity::kMillimetre);
        input.nominalKnown = true;
    }
    input.meter = pipework::meterByCode(once.text(Item::PurgeMeter));
    input.operating = largerPressure(once, Item::LargerOperatingPressure);
    input.supply = largerPressure(once, Item::LargerSupplyPressure);
    return input;
}

std::optional<tightness::TestStandard> findStandard(Asking& asking) {
    const auto day = asking.sheet.on();
    // Where both editions may judge, the newer one's scope counts.
    const auto edition =
        tightness::editionFor(std::nullopt, day).edition.value_or(rulebook::Edition::Up1bEd4);
    const rulebook::RulesInForce rules(asking.book, edition, asking.gas, day);
    auto chosen = tightness::standardFor(largerScope(asking.once), rules);
    asking.find(std::move(chosen.finding), {Item::PurgeVolumeKnown, Item::PurgePipe, Item::PurgeMeter,
                                            Item::LargerOperatingPressure, Item::LargerSupplyPressure});
    return chosen.standard;
}

void findTightness(Asking& asking) {
    const auto test = largerTest(asking.once);
    auto found = tightness::largerTightness(test, asking.inForce);
    if (const auto needed = tightness::neededTime(test, asking.inForce).time) {
        asking.work(Derived::TestTimeNeeded, tightness::minutesOf(*needed), kLargerSource);
    }
    if (found.tightness.measured) {
        asking.work(Derived::LargerLeak, *found.tightness.measured, kLargerSource);
    }
    asking.find(std::move(found.tightness), {Item::LargerStart, Item::LargerEnd, Item::LargerTook,
                                             Item::LargerSmell, Item::PurgeVolumeKnown});
    asking.find(std::move(found.permitted),
                {Item::LargerWork, Item::LargerArea, Item::LargerVentilated, Item::LargerRoomVolume});
    asking.find(std::move(found.time), {Item::LargerTook});
    asking.find(std::move(found.longest), {Item::LargerGauge});
    asking.find(std::move(found.pressure), {Item::LargerStart, Item::LargerOperatingPressure});
    asking.find(std::move(found.letBy),
                {Item::LargerLetByStart, Item::LargerLetByEnd, Item::LargerLetByTook});
    asking.find(std::move(found.settling),
                {Item::LargerSettleStart, Item::LargerSettleEnd, Item::LargerSettleTook});
    asking.find(std::move(found.readable), {Item::LargerGauge});
}

/// New pipework is strength tested; existing pipework where somebody did.
bool strengthConcerns(const Readings& once) {
    for (const auto item : {Item::StrengthMostOperating, Item::LargerIncidentalPressure, Item::StrengthMedium,
                            Item::StrengthGauge, Item::StrengthPartsOff, Item::StrengthSettled,
                            Item::StrengthStart, Item::StrengthEnd, Item::StrengthTook}) {
        if (once.isEntered(item)) {
            return true;
        }
    }
    return once.code(Item::LargerWork) == reg::choice::kNew;
}

void findStrength(Asking& asking) {
    const auto& once = asking.once;
    const tightness::StrengthTest test{
        largerPressure(once, Item::StrengthMostOperating),
        largerPressure(once, Item::LargerIncidentalPressure),
        largerMedium(once, Item::StrengthMedium),
        largerGauge(once, Item::StrengthGauge),
        largerTime(once, Item::StrengthSettled),
        largerStage(once, Item::StrengthStart, Item::StrengthEnd, Item::StrengthTook),
        once.yesNo(Item::StrengthPartsOff)};
    auto found = tightness::strength(test, asking.inForce);
    if (says(found.pressure, Say::StrengthBoth)) {
        asking.work(Derived::StrengthPressureNeeded, *found.pressure.limit, kStrengthSource);
    }
    asking.find(std::move(found.strength), {Item::StrengthStart, Item::StrengthEnd, Item::StrengthMedium,
                                            Item::StrengthGauge, Item::StrengthPartsOff});
    asking.find(std::move(found.pressure),
                {Item::StrengthStart, Item::StrengthMostOperating, Item::LargerIncidentalPressure});
    asking.find(std::move(found.times), {Item::StrengthSettled, Item::StrengthTook});
}

}  // namespace

void answerLarger(Asking& asking) {
    const auto standard = findStandard(asking);
    // The larger standards' method judges nothing that the small one covers; a smell fails under each.
    const bool small = standard == tightness::TestStandard::Up1b;
    if (small && asking.once.yesNo(Item::LargerSmell) != true) {
        return;
    }
    findTightness(asking);
    if (!small && strengthConcerns(asking.once)) {
        findStrength(asking);
    }
}

}  // namespace hearth::judging

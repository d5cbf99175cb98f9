// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/air_inlet.h"
#include "core/burner/combustion.h"
#include "core/burner/efficiency.h"
#include "core/burner/flue_figures.h"
#include "core/burner/flue_gas.h"
#include "core/burner/plausibility.h"
#include "core/burner/ratio.h"
#include "core/gas/dew_point.h"
#include "core/gas/fuel.h"
#include "core/judging/asking.h"
#include "core/judging/doubts.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"
#include "core/register/appliance_kinds.h"
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <vector>

namespace hearth::judging {

using burner::FlueReadings;
using quantity::Share;
using reg::Item;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Say;

namespace {

constexpr std::string_view kTextbook = "textbook";
constexpr Share kWhole{100.0, quantity::kPercent};
constexpr std::string_view kSiegert = "1. BImSchV, Annex: net basis, dry, nothing condensed";
constexpr std::string_view kBs845 = "BS 845-1:1987, from memory: gross basis";

burner::ShareReading readingOf(const Seen<Share>& seen) {
    return {seen.value, seen.digit};
}

rulebook::Given<burner::ShareReading> readingOf(const rulebook::Given<Seen<Share>>& seen) {
    using Result = rulebook::Given<burner::ShareReading>;
    if (!seen) {
        return seen.unreadable ? Result::unusable() : Result();
    }
    return readingOf(*seen);
}

rulebook::Given<quantity::Temperature> plain(
    const rulebook::Given<Seen<quantity::Temperature, quantity::TemperatureChange>>& seen) {
    using Result = rulebook::Given<quantity::Temperature>;
    if (!seen) {
        return seen.unreadable ? Result::unusable() : Result();
    }
    return seen->value;
}

/// From the data sheet; what can't be used is not counted, and said.
std::optional<Share> accuracyTyped(const Readings& once, Item item) {
    const auto accuracy = once.trace(item);
    return !accuracy || isUnclear(once, item) ? std::nullopt : std::optional(accuracy->value);
}

burner::Analyser analyserTyped(const Readings& once) {
    burner::Analyser analyser;
    analyser.computesCarbonDioxide = once.yesNo(Item::AnalyserComputes);
    analyser.zeroedOutdoors = once.yesNo(Item::AnalyserZeroed);
    analyser.carbonMonoxideAccuracy = accuracyTyped(once, Item::AnalyserCoAccuracy);
    analyser.carbonDioxideAccuracy = accuracyTyped(once, Item::AnalyserCo2Accuracy);
    analyser.oxygenAccuracy = accuracyTyped(once, Item::AnalyserO2Accuracy);
    return analyser;
}

/// A figure of the maker's: the first item that it is typed in, and the two findings that rest on it.
struct MakersFigureTyped {
    Item item;
    bool isUnclear;
    FindingKind atMaximum;
    FindingKind atMinimum;

    [[nodiscard]] bool decides(FindingKind kind) const { return kind == atMaximum || kind == atMinimum; }
};

struct MakersTyped {
    burner::MakersCombustion figures;
    std::vector<MakersFigureTyped> typed;

    [[nodiscard]] bool isUnclear() const {
        return std::any_of(typed.begin(), typed.end(), [](const auto& figure) { return figure.isUnclear; });
    }
    [[nodiscard]] bool isUnclearFor(FindingKind kind) const {
        return std::any_of(typed.begin(), typed.end(),
                           [&](const auto& figure) { return figure.isUnclear && figure.decides(kind); });
    }
};

MakersTyped makersTyped(const Readings& once) {
    MakersTyped maker;
    const auto high = rangeTyped(once, Item::MakerCo2Least, Item::MakerCo2Most);
    const auto low = rangeTyped(once, Item::MakerCo2LeastLow, Item::MakerCo2MostLow);
    const auto figure = [&](Item item) { return isUnclear(once, item) ? std::nullopt : once.figure(item); };
    maker.figures.carbonMonoxideMost = figure(Item::MakerCo);
    maker.figures.ratioMost = figure(Item::MakerRatio);
    maker.figures.carbonDioxideAtMaximum = high.range;
    maker.figures.carbonDioxideAtMinimum = low.range;
    maker.figures.source = once.text(Item::MakerCombustionSource);
    maker.typed = {{Item::MakerRatio, isUnclear(once, Item::MakerRatio), FindingKind::CombustionRatioMaximum,
                    FindingKind::CombustionRatioMinimum},
                   {Item::MakerCo, isUnclear(once, Item::MakerCo), FindingKind::CarbonMonoxideMaximum,
                    FindingKind::CarbonMonoxideMinimum},
                   {Item::MakerCo2Least, high.isUnclear, FindingKind::CarbonDioxideMaximum,
                    FindingKind::CarbonDioxideMaximum},
                   {Item::MakerCo2LeastLow, low.isUnclear, FindingKind::CarbonDioxideMinimum,
                    FindingKind::CarbonDioxideMinimum}};
    return maker;
}

struct Inputs {
    FlueReadings high;
    FlueReadings low;
    burner::Analyser analyser;
    rulebook::Given<quantity::Temperature> flue;
    rulebook::Given<quantity::Temperature> air;
    std::optional<Share> humidity;
    std::optional<gas::Fuel> fuel;
};

Inputs inputsOf(Asking& asking) {
    const auto& once = asking.once;
    Inputs in;
    in.high = {readingOf(once.trace(Item::FlueCoHigh)), readingOf(once.share(Item::FlueCo2High)),
               readingOf(once.share(Item::FlueO2High))};
    in.low = {readingOf(once.trace(Item::FlueCoLow)), readingOf(once.share(Item::FlueCo2Low)),
              readingOf(once.share(Item::FlueO2Low))};
    in.analyser = analyserTyped(once);
    in.flue = plain(once.temperature(Item::FlueTemperature));
    in.air = plain(once.temperature(Item::FlueAirTemperature));
    if (const auto humidity = once.share(Item::FlueHumidity)) {
        in.humidity = humidity->value;
    }
    if (auto fuel = gas::fuelOf(asking.inForce); fuel) {
        in.fuel = *std::move(fuel);
    }
    return in;
}

/// Kinds that only the ventilation standards or their own tell apart, and what has no flame, have no limits
/// of their own here: the maker's decide.
std::optional<burner::ApplianceKind> combustionKind(std::string_view code) {
    const bool other = code == reg::choice::kDecorativeFire || code == reg::choice::kCabinetHeater ||
                       code == reg::choice::kCatering || !reg::burnsGas(code);
    return other ? burner::ApplianceKind::Other : burner::applianceKindFromText(code);
}

void findPart(Asking& asking, Finding part) {
    switch (part.kind) {
        case FindingKind::CombustionRatioMaximum:
            asking.find(std::move(part), {Item::FlueCoHigh, Item::FlueCo2High, Item::MakerRatio});
            break;
        case FindingKind::CombustionRatioMinimum:
            asking.find(std::move(part), {Item::FlueCoLow, Item::FlueCo2Low, Item::MakerRatio});
            break;
        case FindingKind::CarbonMonoxideMaximum:
            asking.find(std::move(part), {Item::FlueCoHigh, Item::MakerCo});
            break;
        case FindingKind::CarbonMonoxideMinimum:
            asking.find(std::move(part), {Item::FlueCoLow, Item::MakerCo});
            break;
        case FindingKind::CarbonDioxideMaximum:
            asking.find(std::move(part), {Item::FlueCo2High, Item::MakerCo2Least, Item::MakerCo2Most});
            break;
        default:
            asking.find(std::move(part), {Item::FlueCo2Low, Item::MakerCo2LeastLow, Item::MakerCo2MostLow});
            break;
    }
}

/// Of each figure of the maker's that can't be used and that no part was to rest on.
void sayUnheld(Asking& asking, const std::vector<Finding>& parts, const MakersTyped& maker) {
    for (const auto& figure : maker.typed) {
        const bool isHeld = std::any_of(parts.begin(), parts.end(),
                                        [&](const Finding& part) { return figure.decides(part.kind); });
        if (figure.isUnclear && !isHeld) {
            asking.find(rulebook::noVerdict(figure.atMaximum, {Say::MakersFigureUnclear}), {figure.item});
        }
    }
}

void judgeProducts(Asking& asking, const Inputs& in) {
    const auto maker = makersTyped(asking.once);
    burner::CombustionInput input;
    input.kind = combustionKind(asking.once.code(Item::ApplianceKind));
    input.atMaximum = in.high;
    input.atMinimum = in.low;
    input.analyser = in.analyser;
    input.maker = maker.figures;
    auto found = burner::combustion(input, asking.inForce);
    asking.find(maker.isUnclear() ? withoutMakers(std::move(found.overall)) : std::move(found.overall),
                {Item::FlueCoHigh, Item::FlueCo2High, Item::FlueCoLow, Item::FlueCo2Low, Item::ApplianceKind,
                 Item::MakerCo, Item::MakerRatio, Item::MakerCo2Least, Item::MakerCo2Most,
                 Item::MakerCo2LeastLow, Item::MakerCo2MostLow});
    for (auto& part : found.parts) {
        const auto kind = part.kind;
        findPart(asking, maker.isUnclearFor(kind) ? withoutMakers(std::move(part)) : std::move(part));
    }
    sayUnheld(asking, found.parts, maker);
}

Finding believable(const Asking& asking, const Inputs& in, burner::PlausibilityInput input) {
    if (!in.fuel || !in.fuel->stoichiometry) {
        return rulebook::noVerdict(FindingKind::CombustionPlausible, {Say::PlausibleNoFuelLine});
    }
    input.fuel = {asking.gas, in.fuel->stoichiometry->co2Max};
    return byTheGas(asking, burner::plausibility(input, asking.inForce));
}

void judgeBelievable(Asking& asking, const Inputs& in) {
    if (in.high.oxygen.isEntered() || in.high.carbonDioxide.isEntered()) {
        asking.find(believable(asking, in, {in.high, in.analyser, {}, in.flue, in.air}),
                    {Item::FlueO2High, Item::FlueCo2High, Item::GasFamily});
    }
    if (in.low.oxygen.isEntered()) {
        auto finding = believable(asking, in, {in.low, in.analyser, {}});
        finding.kind = FindingKind::CombustionPlausibleMinimum;
        asking.find(std::move(finding), {Item::FlueO2Low, Item::FlueCo2Low, Item::GasFamily});
    }
    if (const auto printed = asking.once.number(Item::FlueRatioPrinted); printed.isEntered()) {
        asking.find(burner::ratioAgrees(printed, in.high, in.analyser),
                    {Item::FlueRatioPrinted, Item::FlueCoHigh});
    }
}

void judgeInlet(Asking& asking, const Inputs& in) {
    const auto oxygen = asking.once.share(Item::InletO2);
    const auto carbonDioxide = asking.once.share(Item::InletCo2);
    if (!oxygen.isEntered() && !carbonDioxide.isEntered()) {
        return;
    }
    const FlueReadings inlet{{}, readingOf(carbonDioxide), readingOf(oxygen)};
    auto found = burner::airInlet(inlet, in.analyser, asking.inForce);
    asking.find(std::move(found.oxygen), {Item::InletO2});
    asking.find(std::move(found.carbonDioxide), {Item::InletCo2});
    if (carbonDioxide && in.high.carbonDioxide) {
        if (const auto share =
                asking.got(burner::recirculation(carbonDioxide->value, in.high.carbonDioxide->value))) {
            asking.work(Derived::Recirculation, burner::percentFigure(*share), kTextbook);
        }
    }
}

void workOutRatio(Asking& asking, const FlueReadings& readings, const burner::Analyser& analyser,
                  Derived what) {
    if (!readings.carbonMonoxide || !readings.carbonDioxide) {
        return;
    }
    if (const auto ratio =
            asking.got(burner::ratioRead(*readings.carbonMonoxide, *readings.carbonDioxide, analyser))) {
        asking.work(what, burner::ratioFigure(ratio->value), "BS 7967, from memory",
                    burner::ratioUncertaintyFigure(quantity::expanded(*ratio)));
    }
}

void workOutAir(Asking& asking, const Inputs& in) {
    const Share oxygen = in.high.oxygen->value;
    if (const auto simple = asking.got(burner::lambdaSimple(oxygen))) {
        constexpr std::string_view kPrintouts = "20.9/(20.9 - O2), the form of most printouts";
        asking.work(Derived::LambdaSimple, shown(*simple, 3), kPrintouts);
        if (const auto excess = asking.got(burner::excessAir(*simple))) {
            asking.work(Derived::ExcessAirSimple, burner::percentFigure(*excess), kPrintouts);
        }
    }
    if (!in.fuel || !in.fuel->stoichiometry) {
        return;
    }
    const auto& burning = *in.fuel->stoichiometry;
    if (const auto exact = asking.got(gas::lambdaAtOxygen(burning, oxygen))) {
        asking.work(Derived::LambdaExact, shown(*exact, 3), "stoichiometry of the gas, textbook");
        if (const auto excess = asking.got(burner::excessAir(*exact))) {
            asking.work(Derived::ExcessAir, burner::percentFigure(*excess), kTextbook);
        }
    }
    if (const auto expected = asking.got(burner::carbonDioxideFromOxygen(oxygen, burning.co2Max))) {
        asking.work(Derived::Co2FromOxygen, burner::percentFigure(*expected, 2),
                    "complete combustion, textbook");
    }
}

void workOutCarbonMonoxide(Asking& asking, const Inputs& in) {
    const Share co = in.high.carbonMonoxide->value;
    const Share oxygen = in.high.oxygen->value;
    const auto free = asking.got(burner::airFree(co, oxygen));
    if (!free) {
        return;
    }
    asking.work(Derived::CoAirFree, burner::ppmFigure(*free), "20.9/(20.9 - O2), US EPA's notes");
    if (const auto three = asking.got(burner::atThreePercent(co, oxygen))) {
        asking.work(Derived::CoAtThreePercent, burner::ppmFigure(*three), "17.9/(20.9 - O2), US EPA's notes");
    }
    if (!in.fuel || !in.fuel->stoichiometry || in.fuel->named == nullptr) {
        return;
    }
    const auto properties = gas::properties(in.fuel->named->composition);
    constexpr double kKilojoulesPerKilowattHour = 3600.0;
    const double dry = in.fuel->stoichiometry->dryFlue;
    if (const auto net =
            asking.got(burner::milligramsPerKilowattHour(*free, burner::kMolarMassCarbonMonoxide, dry,
                                                         properties.netMolar / kKilojoulesPerKilowattHour))) {
        asking.work(Derived::CoMassNet, burner::emissionFigure(*net),
                    "stoichiometry of the gas; ISO 6976:2016");
    }
    if (const auto gross = asking.got(
            burner::milligramsPerKilowattHour(*free, burner::kMolarMassCarbonMonoxide, dry,
                                              properties.grossMolar / kKilojoulesPerKilowattHour))) {
        asking.work(Derived::CoMassGross, burner::emissionFigure(*gross),
                    "stoichiometry of the gas; ISO 6976:2016");
    }
}

/// Without O2, by the CO2 that was read.
void workOutByCarbonDioxide(Asking& asking, const Inputs& in) {
    if (!in.fuel || !in.fuel->stoichiometry) {
        return;
    }
    constexpr std::string_view kByCarbonDioxide = "CO2max/CO2, combustion tables";
    const Share read = in.high.carbonDioxide->value;
    const Share most = in.fuel->stoichiometry->co2Max;
    const auto simple = asking.got(burner::lambdaByCarbonDioxide(read, most));
    if (!simple) {
        return;
    }
    asking.work(Derived::LambdaSimple, shown(*simple, 3), kByCarbonDioxide);
    if (const auto excess = asking.got(burner::excessAir(*simple))) {
        asking.work(Derived::ExcessAirSimple, burner::percentFigure(*excess), kByCarbonDioxide);
    }
    if (!in.high.carbonMonoxide) {
        return;
    }
    if (const auto free =
            asking.got(burner::airFreeByCarbonDioxide(in.high.carbonMonoxide->value, read, most))) {
        asking.work(Derived::CoAirFree, burner::ppmFigure(*free), kByCarbonDioxide);
    }
}

void workOutLowestRate(Asking& asking, const Inputs& in) {
    if (!in.low.oxygen) {
        return;
    }
    const Share oxygen = in.low.oxygen->value;
    if (in.fuel && in.fuel->stoichiometry) {
        const auto exact = asking.got(gas::lambdaAtOxygen(*in.fuel->stoichiometry, oxygen));
        const auto excess = exact ? asking.got(burner::excessAir(*exact)) : std::nullopt;
        if (excess) {
            asking.work(Derived::ExcessAirLow, burner::percentFigure(*excess), kTextbook);
        }
    }
    if (in.low.carbonMonoxide) {
        if (const auto free = asking.got(burner::airFree(in.low.carbonMonoxide->value, oxygen))) {
            asking.work(Derived::CoAirFreeLow, burner::ppmFigure(*free), "20.9/(20.9 - O2), US EPA's notes");
        }
    }
}

void workOutLosses(Asking& asking, const Inputs& in) {
    const auto flue = *in.flue;
    const auto air = *in.air;
    const auto siegert = burner::siegertCoefficients(asking.gas);
    const auto loss =
        in.high.carbonDioxide
            ? asking.got(burner::siegertLossByCarbonDioxide(flue, air, in.high.carbonDioxide->value, siegert))
            : asking.got(burner::siegertLossByOxygen(flue, air, in.high.oxygen->value, siegert));
    if (loss) {
        asking.work(Derived::SiegertLoss, burner::percentFigure(*loss), kSiegert);
        asking.work(Derived::SiegertEfficiency, burner::percentFigure(kWhole - *loss), kSiegert);
    }
    const auto* named = in.fuel ? in.fuel->named : nullptr;
    const auto fuel = named == nullptr ? std::nullopt : burner::bs845Fuel(asking.gas, named->composition);
    if (!fuel || !in.high.carbonDioxide) {
        return;
    }
    const auto dry = asking.got(burner::dryGasLoss(flue, air, in.high.carbonDioxide->value, *fuel));
    const auto water = asking.got(burner::waterVapourLoss(flue, air, *fuel));
    std::optional<Share> unburned;
    if (in.high.carbonMonoxide) {
        unburned = asking.got(
            burner::unburnedLoss(in.high.carbonMonoxide->value, in.high.carbonDioxide->value, *fuel));
    }
    if (dry) {
        asking.work(Derived::DryGasLoss, burner::percentFigure(*dry), kBs845);
    }
    if (water) {
        asking.work(Derived::WaterVapourLoss, burner::percentFigure(*water), kBs845);
    }
    if (unburned) {
        asking.work(Derived::UnburnedLoss, burner::percentFigure(*unburned, 2), kBs845);
    }
    if (dry && water && unburned) {
        asking.work(Derived::LossesEfficiency, burner::percentFigure(kWhole - *dry - *water - *unburned),
                    kBs845);
    }
}

std::optional<quantity::Temperature> workOutDewPoint(Asking& asking, const Inputs& in) {
    if (!in.fuel || !in.fuel->stoichiometry || !in.high.oxygen ||
        isUnclear(asking.once, Item::FlueHumidity)) {
        return std::nullopt;
    }
    std::optional<gas::CombustionAir> air;
    if (in.humidity && in.air) {
        air = gas::CombustionAir{*in.air, in.humidity->in(quantity::kOne)};
    }
    const auto dew = asking.got(gas::dewPointAtOxygen(*in.fuel->stoichiometry, in.high.oxygen->value, air));
    if (dew) {
        asking.work(Derived::FlueDewPoint, burner::degreesFigure(*dew),
                    "stoichiometry and Dalton's law, textbook");
    }
    return dew;
}

void workOutEfficiency(Asking& asking, const Inputs& in) {
    const auto dew = workOutDewPoint(asking, in);
    if (!in.flue || !in.air || (!in.high.carbonDioxide && !in.high.oxygen)) {
        return;
    }
    workOutLosses(asking, in);
    burner::EfficiencyInput efficiency{in.high, in.flue, in.air, asking.gas};
    efficiency.dewPoint = dew;
    if (in.fuel && in.fuel->named != nullptr) {
        efficiency.composition = &in.fuel->named->composition;
    }
    if (in.fuel && in.fuel->net) {
        if (const auto most = asking.got(burner::latentCeiling(in.fuel->gross, *in.fuel->net))) {
            asking.work(Derived::LatentCeiling, burner::percentFigure(*most), "gross over net, derived");
        }
    }
    for (auto& note : burner::efficiencyNotes(efficiency)) {
        asking.answer.notes.push_back(std::move(note));
    }
}

/// What was typed and not taken. Temperatures may be below nought.
void sayUntaken(Asking& asking, const Inputs& in) {
    sayUnclear(
        asking, FindingKind::Combustion,
        {Item::AnalyserCoAccuracy, Item::AnalyserCo2Accuracy, Item::AnalyserO2Accuracy, Item::FlueHumidity});
    if (in.flue.unreadable || in.air.unreadable) {
        asking.find(rulebook::noVerdict(FindingKind::CombustionPlausible, {Say::ReadingUnusable}),
                    {Item::FlueTemperature, Item::FlueAirTemperature});
    }
}

}  // namespace

void answerCombustion(Asking& asking) {
    const auto in = inputsOf(asking);
    judgeProducts(asking, in);
    judgeBelievable(asking, in);
    judgeInlet(asking, in);
    workOutRatio(asking, in.high, in.analyser, Derived::RatioHigh);
    workOutRatio(asking, in.low, in.analyser, Derived::RatioLow);
    if (in.high.oxygen) {
        workOutAir(asking, in);
        if (in.high.carbonMonoxide) {
            workOutCarbonMonoxide(asking, in);
        }
    } else if (in.high.carbonDioxide) {
        workOutByCarbonDioxide(asking, in);
    }
    workOutLowestRate(asking, in);
    workOutEfficiency(asking, in);
    sayUntaken(asking, in);
}

}  // namespace hearth::judging

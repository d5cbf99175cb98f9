// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <array>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

constexpr std::array kCombustion{
    SayText{Say::CombustionRatioWithin,
            QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio %1 (± %3), at most %2 allowed.")},
    SayText{Say::CombustionRatioBeyond,
            QT_TRANSLATE_NOOP("Words", "The CO/CO₂ ratio is %1 (± %3); at most %2 is allowed.")},
    SayText{Say::CarbonMonoxideWithin, QT_TRANSLATE_NOOP("Words", "CO %1 (± %3), at most %2 allowed.")},
    SayText{Say::CarbonMonoxideBeyond, QT_TRANSLATE_NOOP("Words", "CO is %1 (± %3); at most %2 is allowed.")},
    SayText{Say::CarbonDioxideWithin,
            QT_TRANSLATE_NOOP("Words", "CO₂ %1 lies between %2 and %3, as the maker wants it.")},
    SayText{Say::CarbonDioxideBeyond,
            QT_TRANSLATE_NOOP("Words", "CO₂ %1 lies outside the maker's %2 to %3.")},
    SayText{
        Say::CarbonDioxideAtEnd,
        QT_TRANSLATE_NOOP(
            "Words", "CO₂ %1 is at the edge of the maker's %2 to %3, too near to tell: consult the maker.")},
    SayText{Say::CombustionAtLimit,
            QT_TRANSLATE_NOOP(
                "Words",
                "%1 is at the limit of %2, too near to tell with ± %3: that is no pass; consult the maker.")},
    SayText{Say::CombustionNotByRatio,
            QT_TRANSLATE_NOOP(
                "Words",
                "A hotplate has no limit of its ratio: judge it by its flame and by the CO in the room.")},
    SayText{Say::CombustionNoLimitForKind,
            QT_TRANSLATE_NOOP("Words",
                              "No standard's figure is known here for this kind of appliance: take the "
                              "maker's and enter it with the appliance.")},
    SayText{Say::CombustionKindUnknown,
            QT_TRANSLATE_NOOP("Words", "Say what kind of appliance it is: each kind has limits of its own.")},
    SayText{
        Say::CombustionNoFlueGas,
        QT_TRANSLATE_NOOP(
            "Words",
            "No CO₂ was read, so there was no flue gas at the probe: check the probe and measure again.")},
    SayText{
        Say::CombustionBelowNought,
        QT_TRANSLATE_NOOP(
            "Words", "A reading below nought: set the analyser to fresh air outdoors and measure again.")},
    SayText{Say::CombustionLimitUnit,
            QT_TRANSLATE_NOOP(
                "Words", "The limit is in a unit that the reading can't be held against: enter it in ppm.")},
    SayText{Say::CombustionMaximumMissing,
            QT_TRANSLATE_NOOP("Words", "The readings at maximum rate are missing: both rates are needed.")},
    SayText{Say::CombustionMinimumMissing,
            QT_TRANSLATE_NOOP("Words", "The readings at minimum rate are missing: both rates are needed.")},
    SayText{Say::CombustionInOrder,
            QT_TRANSLATE_NOOP("Words", "Combustion is within its limits at every rate that was measured.")},
    SayText{
        Say::CombustionCheckFlue,
        QT_TRANSLATE_NOOP(
            "Words",
            "First check the joints and seals of the flue and where the probe sits; then measure again.")},
    SayText{
        Say::CombustionMeasureAgain,
        QT_TRANSLATE_NOOP(
            "Words",
            "First check where the probe sits and that the burner is hot and steady; then measure again.")},
    SayText{Say::CombustionStillBeyond,
            QT_TRANSLATE_NOOP(
                "Words",
                "If it is still beyond the limit: turn the appliance off, make it safe and call its maker.")},
    SayText{
        Say::CarbonDioxideComputed,
        QT_TRANSLATE_NOOP(
            "Words",
            "The analyser worked CO₂ out from O₂: it is right only if the analyser is set to this fuel.")},
    SayText{
        Say::AnalyserNotZeroed,
        QT_TRANSLATE_NOOP(
            "Words", "Not said that the analyser was set to fresh air outdoors: do so and measure again.")},
    SayText{Say::AirInletOxygenGood,
            QT_TRANSLATE_NOOP("Words", "O₂ %1 (± %3) at the air inlet; at least %2 is needed.")},
    SayText{
        Say::AirInletOxygenLow,
        QT_TRANSLATE_NOOP(
            "Words",
            "Only %1 O₂ (± %3) at the air inlet, at least %2 wanted: flue gas may be getting into the air.")},
    SayText{Say::AirInletCarbonDioxideGood,
            QT_TRANSLATE_NOOP("Words", "CO₂ %1 (± %3) at the air inlet; it must be below %2.")},
    SayText{Say::AirInletCarbonDioxideHigh,
            QT_TRANSLATE_NOOP(
                "Words",
                "CO₂ %1 (± %3) at the air inlet, below %2 wanted: flue gas may be getting into the air.")},
    SayText{Say::PlausibleFits,
            QT_TRANSLATE_NOOP("Words",
                              "O₂ and CO₂ belong to this fuel: %1 off its line (± %3), up to %2 is usual.")},
    SayText{
        Say::PlausibleGap,
        QT_TRANSLATE_NOOP(
            "Words",
            "O₂ and CO₂ do not belong together with this fuel: %1 off its line (± %3), up to %2 is usual.")},
    SayText{Say::PlausibleCannotSee,
            QT_TRANSLATE_NOOP(
                "Words",
                "Air drawn in through a loose hose or probe thins both alike: this check can't see it.")},
    SayText{
        Say::PlausibleComputed,
        QT_TRANSLATE_NOOP(
            "Words", "The analyser worked CO₂ out from O₂, so this shows only which fuel it was set to.")},
    SayText{
        Say::PlausibleOxygenAboveAir,
        QT_TRANSLATE_NOOP(
            "Words",
            "O₂ %1 is more than fresh air holds: set the analyser to fresh air outdoors and measure again.")},
    SayText{Say::PlausibleCarbonDioxideAbove,
            QT_TRANSLATE_NOOP(
                "Words", "CO₂ %1 is more than this fuel can give (%2): check the fuel set on the analyser.")},
    SayText{Say::PlausibleOtherFuel,
            QT_TRANSLATE_NOOP("Words", "They would fit %1: check the fuel set on the analyser.")},
    SayText{Say::PlausibleSlipOxygen,
            QT_TRANSLATE_NOOP("Words", "O₂ %2 would fit: check that %1 was typed right.")},
    SayText{Say::PlausibleSlipCarbonDioxide,
            QT_TRANSLATE_NOOP("Words", "CO₂ %2 would fit: check that %1 was typed right.")},
    SayText{Say::PlausibleSwapped,
            QT_TRANSLATE_NOOP("Words", "O₂ and CO₂ would fit if they were exchanged: check which is which.")},
    SayText{Say::PlausibleUnexplained,
            QT_TRANSLATE_NOOP("Words",
                              "No usual slip explains it: read O₂ and CO₂ again at the same moment, and "
                              "check the hose, the filter and the fuel set.")},
    SayText{Say::PlausibleNoFuelLine,
            QT_TRANSLATE_NOOP("Words",
                              "What O₂ and CO₂ belong together depends on the mixture of this gas, which is "
                              "not known here: they are not held against each other.")},
    SayText{Say::PlausibleRatioAgrees,
            QT_TRANSLATE_NOOP("Words", "The ratio on the printout, %1, is that of its CO and CO₂ (%2).")},
    SayText{
        Say::PlausibleRatioDiffers,
        QT_TRANSLATE_NOOP(
            "Words", "The ratio on the printout is %1, but its CO and CO₂ give %2: check what was typed.")},
    SayText{Say::PlausibleFlueNotHotter,
            QT_TRANSLATE_NOOP("Words",
                              "The flue at %1 is no hotter than the air at %2: check whether the net "
                              "temperature was typed for the flue's.")},
    SayText{Say::FlueGasExcessAir,
            QT_TRANSLATE_NOOP("Words", "Excess air %1 (exact for the fuel); %2 by the simple formula.")},
    SayText{Say::FlueGasAirFree, QT_TRANSLATE_NOOP("Words", "CO %1 free of air, %2 at 3 % O₂.")},
    SayText{Say::FlueGasEmission,
            QT_TRANSLATE_NOOP("Words", "CO %1 of heat input by the net calorific value, %2 by the gross.")},
    SayText{Say::EfficiencySiegert,
            QT_TRANSLATE_NOOP(
                "Words",
                "Net efficiency %1 by the Siegert formula: flue loss %2, dry flue gas, nothing condensed.")},
    SayText{Say::EfficiencyLosses,
            QT_TRANSLATE_NOOP("Words",
                              "Gross efficiency %1 by the losses of BS 845: dry gas %2, water vapour %3, "
                              "unburned gas %4; casing losses not counted.")},
    SayText{
        Say::EfficiencyNotCondensed,
        QT_TRANSLATE_NOOP(
            "Words",
            "At %1 the flue gas is below its dew point of %2: these formulas do not count what condensed.")},
    SayText{Say::EfficiencyLatentCeiling,
            QT_TRANSLATE_NOOP("Words",
                              "All the water's heat would be %1 of the net input; a gas analyser can't "
                              "measure how much of it was won.")},
};

}  // namespace

std::span<const SayText> combustionTexts() {
    return kCombustion;
}

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <array>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

constexpr std::array kBurnerTexts{
    SayText{Say::RateGood, QT_TRANSLATE_NOOP("Words", "The gas rate is %1; reading and timing leave ±%2.")},
    SayText{Say::RateCoarse,
            QT_TRANSLATE_NOOP(
                "Words", "The gas rate is %1, but reading and timing leave ±%2. For ±%3 time at least %4.")},
    SayText{Say::RateTooCoarse,
            QT_TRANSLATE_NOOP("Words",
                              "The gas rate is %1, but known only to ±%2, and no timing within a day makes "
                              "it better: this meter is too coarse for it.")},
    SayText{
        Say::RateNoMeter,
        QT_TRANSLATE_NOOP("Words",
                          "There is no meter, so the heat input can't be taken. Read the operating pressure; "
                          "where that can't be read, check the combustion and write down why.")},
    SayText{
        Say::RateTimeWrong,
        QT_TRANSLATE_NOOP("Words", "The time must be longer than nothing. Enter what the stopwatch showed.")},
    SayText{Say::RateIndexBackwards,
            QT_TRANSLATE_NOOP("Words",
                              "The index runs backwards, from %1 to %2. Read it again; if it came back to "
                              "nought in between, say so.")},
    SayText{Say::RateNothingPassed,
            QT_TRANSLATE_NOOP(
                "Words", "No gas passed in the time. Check the two readings, and that the burner was lit.")},
    SayText{Say::RateAbsurd,
            QT_TRANSLATE_NOOP("Words", "No meter passes so much. Check the decimal point and the unit.")},
    SayText{Say::RateDialUnknown,
            QT_TRANSLATE_NOOP("Words",
                              "A turn of the test dial is 1, 2, 5 or 10 ft³, and at least one whole turn is "
                              "timed. Read what the dial says.")},
    SayText{
        Say::RateOthersOn,
        QT_TRANSLATE_NOOP(
            "Words", "Another appliance took gas too. Turn all others off, pilots too, and time it again.")},
    SayText{Say::RateNotFull,
            QT_TRANSLATE_NOOP("Words",
                              "The burner was not at its full rate. Set it to maximum and time it again.")},
    SayText{Say::RateCold,
            QT_TRANSLATE_NOOP(
                "Words",
                "The appliance was cold, and a cold one passes more gas. Let it warm up and time it again.")},
    SayText{Say::RateConditionsNotSaid,
            QT_TRANSLATE_NOOP(
                "Words", "Say whether all others were off, the burner at full rate and the appliance warm.")},
    SayText{Say::RateAboveMeter,
            QT_TRANSLATE_NOOP("Words",
                              "The gas rate of %1 is above the meter's own %2. Check the readings; if they "
                              "are right, the meter is too small.")},
    SayText{Say::RateBelowMeterRange,
            QT_TRANSLATE_NOOP("Words",
                              "The gas rate of %1 is below %2, from where the meter's accuracy is known.")},
    SayText{Say::RateMeterCounted,
            QT_TRANSLATE_NOOP("Words",
                              "The meter's own ±%1 comes on top; the figures and the heat input count it.")},
    SayText{Say::RateMeterNotCounted,
            QT_TRANSLATE_NOOP("Words", "The meter's own ±%1 comes on top; it is not counted.")},
    SayText{
        Say::HeatInputWithin,
        QT_TRANSLATE_NOOP(
            "Words", "The heat input is %1 off the plate's; up to %2 is allowed, and it is known to ±%3.")},
    SayText{Say::HeatInputNear, QT_TRANSLATE_NOOP("Words",
                                                  "The heat input is %1 off the plate's: too near the %2 "
                                                  "allowed to tell, known only to ±%3. Time it longer.")},
    SayText{Say::HeatInputOverRated,
            QT_TRANSLATE_NOOP("Words",
                              "Over-rated: the heat input is %1 above the plate's; %2 is allowed (known to "
                              "±%3). Check the burner pressure and the injectors against the maker's "
                              "figures; if they are right, ask the maker. Don't leave it over-rated.")},
    SayText{Say::HeatInputUnderRated,
            QT_TRANSLATE_NOOP("Words",
                              "Under-rated: the heat input is %1 below the plate's; %2 is allowed (known to "
                              "±%3). Check the inlet pressure at full load, the burner pressure and the "
                              "injectors for dirt or a wrong size; if they are right, ask the maker.")},
    SayText{Say::HeatInputGross, QT_TRANSLATE_NOOP("Words", "Gross with gross: %1, the plate's %2.")},
    SayText{Say::HeatInputNet, QT_TRANSLATE_NOOP("Words", "Net with net: %1, the plate's %2.")},
    SayText{Say::HeatInputWorkedOut, QT_TRANSLATE_NOOP("Words", "The heat input is %1 gross, %2 net.")},
    SayText{Say::HeatInputGrossOnly,
            QT_TRANSLATE_NOOP(
                "Words", "The heat input is %1 gross. The net one needs the gas's ratio of gross to net.")},
    SayText{Say::HeatInputNoCalorific,
            QT_TRANSLATE_NOOP("Words", "Enter the calorific value of the gas: it stands on the bill.")},
    SayText{Say::HeatInputNoPlate,
            QT_TRANSLATE_NOOP(
                "Words", "Enter the heat input on the appliance's plate, and whether it is gross or net.")},
    SayText{
        Say::HeatInputPlateKindNotSaid,
        QT_TRANSLATE_NOOP(
            "Words", "Say whether the plate's heat input is gross or net: they differ by about a tenth.")},
    SayText{Say::HeatInputShortcut, QT_TRANSLATE_NOOP("Words", "The two-minute shortcut gives %1 gross.")},
    SayText{Say::CorrectionNone,
            QT_TRANSLATE_NOOP("Words",
                              "The metered volume was not corrected to standard conditions; at usual "
                              "pressures that makes the heat input look about 2 % too small.")},
    SayText{Say::CorrectionFixed,
            QT_TRANSLATE_NOOP("Words", "The metered volume was corrected by the fixed factor of bills, %1.")},
    SayText{
        Say::CorrectionMeasured,
        QT_TRANSLATE_NOOP(
            "Words", "The metered volume was corrected by pressure, temperature and altitude, factor %1.")},
    SayText{Say::InletDropGood,
            QT_TRANSLATE_NOOP(
                "Words",
                "%1 falls off between meter and appliance; up to %2 is allowed, and it is known to ±%3.")},
    SayText{Say::InletDropAtLess,
            QT_TRANSLATE_NOOP("Words",
                              "%1 falls off between meter and appliance, not above %2, but with less than "
                              "the full load. Read it again with every appliance at its high load.")},
    SayText{Say::InletDropHigh,
            QT_TRANSLATE_NOOP("Words",
                              "%1 falls off between meter and appliance; %2 is allowed (known to ±%3). Look "
                              "for a valve not fully open, a blockage, or pipe too small.")},
    SayText{Say::InletLoadNotSaid,
            QT_TRANSLATE_NOOP("Words", "Say what was running while the pressures were read.")},
    SayText{Say::InletStandingBelow,
            QT_TRANSLATE_NOOP(
                "Words", "The standing pressure, %1, is below the working pressure, %2. Read both again.")},
    SayText{
        Say::InletNotFull,
        QT_TRANSLATE_NOOP(
            "Words",
            "The working pressure counts with the burner at full rate. Set it to maximum and read again.")},
    SayText{Say::NearEndOfRange,
            QT_TRANSLATE_NOOP(
                "Words",
                "%1 is too near an end of %2 to %3 to tell. Read it again with a finer or better gauge.")},
    SayText{Say::BurnerPressureNoMaker,
            QT_TRANSLATE_NOOP("Words",
                              "Only the maker's figure can judge the burner pressure. Enter it from the "
                              "maker's instructions.")},
    SayText{Say::MeterAverageInside,
            QT_TRANSLATE_NOOP("Words", "On average %1 at the meter, within %2 to %3.")},
    SayText{Say::MeterAverageOutside,
            QT_TRANSLATE_NOOP("Words",
                              "On average %1 at the meter, outside %2 to %3. Tell the gas transporter or the "
                              "meter operator if it stays so.")},
    SayText{Say::MeterAverageTooShort,
            QT_TRANSLATE_NOOP("Words", "The average was taken over %1; %2 are asked for.")},
    SayText{Say::MeterAverageProposal,
            QT_TRANSLATE_NOOP("Words",
                              "For information: a proposal of 2019, which differs from 19 to 23 mbar at the "
                              "meter. Write down which one was used.")},
    SayText{Say::HotWaterGood,
            QT_TRANSLATE_NOOP("Words", "%1 hot water, not below the maker's %2 (known to ±%3).")},
    SayText{Say::HotWaterLow,
            QT_TRANSLATE_NOOP("Words",
                              "%1 hot water, below the maker's %2 (known to ±%3). Check the heat input, the "
                              "flow setting, and the heat exchanger for scale.")},
    SayText{Say::HotWaterNoMaker,
            QT_TRANSLATE_NOOP("Words", "The water takes up %1. Enter the maker's figure to have it judged.")},
    SayText{Say::HotWaterNotFull, QT_TRANSLATE_NOOP("Words",
                                                    "Hot water counts with the burner at its maximum: say "
                                                    "so, or open the tap further and read again.")},
    SayText{Say::HotWaterGives, QT_TRANSLATE_NOOP("Words", "The water takes up %1.")},
    SayText{Say::BalanceGood,
            QT_TRANSLATE_NOOP("Words",
                              "Hot water takes up %1 of the net heat input, within the usual %2 to %3.")},
    SayText{Say::BalanceOutside,
            QT_TRANSLATE_NOOP("Words",
                              "Hot water takes up %1 of the net heat input, outside the usual %2 to %3. Read "
                              "the flow and both temperatures again, then time the gas again.")},
    SayText{Say::Reg26Satisfied,
            QT_TRANSLATE_NOOP("Words",
                              "Flue, combustion air, pressure or heat input, and operation were examined.")},
    SayText{Say::Reg26FlueNot,
            QT_TRANSLATE_NOOP("Words",
                              "26(9)(a): Examine whether the flue is effective, or say that there is none.")},
    SayText{Say::Reg26FlueWrong,
            QT_TRANSLATE_NOOP("Words",
                              "26(9)(a): The flue is not effective. Leave the appliance off until it is.")},
    SayText{Say::Reg26AirNot, QT_TRANSLATE_NOOP("Words", "26(9)(b): Examine the supply of combustion air.")},
    SayText{Say::Reg26AirWrong,
            QT_TRANSLATE_NOOP(
                "Words",
                "26(9)(b): The supply of combustion air is not right. Leave the appliance off until it is.")},
    SayText{
        Say::Reg26PressureOrHeat,
        QT_TRANSLATE_NOOP("Words",
                          "26(9)(c): Read the operating pressure or the heat input. Only where neither can "
                          "reasonably be read does combustion stand in, and then say why.")},
    SayText{
        Say::Reg26BothNeeded,
        QT_TRANSLATE_NOOP(
            "Words", "26(9)(c): Both operating pressure and heat input are needed here; one is missing.")},
    SayText{Say::Reg26ReadingFails,
            QT_TRANSLATE_NOOP("Words", "26(9)(c): A reading is outside its limits: see its own finding.")},
    SayText{Say::Reg26ReadingOpen,
            QT_TRANSLATE_NOOP(
                "Words", "26(9)(c): A reading was taken that can not be judged yet: see its own finding.")},
    SayText{Say::Reg26ReadingLook,
            QT_TRANSLATE_NOOP("Words", "26(9)(c): A reading asks for another look: see its own finding.")},
    SayText{
        Say::Reg26NoReason,
        QT_TRANSLATE_NOOP("Words",
                          "26(9)(ca): Combustion stands in only where neither operating pressure nor heat "
                          "input can reasonably be read. Say why they can't, or read one of them.")},
    SayText{
        Say::Reg26ReasonWords,
        QT_TRANSLATE_NOOP(
            "Words", "26(9)(ca): Write down why neither operating pressure nor heat input could be read.")},
    SayText{Say::Reg26CombustionNot, QT_TRANSLATE_NOOP("Words",
                                                       "26(9)(ca): Neither operating pressure nor heat input "
                                                       "could be read: check the combustion instead.")},
    SayText{Say::Reg26CombustionInstead,
            QT_TRANSLATE_NOOP("Words",
                              "26(9)(ca): Combustion stands in for operating pressure "
                              "and heat input, with the reason written down.")},
    SayText{Say::Reg26OperationNot,
            QT_TRANSLATE_NOOP("Words", "26(9)(d): Examine its operation, so that it works safely.")},
    SayText{Say::Reg26OperationWrong,
            QT_TRANSLATE_NOOP("Words", "26(9)(d): It does not work safely. Leave it off until it does.")},
    SayText{
        Say::Reg26TellDefect,
        QT_TRANSLATE_NOOP(
            "Words",
            "Tell the responsible person of the defect at once, and the owner if that is somebody else.")},
    SayText{Say::Reg26DoesNotApply,
            QT_TRANSLATE_NOOP(
                "Words",
                "Regulation 26(9) is taken not to apply: the appliance was only disconnected, or only purged "
                "without harm to it. This is from memory of 26(10): check it in the regulations.")},
    SayText{Say::DropToApplianceGood,
            QT_TRANSLATE_NOOP("Words",
                              "The pressure falls by %1 (give or take %3) from the meter to the appliance, "
                              "within the %2 allowed at full demand.")},
    SayText{Say::DropToApplianceNear,
            QT_TRANSLATE_NOOP(
                "Words",
                "The pressure falls by %1 (give or take %3) from the meter to the appliance, at or too near "
                "to the %2 allowed. Read both again, on one gauge, with everything burning.")},
    SayText{
        Say::DropToApplianceHigh,
        QT_TRANSLATE_NOOP("Words",
                          "The pressure falls by %1 (give or take %3) from the meter to the appliance, more "
                          "than the %2 allowed. The pipe is too small or partly shut: look for that first.")},
    SayText{Say::GasNotSaid,
            QT_TRANSLATE_NOOP(
                "Words",
                "Natural gas was taken, since no gas has been chosen. Choose the gas to have this judged.")},
    SayText{Say::MakersFigureUnclear,
            QT_TRANSLATE_NOOP("Words",
                              "The maker's figure can't be used as it was typed, and it decides before any "
                              "other. A range needs both ends, the lower one first, in one unit. Put it "
                              "right, or clear it where the maker gives none.")},
    SayText{Say::DropGaugesUnknown,
            QT_TRANSLATE_NOOP("Words",
                              "Two gauges may differ by more than this. Read both pressures on one gauge, or "
                              "enter the gauges' accuracy.")},
};

}  // namespace

std::span<const SayText> burnerTexts() {
    return kBurnerTexts;
}

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <QtGlobal>

#include <array>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

// Ventilation and room carbon monoxide. What warns of danger says first what to do.
constexpr std::array kAir{
    SayText{Say::VentStepOpenFlued, QT_TRANSLATE_NOOP("Words", "Open-flued: (%1 − %2) × %3 cm²/kW = %4.")},
    SayText{Say::VentStepPerKilowatt, QT_TRANSLATE_NOOP("Words", "%1 × %2 cm²/kW = %3.")},
    SayText{Say::VentStepHeater,
            QT_TRANSLATE_NOOP("Words", "Flueless heater: %1 + (%2 − %3) × %4 cm²/kW = %5.")},
    SayText{Say::VentStepCabinet,
            QT_TRANSLATE_NOOP(
                "Words", "Cabinet heater, at high and at low level each: %1 × %2 cm²/kW, at least %3: %4.")},
    SayText{Say::VentStepCooker, QT_TRANSLATE_NOOP("Words", "Cooker in a room of %1: %2.")},
    SayText{Say::VentStepWaterHeater,
            QT_TRANSLATE_NOOP("Words", "Flueless water heater in a room of %1: %2.")},
    SayText{Say::VentStepDecorative, QT_TRANSLATE_NOOP("Words", "Decorative fuel effect fire: %1.")},
    SayText{Say::VentStepFire,
            QT_TRANSLATE_NOOP("Words", "A radiant or inset fire of %1 asks for no vent (up to %2).")},
    SayText{Say::VentStepDryer, QT_TRANSLATE_NOOP("Words", "Flueless tumble dryer: %1.")},
    SayText{Say::VentStepMaker, QT_TRANSLATE_NOOP("Words", "The maker asks for %1.")},
    SayText{
        Say::VentStepSealed,
        QT_TRANSLATE_NOOP(
            "Words", "A room-sealed appliance takes its air from outside and asks for no vent in a room.")},
    SayText{Say::VentStepSeveral, QT_TRANSLATE_NOOP("Words",
                                                    "Several appliances: flueless heaters %1, open-flued "
                                                    "heaters %2, largest other %3; what counts is %4.")},
    SayText{Say::VentStepThroughWall,
            QT_TRANSLATE_NOOP("Words", "Through an inside wall %1 counts as %1 ÷ %2 = %3.")},
    SayText{Say::VentStepGross, QT_TRANSLATE_NOOP("Words", "%1 gross ÷ %2 = %3 net.")},
    SayText{
        Say::VentStepVolume,
        QT_TRANSLATE_NOOP("Words", "The room has %1, which may be %2 less by its last digit: %3 is taken.")},
    SayText{Say::VentDecorativeAdded,
            QT_TRANSLATE_NOOP("Words",
                              "How a decorative fire counts beside other open-flued appliances has not been "
                              "read: its whole vent is added here, which is the stricter way.")},
    SayText{Say::VentNeedIs, QT_TRANSLATE_NOOP("Words", "Needed: %1 of free area, straight to outside.")},
    SayText{Say::VentEnough, QT_TRANSLATE_NOOP("Words", "%1 of free area is there; %2 is needed.")},
    SayText{
        Say::VentTooSmall,
        QT_TRANSLATE_NOOP(
            "Words",
            "Only %1 of free area is there; %2 is needed. Enlarge the vent before the appliance is used.")},
    SayText{Say::VentNear, QT_TRANSLATE_NOOP("Words",
                                             "%1 of free area is there, %2 is needed: too near to tell "
                                             "(±%3). Measure the vent again or enlarge it.")},
    SayText{Say::VentNotNeeded, QT_TRANSLATE_NOOP("Words", "No vent is asked for here.")},
    SayText{Say::VentInputMissing,
            QT_TRANSLATE_NOOP("Words", "The net heat input of an appliance is missing.")},
    SayText{Say::VentKindMissing,
            QT_TRANSLATE_NOOP("Words",
                              "The kind of an appliance, or its flue, has not been said, or no rule fits it: "
                              "go by the maker's instructions.")},
    SayText{Say::VentVolumeMissing, QT_TRANSLATE_NOOP("Words", "The room's volume is missing.")},
    SayText{
        Say::VentInternalMissing,
        QT_TRANSLATE_NOOP("Words", "Not said whether this is a room or an internal space such as a hall.")},
    SayText{Say::VentVentsMissing,
            QT_TRANSLATE_NOOP("Words", "The vents there, or the free area of one of them, are missing.")},
    SayText{Say::VentLeadsMissing,
            QT_TRANSLATE_NOOP(
                "Words", "Not said where a vent leads: straight to outside, or through an inside wall.")},
    SayText{Say::VentLevelMissing,
            QT_TRANSLATE_NOOP("Words", "Not said whether a vent is at high or at low level.")},
    SayText{Say::VentAppliancesMissing,
            QT_TRANSLATE_NOOP("Words", "No appliance has been entered for this space.")},
    SayText{Say::VentSpaceMissing,
            QT_TRANSLATE_NOOP("Words",
                              "Not said what the appliances stand in: a room, a hall, a compartment or a "
                              "boiler room. Each has its own rule.")},
    SayText{Say::VentGasMissing,
            QT_TRANSLATE_NOOP("Words",
                              "Choose the gas: a gross heat input becomes net by the ratio of that gas.")},
    SayText{Say::VentDoorMissing,
            QT_TRANSLATE_NOOP("Words", "Not said whether a door opens straight to outside.")},
    SayText{Say::VentTightMissing,
            QT_TRANSLATE_NOOP("Words",
                              "Not said whether the dwelling is built tight (air permeability 5 m³/(h·m²) or "
                              "less). If it is, more may be needed.")},
    SayText{Say::VentTightMore,
            QT_TRANSLATE_NOOP(
                "Words",
                "In a dwelling built tight (air permeability 5 m³/(h·m²) or less) more may be needed than "
                "the usual rule says. Enter the rule from your own copy, or go by the maker.")},
    SayText{Say::VentFluelessThroughWall,
            QT_TRANSLATE_NOOP("Words",
                              "Straight to outside there is %1 of %2; whether a flueless appliance may take "
                              "the rest through an inside wall has not been read. Look it up.")},
    SayText{
        Say::VentMixedDestinations,
        QT_TRANSLATE_NOOP(
            "Words",
            "The high and the low vents must lead to the same place: both to the room, or both to outside.")},
    SayText{
        Say::VentCompartmentRoom,
        QT_TRANSLATE_NOOP(
            "Words",
            "The room that gives air to this compartment needs its own vent for the open-flued appliance.")},
    SayText{Say::VentCompartmentMixed,
            QT_TRANSLATE_NOOP(
                "Words", "Open-flued and room-sealed stand together: the open-flued row is taken for all.")},
    SayText{Say::VentOpeningThere,
            QT_TRANSLATE_NOOP("Words", "A window or door that opens to outside is there.")},
    SayText{Say::VentOpeningMissing,
            QT_TRANSLATE_NOOP("Words",
                              "A flueless appliance needs a window, a door or the like that opens to "
                              "outside. There is none: not to be used here.")},
    SayText{Say::VentOpeningUnknown,
            QT_TRANSLATE_NOOP("Words", "Not said whether a window or door opens to outside.")},
    SayText{Say::VentIsSound,
            QT_TRANSLATE_NOOP("Words", "The vents are open, can't be closed, and have no fly-screen.")},
    SayText{Say::VentBlocked,
            QT_TRANSLATE_NOOP("Words", "A vent is blocked. Clear it before the appliance is used.")},
    SayText{Say::VentClosable, QT_TRANSLATE_NOOP("Words", "A vent can be closed. Fit one that can't.")},
    SayText{Say::VentFlyScreen,
            QT_TRANSLATE_NOOP(
                "Words", "A vent has a fly-screen or gauze that clogs. Take it out or change the vent.")},
    SayText{Say::VentUnsound, QT_TRANSLATE_NOOP("Words",
                                                "A vent is blocked, can be closed, or has a fly-screen. Put "
                                                "it right before the appliance is used.")},
    SayText{Say::VentNotSleeved,
            QT_TRANSLATE_NOOP(
                "Words",
                "A vent through a cavity wall has no sleeve: its air may come from the cavity. Sleeve it.")},
    SayText{Say::VentStateUnknown,
            QT_TRANSLATE_NOOP(
                "Words", "Not said of every vent whether it is open, can be closed, or has a fly-screen.")},
    SayText{Say::VentWithinScope,
            QT_TRANSLATE_NOOP("Words", "%1 net stands in this space; the domestic standard goes to %2.")},
    SayText{Say::VentNearScope,
            QT_TRANSLATE_NOOP("Words",
                              "%1 net stands in this space, at or near %2: say which standard applies.")},
    SayText{Say::VentBeyondScope, QT_TRANSLATE_NOOP("Words",
                                                    "%1 net stands in this space; the domestic standard ends "
                                                    "at %2. Use the standard for larger boilers.")},
    SayText{
        Say::VentPlantBeyond,
        QT_TRANSLATE_NOOP(
            "Words",
            "%1 net is more than the boiler room standard covers (%2). A specialist's design is needed.")},
    SayText{Say::VentPlantWithin,
            QT_TRANSLATE_NOOP("Words", "%1 net stands in this space; the boiler room standard goes to %2.")},
    SayText{Say::VentOutsideOnly,
            QT_TRANSLATE_NOOP("Words",
                              "This rule is for vents straight to outside, and one of these leads elsewhere: "
                              "a specialist's design is needed.")},
    SayText{Say::PlantFlueOther, QT_TRANSLATE_NOOP("Words",
                                                   "This rule is for open-flued boilers, and one of these is "
                                                   "not, or its flue has not been said: go by the maker.")},
    SayText{Say::PlantSpaceMissing,
            QT_TRANSLATE_NOOP("Words",
                              "Not said whether this is a boiler room or an enclosure, or how much of the "
                              "summer the boilers run.")},
    SayText{Say::VentRoomLargeEnough,
            QT_TRANSLATE_NOOP("Words", "The room has %1; at least %2 is asked for.")},
    SayText{Say::VentRoomTooSmall,
            QT_TRANSLATE_NOOP("Words", "The room has only %1; the appliance is not allowed below %2.")},
    SayText{Say::VentRoomNear,
            QT_TRANSLATE_NOOP("Words", "The room has %1, at or near the least of %2: measure it again.")},
    SayText{Say::VentBedSitUnknown,
            QT_TRANSLATE_NOOP("Words", "Not said whether this is a bed-sitting room.")},
    SayText{Say::VentInputAllowed, QT_TRANSLATE_NOOP("Words", "%1 net is allowed here; the most is %2.")},
    SayText{Say::VentInputTooLarge, QT_TRANSLATE_NOOP("Words", "%1 net is more than is allowed here: %2.")},
    SayText{Say::VentInputNear,
            QT_TRANSLATE_NOOP("Words", "%1 net is at or near the most allowed here, %2.")},
    SayText{
        Say::VentBasementEnough,
        QT_TRANSLATE_NOOP("Words", "%1 of free area is there; %2 is advised for a cooker in a basement.")},
    SayText{
        Say::VentBasementAdvised,
        QT_TRANSLATE_NOOP(
            "Words",
            "Only %1 of free area is there; %2 is advised for a cooker in a basement, whatever the volume.")},
    SayText{Say::PlantTemperatureGood, QT_TRANSLATE_NOOP("Words", "%1 is not above %2.")},
    SayText{Say::PlantTemperatureHigh,
            QT_TRANSLATE_NOOP("Words", "%1 is above %2: more air is needed to carry the heat away.")},
    SayText{Say::PlantTemperatureNear, QT_TRANSLATE_NOOP("Words", "%1 is at or near %2: measure it again.")},
    SayText{Say::CoDanger,
            QT_TRANSLATE_NOOP("Words",
                              "Danger: %1 of carbon monoxide was read (warning from %2). Get everyone out, "
                              "turn the appliances off, open windows and doors if it is safe to, get medical "
                              "help for anyone who feels ill, then ring the gas emergency service (LPG: the "
                              "supplier's emergency number).")},
    SayText{Say::CoRaised,
            QT_TRANSLATE_NOOP("Words",
                              "%1 of carbon monoxide was read (warning from %2). Turn the appliances off, "
                              "open the windows, and find the source before going on.")},
    SayText{Say::CoLevelsMissing,
            QT_TRANSLATE_NOOP("Words",
                              "The highest reading was %1. The action levels are not in the rule book: enter "
                              "them from your own copy of the standard. Until then there is no verdict.")},
    SayText{Say::CoNoAction,
            QT_TRANSLATE_NOOP("Words", "The highest reading was %1, not above %2, and not rising.")},
    SayText{Say::CoNearAction,
            QT_TRANSLATE_NOOP("Words", "The highest reading was %1, at or near %2: go on measuring.")},
    SayText{Say::CoInvestigate,
            QT_TRANSLATE_NOOP(
                "Words",
                "The highest reading was %1, above %2. Find the source: look at each appliance in turn.")},
    SayText{Say::CoLeave,
            QT_TRANSLATE_NOOP("Words",
                              "The highest reading was %1; from %2 on the appliances go off, windows and "
                              "doors are opened, everyone leaves, and the gas emergency service (LPG: the "
                              "supplier's emergency number) is rung.")},
    SayText{Say::CoShortPeak,
            QT_TRANSLATE_NOOP(
                "Words",
                "A cooker's peak of %1 (at most %2), since fallen to %3. Watch that it does not come back.")},
    SayText{
        Say::CoStillRising,
        QT_TRANSLATE_NOOP(
            "Words",
            "The readings are still rising: go on measuring until they hold or fall, and find the source.")},
    SayText{Say::CoTrendUnknown,
            QT_TRANSLATE_NOOP("Words", "Whether the readings rise or fall can't be told: go on measuring.")},
    SayText{Say::CoTrendRising, QT_TRANSLATE_NOOP("Words", "Rising: %1 in the last %2 (±%3).")},
    SayText{Say::CoTrendSteady, QT_TRANSLATE_NOOP("Words", "Steady: %1 in the last %2 (±%3).")},
    SayText{Say::CoTrendFalling, QT_TRANSLATE_NOOP("Words", "Falling: %1 in the last %2 (±%3).")},
    SayText{Say::CoMeanWithin, QT_TRANSLATE_NOOP("Words",
                                                 "The highest mean of %3 was %1; the limit for people at "
                                                 "work is %2. It does not show that a home is safe.")},
    SayText{Say::CoMeanNear,
            QT_TRANSLATE_NOOP(
                "Words", "The highest mean of %3 was %1, at or near the limit for people at work of %2.")},
    SayText{Say::CoMeanBeyond,
            QT_TRANSLATE_NOOP("Words",
                              "The highest mean of %3 was %1, above the limit for people at work of %2.")},
    SayText{Say::CoMeanPartial,
            QT_TRANSLATE_NOOP("Words",
                              "The mean was %1 over the %2 that were measured. The limit is for %3; nothing "
                              "is concluded for the time that was not measured.")},
    SayText{Say::CoMeanPartialHigh,
            QT_TRANSLATE_NOOP("Words",
                              "The mean was %1 over the %2 that were measured, above the limit of %4 for %3. "
                              "The time that was not measured is not counted.")},
    SayText{Say::CoMeanPartialSpent, QT_TRANSLATE_NOOP("Words",
                                                       "The %2 that were measured, at a mean of %1, already "
                                                       "amount to more than %4 over %3, whatever follows.")},
    SayText{Say::CoGap,
            QT_TRANSLATE_NOOP(
                "Words", "Up to %1 lies between two readings; what happened between them is not known.")},
    SayText{Say::CoGuideline,
            QT_TRANSLATE_NOOP("Words",
                              "For comparison: the World Health Organization's guideline is %1 for %2.")},
    SayText{Say::CoGuidelineAbove,
            QT_TRANSLATE_NOOP(
                "Words", "The mean of %1 is above the World Health Organization's guideline of %2 for %3.")},
    SayText{Say::CoAlarmWithin,
            QT_TRANSLATE_NOOP("Words",
                              "At %1 a carbon monoxide alarm would sound: at %2 it must within %3. That is a "
                              "threshold for saving lives, not a safe level.")},
    SayText{Say::CoBackgroundNoted, QT_TRANSLATE_NOOP("Words", "%1 was read outdoors first.")},
    SayText{Say::CoBackgroundRaised,
            QT_TRANSLATE_NOOP("Words",
                              "%1 was read outdoors: zero the instrument in clean air, or find out why.")},
    SayText{
        Say::CoBackgroundMissing,
        QT_TRANSLATE_NOOP(
            "Words",
            "No reading outdoors was taken first: zero the instrument outdoors and note the reading there.")},
    SayText{Say::CoBackgroundLate, QT_TRANSLATE_NOOP("Words", "The reading outdoors was not the first one.")},
    SayText{Say::CoRoomMissing, QT_TRANSLATE_NOOP("Words", "No reading in the room has been entered.")},
    SayText{Say::CoPlaceMissing,
            QT_TRANSLATE_NOOP(
                "Words",
                "Not said where reading %1 was taken: it is counted as in the room, and nothing passes.")},
    SayText{Say::CoTimeMissing,
            QT_TRANSLATE_NOOP(
                "Words",
                "Not said when reading %1 was taken: it is put with the one before, and nothing passes.")},
    SayText{Say::CoLevelMissing,
            QT_TRANSLATE_NOOP(
                "Words", "Reading %1 has no figure: nothing passes until it is there or its line is empty.")},
    SayText{Say::CoTimesBackwards,
            QT_TRANSLATE_NOOP("Words", "Reading %1 is earlier than the one before it: check the times.")},
    SayText{Say::CoReadAtDistance,
            QT_TRANSLATE_NOOP("Words", "The readings were taken from outside the room.")},
    SayText{Say::CoSamplingWithin,
            QT_TRANSLATE_NOOP("Words", "Sampled at %1 height, %2 from the appliance, for %3.")},
    SayText{Say::CoSamplingHeight, QT_TRANSLATE_NOOP("Words", "Sampled at %1; the standard asks for %2.")},
    SayText{Say::CoSamplingNearAppliance,
            QT_TRANSLATE_NOOP("Words", "Sampled %1 from the appliance; at least %2 is asked for.")},
    SayText{Say::CoSamplingShort, QT_TRANSLATE_NOOP("Words", "Sampled for %1; at least %2 is asked for.")},
    SayText{Say::CohbNotAnAllClear,
            QT_TRANSLATE_NOOP(
                "Words",
                "Nothing can be concluded from these readings about anyone's blood: the estimate is only of "
                "an order, and people may have been there longer. Anyone who feels ill needs a doctor now.")},
    SayText{Say::CohbWithinAnHour,
            QT_TRANSLATE_NOOP(
                "Words",
                "Exposure of this order (%1) can raise carbon monoxide in the blood above %2 within an hour. "
                "Keep people out and get medical advice for anyone who was there.")},
    SayText{Say::CohbDangerous,
            QT_TRANSLATE_NOOP("Words",
                              "Exposure like this is dangerous: it can have raised carbon monoxide in the "
                              "blood above %1 already. Get medical help for everyone who was there.")},
    SayText{Say::CohbSensitive,
            QT_TRANSLATE_NOOP("Words",
                              "Pregnant women, children and people with heart disease are harmed sooner.")},
};

}  // namespace

std::span<const SayText> airTexts() {
    return kAir;
}

}  // namespace hearth::ui::words

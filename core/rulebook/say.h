// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace hearth::rulebook {

/// Each thing that a finding can say. ui/words has the sentence of each in every language (a test holds it);
/// the comment gives the arguments in order. Codes are stable texts in snapshots (sayText).
enum class Say {
    // general
    ReadingMissing,       // - : a reading that this finding needs has not been entered
    ReadingUnusable,      // - : what was typed can't be read as a number
    LimitMissing,         // - : the rule book has no value: where to enter it
    LimitFromMemory,      // - : check it against your copy of the standard, then confirm the entry
    LimitSecondary,       // - : read in training notes or the trade press; confirm likewise
    LimitCommonPractice,  // - : a habit of the trade; it advises only
    OutsideStated,        // measured, least, most
    EditionNotAllowed,    // edition, date: this edition may not judge a test on that day
    EditionToChoose,      // - : both editions may judge on this day: say which
    EditionUsed,          // edition: it may judge a test on that day
    // before the test
    SafeToTouchDone,
    SafeToTouchVoltage,
    SafeToTouchNotDone,
    NoOpenEnds,
    OpenEndsFound,
    OpenEndsNotLooked,
    NoSmellOnArrival,
    SmellOnArrival,
    SmellNotAsked,
    VisualSound,
    VisualDefects,
    VisualNotDone,
    GaugeZeroed,
    GaugeNotZeroed,
    GaugeZeroNotSaid,
    GaugeInCalibration,     // due date
    GaugeCalibrationSoon,   // due date, days left
    GaugeOutOfCalibration,  // due date
    GaugeCalibrationUnknown,
    GaugeNotChosen,
    GaugeAccurateEnough,  // accuracy, limit
    GaugeTooCoarse,       // accuracy, limit
    GaugeAccuracyUnknown,
    OpenEndsSealed,    // - : found open, sealed before the test
    GaugeNotSuitable,  // - : the instrument chosen is not a pressure gauge
    // scope and volume
    VolumeWorkedOut,  // volume, meter's, pipes', fittings'
    VolumeUnknown,    // -
    VolumeTableUsed,
    VolumeGeometryUsed,
    VolumeTypedUsed,
    ScopeWithin,          // -
    ScopeBeyondVolume,    // volume, limit
    ScopeBeyondPipe,      // size, limit
    ScopeBeyondMeter,     // badge, limit
    ScopeBeyondPressure,  // pressure, limit
    ScopeNotKnown,        // - : what is missing to say
    ScopeUseUp1a,         // - : IGE/UP/1A applies instead (to 1 m3, 150 mm, 40 mbar natural gas)
    ScopeUseUp1,          // - : IGE/UP/1 applies instead
    ScopeEd4NotEntered,   // - : Edition 4's scope is not in the rule book; Edition 3's for information
    ScopeUseUp1aOrUp1,    // - : IGE/UP/1A if it lies within that (to 1 m3, 150 mm, 40 mbar natural gas), else
                          // IGE/UP/1
    ExtentUnknown,        // - : not said whether the whole installation or a part of it was tested
    // let-by
    LetByNone,             // rise, start
    LetByFound,            // rise, threshold: stop; prove the valve with fluid; report
    LetByFall,             // fall: points to a leak; go on only to find it
    LetByPressureOutside,  // start, least, most
    LetByTooShort,         // seconds, least
    // settling and test pressure
    Settled,                     // change
    NotSettled,                  // change, limit: wait longer, do not start timing
    TestPressureGood,            // start
    TestPressureLow,             // start, least
    TestPressureLowAccepted,     // start, least (Edition 4: 18 mbar where 20 can't be reached)
    TestPressureLowUnexplained,  // start, least: only where it can't be reached; find the cause
    TestPressureHigh,            // start, most: the regulator may lock up
    TestTooShort,                // seconds, needed
    SettleTooShort,              // seconds, least
    TestLongEnough,              // seconds, needed
    // tightness
    TightNoMovement,            // fall, threshold
    TightWithinDrop,            // fall, limit
    FallBeyondDrop,             // fall, limit
    FallOnNewWork,              // fall, threshold
    FallOnIsolated,             // fall, threshold
    RiseDuringTest,             // rise: warming or let-by: repeat
    SmellFails,                 // - : any smell of gas fails, whatever the gauge says
    SmellUnknown,               // - : not said whether there was a smell
    AppliancesUnknown,          // - : not said whether appliances were connected
    WorkUnknown,                // - : not said whether new or existing
    ShortCutHolds,              // fall, limit: volume need not be worked out
    RetestNeeded,               // fall, threshold: repeat with appliances isolated
    RetestClear,                // fall
    RetestMoved,                // fall, threshold: the pipework leaks
    NewWorkRetestAppliances,    // - : open the appliance valves and repeat
    BandsEmpty,                 // volume: enter them from your own copy
    BandUsed,                   // volume, band's bound, limit
    BeyondBands,                // volume
    Ed3WouldAllow,              // limit: for information, the withdrawn Edition 3
    AtLimit,                    // measured, limit, uncertainty
    LeakRate,                   // flow, uncertainty: what the fall is worth as a leak
    VolumeTakenAsExact,         // - : nobody said how far it may be off
    TemperatureExplains,        // temperature change: the fall could be cooling
    TemperatureDoesNotExplain,  // temperature change that it would take, assumed change
    StartDrifting,              // - : the fall of the settling minute continues
    DoFailNoSmell,              // - : keep the gas off; trace and repair, or make safe
    DisplaysWithinDigit,        // difference, resolution
    DisplaysDiffer,             // difference, resolution
    PilotsLeftLit,              // - : a pilot left lit draws gas; put it out and repeat
    PilotsUnknown,              // - : not said whether the pilots were out
    DropClassUnknown,  // - : meter or pipe size not said, or outside the table: which drop applies is not
                       // known
    // purge and restore
    PurgeVolumeNeeded,  // volume
    PurgeEnough,        // passed, needed
    PurgeShort,         // passed, needed
    PurgeNotDone,
    PurgeNotNeeded,
    PurgeOpenBurner,       // volume, limit: light it as soon as it will, keep trying
    PurgeVentilatedPlace,  // volume, limit
    PurgeMethodWrong,      // volume, limit
    JointsProvedAndWiped,
    JointNotProved,
    JointNotWiped,
    JointsNotSaid,
    PressureGood,        // pressure, least, most
    PressureOutside,     // pressure, least, most
    LockUpGood,          // pressure, most
    LockUpHigh,          // pressure, most
    PurgeNoSteadyFlame,  // - : purge on until every appliance burns with a steady flame
    // --- gas
    NetworkWobbeGood,  // Wobbe index, least, most
    NetworkWobbeLow,   // Wobbe index, least: not what a network may deliver; check the figure, then report it
    NetworkWobbeHigh,  // Wobbe index, most: likewise
    NetworkDensityGood,  // relative density, most
    NetworkDensityHigh,  // relative density, most: likewise
    NetworkOtherGas,     // gas: the network's limits are for natural gas only
    HeatValueUsual,      // calorific value, least, most
    HeatValueUnusual,    // calorific value, least, most: check figure and unit against the bill
    NetworkAtLimit,      // figure, limit: too near to tell
    // --- end of gas
    // --- pipework
    PipeDropWithin,      // drop, limit, uncertainty, end
    PipeDropNear,        // drop, limit, uncertainty, end
    PipeDropBeyond,      // drop, limit, uncertainty, end: enlarge
    PipeFlowUnknown,     // section
    PipeSizeUnknown,     // section
    PipeLengthUnknown,   // section
    PipeFittingUnknown,  // section: type the length of pipe that its fittings are worth
    PipeOutsideLaw,      // section
    PipeGasUnknown,      // - : relative density and viscosity of the gas are not known
    PipeFittingsBy,      // standard: whose equivalent lengths were used
    PipeFittingsTyped,   // -
    PipeMarginTaken,     // share: no efficiency is confirmed, so the flow is taken as this share of the law's
    PipeWorstSection,    // section, drop
    PipeEnlarge,         // section, from, to
    PipeDropLeast,       // drop, limit, section, end: without the fittings of the section
    PipeOrderUnclear,    // - : which pipe feeds which is not clear
    PipeFittingsUnsaid,  // section: not said, or can't be read
    PurgeFlowEnough,     // flow, least
    PurgeFlowNear,       // flow, least
    PurgeFlowLow,        // flow, least: gas and air mix in the pipe: purge again, faster
    PurgeTimeNeeded,     // time, flow
    PurgeEndReached,     // share, least
    PurgeEndNear,        // share, least
    PurgeEndShort,       // share, least: purge on
    PurgeCyclicUnknown,  // - : read it off the meter's plate
    PurgeCyclicFromBook,  // volume
    PurgeSizeUnknown,     // - : the largest pipe is not said, or larger than the table
    // --- end of pipework
    // --- larger
    StandardUp1b,               // -
    StandardBeyondUp1,          // pressure, limit
    ReadableMovementIs,         // movement
    ReadableMovementNotTabled,  // -
    LongestKept,                // needed, longest
    LongestBeyond,              // needed, longest
    LongestUnknown,             // needed
    AreaTypeUnknown,            // -
    RoomVolumeUnknown,          // -
    VentilationUnknown,         // -
    RoomAsTypeA,                // -
    RoomCappedAsTypeC,          // volume
    LargeRoomUnproved,          // volume
    LargeRoomTooSmall,          // volume, least
    TestMediumUnknown,          // -
    OperatingPressureUnknown,   // -
    PermittedLeakIs,            // flow
    LeakWithin,                 // rate, permitted
    LeakBeyond,                 // rate, permitted
    LeakAtLimit,                // rate, permitted, uncertainty
    SmallestLeakSeen,           // flow
    LetByFrom,                  // start, half
    LetByNotBelow,              // start, operating
    StrengthPressureEnough,     // pressure, needed
    StrengthPressureLow,        // pressure, needed
    StrengthBoth,               // by incidental, by operating
    IncidentalBelowOperating,   // incidental, operating
    StrengthTimesKept,          // settled, held
    StrengthNoFall,             // fall, movement
    StrengthFellWithin,         // fall, allowed
    StrengthFell,               // fall, allowed
    StrengthMediumWrong,        // -
    StrengthPartsOff,           // -
    StrengthPartsOn,            // -
    // --- end of larger
    // --- burner
    RateGood,       // rate, uncertainty
    RateCoarse,     // rate, uncertainty, aim, time to take
    RateTooCoarse,  // rate, uncertainty: no timing is long enough
    RateNoMeter,    // - : heat input can't be taken; read the operating pressure, or where that can't be read
                    // combustion
    RateTimeWrong,  // -
    RateIndexBackwards,         // start, end
    RateNothingPassed,          // -
    RateAbsurd,                 // - : a slip of the decimal point or the unit
    RateDialUnknown,            // - : a turn of 1, 2, 5 or 10 ft3
    RateOthersOn,               // - : the rate is not this appliance's alone
    RateNotFull,                // -
    RateCold,                   // - : a cold appliance passes more gas
    RateConditionsNotSaid,      // - : others off, full rate, warm
    RateAboveMeter,             // rate, the meter's most
    RateBelowMeterRange,        // rate, least for which the meter's accuracy is known
    RateMeterCounted,           // accuracy
    RateMeterNotCounted,        // accuracy
    HeatInputWithin,            // deviation, limit, uncertainty
    HeatInputNear,              // deviation, limit, uncertainty: time it longer
    HeatInputOverRated,         // deviation, limit, uncertainty: pressure, injector, maker
    HeatInputUnderRated,        // deviation, limit, uncertainty: likewise
    HeatInputGross,             // gross heat input, plate
    HeatInputNet,               // net heat input, plate
    HeatInputWorkedOut,         // gross heat input, net
    HeatInputGrossOnly,         // gross heat input: net needs the gas's ratio
    HeatInputNoCalorific,       // -
    HeatInputNoPlate,           // -
    HeatInputPlateKindNotSaid,  // - : gross or net
    HeatInputShortcut,          // gross heat input by the two-minute shortcut
    CorrectionNone,             // -
    CorrectionFixed,            // factor
    CorrectionMeasured,         // factor
    InletDropGood,              // drop, limit, uncertainty
    InletDropAtLess,            // drop, limit: repeat at the high load
    InletDropHigh,              // drop, limit, uncertainty: the pipes or a valve
    InletLoadNotSaid,           // -
    InletStandingBelow,         // standing, working: read both again
    InletNotFull,               // -
    NearEndOfRange,             // measured, least, most: too near an end to tell
    BurnerPressureNoMaker,      // -
    MeterAverageInside,         // average, least, most
    MeterAverageOutside,        // average, least, most
    MeterAverageTooShort,       // time, least
    MeterAverageProposal,       // - : a proposal of 2019; it conflicts with the usual range
    HotWaterGood,               // measured, maker's, uncertainty
    HotWaterLow,                // measured, maker's, uncertainty
    HotWaterNoMaker,            // output
    HotWaterNotFull,            // - : whether the burner was at its maximum
    HotWaterGives,              // output
    BalanceGood,                // ratio, least, most
    BalanceOutside,             // ratio, least, most: read flow and temperatures again
    Reg26Satisfied,             // -
    Reg26FlueNot,               // -
    Reg26FlueWrong,             // -
    Reg26AirNot,                // -
    Reg26AirWrong,              // -
    Reg26PressureOrHeat,        // - : neither was read
    Reg26BothNeeded,            // - : one of the two is missing
    Reg26ReadingFails,          // -
    Reg26ReadingOpen,           // - : a reading has no verdict yet
    Reg26ReadingLook,           // - : a reading asks for another look
    Reg26NoReason,              // - : combustion in place of pressure and heat input, without saying why
    Reg26ReasonWords,           // - : the reason is to be written down
    Reg26CombustionNot,         // -
    Reg26CombustionInstead,     // - : with its reason, combustion stands in
    Reg26OperationNot,          // -
    Reg26OperationWrong,        // -
    Reg26TellDefect,            // - : tell the responsible person and the owner
    Reg26DoesNotApply,          // - : 26(10), from memory
    DropToApplianceGood,        // drop, limit, uncertainty
    DropToApplianceNear,        // drop, limit, uncertainty
    DropToApplianceHigh,        // drop, limit, uncertainty
    GasNotSaid,                 // - : natural gas was taken
    MakersFigureUnclear,        // - : and the rule book's does not stand in for it
    DropGaugesUnknown,          // - : two gauges, or not said
    // --- end of burner
    // --- combustion
    CombustionRatioWithin,        // ratio, limit, uncertainty
    CombustionRatioBeyond,        // ratio, limit, uncertainty
    CarbonMonoxideWithin,         // CO, limit, uncertainty
    CarbonMonoxideBeyond,         // CO, limit, uncertainty
    CarbonDioxideWithin,          // CO2, least, most
    CarbonDioxideBeyond,          // CO2, least, most
    CarbonDioxideAtEnd,           // CO2, least, most
    CombustionAtLimit,            // measured, limit, uncertainty: consult the maker
    CombustionNotByRatio,         // - : judged by its flame and the CO in the room
    CombustionNoLimitForKind,     // -
    CombustionKindUnknown,        // -
    CombustionNoFlueGas,          // - : CO2 is nought
    CombustionBelowNought,        // -
    CombustionLimitUnit,          // - : the maker's figure is in a unit that a reading can't be held against
    CombustionMaximumMissing,     // -
    CombustionMinimumMissing,     // -
    CombustionInOrder,            // - : at every rate that was measured
    CombustionCheckFlue,          // -
    CombustionMeasureAgain,       // -
    CombustionStillBeyond,        // -
    CarbonDioxideComputed,        // - : by the analyser, from O2
    AnalyserNotZeroed,            // -
    AirInletOxygenGood,           // O2, limit, uncertainty
    AirInletOxygenLow,            // O2, limit, uncertainty
    AirInletCarbonDioxideGood,    // CO2, limit, uncertainty
    AirInletCarbonDioxideHigh,    // CO2, limit, uncertainty
    PlausibleFits,                // gap, most, uncertainty
    PlausibleGap,                 // gap, most, uncertainty
    PlausibleCannotSee,           // -
    PlausibleComputed,            // -
    PlausibleOxygenAboveAir,      // O2
    PlausibleCarbonDioxideAbove,  // CO2, most
    PlausibleOtherFuel,           // gas
    PlausibleSlipOxygen,          // typed, fitting
    PlausibleSlipCarbonDioxide,   // typed, fitting
    PlausibleSwapped,             // -
    PlausibleUnexplained,         // -
    PlausibleNoFuelLine,          // -
    PlausibleRatioAgrees,         // printed, computed
    PlausibleRatioDiffers,        // printed, computed
    PlausibleFlueNotHotter,       // flue temperature, air temperature
    FlueGasExcessAir,             // exact, simple
    FlueGasAirFree,               // air-free, at 3 % O2
    FlueGasEmission,              // net basis, gross basis
    EfficiencySiegert,            // efficiency, loss
    EfficiencyLosses,             // efficiency, dry gas, water vapour, unburned
    EfficiencyNotCondensed,       // flue temperature, dew point
    EfficiencyLatentCeiling,      // share
    // --- end of combustion
    // --- air
    VentStepOpenFlued,        // total input, deducted, cm2 a kW, area
    VentStepPerKilowatt,      // input, cm2 a kW, area
    VentStepHeater,           // first vent, input, served, cm2 a kW, area
    VentStepCabinet,          // input, cm2 a kW, least, area
    VentStepCooker,           // room volume, area
    VentStepWaterHeater,      // room volume, area
    VentStepDecorative,       // area
    VentStepFire,             // input, most
    VentStepDryer,            // area
    VentStepMaker,            // area
    VentStepSealed,           // - : takes its air from outside
    VentStepSeveral,          // flueless heaters, open-flued heaters, largest other, area
    VentStepThroughWall,      // area, factor, counted area
    VentStepGross,            // gross input, gross over net, net input
    VentStepVolume,           // volume, uncertainty, volume taken
    VentDecorativeAdded,      // - : the standard's way is not known
    VentNeedIs,               // area
    VentEnough,               // there, needed
    VentTooSmall,             // there, needed
    VentNear,                 // there, needed, uncertainty
    VentNotNeeded,            // - : no vent is asked for
    VentInputMissing,         // -
    VentKindMissing,          // -
    VentVolumeMissing,        // -
    VentInternalMissing,      // -
    VentVentsMissing,         // -
    VentLeadsMissing,         // -
    VentLevelMissing,         // -
    VentAppliancesMissing,    // -
    VentSpaceMissing,         // -
    VentGasMissing,           // - : gross to net
    VentDoorMissing,          // -
    VentTightMissing,         // - : more may be needed
    VentTightMore,            // - : more may be needed; the rule is empty
    VentFluelessThroughWall,  // area straight to outside, needed
    VentMixedDestinations,    // -
    VentCompartmentRoom,      // - : the room needs a vent too
    VentCompartmentMixed,     // - : the open-flued row is taken
    VentOpeningThere,         // -
    VentOpeningMissing,       // - : none there
    VentOpeningUnknown,       // -
    VentIsSound,              // -
    VentBlocked,              // -
    VentClosable,             // -
    VentFlyScreen,            // -
    VentUnsound,              // - : blocked, closable or with a fly-screen
    VentNotSleeved,           // -
    VentStateUnknown,         // -
    VentWithinScope,          // input, limit
    VentNearScope,            // input, limit
    VentBeyondScope,          // input, limit
    VentPlantBeyond,          // input, limit
    VentPlantWithin,          // input, limit
    VentOutsideOnly,          // - : the rule is for vents straight to outside
    PlantFlueOther,           // - : the rule is for open-flued boilers
    PlantSpaceMissing,        // -
    VentRoomLargeEnough,      // volume, least
    VentRoomTooSmall,         // volume, least
    VentRoomNear,             // volume, least
    VentBedSitUnknown,        // -
    VentInputAllowed,         // input, most
    VentInputTooLarge,        // input, most
    VentInputNear,            // input, most
    VentBasementEnough,       // there, advised
    VentBasementAdvised,      // there, advised
    PlantTemperatureGood,     // temperature, most
    PlantTemperatureHigh,     // temperature, most
    PlantTemperatureNear,     // temperature, most
    CoDanger,                 // reading, limit
    CoRaised,                 // reading, limit
    CoLevelsMissing,          // peak
    CoNoAction,               // peak, most
    CoNearAction,             // peak, most
    CoInvestigate,            // peak, most
    CoLeave,                  // peak, limit
    CoShortPeak,              // peak, most, latest
    CoStillRising,            // -
    CoTrendUnknown,           // -
    CoTrendRising,            // change, time, uncertainty
    CoTrendSteady,            // change, time, uncertainty
    CoTrendFalling,           // change, time, uncertainty
    CoMeanWithin,             // mean, limit, time
    CoMeanNear,               // mean, limit, time
    CoMeanBeyond,             // mean, limit, time
    CoMeanPartial,            // mean, measured time, full time
    CoMeanPartialHigh,        // mean, measured time, full time, limit
    CoMeanPartialSpent,       // mean, measured time, full time, limit
    CoGap,                    // time
    CoGuideline,              // guideline, time
    CoGuidelineAbove,         // mean, guideline, time
    CoAlarmWithin,            // reading, level, time
    CoBackgroundNoted,        // reading
    CoBackgroundRaised,       // reading
    CoBackgroundMissing,      // -
    CoBackgroundLate,         // -
    CoRoomMissing,            // -
    CoPlaceMissing,           // number of the reading
    CoTimeMissing,            // number of the reading
    CoLevelMissing,           // number of the reading
    CoTimesBackwards,         // number of the reading
    CoReadAtDistance,         // -
    CoSamplingWithin,         // height, distance, time
    CoSamplingHeight,         // height, asked
    CoSamplingNearAppliance,  // distance, least
    CoSamplingShort,          // time, least
    CohbNotAnAllClear,        // -
    CohbWithinAnHour,         // reading, share
    CohbDangerous,            // share
    CohbSensitive,            // -
    // --- end of air
    // --- deadlines
    CheckDueBy,           // date
    CheckDueEither,       // earliest, latest
    CheckOverdue,         // date
    CheckCountryMissing,  // -
    CheckBasisMissing,    // -
    CheckDatesCrossed,    // check, earlier date
    CheckCountsInWindow,  // check, deadline
    CheckCountsEarly,     // check, deadline
    CheckCountsEdge,      // check, deadline
    CheckCountsInTime,    // check, deadline
    CheckCountsLate,      // check, deadline
    CheckCountsPutOff,    // check, deadline
    CheckFromInstalled,   // installed
    CheckFromLease,       // lease begins
    CheckFromDate,        // date
    CheckFromKept,        // deadline
    CheckFromEdge,        // check, deadline
    CheckFromLeaseCheck,  // check, lease begins
    CheckPutOff,          // ordinary, put off to
    CheckAfterPutOff,     // -
    CheckWindowOpens,     // first day, deadline
    CheckLawFromMemory,   // -
    TenantCopyBy,         // date
    TenantCopyBefore,     // date
    TenantCopyNoDay,      // -
    RecordCurrentUntil,   // date
    RecordKeptUntil,      // date
    RecordKeptOn,         // date
    // --- end of deadlines
    // --- competence
    CardDateUnknown,      // engineer
    CardRunOut,           // engineer, date
    CategoriesNotKept,    // engineer
    CategoryNotHeld,      // term
    CategoryDateUnknown,  // category
    CategoryRunOut,       // category, date
    AnalyserDateUnknown,  // -
    AnalyserRunOut,       // date
    CategoryUnknown,      // - : no term is known for this kind of appliance
    CardWillRunOut,       // engineer, date
    CategoryWillRunOut,   // category, date
    // --- end of competence
};

[[nodiscard]] std::string_view sayText(Say say);
[[nodiscard]] std::span<const Say> allSays();

}  // namespace hearth::rulebook

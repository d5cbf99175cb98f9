// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/units.h"
#include "core/register/choices.h"

#include <optional>
#include <span>
#include <string_view>

/// The catalogue of what can be entered on a visit. Defined once; the sheet, the store's rows, the record's
/// required items, export and import are built from it. Add an item at the end of its group, with its row in
/// item.cpp and its words in ui/words; its code never changes and is never reused.
namespace hearth::reg {

/// What an item belongs to. A visit has one visit subject and any number of the others.
enum class SubjectKind { Visit, Installation, Test, Appliance, Room, Situation };

enum class ItemKind { Number, Choice, YesNo, Text, LongText, Time, Date, Instrument };

enum class Item {
    // visit: who and where
    VisitReference,  // the customer's order number
    VisitPresent,    // who was there
    // visit: before you start
    SmellOnArrival,    // yes / no
    OpenEnds,          // none seen / found and sealed / found open / not looked at
    SafeToTouch,       // safe / voltage found / not done
    VisualInspection,  // sound / defects noted / not done
    VisualNotes,
    // test: what is tested
    TestEdition,  // ed3 / ed4
    TestWork,     // new / existing
    TestExtent,   // whole / part
    TestPartDescription,
    TestAppliances,    // connected, all off / isolated at their valves / none connected
    TestIsolatedWhat,  // what was open and shut: which valves, which appliances
    TestPilots,        // out / none fitted / left lit
    TestGauge,         // instrument
    TestGaugeZeroed,   // yes / no
    TestSmell,         // yes / no: smell of gas during the test
    TestVolumeTyped,   // m3: the volume from elsewhere (instead of the pipe list)
    TestPipesShut,     // sections of the pipe list whose valves were shut: "3, 5"
    // test: let-by
    LetByStart,
    LetByEnd,
    LetByStartedAt,
    LetByEndedAt,
    // test: settle
    SettleStart,
    SettleEnd,
    SettleStartedAt,
    SettleEndedAt,
    // test: tightness
    TightStart,
    TightEnd,
    TightStartedAt,
    TightEndedAt,
    SecondDisplayStart,
    SecondDisplayEnd,   // the same gauge read on another display
    LowPressureReason,  // why the test pressure could not be reached
    AssumedTemperatureChange,
    TestVolumeOff,  // percent: how far the volume may be off, either way
    // test: the repeat with appliances isolated
    RetestStart,
    RetestEnd,
    RetestStartedAt,
    RetestEndedAt,
    // test: purge
    PurgeDone,          // yes / no / not needed
    PurgeMethod,        // open burner / ventilated place, no ignition source
    PurgeVolumePassed,  // m3 on the meter index
    PurgeSteadyFlame,   // at every appliance: yes / no
    // test: restore
    TestPointProved,        // yes / no: leak detection fluid
    DisturbedJointsProved,  // yes / no / none disturbed
    FluidWiped,             // yes / no
    StandingPressure,
    WorkingPressure,
    WorkingLoad,
    // visit: hand-over
    VisitRemarks,
    SignedByEngineer,  // name as typed in place of a signature
    ReceivedBy,        // name
    // --- worked out away from a visit (see judging/question.h)
    // gas: what burns
    GasFamily,
    GasMix,
    GasMethane,
    GasEthane,
    GasPropane,
    GasButanes,
    GasPentanes,
    GasHydrogen,
    GasCarbonMonoxide,
    GasNitrogen,
    GasCarbonDioxide,
    GasOxygen,
    GasLpgShare,
    GasHeatValue,
    GasDensity,
    // pipe: one section a row
    SectionTube,
    SectionLength,
    SectionAfter,
    SectionElbows,
    SectionTees,
    SectionBends,
    SectionDemand,
    SectionMeasured,
    SectionName,
    SectionBends45,
    SectionFittings,
    SectionUnderTest,
    PipeEdition,
    // larger installations, purge
    PurgeVolumeKnown,
    PurgeMeter,
    PurgePipe,
    PurgeFlow,
    PurgeSize,
    PurgePipes,
    PurgePlate,
    PurgePassed,
    PurgeBurner,
    PurgeEndGas,
    LargerOperatingPressure,
    LargerIncidentalPressure,
    LargerArea,
    LargerRoomVolume,
    LargerGauge,
    LargerMedium,
    LargerWork,
    LargerSmell,
    LargerStart,
    LargerEnd,
    LargerTook,
    StrengthStart,
    StrengthEnd,
    StrengthTook,
    LargerSupplyPressure,
    LargerVentilated,
    LargerLetByStart,
    LargerLetByEnd,
    LargerLetByTook,
    LargerSettleStart,
    LargerSettleEnd,
    LargerSettleTook,
    StrengthMostOperating,
    StrengthMedium,
    StrengthGauge,
    StrengthSettled,
    StrengthPartsOff,
    // appliance: what it is
    ApplianceKind,
    ApplianceFlue,
    ApplianceInput,
    ApplianceInputBasis,
    ApplianceTolerance,
    ApplianceVentArea,
    ApplianceToleranceUnder,
    ApplianceToleranceSource,
    // appliance: gas rate
    RateMeter,
    RateIndexStart,
    RateIndexEnd,
    RateDial,
    RateTurns,
    RateTime,
    RateCorrection,
    RateMeterPressure,
    RateGasTemperature,
    RateAltitude,
    RateOthersOff,
    RateFullRate,
    RateWarm,
    RateMeterMost,
    RateIndexWhole,
    RatePassed,
    RateDialDivision,
    // appliance: pressures
    MeterWorkingPressure,
    InletPressure,
    InletLeast,
    InletMost,
    BurnerPressure,
    BurnerLeast,
    BurnerMost,
    MeterStandingPressure,
    InletStanding,
    InletFullRate,
    PressureSameGauge,
    MeterAverage,
    MeterAverageTime,
    MeterLoad,
    PressureMakerSource,
    GaugeAccuracy,
    // appliance: combustion
    FlueCoHigh,
    FlueCo2High,
    FlueO2High,
    FlueRatioPrinted,
    FlueTemperature,
    FlueAirTemperature,
    FlueHumidity,
    FlueCoLow,
    FlueCo2Low,
    FlueO2Low,
    MakerCo,
    MakerRatio,
    InletO2,
    InletCo2,
    AnalyserComputes,
    AnalyserZeroed,
    MakerCo2Least,
    MakerCo2Most,
    MakerCo2LeastLow,
    MakerCo2MostLow,
    MakerCombustionSource,
    AnalyserCoAccuracy,
    AnalyserCo2Accuracy,
    AnalyserO2Accuracy,
    // appliance: hot water
    HotWaterFlow,
    HotWaterCold,
    HotWaterHot,
    HotWaterMakerFlow,
    HotWaterMakerRise,
    HotWaterNetInput,
    HotWaterFullRate,
    HotWaterMakerOutput,
    HotWaterMakerSource,
    // appliance: what the law wants examined
    ExaminedFlue,
    ExaminedAir,
    ExaminedPressure,
    ExaminedHeatInput,
    ExaminedCombustion,
    WhyNeitherTaken,
    ExaminedOperation,
    ExaminedBoth,
    ExaminedNotAsked,
    WhyNeither,
    // room
    RoomVolume,
    RoomSpace,
    RoomOpening,
    RoomTight,
    RoomBedSitting,
    VentArea,
    VentTo,
    VentLevel,
    VentSound,
    RoomVents,
    RoomBasement,
    VentSleeved,
    PlantSummer,
    PlantFloor,
    PlantMiddle,
    PlantCeiling,
    // room: carbon monoxide, one reading a row
    RoomCoDistance,
    RoomCoAt,
    RoomCoPlace,
    RoomCo,
    RoomCoAppliance,
    RoomCoHeight,
    RoomCoFromAppliance,
    RoomCoAccuracy,
    // when is the next check due
    CheckCountry,
    CheckInstalled,
    CheckLast,
    CheckDone,
    CheckLease,
    CheckOthersDue,
    CheckTenant,
    CheckMovesIn,
    // --- of the sheet beyond the pipework (visit_items.cpp)
    // visit: what kind it is
    VisitLandlordCheck,
    VisitOwnerCheck,
    VisitInstallation,
    VisitService,
    VisitPipework,
    VisitLarger,
    VisitRoomCo,
    VisitUnsafe,
    // visit: before you start
    GasOnArrival,
    StillToDo,
    ResponsibleTold,
    MeterNotice,
    MainBonding,
    VisitAnalyser,
    VisitGauge,
    // visit: hand-over and what follows
    HandoverShown,
    HandoverInstructions,
    HandoverReadings,
    HandoverAdvice,
    WorkCompleted,
    BuildingNotification,
    ControlsInformation,
    // visit: an investigation of CO or fumes
    CallFrom,
    EmergencyReference,
    AlarmMake,
    AlarmExpiry,
    AlarmPeak,
    Symptoms,
    MedicalAdvice,
    OccupantsThere,
    WeatherThere,
    AdjoiningPremises,
    OtherFuels,
    CauseFound,
    InvestigationActions,
    LeftAs,
    // appliance: whether and how it was seen
    ApplianceInspected,
    NotInspectedWhy,
    CheckedOn,
    LastCheckCounted,
    LocationSeen,
    StabilitySeen,
    ConnectionSeen,
    DistressSeen,
    ClearancesSeen,
    // appliance: flue and air
    FlueRoute,
    FlueSeen,
    TerminalSeen,
    FlueHidden,
    FlueNotSeen,
    VentilationSeen,
    FlueFlowTest,
    SpillageTest,
    SpillageFans,
    CaseSealSeen,
    // appliance: gas and safety
    GasRateRead,
    HeatInputRead,
    HeatInputBasis,
    SafetyDevices,
    FlameSeen,
    CondensateSeen,
    PressureRelief,
    ServicedToday,
    // appliance: what comes of it
    CheckCovered,
    DefectsFound,
    DefectsText,
    ActionTaken,
    ActionOn,
    ActionBy,
    SafeToUse,
    // appliance: commissioning
    NewOrReplacement,
    ControlTime,
    ControlRoom,
    ControlInterlock,
    ControlZones,
    ControlTrvs,
    ControlCylinder,
    ControlBypass,
    CombiMeasure,
    WaterCleaned,
    WaterCleaner,
    WaterInhibitor,
    WaterFilter,
    WaterHardness,
    ScaleReducer,
    WaterPressure,
    DesignFlow,
    HeatingFlow,
    HeatingReturn,
    HotWaterGasRate,
    HotWaterPressure,
    PipeSizing,
    CondensateRoute,
    CondensateEnd,
    TrapFilled,
    ByMaker,
    ServiceInterval,
    // appliance: service
    ServiceKind,
    ServiceSymptoms,
    ServiceTasks,
    ServiceParts,
    ServiceAdjusted,
    BeforeCoHigh,
    BeforeCo2High,
    BeforeCoLow,
    BeforeCo2Low,
    VesselSeen,
    InhibitorSeen,
    NextServiceDue,
    // room
    RoomName,
    RoomCoAlarm,
    RoomCoAlarmExpiry,
    RoomSmokeAlarm,
    RoomSmokeAlarmExpiry,
    RoomAlarmNotes,
    RoomFinding,
    // situation
    SituationGasEscape,
    SituationPerson,
    SituationPermission,
    SituationMadeSafe,
    SituationMadeSafeHow,
    SituationLabel,
    SituationLabelNumber,
    SituationRefusedBy,
    SituationRefusalWords,
    SituationSupplyLeft,
    SituationTold,
    SituationToldAt,
    SituationToldReference,
    SituationWorkNeeded,
    SituationReceipt,
    SituationReceivedBy,
    SituationCopyLeft,
    SituationReportable,
    SituationReportWhy,
    SituationKnownOn,
    SituationReportedOn,
    SituationReportReference,
    SituationWorkBy,
    SituationPersons,
    // --- of kinds of appliance that have items of their own (kind_items.cpp)
    // appliance: the LPG system of a leisure vehicle or a boat
    LpgDataBadge,   // year and standard
    LpgUnitNumber,  // serial, pitch, berth or hull number
    LpgUse,         // let / private
    LpgCylinders,   // type and size
    LpgCylinderPlace,
    LpgCylindersSecured,
    LpgRegulator,
    LpgRegulatorDate,
    LpgHoseDates,
    LpgShutOffs,  // over-pressure and under-pressure
    LpgLockUp,
    LpgBubbleTester,
    LpgVentilation,
    LpgVentHigh,
    LpgVentLow,
    LpgDrains,  // drain and bilge openings
    // appliance: catering
    CateringInterlock,  // by flow / pressure / CO2 / none
    CateringInterlockProved,
    CateringShutOff,
    CateringGasProving,
    CateringExtract,
    CateringMakeUpAir,
    CateringCo2Place,
    CateringCo2Start,
    CateringCo2End,
    CateringCo,
    // appliance: an unvented cylinder, noted only
    UnventedCapacity,
    UnventedExpansion,
    UnventedRelief,
    UnventedPressureValves,
    UnventedDischarge1,
    UnventedDischarge2,
    UnventedCompetence,
    // appliance: decommissioned and capped
    CappedHow,  // sealed with a fitting / by a valve only / not seen
    CappedWhere,
    CappedProved,
    CappedLabel,
    // --- end
};

/// A choice: its stable code; ui/words has its label.
struct Choice {
    std::string_view code;
};

struct ItemInfo {
    Item item;
    std::string_view code;  // "test.tight_start"
    ItemKind kind;
    SubjectKind subject;
    quantity::UnitFamily units = quantity::UnitFamily::None;
    std::span<const Choice> choices = {};
};

/// All items, in the order of the enumeration.
[[nodiscard]] std::span<const ItemInfo> itemCatalogue();
/// Those that a visit's sheet asks for; the others are worked out away from a visit so far.
[[nodiscard]] std::span<const ItemInfo> sheetItems();
[[nodiscard]] const ItemInfo& infoOf(Item item);
[[nodiscard]] std::optional<Item> itemFromCode(std::string_view code);

}  // namespace hearth::reg

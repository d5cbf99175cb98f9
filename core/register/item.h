// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/units.h"

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

/// Choice codes, where code reads them: one name each, so that a slip does not compile.
namespace choice {
inline constexpr std::string_view kYes = "yes";
inline constexpr std::string_view kNo = "no";
inline constexpr std::string_view kNotNeeded = "not_needed";
inline constexpr std::string_view kNoneDisturbed = "none_disturbed";
inline constexpr std::string_view kNoneSeen = "none_seen";
inline constexpr std::string_view kFoundSealed = "found_sealed";
inline constexpr std::string_view kFoundOpen = "found_open";
inline constexpr std::string_view kNotLooked = "not_looked";
inline constexpr std::string_view kSafe = "safe";
inline constexpr std::string_view kVoltage = "voltage";
inline constexpr std::string_view kNotDone = "not_done";
inline constexpr std::string_view kSound = "sound";
inline constexpr std::string_view kDefects = "defects";
inline constexpr std::string_view kEd3 = "ed3";
inline constexpr std::string_view kEd4 = "ed4";
inline constexpr std::string_view kNew = "new";
inline constexpr std::string_view kExisting = "existing";
inline constexpr std::string_view kWhole = "whole";
inline constexpr std::string_view kPart = "part";
inline constexpr std::string_view kConnected = "connected";
inline constexpr std::string_view kIsolated = "isolated";
inline constexpr std::string_view kNoneConnected = "none_connected";
inline constexpr std::string_view kOut = "out";
inline constexpr std::string_view kNoneFitted = "none_fitted";
inline constexpr std::string_view kLeftLit = "left_lit";
inline constexpr std::string_view kOpenBurner = "open_burner";
inline constexpr std::string_view kVentilatedPlace = "ventilated_place";
// Of what is worked out away from a visit.
inline constexpr std::string_view kNaturalGas = "natural_gas";
inline constexpr std::string_view kPropane = "propane";
inline constexpr std::string_view kButane = "butane";
inline constexpr std::string_view kLpgAir = "lpg_air";
inline constexpr std::string_view kNaturalTypical = "natural_typical";
inline constexpr std::string_view kNaturalRichInCo2 = "natural_rich_in_co2";
inline constexpr std::string_view kG20 = "g20";
inline constexpr std::string_view kG21 = "g21";
inline constexpr std::string_view kG23 = "g23";
inline constexpr std::string_view kG25 = "g25";
inline constexpr std::string_view kG30 = "g30";
inline constexpr std::string_view kG31 = "g31";
inline constexpr std::string_view kTyped = "typed";
inline constexpr std::string_view kAreaA = "area_a";
inline constexpr std::string_view kAreaB = "area_b";
inline constexpr std::string_view kAreaC = "area_c";
inline constexpr std::string_view kBuried = "buried";
inline constexpr std::string_view kWater = "water";
inline constexpr std::string_view kHeavyFluid = "heavy_fluid";
inline constexpr std::string_view kElectronic1 = "electronic_1";
inline constexpr std::string_view kElectronic2 = "electronic_2";
inline constexpr std::string_view kElectronic1Wide = "electronic_1_wide";
inline constexpr std::string_view kElectronic0 = "electronic_0";
inline constexpr std::string_view kMercury = "mercury";
inline constexpr std::string_view kFuelGas = "fuel_gas";
inline constexpr std::string_view kAirOrNitrogen = "air_or_nitrogen";
inline constexpr std::string_view kCondensingBoiler = "condensing_boiler";
inline constexpr std::string_view kNonCondensingBoiler = "non_condensing_boiler";
inline constexpr std::string_view kWarmAirHeater = "warm_air_heater";
inline constexpr std::string_view kBackBoiler = "back_boiler";
inline constexpr std::string_view kBackBoilerFire = "back_boiler_fire";
inline constexpr std::string_view kGasFire = "gas_fire";
inline constexpr std::string_view kOpenFluedWaterHeater = "open_flued_water_heater";
inline constexpr std::string_view kRoomSealedWaterHeater = "room_sealed_water_heater";
inline constexpr std::string_view kFluelessSpaceHeater = "flueless_space_heater";
inline constexpr std::string_view kFluelessWaterHeater = "flueless_water_heater";
inline constexpr std::string_view kOven = "oven";
inline constexpr std::string_view kGrill = "grill";
inline constexpr std::string_view kHotplate = "hotplate";
inline constexpr std::string_view kRangeCooker = "range_cooker";
inline constexpr std::string_view kTumbleDryer = "tumble_dryer";
inline constexpr std::string_view kDecorativeFire = "decorative_fire";
inline constexpr std::string_view kCabinetHeater = "cabinet_heater";
inline constexpr std::string_view kFlued = "flued";
inline constexpr std::string_view kCooker = "cooker";
inline constexpr std::string_view kOther = "other";
inline constexpr std::string_view kRoomSealed = "room_sealed";
inline constexpr std::string_view kOpenFlued = "open_flued";
inline constexpr std::string_view kFlueless = "flueless";
inline constexpr std::string_view kNet = "net";
inline constexpr std::string_view kGross = "gross";
inline constexpr std::string_view kMetric = "metric";
inline constexpr std::string_view kImperial = "imperial";
inline constexpr std::string_view kByHand = "by_hand";
inline constexpr std::string_view kDial1 = "1_ft3";
inline constexpr std::string_view kDial2 = "2_ft3";
inline constexpr std::string_view kDial5 = "5_ft3";
inline constexpr std::string_view kDial10 = "10_ft3";
inline constexpr std::string_view kNone = "none";
inline constexpr std::string_view kFixed = "fixed";
inline constexpr std::string_view kStatutory = "statutory";
inline constexpr std::string_view kRoom = "room";
inline constexpr std::string_view kCompartmentToRoom = "compartment_to_room";
inline constexpr std::string_view kCompartmentToOutside = "compartment_to_outside";
inline constexpr std::string_view kInternalSpace = "internal_space";
inline constexpr std::string_view kBoilerRoom = "boiler_room";
inline constexpr std::string_view kBoilerEnclosure = "boiler_enclosure";
inline constexpr std::string_view kSummerHalf = "summer_half";
inline constexpr std::string_view kSummerMost = "summer_most";
inline constexpr std::string_view kSummerAll = "summer_all";
inline constexpr std::string_view kDoor = "door";
inline constexpr std::string_view kUnknown = "unknown";
inline constexpr std::string_view kOutside = "outside";
inline constexpr std::string_view kOneWall = "one_wall";
inline constexpr std::string_view kMoreWalls = "more_walls";
inline constexpr std::string_view kHigh = "high";
inline constexpr std::string_view kLow = "low";
inline constexpr std::string_view kOutdoors = "outdoors";
inline constexpr std::string_view kAppliance = "appliance";
inline constexpr std::string_view kElsewhere = "elsewhere";
inline constexpr std::string_view kGreatBritain = "great_britain";
inline constexpr std::string_view kNorthernIreland = "northern_ireland";
inline constexpr std::string_view kBefore2015 = "before_2015";
inline constexpr std::string_view kFrom2015 = "from_2015";
inline constexpr std::string_view kSmall = "small";
inline constexpr std::string_view kLarger = "larger";
inline constexpr std::string_view kLoadHigh = "load_high";
inline constexpr std::string_view kLoadLess = "load_less";
inline constexpr std::string_view kGood = "good";
inline constexpr std::string_view kWrong = "wrong";
inline constexpr std::string_view kNotFitted = "not_fitted";
inline constexpr std::string_view kInOrder = "in_order";
inline constexpr std::string_view kLookAgain = "look_again";
inline constexpr std::string_view kNotTaken = "not_taken";
inline constexpr std::string_view kDisconnected = "disconnected";
inline constexpr std::string_view kHarmlessPurging = "harmless_purging";
inline constexpr std::string_view kAskedAll = "asked";
inline constexpr std::string_view kNoMeter = "no_meter";
inline constexpr std::string_view kMeterNotReached = "meter_not_reached";
inline constexpr std::string_view kDisplayDead = "display_dead";
// End of those.
}  // namespace choice

}  // namespace hearth::reg

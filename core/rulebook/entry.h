// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/quantity/typed.h"
#include "core/rulebook/standard.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace hearth::rulebook {

/// How the program came to know a value; what each may do is in decide() below (design: "Limits: the rule
/// book").
enum class Provenance { Published, Secondary, Memory, CommonPractice, Firm, Maker };

/// Every limit, band, duration or factor that decides something. The code (ruleText) is what files hold.
enum class Rule {
    LetByPressure,         // range, mbar
    LetByTime,             // s, least
    TestPressure,          // range, mbar
    TestPressureLeast,     // mbar, where the range cannot be reached (Edition 4)
    SettleTime,            // s, least
    TestTime,              // s
    NoMovementWater,       // mbar; a movement below it is none (water gauge)
    NoMovementElectronic,  // mbar; likewise (electronic gauge)
    SettleMovement,        // mbar; advice: steady enough to start timing
    DropNoMeter28,         // mbar: Edition 3, no meter in the part under test, pipe to 28 mm
    DropUltrasonic28,      // mbar: ultrasonic to 6 m3/h
    DropDiaphragm6At28,    // mbar: diaphragm to 6 m3/h
    DropDiaphragm16At28,   // mbar: diaphragm above 6 to 16 m3/h
    DropNoMeter35,         // the same, pipe above 28 to 35 mm
    DropUltrasonic35,
    DropDiaphragm6At35,
    DropDiaphragm16At35,
    DropByVolume,            // bands: m3 -> mbar (Edition 4, natural gas; LPG): shipped empty
    DropShortCut,            // mbar: below it the volume need not be worked out (Edition 4)
    ScopeVolume,             // m3, most
    ScopePipe,               // mm nominal, most
    ScopeMeter,              // m3/h badged, most
    ScopeOperatingPressure,  // mbar at the meter or final regulator outlet, most
    ScopeSupplyPressure,     // mbar, maximum operating pressure at the emergency control valve's outlet, most
    PurgeVolumeSmall,        // m3 (meter to 6 m3/h and pipe to 28 mm)
    PurgeVolumeFactor,       // times the installation volume (otherwise)
    PurgeOpenBurnerAbove,    // m3: above it purge through an open burner, lit as soon as it will
    FittingsShare,           // share of the pipes' volume that is added for fittings (0.10)
    GaugeAccuracy,           // mbar, or better
    StandingPressureMost,    // mbar: regulator lock-up
    WorkingPressure,         // range, mbar at the meter outlet
    AssumedTemperatureChange,  // K in the test time, for the note on what cooling could explain
    // --- gas
    WorkingHeatValue,      // MJ/m3 gross: the calorific value where no bill or supplier gave one
    NetworkWobbeLeast,     // MJ/m3 gross: of the gas in a public network; two dated entries
    NetworkWobbeMost,      // MJ/m3 gross
    NetworkDensityMost,    // relative density
    NetworkHeatValueSeen,  // range, MJ/m3 gross: what networks are seen to carry; for information
    // --- end of gas
    // --- pipework
    PipeDropMost,     // mbar: meter to appliance, all pipes and fittings together, at the largest flow
    PipeEfficiency,   // share of the smooth-pipe law's flow that a pipe passes
    FittingOldElbow,  // m of pipe that a fitting is worth: BS 6891 before 2015, copper to 28 mm
    FittingOldBend,
    FittingOldBend45,
    FittingOldTee,
    Fitting15Elbow,  // m: BS 6891:2015, 15 mm copper
    Fitting15Bend,
    Fitting15Bend45,
    Fitting15Tee,
    Fitting22Elbow,  // m: BS 6891:2015, 22 mm copper
    Fitting22Bend,
    Fitting22Bend45,
    Fitting22Tee,
    Fitting28Elbow,  // m: BS 6891:2015, 28 mm copper
    Fitting28Bend,
    Fitting28Bend45,
    Fitting28Tee,
    Fitting35Elbow,  // m: BS 6891:2015, 35 mm copper
    Fitting35Bend,
    Fitting35Bend45,
    Fitting35Tee,
    PurgePipeFactor,   // times the volume of pipe and fittings, larger installations
    PurgeMeterCycles,  // times the cyclic volume of a diaphragm meter
    PurgeSpeedLeast,   // metres a second, pipe to DN 150
    PurgeSpeedLarge,   // metres a second, pipe from DN 200
    PurgeFlow20,       // m3/h, least, by DN
    PurgeFlow25,
    PurgeFlow32,
    PurgeFlow40,
    PurgeFlow50,
    PurgeFlow65,
    PurgeFlow80,
    PurgeFlow100,
    PurgeFlow125,
    PurgeFlow150,
    CyclicVolumeU6,  // m3 a turn, by badge; what is on the meter's plate stands before it
    CyclicVolumeU16,
    CyclicVolumeU25,
    CyclicVolumeU40,
    CyclicVolumeU65,
    CyclicVolumeU100,
    CyclicVolumeU160,
    PurgeEndShare,  // share of gas at the vent that ends a purge to gas
    // --- end of pipework
    // --- larger
    Up1aVolume,              // m3, most: scope of IGE/UP/1A
    Up1aPipe,                // mm nominal, most
    Up1aOperatingPressure,   // mbar, most
    Up1SupplyPressure,       // bar, maximum operating pressure, most: scope of IGE/UP/1
    ReadableWater,           // mbar: readable movement (GRM) of a water gauge to 120 mbar
    ReadableDense,           // gauge with fluid of 1.99 times water's density, to 200 mbar
    ReadableMercury,         // mercury to 1000 mbar
    ReadableOneDecimal,      // electronic, one decimal of a mbar, to 200 mbar
    ReadableTwoDecimals,     // two decimals, to 200 mbar
    ReadableOneDecimalWide,  // one decimal, above 200 to 2000 mbar
    ReadableNoDecimal,       // no decimal, to 20 bar
    LongestWater,            // min: longest tightness test on that gauge
    LongestDense,
    LongestMercury,
    LongestOneDecimal,
    LongestTwoDecimals,
    LongestOneDecimalWide,
    LongestNoDecimal,
    LargerLeastTime,       // min, least: tightness test of a larger installation
    TimeFactorGas,         // F1: minutes for a mbar and a m3, tested with the fuel gas
    TimeFactorAir,         // the same, tested with air or nitrogen
    TimeFactorRoom,        // times F1, a m3 of ventilated room (type B)
    TimeFactorLargeRoom,   // times F1, large ventilated room (type C)
    LeakFactorGas,         // F3: m3/h for a mbar, a m3 and a minute, tested with the fuel gas
    LeakFactorAir,         // the same, tested with air or nitrogen
    LeakNew,               // m3/h, most: new pipework
    LeakTypeA,             // m3/h, most: existing, inside, small or poorly ventilated
    LeakTypeB,             // m3/h for each m3 of ventilated room, most: existing
    LeakTypeC,             // m3/h, most: existing, large ventilated room
    LargeRoomLeast,        // m3, least: a ventilated room that counts as type C
    LeakOutside,           // m3/h, most: existing, in the open
    LeakBuried,            // m3/h, most: existing, buried
    LargerLetByShare,      // share of the operating pressure to let by from
    LargerLetByTime,       // min, least
    LargerSettleTime,      // min, least
    LargerTestShare,       // share of the operating pressure to test at
    StrengthIncidental,    // strength test: times the maximum incidental pressure
    StrengthLowBand,       // mbar: most operating pressure of the low band
    StrengthMiddleBand,    // bar: the same of the middle band
    StrengthOperatingLow,  // times the maximum operating pressure, low band
    StrengthOperatingMiddle,
    StrengthOperatingHigh,
    StrengthSettleLow,  // min, least
    StrengthSettleMiddle,
    StrengthSettleHigh,
    StrengthHoldLow,  // min, least
    StrengthHoldMiddle,
    StrengthHoldHigh,
    StrengthFallLow,  // share of the test pressure that it may fall by; nought: no readable fall
    StrengthFallMiddle,
    StrengthFallHigh,
    // --- end of larger
    // --- burner
    MeterAccuracy,     // %, half-width; how far a meter itself may be off
    TimingByHand,      // s, half-width; slip of the hand at the start and again at the stop
    MeteringFactor,    // metered volume to standard conditions, as on bills
    HeatInputOver,     // % above the plate, most
    HeatInputUnder,    // % below the plate, most
    InletPressure,     // range, mbar at the appliance, working
    BurnerPressure,    // range, mbar: the maker's alone
    MeterAverage,      // range, mbar at the meter outlet, average
    MeterAverageTime,  // s, least
    HotWaterOutput,    // kW, least: the maker's alone
    HotWaterFlow,      // l/min at the maker's rise, least: the maker's alone
    HeatBalance,       // range, hot water output over net heat input
    // --- end of burner
    // --- combustion
    CombustionRatioCondensing,           // ratio CO/CO2, most: condensing boilers where the maker gives none
    CombustionCarbonMonoxideCondensing,  // ppm, most: likewise
    CombustionRatioNonCondensing,        // ratio, most: the other boilers
    CombustionRatioWarmAir,              // warm-air heaters, circulators
    CombustionRatioBackBoiler,           // back boiler unit, its boiler
    CombustionRatioBackBoilerFire,       // back boiler unit, its fire
    CombustionRatioFire,                 // gas fires, open-flued space heaters
    CombustionRatioOpenFluedWater,       // water heaters
    CombustionRatioRoomSealedWater,
    CombustionRatioFluelessSpace,
    CombustionRatioFluelessWater,
    CombustionRatioOven,
    CombustionRatioGrill,
    CombustionRatioRangeCooker,
    CombustionRatioDryer,
    CombustionRatio,           // ratio, most: the maker's, whatever the appliance
    CombustionCarbonMonoxide,  // ppm, most: the maker's
    CombustionCarbonDioxide,   // range, per cent: the maker's
    AirInletOxygen,            // per cent, least at the air inlet
    AirInletCarbonDioxide,     // per cent, below which at the air inlet
    CombustionPlausibleGap,    // percentage points: how far O2 and CO2 may be from what the fuel allows
    // --- end of combustion
    // --- air
    VentAdventitiousInput,     // kW net: deducted once from the open-flued total
    VentOpenFluedPerKilowatt,  // cm2/kW
    VentScopeInput,            // kW net, most: the domestic standard's scope
    VentThroughWallFactor,     // times: vents through an inside wall
    VentTightPerKilowatt,      // cm2/kW in a tight dwelling: shipped empty
    VentSeveralGroups,         // how many groups' needs are added, greatest first
    VentDecorativeFire,        // cm2
    VentDecorativeInputMost,   // kW net, most
    VentFireInputWithout,      // kW net, most: fires that need no vent
    VentMakersArea,            // cm2: the appliance maker's; kept with the appliance
    VentOpenToRoomHigh,        // cm2/kW: compartments
    VentOpenToRoomLow,
    VentOpenOutsideHigh,
    VentOpenOutsideLow,
    VentSealedToRoomHigh,
    VentSealedToRoomLow,
    VentSealedOutsideHigh,
    VentSealedOutsideLow,
    VentCookerVolumeSmall,          // m3: below it the larger vent
    VentCookerVolumeMedium,         // m3: up to it the smaller vent
    VentCookerSmall,                // cm2
    VentCookerMedium,               // cm2
    VentCookerBedSit,               // m3, least
    VentCookerBasement,             // cm2: advised whatever the volume
    VentWaterHeaterInputMost,       // kW net, most
    VentWaterHeaterVolumeLeast,     // m3, least
    VentWaterHeaterVolumeMedium,    // m3: up to it the larger vent
    VentWaterHeaterVolumeLarge,     // m3: up to it the smaller vent
    VentWaterHeaterSmall,           // cm2
    VentWaterHeaterMedium,          // cm2
    VentHeaterWattsRoom,            // W/m3, most
    VentHeaterWattsInternal,        // W/m3, most
    VentHeaterBase,                 // cm2
    VentHeaterInputRoom,            // kW net covered by the first vent
    VentHeaterPerKilowattRoom,      // cm2/kW above it
    VentHeaterInputInternal,        // kW net covered by the first vent
    VentHeaterPerKilowattInternal,  // cm2/kW above it
    VentCabinetWattsRoom,           // W/m3, most
    VentCabinetWattsInternal,       // W/m3, most
    VentCabinetVolumeLeast,         // m3, more than
    VentCabinetPerKilowatt,         // cm2/kW, at high and at low level
    VentCabinetLeast,               // cm2, at high and at low level
    VentDryer,                      // cm2: shipped empty
    PlantInputMost,                 // kW net, most: scope of the standard for larger boilers
    PlantRoomLow,                   // cm2/kW, to outside
    PlantRoomHigh,                  // cm2/kW
    PlantEnclosureLowHalf,          // cm2/kW, used below half of the summer
    PlantEnclosureHighHalf,
    PlantEnclosureLowMost,  // half to three quarters
    PlantEnclosureHighMost,
    PlantEnclosureLowAll,  // more
    PlantEnclosureHighAll,
    PlantSummerMost,          // cm2/kW added at each level: half to three quarters
    PlantSummerAll,           // cm2/kW added at each level: more
    PlantTemperatureFloor,    // degrees C at 100 mm above the floor, most
    PlantTemperatureMiddle,   // at 1.5 m
    PlantTemperatureCeiling,  // at 100 mm below the ceiling
    RoomCoShortLimit,         // ppm, most: mean of 15 min at work
    RoomCoLongLimit,          // ppm, most: mean of 8 h at work
    RoomCoDangerFrom,         // ppm: any reading from here warns to leave
    RoomCoRaisedFrom,         // ppm: any reading from here warns to find the source
    RoomCoNoActionMost,       // ppm, most, steady: shipped empty
    RoomCoLeaveFrom,          // ppm: shipped empty
    RoomCoCookerPeakMost,     // ppm, most, short and falling: shipped empty
    RoomCoSampleHeight,       // m: shipped empty
    RoomCoSampleDistance,     // m, least, from the appliance: shipped empty
    RoomCoTimeFlued,          // least: shipped empty
    RoomCoTimeFlueless,       // least: shipped empty
    RoomCoBloodLimit,         // % carboxyhaemoglobin: for the warning
    // --- end of air
    // --- deadlines
    // --- end of deadlines
};

[[nodiscard]] std::string_view ruleText(Rule rule);
[[nodiscard]] std::optional<Rule> ruleFromText(std::string_view text);

struct Range {
    quantity::Decimal least;
    quantity::Decimal most;
    quantity::UnitCode unit = quantity::UnitCode::None;
    bool operator==(const Range&) const = default;
};

/// Volumes up to `upTo` (inclusive) may fall by `allowed`. In rising order.
struct Band {
    quantity::Decimal upTo;     // m3
    quantity::Decimal allowed;  // mbar in the test time
    bool operator==(const Band&) const = default;
};

/// A rule's value; monostate is "not known: for the firm to enter".
using Value = std::variant<std::monostate, quantity::Figure, Range, std::vector<Band>>;

/// How a measured value is held against the entry.
enum class Comparison { AtMost, Below, AtLeast, Within, Equals, AsGiven };

/// Which entry: one rule in one edition for one gas (none: whatever the gas).
struct RuleKey {
    Rule rule;
    Edition edition = Edition::General;
    std::optional<Gas> gas = std::nullopt;
    bool operator==(const RuleKey&) const = default;
};

struct Entry {
    RuleKey key;
    Value value;
    Comparison comparison = Comparison::AtMost;
    Provenance provenance = Provenance::Published;
    /// Where it stands: "IGEM/UP/1B Edition 3", with the clause where known. English, a proper name: not
    /// translated.
    std::string standard;
    std::string clause;
    /// Where it was read, and what is doubtful about it (facts/, in our own words; English source text).
    std::string source;
    std::string doubt;
    std::optional<calendar::Date> appliesFrom;
    std::optional<calendar::Date> appliesTo;
    /// Who of the firm confirmed or replaced it, when, from what; for Provenance::Firm.
    std::string confirmedBy;
    std::optional<calendar::Date> confirmedOn;
    std::string fromCopy = {};
    /// Shown in the set-up step because it decides daily work.
    bool daily = false;

    [[nodiscard]] bool isKnown() const { return !std::holds_alternative<std::monostate>(value); }
    bool operator==(const Entry&) const = default;
};

/// The entry's number in its own unit; nothing when it is empty or of another shape.
[[nodiscard]] std::optional<quantity::Figure> figureOf(const Entry& entry);
[[nodiscard]] std::optional<Range> rangeOf(const Entry& entry);

}  // namespace hearth::rulebook

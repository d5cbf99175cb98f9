// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/judging/worksheet.h"
#include "core/rulebook/rule_book.h"

#include <optional>
#include <string_view>
#include <vector>

namespace hearth::judging {

/// What is worked out on the way to a finding, each with words of its own (ui/words).
enum class Derived {
    // --- gas_rate
    GasFlow,
    HeatInputGross,
    HeatInputNet,
    TwoMinuteShortcut,
    TimeForTwoPercent,
    MeterCorrection,
    // --- end of gas_rate
    // --- pressures
    DropToAppliance,
    // --- end of pressures
    // --- combustion
    RatioHigh,
    RatioLow,
    LambdaExact,
    LambdaSimple,
    ExcessAir,
    ExcessAirSimple,
    ExcessAirLow,
    Co2FromOxygen,
    CoAirFree,
    CoAirFreeLow,
    CoAtThreePercent,
    CoMassNet,
    CoMassGross,
    SiegertLoss,
    SiegertEfficiency,
    DryGasLoss,
    WaterVapourLoss,
    UnburnedLoss,
    LossesEfficiency,
    FlueDewPoint,
    Recirculation,
    LatentCeiling,
    // --- end of combustion
    // --- hot_water
    HotWaterOutput,
    HotWaterExpectedFlow,
    HotWaterMakersFlowHere,
    HeatBalance,
    // --- end of hot_water
    // --- ventilation
    VentNeed,
    VentNeedHigh,
    VentNeedLow,
    VentThere,
    VentInput,
    // --- end of ventilation
    // --- room_co
    CoPeak,
    CoMeanAll,
    CoMeanQuarter,
    CoChange,
    CoMeanLong,
    // --- end of room_co
    // --- pipes
    VolumeWhole,
    DropWorst,
    VolumeTested,
    DropMeasured,
    CopperMore,
    // --- end of pipes
    // --- purge
    PurgeVolume,
    PurgeTime,
    PurgeFlowLeast,
    // --- end of purge
    // --- larger
    TestTimeNeeded,
    LargerLeak,
    StrengthPressureNeeded,
    // --- end of larger
    // --- gas
    GrossHeat,
    NetHeat,
    GrossPerMass,
    GrossOverNet,
    RelativeDensity,
    WobbeGross,
    WobbeNet,
    AirNeeded,
    DryProducts,
    WetProducts,
    Co2Max,
    StoichiometricDewPoint,
    CondensateGross,
    // --- end of gas
};
/// Every value, in order; for the test that each has its words.
[[nodiscard]] std::span<const Derived> allDerived();
/// Stable code: "gas_flow".
[[nodiscard]] std::string_view derivedText(Derived derived);

struct Worked {
    Derived what;
    quantity::Figure figure;
    std::optional<quantity::Figure> uncertainty;  // k = 2; absent: not stated
    std::string_view source;                      // where the formula stands: a proper name, not translated
};

/// Findings first; then the figures; then why something could not be worked out.
struct Answer {
    std::vector<Judged> findings;
    std::vector<Worked> figures;
    std::vector<rulebook::Sentence> notes;
    std::vector<Error> errors;
};

/// Pure: the same sheet and book give the same answer. Nothing passes by default: what is missing is said.
[[nodiscard]] Answer answer(const Worksheet& sheet, const rulebook::RuleBook& book);

}  // namespace hearth::judging

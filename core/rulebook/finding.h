// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/typed.h"
#include "core/rulebook/entry.h"
#include "core/rulebook/sentence.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace hearth::rulebook {

/// Always shown as word + shape + colour together.
enum class Outcome { Pass, Fail, LookAgain, NoVerdict };

[[nodiscard]] std::string_view outcomeText(Outcome outcome);  // "pass", "fail", "look_again", "no_verdict"
[[nodiscard]] std::optional<Outcome> outcomeFromText(std::string_view text);

/// The graver of two: fail, then no verdict, then look again, then pass.
[[nodiscard]] Outcome graver(Outcome a, Outcome b);

/// What was judged. The code (kindText) is what files hold; ui/words has its title.
enum class FindingKind {
    SafeToTouch,
    OpenEnds,
    SmellOnArrival,
    VisualInspection,
    Scope,
    Volume,
    EditionChoice,
    GaugeZero,
    GaugeCalibration,
    GaugeAccuracy,
    LetBy,
    Settling,
    TestPressure,
    TestTime,
    Tightness,
    IsolatedRetest,
    VolumeBands,
    DisplaysAgree,
    Purge,
    JointsProved,
    StandingPressure,
    WorkingPressure,
    // --- gas
    NetworkWobbe,
    NetworkDensity,
    HeatValueSeen,
    // --- end of gas
    // --- pipework
    PressureDropDesign,
    PressureDropMeasured,
    PurgeVolumeLarge,
    PurgeFlow,
    PurgeEnd,
    // --- end of pipework
    // --- larger
    StandardChoice,
    ReadableMovement,
    LongestTest,
    PermittedLeak,
    StrengthPressure,
    StrengthTimes,
    Strength,
    // --- end of larger
    // --- burner
    GasRate,
    HeatInput,
    InletDrop,
    InletPressure,
    BurnerPressure,
    MeterAverage,
    HotWater,
    HeatBalance,
    Regulation26,
    // --- end of burner
    // --- combustion
    CombustionRatioMaximum,
    CombustionRatioMinimum,
    CarbonMonoxideMaximum,
    CarbonMonoxideMinimum,
    CarbonDioxideMaximum,
    CarbonDioxideMinimum,
    Combustion,
    AirInletOxygen,
    AirInletCarbonDioxide,
    CombustionPlausible,
    CombustionPlausibleMinimum,
    RatioAgrees,
    // --- end of combustion
    // --- air
    VentScope,
    VentFreeArea,
    VentHighLevel,
    VentLowLevel,
    VentOpening,
    VentAllowed,
    VentSound,
    VentBasement,
    PlantTemperature,
    RoomCoBackground,
    RoomCoLevel,
    RoomCoShortMean,
    RoomCoLongMean,
    RoomCoSampling,
    RoomCoBlood,
    // --- end of air
    // --- deadlines
    CheckDue,
    CheckMade,
    // --- end of deadlines
    // --- competence
    EngineerCard,
    EngineerCategories,
    AnalyserCalibration,
    // --- end of competence
};
[[nodiscard]] std::string_view kindText(FindingKind kind);
[[nodiscard]] std::optional<FindingKind> kindFromText(std::string_view text);

/// What the rules say of a reading. Computed by pure functions; never passes by default.
struct Finding {
    FindingKind kind;
    Outcome outcome = Outcome::NoVerdict;
    std::optional<quantity::Figure> measured = {};
    std::optional<quantity::Figure> limit = {};
    Comparison comparison = Comparison::AtMost;
    /// Why, in one sentence.
    Sentence why = {};
    /// Further sentences: what it would be worth as a leak, what cooling explains, what to do next.
    std::vector<Sentence> notes = {};
    /// The entries that decided, as they were (value, edition, provenance); the first gave `limit`.
    std::vector<Entry> limits = {};

    bool operator==(const Finding&) const = default;
};

/// What an entry's provenance lets a comparison decide: published, firm and maker's entries decide; secondary
/// and memory fail beyond and "look again" within; common practice only advises ("look again" either
/// way).
[[nodiscard]] Outcome decide(bool within, Provenance provenance);

/// The one comparison of a measured value with a limit in the same unit. Binary fractions are forgiven one
/// part in 10^9 of the limit, far below any gauge's last digit, so that 20.70 - 20.50 is "at" 0.2 and not a
/// hair below it.
[[nodiscard]] bool holds(double measured, Comparison comparison, double limit);

}  // namespace hearth::rulebook

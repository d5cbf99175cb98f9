// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/quantity/units.h"

/// The catalogue of what can be entered on a visit. Defined once; the sheet, the store's rows, the record's required items,
/// export and import are built from it. Add an item at the end of its group, with its row in item.cpp and its words in
/// ui/words; its code never changes and is never reused.
namespace hearth::reg {

/// What an item belongs to. A visit has one visit subject and any number of the others.
enum class SubjectKind { Visit, Installation, Test, Appliance, Room, Situation };

enum class ItemKind { Number, Choice, YesNo, Text, LongText, Time, Date, Instrument };

enum class Item {
    // visit: who and where
    VisitReference,        // the customer's order number
    VisitPresent,          // who was there
    // visit: before you start
    SmellOnArrival,        // yes / no
    OpenEnds,              // none seen / found and sealed / found open / not looked at
    SafeToTouch,           // safe / voltage found / not done
    VisualInspection,      // sound / defects noted / not done
    VisualNotes,
    // test: what is tested
    TestEdition,           // ed3 / ed4
    TestWork,              // new / existing
    TestExtent,            // whole / part
    TestPartDescription,
    TestAppliances,        // connected, all off / isolated at their valves / none connected
    TestIsolatedWhat,      // what was open and shut: which valves, which appliances
    TestPilots,            // out / none fitted / left lit
    TestGauge,             // instrument
    TestGaugeZeroed,       // yes / no
    TestSmell,             // yes / no: smell of gas during the test
    TestVolumeTyped,       // m3: the volume from elsewhere (instead of the pipe list)
    // test: let-by
    LetByStart, LetByEnd, LetByStartedAt, LetByEndedAt,
    // test: settle
    SettleStart, SettleEnd, SettleStartedAt, SettleEndedAt,
    // test: tightness
    TightStart, TightEnd, TightStartedAt, TightEndedAt,
    SecondDisplayStart, SecondDisplayEnd,  // the same gauge read on another display
    LowPressureReason,     // why the test pressure could not be reached
    AssumedTemperatureChange,
    // test: the repeat with appliances isolated
    RetestStart, RetestEnd, RetestStartedAt, RetestEndedAt,
    // test: purge
    PurgeDone,             // yes / no / not needed
    PurgeMethod,           // open burner / ventilated place, no ignition source
    PurgeVolumePassed,     // m3 on the meter index
    PurgeSteadyFlame,      // at every appliance: yes / no
    // test: restore
    TestPointProved,       // yes / no: leak detection fluid
    DisturbedJointsProved, // yes / no / none disturbed
    FluidWiped,            // yes / no
    StandingPressure, WorkingPressure, WorkingLoad,
    // visit: hand-over
    VisitRemarks,
    SignedByEngineer,      // name as typed in place of a signature
    ReceivedBy,            // name
};

/// A choice: its stable code; ui/words has its label.
struct Choice {
    std::string_view code;
};

struct ItemInfo {
    Item item;
    std::string_view code;     // "test.tight_start"
    ItemKind kind;
    SubjectKind subject;
    quantity::UnitFamily units = quantity::UnitFamily::None;
    std::span<const Choice> choices = {};
};

[[nodiscard]] std::span<const ItemInfo> itemCatalogue();
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
}  // namespace choice

}  // namespace hearth::reg

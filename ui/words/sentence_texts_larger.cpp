// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <array>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

constexpr std::array kLarger{
    SayText{Say::StandardUp1b,
            QT_TRANSLATE_NOOP("Words", "IGEM/UP/1B applies: the installation lies within its scope.")},
    SayText{Say::StandardBeyondUp1,
            QT_TRANSLATE_NOOP("Words",
                              "The pressure of %1 is beyond the %2 of IGE/UP/1 too: no standard here covers "
                              "it. Ask the designer which one does.")},
    SayText{Say::ReadableMovementIs,
            QT_TRANSLATE_NOOP("Words", "Movements from %1 can be read on this gauge.")},
    SayText{Say::ReadableMovementNotTabled,
            QT_TRANSLATE_NOOP("Words",
                              "The table of readable movements has no gauge of this kind, range and "
                              "decimals. Use a gauge that it has, or correct what was said of this one.")},
    SayText{Say::LongestKept,
            QT_TRANSLATE_NOOP("Words", "The test needs %1; this gauge may be used for up to %2.")},
    SayText{Say::LongestBeyond, QT_TRANSLATE_NOOP("Words",
                                                  "The test needs %1, longer than the %2 that this gauge "
                                                  "allows. Split the installation or use a finer gauge.")},
    SayText{Say::LongestUnknown,
            QT_TRANSLATE_NOOP("Words",
                              "The test needs %1. How long a test on this gauge may be is not in the rule "
                              "book: enter it from your own copy of the standard.")},
    SayText{Say::AreaTypeUnknown,
            QT_TRANSLATE_NOOP("Words", "Say what kind of place the pipework runs through.")},
    SayText{Say::RoomVolumeUnknown,
            QT_TRANSLATE_NOOP("Words", "Enter the volume of the room: what may leak goes by it.")},
    SayText{Say::VentilationUnknown,
            QT_TRANSLATE_NOOP("Words", "Say whether the room is adequately ventilated.")},
    SayText{Say::RoomAsTypeA,
            QT_TRANSLATE_NOOP("Words",
                              "A room that is not adequately ventilated counts as type A, the strictest.")},
    SayText{Say::RoomCappedAsTypeC,
            QT_TRANSLATE_NOOP(
                "Words", "With %1 of room the figure for a large room is the stricter one and is used.")},
    SayText{Say::LargeRoomUnproved,
            QT_TRANSLATE_NOOP("Words",
                              "Which rooms count as type C is not in the rule book: enter the least volume "
                              "from your own copy of the standard. This room has %1.")},
    SayText{Say::LargeRoomTooSmall,
            QT_TRANSLATE_NOOP("Words",
                              "The room of %1 is smaller than the %2 from which it would count as type C.")},
    SayText{Say::TestMediumUnknown,
            QT_TRANSLATE_NOOP("Words", "Say whether the test was made with the fuel gas, air or nitrogen.")},
    SayText{Say::OperatingPressureUnknown,
            QT_TRANSLATE_NOOP("Words", "Enter the operating pressure: the pressure of the test goes by it.")},
    SayText{Say::PermittedLeakIs, QT_TRANSLATE_NOOP("Words", "Up to %1 may leak, with no smell of gas.")},
    SayText{Say::LeakWithin, QT_TRANSLATE_NOOP("Words", "The fall is worth a leak of %1; %2 is permitted.")},
    SayText{Say::LeakBeyond,
            QT_TRANSLATE_NOOP("Words", "The fall is worth a leak of %1, more than the %2 permitted.")},
    SayText{Say::LeakAtLimit, QT_TRANSLATE_NOOP("Words",
                                                "A leak of %1, give or take %3, is too near the permitted %2 "
                                                "to tell. Test for longer, or use a finer gauge.")},
    SayText{Say::SmallestLeakSeen,
            QT_TRANSLATE_NOOP("Words", "The smallest leak that this test could show is %1.")},
    SayText{Say::LetByFrom,
            QT_TRANSLATE_NOOP("Words", "Let by from %1; about half of the operating pressure is %2.")},
    SayText{Say::LetByNotBelow, QT_TRANSLATE_NOOP("Words",
                                                  "Let-by from %1 shows nothing: it must start well below "
                                                  "the operating pressure of %2. Repeat it.")},
    SayText{Say::StrengthPressureEnough, QT_TRANSLATE_NOOP("Words", "Held from %1; %2 is needed.")},
    SayText{Say::StrengthPressureLow,
            QT_TRANSLATE_NOOP("Words", "Held from %1; %2 is needed. Repeat the strength test.")},
    SayText{Say::StrengthBoth, QT_TRANSLATE_NOOP("Words",
                                                 "From the maximum incidental pressure %1 is needed, from "
                                                 "the maximum operating pressure %2: the higher decides.")},
    SayText{Say::IncidentalBelowOperating,
            QT_TRANSLATE_NOOP("Words",
                              "The maximum incidental pressure of %1 can't be below the maximum operating "
                              "pressure of %2. Correct them.")},
    SayText{Say::StrengthTimesKept,
            QT_TRANSLATE_NOOP("Words", "Settled for %1 and held for %2, long enough.")},
    SayText{Say::StrengthNoFall,
            QT_TRANSLATE_NOOP("Words", "No readable fall (change %1, readable from %2).")},
    SayText{Say::StrengthFellWithin, QT_TRANSLATE_NOOP("Words", "A fall of %1 is within the %2 allowed.")},
    SayText{
        Say::StrengthFell,
        QT_TRANSLATE_NOOP(
            "Words",
            "The pressure fell by %1 (%2 allowed). Find the leak or the weakness, put it right and repeat.")},
    SayText{
        Say::StrengthMediumWrong,
        QT_TRANSLATE_NOOP(
            "Words",
            "A strength test is made with air or nitrogen, never with fuel gas. Make safe and repeat it.")},
    SayText{Say::StrengthPartsOff,
            QT_TRANSLATE_NOOP(
                "Words", "Meters, regulators and valves not rated for the pressure: taken off or isolated.")},
    SayText{
        Say::StrengthPartsOn,
        QT_TRANSLATE_NOOP(
            "Words",
            "Take off or isolate meters, regulators and valves that are not rated for the test pressure.")},
};

}  // namespace

std::span<const SayText> largerTexts() {
    return kLarger;
}

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <QtGlobal>

#include <array>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

constexpr std::array kPipework{
    SayText{
        Say::PipeDropWithin,
        QT_TRANSLATE_NOOP(
            "Words",
            "The pressure drop to the end of section %4 is %1 (give or take %3), within the %2 allowed.")},
    SayText{
        Say::PipeDropNear,
        QT_TRANSLATE_NOOP(
            "Words",
            "The pressure drop to the end of section %4 is %1 (give or take %3), at or too near to the %2 "
            "allowed. Measure lengths and flows again, or take the larger pipe.")},
    SayText{
        Say::PipeDropBeyond,
        QT_TRANSLATE_NOOP(
            "Words",
            "The pressure drop to the end of section %4 is %1 (give or take %3), more than the %2 allowed. "
            "Enlarge the pipe, or feed the appliance another way.")},
    SayText{Say::PipeFlowUnknown,
            QT_TRANSLATE_NOOP(
                "Words",
                "No pressure drop can be worked out: the flow at the end of section %1, or of a pipe that "
                "it feeds, is missing. Enter the appliance's heat input; a capped end draws 0.")},
    SayText{
        Say::PipeSizeUnknown,
        QT_TRANSLATE_NOOP(
            "Words",
            "No pressure drop can be worked out: the tube of section %1 is not said or has no known bore.")},
    SayText{Say::PipeLengthUnknown,
            QT_TRANSLATE_NOOP(
                "Words",
                "No pressure drop can be worked out: the length of section %1 is missing or can't be used.")},
    SayText{Say::PipeFittingUnknown,
            QT_TRANSLATE_NOOP(
                "Words",
                "No pressure drop can be worked out: the rule book has no equivalent length "
                "for a fitting of section %1. Type what its fittings are worth in metres of pipe.")},
    SayText{Say::PipeOutsideLaw,
            QT_TRANSLATE_NOOP("Words",
                              "No pressure drop can be worked out: flow and size of section %1 "
                              "lie outside what the formula is good for. Check both.")},
    SayText{Say::PipeGasUnknown, QT_TRANSLATE_NOOP("Words",
                                                   "No pressure drop can be worked out: the density and "
                                                   "viscosity of this gas are not known. Enter them.")},
    SayText{Say::PipeFittingsBy,
            QT_TRANSLATE_NOOP("Words", "Fittings are counted with the equivalent lengths of %1.")},
    SayText{Say::PipeFittingsTyped,
            QT_TRANSLATE_NOOP("Words", "Fittings are counted with equivalent lengths that were typed in.")},
    SayText{Say::PipeMarginTaken,
            QT_TRANSLATE_NOOP("Words",
                              "The rule book has no pipe efficiency: the pipe is taken to pass only %1 of "
                              "what the formula for smooth pipe gives.")},
    SayText{Say::PipeWorstSection, QT_TRANSLATE_NOOP("Words", "Most is lost in section %1: %2.")},
    SayText{Say::PipeDropLeast,
            QT_TRANSLATE_NOOP(
                "Words",
                "Without the fittings of section %3, the pressure drop to the end of section %4 is at "
                "least %1; %2 is allowed. Say what fittings it has, or none.")},
    SayText{Say::PipeOrderUnclear,
            QT_TRANSLATE_NOOP("Words",
                              "No pressure drop can be worked out: which pipe goes on from which is not "
                              "clear. Put right the column that says so.")},
    SayText{
        Say::PipeFittingsUnsaid,
        QT_TRANSLATE_NOOP(
            "Words", "The fittings of section %1 are not said or can't be read: the drop is at least this.")},
    SayText{Say::PipeEnlarge, QT_TRANSLATE_NOOP("Words", "Change section %1 from %2 to %3.")},
    SayText{Say::PurgeFlowEnough, QT_TRANSLATE_NOOP("Words", "A purge flow of %1 reaches the least of %2.")},
    SayText{Say::PurgeFlowNear,
            QT_TRANSLATE_NOOP("Words",
                              "A purge flow of %1 is at, or too near to tell from, the least of %2. Open the "
                              "vent or the burner further and read again.")},
    SayText{Say::PurgeFlowLow,
            QT_TRANSLATE_NOOP("Words",
                              "A purge flow of %1 is below the least of %2: gas and air may mix in the pipe "
                              "instead of one pushing the other out. Purge again, faster.")},
    SayText{Say::PurgeTimeNeeded, QT_TRANSLATE_NOOP("Words", "At %2 the purge takes at least %1.")},
    SayText{Say::PurgeEndReached, QT_TRANSLATE_NOOP("Words", "Gas at the vent is %1; the purge ends at %2.")},
    SayText{
        Say::PurgeEndNear,
        QT_TRANSLATE_NOOP(
            "Words",
            "Gas at the vent is %1, at or too near to the %2 that ends the purge. Purge on and read again.")},
    SayText{Say::PurgeEndShort,
            QT_TRANSLATE_NOOP("Words", "Gas at the vent is only %1; purge on until it reaches %2.")},
    SayText{
        Say::PurgeCyclicUnknown,
        QT_TRANSLATE_NOOP("Words", "The meter's cyclic volume is not known. Read it off the meter's plate.")},
    SayText{Say::PurgeCyclicFromBook,
            QT_TRANSLATE_NOOP(
                "Words",
                "The meter's cyclic volume is taken as %1; the figure on its plate stands before this.")},
    SayText{
        Say::PurgeSizeUnknown,
        QT_TRANSLATE_NOOP(
            "Words",
            "The least purge flow is not known: the largest pipe is not said, or lies outside the table.")},
};

}  // namespace

std::span<const SayText> pipeworkTexts() {
    return kPipework;
}

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <QtGlobal>

#include <array>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

// What the office and the engineer are warned of before the work.
constexpr std::array kCompetence{
    SayText{Say::CardDateUnknown,
            QT_TRANSLATE_NOOP(
                "Words",
                "The day on which the card of %1 runs out is not kept. Enter it under Firm, from the card.")},
    SayText{Say::CardRunOut,
            QT_TRANSLATE_NOOP("Words",
                              "The card of %1 ran out on %2. Whose registration has run out may not work on "
                              "gas: enter the new card under Firm, or send somebody else.")},
    SayText{Say::CategoriesNotKept,
            QT_TRANSLATE_NOOP(
                "Words",
                "No categories of work are kept for %1. Enter them under Firm, from the back of the card.")},
    SayText{Say::CategoryNotHeld,
            QT_TRANSLATE_NOOP("Words",
                              "None of the engineer's categories is known to cover this: the usual one is "
                              "%1. Look at the back of the card before you work.")},
    SayText{Say::CategoryDateUnknown,
            QT_TRANSLATE_NOOP("Words",
                              "The day on which the category %1 runs out is not kept. Enter it under Firm.")},
    SayText{Say::CategoryRunOut,
            QT_TRANSLATE_NOOP("Words",
                              "The category %1 ran out on %2. Do not work on this until it is renewed.")},
    SayText{Say::AnalyserDateUnknown,
            QT_TRANSLATE_NOOP(
                "Words", "No calibration date is kept for this analyser. Enter it under Firm, instruments.")},
    SayText{Say::AnalyserRunOut,
            QT_TRANSLATE_NOOP(
                "Words", "The analyser's calibration ran out on %1. Read again with one in calibration.")},
    SayText{Say::CategoryUnknown,
            QT_TRANSLATE_NOOP("Words",
                              "Which category covers this kind of appliance is not known here. Look at the "
                              "back of the card before you work.")},
    SayText{
        Say::CardWillRunOut,
        QT_TRANSLATE_NOOP("Words",
                          "The card of %1 will have run out on %2, before that day. Whose registration has "
                          "run out may not work on gas: enter the new card under Firm once it is there, or "
                          "send somebody else.")},
    SayText{
        Say::CategoryWillRunOut,
        QT_TRANSLATE_NOOP("Words",
                          "The category %1 will have run out on %2, before that day. It has to be renewed "
                          "before this is worked on.")},
};

}  // namespace

std::span<const SayText> competenceTexts() {
    return kCompetence;
}

}  // namespace hearth::ui::words

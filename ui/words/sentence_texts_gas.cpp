// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <QtGlobal>

#include <array>

namespace hearth::ui::words {

namespace {

constexpr std::array kGas{
    SayText{
        rulebook::Say::NetworkWobbeGood,
        QT_TRANSLATE_NOOP("Words", "The Wobbe index, %1, lies within what a network may deliver: %2 to %3.")},
    SayText{rulebook::Say::NetworkWobbeLow,
            QT_TRANSLATE_NOOP(
                "Words",
                "The Wobbe index, %1, is lower than a network may deliver (%2). Check the figure and "
                "its unit; if it stands, tell the gas transporter.")},
    SayText{rulebook::Say::NetworkWobbeHigh,
            QT_TRANSLATE_NOOP(
                "Words",
                "The Wobbe index, %1, is higher than a network may deliver (%2). Check the figure and "
                "its unit; if it stands, tell the gas transporter.")},
    SayText{
        rulebook::Say::NetworkDensityGood,
        QT_TRANSLATE_NOOP("Words", "The relative density, %1, is no more than a network may deliver: %2.")},
    SayText{rulebook::Say::NetworkDensityHigh,
            QT_TRANSLATE_NOOP(
                "Words",
                "The relative density, %1, is higher than a network may deliver (%2). Check the figure; "
                "if it stands, tell the gas transporter.")},
    SayText{rulebook::Say::NetworkOtherGas,
            QT_TRANSLATE_NOOP("Words", "The limits of network gas are for natural gas; this gas is %1.")},
    SayText{rulebook::Say::HeatValueUsual,
            QT_TRANSLATE_NOOP("Words",
                              "The calorific value, %1, is a usual one: networks are seen at %2 to %3.")},
    SayText{rulebook::Say::HeatValueUnusual,
            QT_TRANSLATE_NOOP(
                "Words",
                "The calorific value, %1, is unusual: networks are seen at %2 to %3. Check figure and "
                "unit against the bill.")},
    SayText{rulebook::Say::NetworkAtLimit,
            QT_TRANSLATE_NOOP("Words",
                              "%1 is too near the limit of %2 to tell. Get the figure with more decimals.")},
};

}  // namespace

std::span<const SayText> gasTexts() {
    return kGas;
}

}  // namespace hearth::ui::words

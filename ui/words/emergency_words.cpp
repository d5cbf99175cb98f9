// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/text_table.h"
#include "ui/words/words.h"

#include <QStringList>

#include <optional>

namespace hearth::ui::words {

namespace {

using reg::Country;
using rulebook::Gas;
using Emergency = Words::Emergency;

/// Whom to ring: a number, by country and gas. Where none is known here nothing is invented: the number
/// stands on the meter, the cylinder or the tank.
struct Number {
    Country country;
    Gas gas;
    const char* number;
};
// Great Britain's gas emergency service for natural gas: as published by the GB gas register (gas appliance
// warning labels) and others. None read for Northern Ireland; LPG is its supplier's.
constexpr std::array kNumbers{
    Number{Country::England, Gas::NaturalGas, "0800 111 999"},
    Number{Country::Wales, Gas::NaturalGas, "0800 111 999"},
    Number{Country::Scotland, Gas::NaturalGas, "0800 111 999"},
};

bool isLpg(Gas gas) {
    return gas == Gas::Propane || gas == Gas::Butane || gas == Gas::LpgAir;
}

/// "0800 111 999 (gas emergency service)" or where the number is to be found, as a part of a sentence.
QString number(const Words& words, Gas gas, Country country) {
    for (const auto& known : kNumbers) {
        if (known.country == country && known.gas == gas) {
            return words.say(QT_TRANSLATE_NOOP("Words", "%1 (gas emergency service)"),
                             {QString::fromUtf8(known.number)});
        }
    }
    return isLpg(gas) ? words.say(QT_TRANSLATE_NOOP(
                            "Words", "the LPG supplier's emergency number, on the cylinder or tank"))
                      : words.say(QT_TRANSLATE_NOOP(
                            "Words", "the gas emergency number on the meter or your supplier's bill"));
}

QString shortNumber(const Words& words, Gas gas, Country country) {
    for (const auto& known : kNumbers) {
        if (known.country == country && known.gas == gas) {
            return QString::fromUtf8(known.number);
        }
    }
    return isLpg(gas) ? words.say(QT_TRANSLATE_NOOP("Words", "the LPG supplier's number"))
                      : words.say(QT_TRANSLATE_NOOP("Words", "the number on the meter"));
}

QString closeValve(const Words& words, Gas gas) {
    if (gas == Gas::NaturalGas) {
        return words.say(QT_TRANSLATE_NOOP(
            "Words", "Close the emergency control valve at the meter, if you can reach it safely."));
    }
    if (gas == Gas::LpgAir) {
        return words.say(
            QT_TRANSLATE_NOOP("Words", "Close the emergency control valve, if you can reach it safely."));
    }
    return words.say(
        QT_TRANSLATE_NOOP("Words", "Close the valve on the cylinder or tank, if you can reach it safely."));
}

QStringList escapeSteps(const Words& words, Gas gas, Country country) {
    QStringList steps{
        words.say(QT_TRANSLATE_NOOP(
            "Words",
            "No flames, no smoking. Switch nothing on or off: no light, no bell, no telephone inside.")),
        closeValve(words, gas),
        words.say(QT_TRANSLATE_NOOP("Words", "Open doors and windows on the way out. Get everybody out.")),
    };
    if (isLpg(gas)) {
        steps << words.say(
            QT_TRANSLATE_NOOP("Words", "LPG sinks: keep out of cellars, drains and low places."));
    } else {
        steps << words.say(QT_TRANSLATE_NOOP(
            "Words", "Never enter a cellar that smells of gas, not even to reach the valve."));
    }
    steps << words.say(QT_TRANSLATE_NOOP("Words", "From outside and away from the building, ring %1."),
                       {number(words, gas, country)});
    steps << words.say(QT_TRANSLATE_NOOP(
        "Words", "Keep everybody out until it has been made safe. Fire or injury: ring 999."));
    return steps;
}

QStringList failedTestSteps(const Words& words, Gas gas, Country country) {
    return {
        words.say(QT_TRANSLATE_NOOP("Words", "Keep the gas off.")),
        words.say(
            QT_TRANSLATE_NOOP("Words", "Trace the leak and repair it, then test again from the start.")),
        words.say(QT_TRANSLATE_NOOP(
            "Words",
            "If it can't be repaired now, make safe: isolate or disconnect what leaks and seal the ends with "
            "proper fittings.")),
        words.say(QT_TRANSLATE_NOOP(
            "Words", "Tell the responsible person, in writing, that the gas stays off and why.")),
        words.say(
            QT_TRANSLATE_NOOP(
                "Words",
                "Only for a fault of the network or supply itself, or where it can't be made safe, ring %1."),
            {number(words, gas, country)}),
        words.say(QT_TRANSLATE_NOOP("Words", "Any smell of gas: do as for an escape instead.")),
    };
}

QStringList carbonMonoxideSteps(const Words& words, Gas gas, Country country) {
    return {
        words.say(QT_TRANSLATE_NOOP("Words", "Get everybody out into fresh air.")),
        words.say(QT_TRANSLATE_NOOP("Words", "Turn the appliances off, if you need not stay to do it.")),
        words.say(QT_TRANSLATE_NOOP("Words", "Open doors and windows.")),
        words.say(QT_TRANSLATE_NOOP(
            "Words",
            "Anyone unwell needs medical help at once: ring 999 and say that carbon monoxide is suspected.")),
        words.say(QT_TRANSLATE_NOOP("Words", "Then ring %1."), {number(words, gas, country)}),
        words.say(QT_TRANSLATE_NOOP(
            "Words",
            "Nobody goes back in, and nothing is used, until a competent engineer has found the cause.")),
    };
}

constexpr std::array kEmergencyTitles{
    Text<Emergency>{Emergency::SmellOrEscape, QT_TRANSLATE_NOOP("Words", "Smell of gas, or an escape")},
    Text<Emergency>{Emergency::FailedTest,
                    QT_TRANSLATE_NOOP("Words", "The test failed, and there is no smell")},
    Text<Emergency>{Emergency::CarbonMonoxide,
                    QT_TRANSLATE_NOOP("Words", "Carbon monoxide or fumes in a room")},
};

}  // namespace

QString Words::emergencyTitle(Emergency emergency) const {
    return say(textOf(kEmergencyTitles, emergency));
}

QStringList Words::emergencySteps(Emergency emergency, Gas gas, Country country) const {
    switch (emergency) {
        case Emergency::SmellOrEscape:
            return escapeSteps(*this, gas, country);
        case Emergency::FailedTest:
            return failedTestSteps(*this, gas, country);
        case Emergency::CarbonMonoxide:
            break;
    }
    return carbonMonoxideSteps(*this, gas, country);
}

QString Words::caution(Gas gas, Country country) const {
    const bool cylinder = gas == Gas::Propane || gas == Gas::Butane;
    return say(
        cylinder
            ? QT_TRANSLATE_NOOP(
                  "Words",
                  "For competent, registered engineers; the standard and the maker's instructions come "
                  "first. "
                  "Smell of gas: no flames, no switches; close the cylinder or tank; open up; out; ring %1.")
            : QT_TRANSLATE_NOOP(
                  "Words",
                  "For competent, registered engineers; the standard and the maker's instructions come "
                  "first. "
                  "Smell of gas: no flames, no switches; close the control valve; open up; out; ring %1."),
        {shortNumber(*this, gas, country)});
}

}  // namespace hearth::ui::words

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/emergency.h"
#include "ui/words/text_table.h"
#include "ui/words/words.h"

#include <QStringList>

#include <vector>

namespace hearth::ui::words {

namespace {

using reg::Country;
using rulebook::Gas;
using Emergency = Words::Emergency;

using reg::isLpg;
using Contacts = std::vector<reg::EmergencyContact>;

/// Where the number is to be found where none is known here: nothing is invented.
QString whereNumberStands(const Words& words, Gas gas) {
    return isLpg(gas) ? words.say(QT_TRANSLATE_NOOP(
                            "Words", "the LPG supplier's emergency number, on the cylinder or tank"))
                      : words.say(QT_TRANSLATE_NOOP(
                            "Words", "the gas emergency number on the meter or your supplier's bill"));
}

QString withName(const Words& words, const reg::EmergencyLine& line) {
    if (line.ofNetwork) {
        return words.say(QT_TRANSLATE_NOOP("Words", "%1 (gas emergency service)"), {qstring(line.number)});
    }
    return line.name.empty() ? qstring(line.number)
                             : QStringLiteral("%1 (%2)").arg(qstring(line.number), qstring(line.name));
}

/// "0800 111 999 (gas emergency service)", with the firm's own number after it, or where the number is to be
/// found; as a part of a sentence. The number on the cylinder, tank or meter is named beside the firm's
/// wherever the network's is not known: a firm has several suppliers, and each tank names its own.
QString number(const Words& words, Gas gas, Country country, const Contacts& contacts) {
    const auto lines = reg::linesToRing(contacts, country, gas);
    if (lines.empty()) {
        return whereNumberStands(words, gas);
    }
    const QString first = withName(words, lines.front());
    if (!lines.front().ofNetwork) {
        return isLpg(gas)
                   ? words.say(QT_TRANSLATE_NOOP(
                                   "Words", "%1, or the number on the cylinder or tank where it is another"),
                               {first})
                   : words.say(
                         QT_TRANSLATE_NOOP(
                             "Words", "%1, or the gas emergency number on the meter where it is another"),
                         {first});
    }
    return lines.size() == 1 ? first
                             : words.say(QT_TRANSLATE_NOOP("Words", "%1 first, and after that %2"),
                                         {first, withName(words, lines.back())});
}

QString shortNumber(const Words& words, Gas gas, Country country, const Contacts& contacts) {
    const auto lines = reg::linesToRing(contacts, country, gas);
    if (lines.empty()) {
        return isLpg(gas) ? words.say(QT_TRANSLATE_NOOP("Words", "the LPG supplier's number"))
                          : words.say(QT_TRANSLATE_NOOP("Words", "the number on the meter"));
    }
    const QString first = qstring(lines.front().number);
    if (!lines.front().ofNetwork) {
        return isLpg(gas) ? words.say(QT_TRANSLATE_NOOP("Words", "%1 or the number on the tank"), {first})
                          : words.say(QT_TRANSLATE_NOOP("Words", "%1 or the number on the meter"), {first});
    }
    return lines.size() == 1
               ? first
               : words.say(QT_TRANSLATE_NOOP("Words", "%1, then %2"), {first, qstring(lines.back().number)});
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

QStringList escapeSteps(const Words& words, Gas gas, const QString& number) {
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
                       {number});
    steps << words.say(QT_TRANSLATE_NOOP(
        "Words", "Keep everybody out until it has been made safe. Fire or injury: ring 999."));
    return steps;
}

QStringList failedTestSteps(const Words& words, const QString& number) {
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
            {number}),
        words.say(QT_TRANSLATE_NOOP("Words", "Any smell of gas: do as for an escape instead.")),
    };
}

QStringList carbonMonoxideSteps(const Words& words, const QString& number) {
    return {
        words.say(QT_TRANSLATE_NOOP("Words", "Get everybody out into fresh air.")),
        words.say(QT_TRANSLATE_NOOP("Words", "Turn the appliances off, if you need not stay to do it.")),
        words.say(QT_TRANSLATE_NOOP("Words", "Open doors and windows.")),
        words.say(QT_TRANSLATE_NOOP(
            "Words",
            "Anyone unwell needs medical help at once: ring 999 and say that carbon monoxide is suspected.")),
        words.say(QT_TRANSLATE_NOOP("Words", "Then ring %1."), {number}),
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

QString Words::whomToRing(Gas gas, Country country, const Contacts& contacts) const {
    return number(*this, gas, country, contacts);
}

QStringList Words::emergencySteps(Emergency emergency, Gas gas, Country country,
                                  const Contacts& contacts) const {
    const QString toRing = number(*this, gas, country, contacts);
    switch (emergency) {
        case Emergency::SmellOrEscape:
            return escapeSteps(*this, gas, toRing);
        case Emergency::FailedTest:
            return failedTestSteps(*this, toRing);
        case Emergency::CarbonMonoxide:
            break;
    }
    return carbonMonoxideSteps(*this, toRing);
}

QString Words::caution(Gas gas, Country country, const Contacts& contacts) const {
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
        {shortNumber(*this, gas, country, contacts)});
}

}  // namespace hearth::ui::words

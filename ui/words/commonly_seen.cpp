// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/commonly_seen.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace hearth::ui::words {

namespace {

using Sure = SeenConfidence;

constexpr std::array kCommonlySeen{
    CommonlySeen{QT_TRANSLATE_NOOP(
                     "Words", "Gas escape, smell of gas, or a tightness test that fails beyond its limit"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous"),
                 QT_TRANSLATE_NOOP("Words", "yes, if it is workmanship"), Sure::Published},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Flued appliance spilling products into the room"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous"), QT_TRANSLATE_NOOP("Words", "yes"),
                 Sure::Published},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Flueless appliance burning badly: soot, high CO or ratio"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous"), QT_TRANSLATE_NOOP("Words", "possibly"),
                 Sure::Published},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Open-ended live pipe without isolation"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous"), QT_TRANSLATE_NOOP("Words", "yes"),
                 Sure::High},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Pipe isolated by a valve only, not sealed with a fitting"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "New appliance not commissioned"),
                 QT_TRANSLATE_NOOP("Words", "disconnect and seal it"), QT_TRANSLATE_NOOP("Words", "no"),
                 Sure::Published},
    CommonlySeen{
        QT_TRANSLATE_NOOP("Words", "Flue disconnected, or ending inside a room or void, products entering"),
        QT_TRANSLATE_NOOP("Words", "immediately dangerous"), QT_TRANSLATE_NOOP("Words", "yes"), Sure::High},
    CommonlySeen{
        QT_TRANSLATE_NOOP(
            "Words",
            "Concealed fanned room-sealed flue without hatches that cannot be inspected, no other signs"),
        QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "no"), Sure::Published},
    CommonlySeen{QT_TRANSLATE_NOOP(
                     "Words", "Concealed flue without hatches, with signs of leakage or unsafe combustion"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous"), QT_TRANSLATE_NOOP("Words", "yes"),
                 Sure::High},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Positive-pressure room-sealed case not sealed"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous"),
                 QT_TRANSLATE_NOOP("Words", "yes, if it is servicing"), Sure::High},
    CommonlySeen{
        QT_TRANSLATE_NOOP("Words", "Case seal defect on a negative-pressure appliance, no products entering"),
        QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP(
                     "Words", "Open-flued appliance without permanent ventilation, spillage test passes"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Permanent vent that can be closed, or is obstructed"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Vent area slightly short, no spillage"),
                 QT_TRANSLATE_NOOP("Words", "advise in writing"), QT_TRANSLATE_NOOP("Words", "no"),
                 Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Spillage only with the extract fan running or a door open"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous, or at risk once the fan is disabled"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Low},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Flueless water heater in a bathroom or shower room"),
                 QT_TRANSLATE_NOOP("Words", "at risk; immediately dangerous where products are evident"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Low},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Open-flued appliance in a bathroom or shower room (after 1984)"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP(
                     "Words", "Open-flued heater beyond the limit in a bedroom without a vitiation device"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Flame-supervision device not working"),
                 QT_TRANSLATE_NOOP("Words", "at risk; immediately dangerous where gas comes out unburnt"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Vitiation or spillage safety device bridged or missing"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous or at risk, by its effect"),
                 QT_TRANSLATE_NOOP("Words", "yes"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Water-heating appliance without effective pressure relief"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"),
                 Sure::Published},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Appliance burning the wrong gas, or with the wrong injector"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous"), QT_TRANSLATE_NOOP("Words", "yes"),
                 Sure::High},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Gross over-pressure at the regulator"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous, and the emergency service"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Low inlet pressure, appliance performing correctly"),
                 QT_TRANSLATE_NOOP("Words", "advise in writing, else by its effect"),
                 QT_TRANSLATE_NOOP("Words", "no"), Sure::Published},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Emergency control valve absent, inoperable or out of reach"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Emergency control valve handle missing, or falling to open"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "no"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "No emergency label or no line diagram at the meter"),
                 QT_TRANSLATE_NOOP("Words", "advise in writing"), QT_TRANSLATE_NOOP("Words", "no"),
                 Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Unsleeved pipe through a wall or void, no damage"),
                 QT_TRANSLATE_NOOP("Words", "advise in writing, or at risk by the risk"),
                 QT_TRANSLATE_NOOP("Words", "no"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Pipe in an unventilated void"),
                 QT_TRANSLATE_NOOP("Words", "at risk, or advise in writing"),
                 QT_TRANSLATE_NOOP("Words", "no"), Sure::Low},
    CommonlySeen{
        QT_TRANSLATE_NOOP(
            "Words",
            "Unsuitable material: garden hose, exposed plastic pipe indoors, push-fit water fittings"),
        QT_TRANSLATE_NOOP("Words", "immediately dangerous (hose); at risk (plastic pipe)"),
        QT_TRANSLATE_NOOP("Words", "yes"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Main bonding absent"),
                 QT_TRANSLATE_NOOP("Words", "no class of its own: advise in writing"),
                 QT_TRANSLATE_NOOP("Words", "no"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Cooker unstable, without chain or bracket"),
                 QT_TRANSLATE_NOOP("Words", "at risk where it can tip, else advise in writing"),
                 QT_TRANSLATE_NOOP("Words", "no"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Hob too near combustible material, charring"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous; at risk without heat damage"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{
        QT_TRANSLATE_NOOP("Words", "Terminal under an opening or near a boundary, products coming back in"),
        QT_TRANSLATE_NOOP("Words", "immediately dangerous; at risk where that is not proven"),
        QT_TRANSLATE_NOOP("Words", "yes"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Flue terminal damaged or blocked, no products entering"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Gas fire's closure plate unsealed, or catchment void blocked"),
                 QT_TRANSLATE_NOOP("Words", "at risk; immediately dangerous where it spills"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Chimney unlined or unswept, flue flow test fails"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous or at risk"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{
        QT_TRANSLATE_NOOP("Words", "Redundant back boiler left sealed with a solid-fuel fire in use"),
        QT_TRANSLATE_NOOP("Words", "immediately dangerous or at risk"),
        QT_TRANSLATE_NOOP("Words", "not known"), Sure::Low},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "LPG cylinders below ground, near a drain or indoors"),
                 QT_TRANSLATE_NOOP("Words", "at risk; immediately dangerous where they leak"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "LPG heater in a cellar or basement"),
                 QT_TRANSLATE_NOOP("Words", "at risk"), QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "LPG hose perished or expired, no leak"),
                 QT_TRANSLATE_NOOP("Words", "at risk, or advise in writing"),
                 QT_TRANSLATE_NOOP("Words", "no"), Sure::Low},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Condensate trap dry, products from the drain"),
                 QT_TRANSLATE_NOOP("Words", "immediately dangerous or at risk"),
                 QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{
        QT_TRANSLATE_NOOP(
            "Words", "Catering: gas on with the extract off, no interlock, CO2 beyond the level for at risk"),
        QT_TRANSLATE_NOOP("Words", "at risk; immediately dangerous at the higher level"),
        QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Medium},
    CommonlySeen{
        QT_TRANSLATE_NOOP("Words", "CO alarm sounded, cause not found after the checks"),
        QT_TRANSLATE_NOOP("Words", "immediately dangerous: leave it disconnected, call in a specialist"),
        QT_TRANSLATE_NOOP("Words", "possibly"), Sure::Published},
    CommonlySeen{QT_TRANSLATE_NOOP("Words", "Suspected theft of gas, meter tampered with"),
                 QT_TRANSLATE_NOOP("Words", "report it; the class goes by its condition"),
                 QT_TRANSLATE_NOOP("Words", "no"), Sure::High},
};

QString seenWord(const char* text) {
    return QCoreApplication::translate("Words", text);
}

QString confidenceWord(Sure confidence) {
    switch (confidence) {
        case Sure::Published:
            return seenWord(QT_TRANSLATE_NOOP("Words", "published"));
        case Sure::High:
            return seenWord(QT_TRANSLATE_NOOP("Words", "from memory, fairly sure"));
        case Sure::Medium:
            return seenWord(QT_TRANSLATE_NOOP("Words", "from memory, less sure"));
        case Sure::Low:
            break;
    }
    return seenWord(QT_TRANSLATE_NOOP("Words", "from memory, doubtful"));
}

/// Of a word its first letters, so that "spills" meets "spilling"; short words say nothing.
QStringList stems(const QString& text) {
    constexpr qsizetype kLeast = 4;
    constexpr qsizetype kStem = 5;
    QStringList found;
    QString word;
    for (const QChar letter : text + u' ') {
        if (letter.isLetterOrNumber()) {
            word += letter.toLower();
            continue;
        }
        if (word.size() >= kLeast || word == QStringLiteral("co") || word == QStringLiteral("lpg")) {
            found << word.left(kStem);
        }
        word.clear();
    }
    found.removeDuplicates();
    return found;
}

}  // namespace

std::span<const CommonlySeen> commonlySeen() {
    return kCommonlySeen;
}

QString commonlySeenText(const CommonlySeen& line) {
    return seenWord(QT_TRANSLATE_NOOP("Words", "%1: %2. To be reported: %3 (%4)."))
        .arg(seenWord(line.what), seenWord(line.usual), seenWord(line.reportable),
             confidenceWord(line.confidence));
}

std::vector<const CommonlySeen*> commonlySeenLike(const QString& typed, std::size_t most) {
    const QStringList wanted = stems(typed);
    std::vector<std::pair<int, const CommonlySeen*>> found;
    for (const CommonlySeen& line : kCommonlySeen) {
        const QStringList has = stems(seenWord(line.what));
        const auto shared = std::count_if(wanted.begin(), wanted.end(),
                                          [&](const QString& stem) { return has.contains(stem); });
        if (shared > 0) {
            found.emplace_back(static_cast<int>(shared), &line);
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<const CommonlySeen*> lines;
    for (const auto& [shared, line] : found) {
        if (lines.size() < most) {
            lines.push_back(line);
        }
    }
    return lines;
}

}  // namespace hearth::ui::words

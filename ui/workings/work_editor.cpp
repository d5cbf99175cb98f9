// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/work_editor.h"

#include "core/pipework/tube.h"
#include "ui/input/item_editor.h"
#include "ui/shell/kit.h"

#include <QCoreApplication>
#include <QFontMetrics>

#include <algorithm>
#include <optional>

namespace hearth::ui::workings {

using input::ChoiceItem;
using quantity::UnitCode;
using reg::Item;
using reg::ItemKind;

namespace {

constexpr int kMostOfButtons = 520;  // they stand in two lines in the smallest window
constexpr int kNumberField = 96;
constexpr int kDateField = 132;
constexpr int kTubeField = 168;
constexpr int kTextField = 204;
constexpr int kMostOfList = 240;
constexpr int kMostOfLabel = 240;  // longer ones wrap
constexpr int kSegmentPad = 40;    // of a button around its words, with the gap after it

bool isTube(Item item) {
    return item == Item::SectionTube;
}

bool isMeter(Item item) {
    return item == Item::PurgeMeter;
}

std::vector<ChoiceItem> tubeChoices(const words::Words& words) {
    std::vector<ChoiceItem> choices;
    for (const pipework::Tube& tube : pipework::tubes()) {
        choices.push_back({shell::coded(tube.code), words.tube(tube)});
    }
    return choices;
}

std::vector<ChoiceItem> meterChoices(const words::Words& words) {
    std::vector<ChoiceItem> choices;
    for (const pipework::Meter& meter : pipework::meters()) {
        choices.push_back({shell::coded(meter.code), words.meter(meter)});
    }
    return choices;
}

/// Of a choice, a tube or a meter; none of another item.
std::vector<ChoiceItem> choicesFor(Item item, const words::Words& words) {
    return isTube(item)    ? tubeChoices(words)
           : isMeter(item) ? meterChoices(words)
                           : input::choicesOf(item, words);
}

bool isChoice(Item item) {
    const ItemKind kind = reg::infoOf(item).kind;
    return kind == ItemKind::Choice || kind == ItemKind::YesNo;
}

/// What the choices need side by side.
int widthOfButtons(Item item, const words::Words& words) {
    const QFontMetrics metrics(shell::strongFont());  // the one that is chosen
    int width = 0;
    for (const ChoiceItem& choice : input::choicesOf(item, words)) {
        width += metrics.horizontalAdvance(choice.label) + kSegmentPad;
    }
    return width;
}

/// Buttons where they stand in one line of the form; else a list.
bool hasButtons(Item item, const words::Words& words) {
    constexpr std::size_t kMost = 4;
    return reg::infoOf(item).choices.size() <= kMost && widthOfButtons(item, words) <= kMostOfButtons;
}

/// What a field needs to be used; nothing: as much as there is.
std::optional<int> widthOfKind(Item item, const words::Words& words, Room room) {
    if (isTube(item)) {
        return kTubeField;
    }
    switch (reg::infoOf(item).kind) {
        case ItemKind::Number:
        case ItemKind::Time:
            return kNumberField;
        case ItemKind::Date:
            return kDateField;
        case ItemKind::LongText:
            return std::nullopt;
        case ItemKind::Choice:
        case ItemKind::YesNo:
            if (room == Room::Form && hasButtons(item, words)) {
                return widthOfButtons(item, words);
            }
            return std::min(columnWidth(item, words), kMostOfList);
        case ItemKind::Text:
        case ItemKind::Instrument:
            break;
    }
    return kTextField;
}

/// In what is spoken of on site, where the family's first unit is not it.
UnitCode usualUnit(Item item) {
    switch (item) {
        case Item::HotWaterFlow:
        case Item::HotWaterMakerFlow:
            return UnitCode::LitrePerMinute;
        case Item::PurgePipe:
            return UnitCode::Millimetre;
        case Item::LargerTook:
        case Item::StrengthTook:
            return UnitCode::Minute;
        default:
            return UnitCode::None;
    }
}

}  // namespace

input::Editor* makeWorkEditor(QWidget* parent, Item item, const shell::Context& context, Room room) {
    if (isTube(item) || isMeter(item)) {
        return input::makeListEditor(parent, choicesFor(item, context.words));
    }
    const bool asButtons = room == Room::Form && isChoice(item) && hasButtons(item, context.words);
    auto* editor = input::makeItemEditor(parent, item, context.words, context.clock,
                                         asButtons ? input::FewChoices::Buttons : input::FewChoices::List);
    if (const UnitCode unit = usualUnit(item); unit != UnitCode::None) {
        editor->setUnit(unit);
    }
    return editor;
}

int spanOf(Item item, const words::Words& words, Room room, int formWidth) {
    const auto needed = widthOfKind(item, words, room);
    if (!needed) {
        return FlowGrid::kColumns;
    }
    const int label = QFontMetrics(look::font(look::TypeRole::Label)).horizontalAdvance(words.item(item)) + 1;
    return FlowGrid::spanFor(std::max(*needed, std::min(label, kMostOfLabel)), formWidth);
}

bool startsLine(Item item) {
    switch (item) {
        case Item::RateIndexStart:
        case Item::RatePassed:
        case Item::RateDial:
        case Item::RateCorrection:
        case Item::RateMeterPressure:
        case Item::ApplianceInput:
        case Item::RateOthersOff:
        case Item::RateMeterMost:
        case Item::MeterStandingPressure:
        case Item::InletStanding:
        case Item::PressureSameGauge:
        case Item::InletLeast:
        case Item::BurnerPressure:
        case Item::PressureMakerSource:
        case Item::MeterAverage:
        case Item::HotWaterFullRate:
        case Item::MakerCo2Least:
        case Item::MakerCo2LeastLow:
        case Item::MakerCombustionSource:
        case Item::AnalyserCoAccuracy:
        case Item::AnalyserZeroed:
        case Item::InletO2:
        case Item::FlueCoHigh:
        case Item::FlueCoLow:
        case Item::FlueTemperature:
        case Item::HotWaterMakerFlow:
        case Item::HotWaterMakerOutput:
        case Item::HotWaterNetInput:
        case Item::ExaminedFlue:
        case Item::ExaminedPressure:
        case Item::ExaminedOperation:
        case Item::GasMethane:
        case Item::GasHeatValue:
        case Item::CheckInstalled:
        case Item::CheckLast:
        case Item::CheckOthersDue:
        case Item::SectionDemand:
        case Item::PurgeVolumeKnown:
        case Item::LargerOperatingPressure:
        case Item::LargerWork:
        case Item::LargerGauge:
        case Item::LargerLetByStart:
        case Item::LargerSettleStart:
        case Item::LargerStart:
        case Item::StrengthMostOperating:
        case Item::StrengthPartsOff:
        case Item::StrengthStart:
            return true;
        default:
            return false;
    }
}

int columnWidth(Item item, const words::Words& words) {
    constexpr int kNumber = 96;
    constexpr int kListAround = 60;  // its arrow and edges
    if (reg::infoOf(item).kind == ItemKind::Number) {
        return kNumber;
    }
    const QFontMetrics metrics(look::font(look::TypeRole::Body));
    int width = kNumber;
    for (const ChoiceItem& choice : choicesFor(item, words)) {
        width = std::max(width, metrics.horizontalAdvance(choice.label) + kListAround);
    }
    return width;
}

QString problemOf(Item item, const QString& text, const words::Words& words) {
    if (text.trimmed().isEmpty()) {
        return {};
    }
    const auto canonical = reg::canonicalOf(item, text.toStdString());
    return canonical ? QString() : words.error(canonical.error());
}

QString fieldName(const FieldAt& at) {
    const QString code = shell::coded(reg::infoOf(at.item).code);
    return at.group == judging::Group::Once
               ? code
               : QStringLiteral("%1-%2-%3").arg(static_cast<int>(at.group)).arg(at.row + 1).arg(code);
}

QString spokenValue(const reg::Entry& entry, const words::Words& words) {
    const QString typed = words::qstring(entry.text).simplified();
    if (isTube(entry.item)) {
        const pipework::Tube* tube = pipework::tubeByCode(entry.text);
        return tube == nullptr ? typed : words.tube(*tube);
    }
    if (isMeter(entry.item)) {
        const pipework::Meter* meter = pipework::meterByCode(entry.text);
        return meter == nullptr ? typed : words.meter(*meter);
    }
    if (entry.canonical.empty()) {
        return QCoreApplication::translate("hearth::ui::workings::GroupView", "%1 (can't be read)")
            .arg(typed);
    }
    if (isChoice(entry.item)) {
        return words.choice(entry.item, entry.canonical);
    }
    if (reg::infoOf(entry.item).kind == ItemKind::Date) {
        const auto date = calendar::fromIso(entry.canonical);
        return date ? words.date(*date) : typed;
    }
    const QString unit = words.unit(entry.unit);
    return unit.isEmpty() ? typed : typed + QChar(0xA0) + unit;
}

}  // namespace hearth::ui::workings

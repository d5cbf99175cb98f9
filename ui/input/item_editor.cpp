// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/item_editor.h"

namespace hearth::ui::input {

using reg::ItemKind;

namespace {

constexpr std::size_t kMostButtons = 4;
constexpr int kLongTextLines = 3;

}  // namespace

Now nowOf(const Clock& clock) {
    return [&clock] {
        return QTime::fromString(QString::fromStdString(wallTimeText(clock.now())), QStringLiteral("HH:mm"));
    };
}

Today todayOf(const Clock& clock) {
    return [&clock] { return clock.today(); };
}

std::vector<ChoiceItem> choicesOf(reg::Item item, const words::Words& words) {
    std::vector<ChoiceItem> choices;
    for (const reg::Choice& choice : reg::infoOf(item).choices) {
        const std::string code(choice.code);
        choices.push_back({QString::fromStdString(code), words.choice(item, code)});
    }
    return choices;
}

Editor* makeItemEditor(QWidget* parent, reg::Item item, const words::Words& words, const Clock& clock,
                       FewChoices few) {
    const reg::ItemInfo& info = reg::infoOf(item);
    switch (info.kind) {
        case ItemKind::Number:
            return makeQuantityEditor(parent, info.units);
        case ItemKind::Choice:
        case ItemKind::YesNo:
            return few == FewChoices::Buttons && info.choices.size() <= kMostButtons
                       ? makeChoiceEditor(parent, choicesOf(item, words))
                       : makeListEditor(parent, choicesOf(item, words));
        case ItemKind::LongText:
            return makeLongTextEditor(parent, kLongTextLines);
        case ItemKind::Time:
            return makeTimeEditor(parent, nowOf(clock));
        case ItemKind::Date:
            return makeDateEditor(parent, todayOf(clock));
        case ItemKind::Text:
        case ItemKind::Instrument:
            break;
    }
    return makeTextEditor(parent);
}

}  // namespace hearth::ui::input

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/item_editor.h"

#include "ui/input/choice_editors.h"
#include "ui/input/date_time_editors.h"
#include "ui/input/quantity_editor.h"

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::input {
namespace {

TEST(ItemEditor, EveryItemHasTheEditorOfItsKind) {
    const words::Words words;
    const FixedClock clock(Instant{});
    for (const reg::ItemInfo& info : reg::itemCatalogue()) {
        const std::unique_ptr<Editor> editor(makeItemEditor(nullptr, info.item, words, clock));
        const std::string name(info.code);
        EXPECT_EQ(dynamic_cast<QuantityEditor*>(editor.get()) != nullptr, info.kind == reg::ItemKind::Number)
            << name;
        EXPECT_EQ(dynamic_cast<DateEditor*>(editor.get()) != nullptr, info.kind == reg::ItemKind::Date)
            << name;
        EXPECT_EQ(dynamic_cast<TimeEditor*>(editor.get()) != nullptr, info.kind == reg::ItemKind::Time)
            << name;
        const bool isRow = dynamic_cast<ChoiceEditor*>(editor.get()) != nullptr;
        const bool isList = dynamic_cast<ListEditor*>(editor.get()) != nullptr;
        EXPECT_EQ(isRow || isList, !info.choices.empty()) << name;
        EXPECT_EQ(isList, info.choices.size() > 4) << name;
        EXPECT_EQ(choicesOf(info.item, words).size(), info.choices.size()) << name;
    }
}

TEST(ItemEditor, InANarrowColumnEveryChoiceIsAList) {
    const words::Words words;
    const FixedClock clock(Instant{});
    const std::unique_ptr<Editor> editor(
        makeItemEditor(nullptr, reg::Item::RoomCoPlace, words, clock, FewChoices::List));
    EXPECT_NE(dynamic_cast<ListEditor*>(editor.get()), nullptr);
}

}  // namespace
}  // namespace hearth::ui::input

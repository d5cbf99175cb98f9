// SPDX-License-Identifier: GPL-3.0-or-later
// What the sheet asks of kinds of appliance that have items of their own, and of what is capped.
#include "core/register/appliance_kinds.h"

#include "tests/ui/visit/sheet_bench.h"
#include "ui/shell/kit.h"
#include "ui/visit/wanted.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::need;
using testing::SheetBench;
namespace choice = reg::choice;

/// A landlord's visit with one appliance of that kind.
class ApplianceKindBench : public SheetBench {
  public:
    explicit ApplianceKindBench(std::string_view kind) {
        reg::Appliance one;
        one.id = {firm.store->newId()};
        one.installation = file().installation.id;
        one.kind = std::string(kind);
        one.make = "Invented";
        one.model = "Thirty";
        one.place = "saloon";
        one.flue = reg::burnsGas(kind) ? reg::FlueType::OpenFlued : reg::FlueType::NotSaid;
        need(firm.store->save(one));
        id = reg::subject(one.id);
        need(model().reload());
        say(reg::subject(visit), Item::VisitLandlordCheck, choice::kYes);
    }
    void say(const reg::SubjectRef& on, Item item, std::string_view code) const {
        need(model().enter(on, item, shell::coded(code)));
        settle();
    }
    [[nodiscard]] PartView* part() const {
        return sheet().paper()->part(partAt(PartKind::Appliance, id, file()));
    }
    /// Of the items that only some kinds have, those in view.
    [[nodiscard]] std::set<Item> ownInView() const {
        std::set<Item> items;
        for (const auto* field : part()->fields()) {
            const auto item = field->key().item;
            if (item && reg::isOfSomeKinds(*item) && !field->editor()->isHidden()) {
                items.insert(*item);
            }
        }
        return items;
    }
    [[nodiscard]] bool isInView(Item item) const {
        const auto* field = part()->find({item, std::nullopt, id});
        return field != nullptr && !field->editor()->isHidden();
    }
    [[nodiscard]] bool hasGasRateClock() const {
        const auto* button = part()->findChild<QWidget*>(QStringLiteral("gasRateButton"));
        return button != nullptr && !button->parentWidget()->isHidden();
    }

    reg::SubjectRef id;
};

struct ShownRow {
    std::string_view kind;
    bool burns;
};

/// As the facts' field lists have them, which canBeAsked() holds (tests/core/register).
TEST(ApplianceKindsOnSheet, EachShowsItsOwnItemsOnceItWasSeen) {
    for (const auto& row : {ShownRow{choice::kLeisureVehicle, false}, ShownRow{choice::kBoat, false},
                            ShownRow{choice::kCatering, true}, ShownRow{choice::kUnventedCylinder, false},
                            ShownRow{choice::kGasFire, true}}) {
        ApplianceKindBench bench(row.kind);
        EXPECT_TRUE(bench.ownInView().empty()) << row.kind;
        bench.say(bench.id, Item::ApplianceInspected, choice::kInspected);
        std::set<Item> own;
        for (const auto& info : reg::itemCatalogue()) {
            if (reg::isOfSomeKinds(info.item) && reg::canBeAsked(info.item, row.kind, false)) {
                own.insert(info.item);
            }
        }
        EXPECT_EQ(bench.ownInView(), own) << row.kind;
        for (const auto item : {Item::FlueSeen, Item::ExaminedFlue, Item::FlueCoHigh, Item::BurnerPressure}) {
            EXPECT_EQ(bench.isInView(item), row.burns) << row.kind << ' ' << reg::infoOf(item).code;
        }
        EXPECT_EQ(bench.hasGasRateClock(), row.burns) << row.kind;
        EXPECT_EQ(bench.isInView(Item::SafeToUse), row.kind != choice::kUnventedCylinder) << row.kind;
    }
}

TEST(ApplianceKindsOnSheet, WhatIsCappedIsAskedHowAndNoReading) {
    ApplianceKindBench bench(choice::kGasFire);
    auto* before = bench.part();
    bench.say(bench.id, Item::ApplianceInspected, choice::kDecommissioned);
    EXPECT_EQ(bench.part(), before) << "the part is not made anew under the cursor";
    EXPECT_EQ(bench.ownInView(),
              (std::set<Item>{Item::CappedHow, Item::CappedWhere, Item::CappedProved, Item::CappedLabel}));
    for (const auto item : {Item::FlueSeen, Item::ExaminedFlue, Item::CheckCovered, Item::FlueCoHigh,
                            Item::BurnerPressure, Item::HeatInputRead, Item::NotInspectedWhy}) {
        EXPECT_FALSE(bench.isInView(item)) << reg::infoOf(item).code;
    }
    EXPECT_FALSE(bench.hasGasRateClock());
    // The declaration stays the engineer's: offered, empty, and no record waits for it.
    ASSERT_TRUE(bench.isInView(Item::SafeToUse));
    EXPECT_EQ(bench.part()->find({Item::SafeToUse, std::nullopt, bench.id})->editor()->text(), QString());
    EXPECT_EQ(askingOf(Item::SafeToUse, bench.id, bench.file(), bench.model().findings()),
              Asking::MayBeLeftOut);
    bench.say(bench.id, Item::ApplianceInspected, choice::kInspected);
    EXPECT_TRUE(bench.ownInView().empty());
    EXPECT_TRUE(bench.isInView(Item::FlueSeen));
}

TEST(ApplianceKindsOnSheet, AKindThatIsSaidOnTheSheetBringsItsItems) {
    ApplianceKindBench bench("");
    bench.say(bench.id, Item::ApplianceInspected, choice::kInspected);
    EXPECT_TRUE(bench.ownInView().empty());
    auto* kind = bench.part()->editorFor({std::nullopt, record::Field::ApplianceKind, bench.id});
    ASSERT_NE(kind, nullptr);
    kind->setText(shell::coded(choice::kBoat));
    Q_EMIT kind->committed(kind->text());
    SheetBench::settle();
    EXPECT_EQ(bench.ownInView().count(Item::LpgBubbleTester), 1U);
    EXPECT_FALSE(bench.isInView(Item::FlueSeen));
}

}  // namespace
}  // namespace hearth::ui::visit

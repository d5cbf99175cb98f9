// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/last_facts.h"

#include "tests/ui/visit/sheet_bench.h"

#include <QLineEdit>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using reg::ItemKind;
using testing::need;
using testing::SheetBench;

TEST(LastFacts, AreNeverAReadingNorAnAnswer) {
    int facts = 0;
    for (const reg::ItemInfo& info : reg::itemCatalogue()) {
        if (isFact(info.item)) {
            ++facts;
            EXPECT_TRUE(info.kind == ItemKind::Text || info.kind == ItemKind::Date) << info.code;
        }
    }
    EXPECT_GT(facts, 0);
    for (const Item never : {Item::TightEnd, Item::SafeToUse, Item::SmellOnArrival, Item::DefectsText,
                             Item::SignedByEngineer, Item::TestIsolatedWhat, Item::RoomCoAlarm}) {
        EXPECT_FALSE(isFact(never)) << reg::infoOf(never).code;
    }
}

/// A room of last year, and this year's visit to the same premises.
struct LastYear : ::testing::Test {
    SheetBench bench;
    void SetUp() override {
        const reg::SubjectRef room{reg::SubjectKind::Room, bench.firm.store->newId()};
        need(bench.model().enter(reg::subject(bench.file().visit.id), Item::VisitLandlordCheck,
                                 QStringLiteral("yes")));
        need(bench.model().enter(room, Item::RoomName, QStringLiteral("Kitchen")));
        need(bench.model().enter(room, Item::RoomCoAlarm, QStringLiteral("alarm_works")));
        need(bench.model().enter(room, Item::RoomCoAlarmExpiry, QStringLiteral("2031-05-01")));
        bench.firm.clock.advance(std::chrono::hours(24 * 360));
        bench.visit = bench.firm.startVisit(bench.premises);
        bench.open();
        need(bench.model().enter(reg::subject(bench.file().visit.id), Item::VisitLandlordCheck,
                                 QStringLiteral("yes")));
        SheetBench::settle();
    }
    [[nodiscard]] SheetField* firstOf(Item item) const {
        for (auto* part : bench.sheet().paper()->parts()) {
            for (auto* field : part->fields()) {
                if (field->key().item == item) {
                    return field;
                }
            }
        }
        return nullptr;
    }
};

TEST_F(LastYear, IsOfferedInGreyAndTakenWithOneKey) {
    auto* name = firstOf(Item::RoomName);
    ASSERT_NE(name, nullptr);
    auto* line = qobject_cast<QLineEdit*>(name->editor()->focusTarget());
    EXPECT_TRUE(line->placeholderText().contains(QStringLiteral("Kitchen")));
    EXPECT_TRUE(line->accessibleDescription().contains(QStringLiteral("Kitchen")));
    EXPECT_TRUE(bench.file().rooms().empty()) << "offered is not entered";
    line->setFocus();
    SheetBench::press(Qt::Key_Right);
    ASSERT_EQ(bench.file().rooms().size(), 1U);
    const auto room = bench.file().rooms().front();
    EXPECT_EQ(bench.model().textOf(room, Item::RoomName), QStringLiteral("Kitchen"));
    EXPECT_EQ(bench.model().lastFact(room, Item::RoomCoAlarmExpiry), QStringLiteral("2031-05-01"));
    // What was answered then is asked again.
    EXPECT_TRUE(bench.model().lastFact(room, Item::RoomCoAlarm).isEmpty());
    EXPECT_NE(QApplication::focusWidget(), line) << "it goes on by itself";
}

TEST_F(LastYear, ARoomOfAnotherNameIsOfferedNothingOfIt) {
    const reg::SubjectRef hall{reg::SubjectKind::Room, bench.firm.store->newId()};
    need(bench.model().enter(hall, Item::RoomName, QStringLiteral("Hall")));
    EXPECT_TRUE(bench.model().lastFact(hall, Item::RoomCoAlarmExpiry).isEmpty());
    const reg::SubjectRef next{reg::SubjectKind::Room, bench.firm.store->newId()};
    EXPECT_EQ(bench.model().lastFact(next, Item::RoomName), QStringLiteral("Kitchen"));
}

// The published example of regulation 36A(1): the check of 5 January 2019 kept the deadline of 10 February
// 2019.
TEST(LastCheck, IsOfferedAsTheKeptChecksSayAndNeverEntered) {
    SheetBench bench;
    reg::Appliance boiler;
    boiler.id = {bench.firm.store->newId()};
    boiler.installation = bench.file().installation.id;
    boiler.kind = "condensing_boiler";
    need(bench.firm.store->save(boiler));
    for (const char* day : {"2018-02-10", "2019-01-05"}) {
        reg::EarlierCheck check;
        check.premises = bench.premises;
        check.date = *calendar::fromIso(day);
        need(bench.firm.store->save(check));
    }
    bench.visit = bench.firm.startVisit(bench.premises);
    bench.open();
    const auto on = reg::subject(boiler.id);
    EXPECT_EQ(bench.model().lastFact(on, Item::LastCheckCounted), QStringLiteral("2019-02-10"));
    EXPECT_EQ(bench.file().find(on, Item::LastCheckCounted), nullptr);
    need(bench.model().enter(on, Item::LastCheckCounted, QStringLiteral("2019-01-05")));
    EXPECT_TRUE(bench.model().lastFact(on, Item::LastCheckCounted).isEmpty());
    EXPECT_EQ(bench.file().find(on, Item::LastCheckCounted)->canonical, "2019-01-05") << "nothing changes it";
}

}  // namespace
}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
// Clocks beside the timed test: the gas rate of each appliance, and the series of readings in a room.
#include "ui/visit/gas_rate_clock.h"

#include "tests/ui/visit/sheet_bench.h"
#include "ui/input/choice_field.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::need;
using testing::SheetBench;
using namespace std::chrono_literals;

struct Clocks : ::testing::Test {
    SheetBench bench;
    std::vector<reg::ApplianceId> appliances;

    void SetUp() override {
        for (const char* place : {"kitchen", "lounge"}) {
            reg::Appliance appliance;
            appliance.id = {bench.firm.store->newId()};
            appliance.installation = bench.file().installation.id;
            appliance.kind = std::string(reg::choice::kGasFire);
            appliance.place = place;
            need(bench.firm.store->save(appliance));
            appliances.push_back(appliance.id);
        }
        need(bench.model().enter(visit(), Item::VisitLandlordCheck, QStringLiteral("yes")));
        bench.open();
    }
    [[nodiscard]] reg::SubjectRef visit() const { return reg::subject(bench.file().visit.id); }
    void goTo(std::size_t appliance) const {
        bench.sheet().goTo(partAt(PartKind::Appliance, reg::subject(appliances[appliance]), bench.file()));
        SheetBench::settle();
    }
    static void toggle() { SheetBench::press(Qt::Key_Return, Qt::ControlModifier); }
    [[nodiscard]] QString timeOf(std::size_t appliance) const {
        return bench.model().textOf(reg::subject(appliances[appliance]), Item::RateTime);
    }
};

TEST_F(Clocks, TimeTheGasRateOfEachApplianceByItself) {
    goTo(0);
    toggle();
    bench.firm.clock.advance(40s);
    goTo(1);
    toggle();
    bench.firm.clock.advance(30500ms);
    toggle();
    EXPECT_EQ(timeOf(1), QStringLiteral("30.5"));
    EXPECT_TRUE(timeOf(0).isEmpty()) << "it runs on";
    goTo(0);
    toggle();
    EXPECT_EQ(timeOf(0), QStringLiteral("70.5"));
    EXPECT_EQ(bench.model().unitOf(reg::subject(appliances[0]), Item::RateTime), quantity::UnitCode::Second);
}

TEST_F(Clocks, GoOnAfterAnotherStartOfTheProgram) {
    goTo(0);
    toggle();
    bench.firm.clock.advance(50s);
    bench.open();
    bench.firm.clock.advance(42s);
    goTo(0);
    toggle();
    EXPECT_EQ(timeOf(0), QStringLiteral("92.0"));
    bench.open();
    for (const auto* clock : bench.sheet().findChildren<GasRateClock*>()) {
        EXPECT_FALSE(clock->isRunning()) << "stopped is stopped";
    }
}

TEST_F(Clocks, AKeptTimeIsNotTakenAwayByOneKey) {
    goTo(0);
    toggle();
    bench.firm.clock.advance(60s);
    toggle();
    bench.firm.dialogs.answers = {1, 1};
    toggle();
    bench.firm.clock.advance(5s);
    toggle();
    EXPECT_EQ(timeOf(0), QStringLiteral("60.0"));
}

TEST_F(Clocks, ThatOfWhatTurnsOutToBeCappedStaysInViewAndKeepsNothing) {
    goTo(0);
    const auto answer = [&](std::string_view how) {
        need(bench.model().enter(reg::subject(appliances[0]), Item::ApplianceInspected, shell::coded(how)));
        SheetBench::settle();
    };
    const GasRateClock* clock = nullptr;
    toggle();
    for (const auto* one : bench.sheet().findChildren<GasRateClock*>()) {
        clock = one->isRunning() ? one : clock;
    }
    ASSERT_NE(clock, nullptr);
    const auto* notKept = clock->findChild<QWidget*>(QStringLiteral("rateNotKept"));
    ASSERT_NE(notKept, nullptr);
    EXPECT_TRUE(notKept->isHidden());
    answer(reg::choice::kDecommissioned);
    bench.firm.clock.advance(20s);
    EXPECT_FALSE(clock->isHidden()) << "it runs, so it is seen";
    EXPECT_FALSE(notKept->isHidden());
    answer(reg::choice::kInspected);
    EXPECT_TRUE(notKept->isHidden()) << "it was a wrong key";
    EXPECT_TRUE(clock->isRunning());
    answer(reg::choice::kDecommissioned);
    goTo(0);
    toggle();
    EXPECT_TRUE(clock->isHidden());
    EXPECT_FALSE(clock->isRunning());
    EXPECT_TRUE(timeOf(0).isEmpty());
    toggle();
    EXPECT_FALSE(clock->isRunning()) << "of what is capped no gas rate is timed";
}

TEST_F(Clocks, KeepTheTimesOfASeriesInARoom) {
    need(bench.model().enter(visit(), Item::VisitRoomCo, QStringLiteral("yes")));
    SheetBench::settle();
    const auto readNow = [&](const char* place, const char* ppm) {
        SheetField* begin = nullptr;
        for (auto* part : bench.sheet().paper()->parts()) {
            for (auto* field : part->fields()) {
                if (field->key().item == Item::RoomCoPlace &&
                    bench.file().find(field->key().subject, Item::RoomCoPlace) == nullptr) {
                    begin = field;
                }
            }
        }
        ASSERT_NE(begin, nullptr);
        begin->editor()->focusTarget()->setFocus();
        const auto* choice = qobject_cast<input::ChoiceField*>(QApplication::focusWidget());
        SheetBench::keys(choice->letterOf(QString::fromUtf8(place)).toLower());
        toggle();
        const auto reading = bench.file().roomReadings().back();
        need(bench.model().enter(reading, Item::RoomCo, QString::fromUtf8(ppm), quantity::UnitCode::Ppm));
        SheetBench::settle();
    };
    readNow("outdoors", "0");
    bench.firm.clock.advance(6min);
    bench.open();
    readNow("room", "30");
    const auto readings = bench.file().roomReadings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(bench.model().textOf(readings[0], Item::RoomCoAt), QStringLiteral("0.0"));
    EXPECT_EQ(bench.model().textOf(readings[1], Item::RoomCoAt), QStringLiteral("6.0"));
}

}  // namespace
}  // namespace hearth::ui::visit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/booking_doubts.h"

#include "tests/ui/due/due_window.h"
#include "tests/ui/support/keys.h"

#include <gtest/gtest.h>

namespace hearth::ui::due {
namespace {

using hearth::testing::child;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;
using hearth::testing::typeLine;

/// What stands at the overdue premises is a kitchen's, which the engineer's categories do not cover.
class BookingDoubtsTest : public DueWindowTest {
  protected:
    void SetUp() override {
        DueWindowTest::SetUp();
        bench.makeCompetent();
        reg::Appliance kitchen;
        kitchen.id = {bench.store->newId()};
        kitchen.installation = need(bench.store->installations(overdue)).front().id;
        kitchen.kind = std::string(reg::choice::kCatering);
        kitchen.place = "canteen";
        need(bench.store->save(kitchen));
    }
    reg::Booking bookedOn(const char* day) const {
        reg::Booking booking;
        booking.premises = overdue;
        booking.date = on(day);
        booking.engineer = bench.engineer.id;
        return booking;
    }
    std::vector<shell::Line> doubtsOf(const std::vector<reg::Booking>& bookings) const {
        return need(bookingDoubts(*bench.store, window->context().words, bookings,
                                  bench.clock.today("Europe/London")));
    }
    void hold(const char* category, const char* until) {
        reg::Competence held;
        held.id = {bench.store->newId()};
        held.engineer = bench.engineer.id;
        held.category = category;
        held.expires = on(until);
        need(bench.store->save(held));
    }
};

TEST_F(BookingDoubtsTest, whatNoCategoryCoversIsSaidWithItsApplianceUntilOneDoes) {
    const auto doubts = doubtsOf({bookedOn("2026-12-03")});
    ASSERT_EQ(doubts.size(), 1U);
    EXPECT_TRUE(doubts[0].title.startsWith(QStringLiteral("catering appliance, canteen: ")));
    EXPECT_TRUE(doubts[0].title.contains(QStringLiteral("COMCAT")));
    EXPECT_EQ(doubts[0].outcome, rulebook::Outcome::LookAgain);
    hold("COMCAT1", "2027-01-01");
    EXPECT_TRUE(doubtsOf({bookedOn("2026-12-03")}).empty());
    EXPECT_EQ(doubtsOf({bookedOn("2027-01-02")}).size(), 1U) << "it will have run out by then";
    EXPECT_TRUE(doubtsOf({bookedOn("2026-12-03"), bookedOn("2026-12-04")}).empty());
}

TEST_F(BookingDoubtsTest, aCardThatWillHaveRunOutComesFirstAndIsSaidOnce) {
    const auto doubts = doubtsOf({bookedOn("2029-01-03"), bookedOn("2029-01-03")});
    ASSERT_GE(doubts.size(), 2U);
    EXPECT_TRUE(doubts[0].title.startsWith(QStringLiteral("The card of ")));
    EXPECT_TRUE(doubts[0].title.contains(QStringLiteral("will have run out on"))) << "it still runs";
    EXPECT_EQ(doubts[0].outcome, rulebook::Outcome::Fail);
    for (std::size_t at = 1; at < doubts.size(); ++at) {
        EXPECT_NE(doubts[at].title, doubts[0].title);
    }
    auto nobody = bookedOn("2029-01-03");
    nobody.engineer.reset();
    EXPECT_TRUE(doubtsOf({nobody}).empty()) << "nobody is said to go";
}

TEST_F(BookingDoubtsTest, thePageWarnsAsSoonAsTheEngineerIsSaidAndBooksAllTheSame) {
    chooseFirst(1);
    press(Qt::Key_B, Qt::ControlModifier);
    auto* list = child<shell::LineList>(place, "bookDoubts");
    EXPECT_FALSE(list->isVisible()) << "no day yet";
    typeLine(QStringLiteral("3/12"));
    typeLine(QStringLiteral("10"));
    typeLine(QStringLiteral("11"));
    EXPECT_FALSE(list->isVisible()) << "nobody is said to go yet";
    type(QStringLiteral("r"));
    press(Qt::Key_Return);
    ASSERT_TRUE(list->isVisible());
    ASSERT_EQ(list->count(), 1);
    EXPECT_EQ(list->line(0).outcome, rulebook::Outcome::LookAgain);
    EXPECT_FALSE(list->accessibleName().isEmpty());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->bookings(overdue)).size(), 1U) << "booking stays possible";
}

}  // namespace
}  // namespace hearth::ui::due

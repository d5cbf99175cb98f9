// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/doings_repository.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

class Doings : public KeptTest {
  protected:
    [[nodiscard]] Instant minutesAgo(int minutes) const {
        return clock.now() - std::chrono::minutes(minutes);
    }
    reg::Letter letter(int ago) {
        reg::Letter one{{store->newId()},
                        sample.premises.id,
                        sample.customer.id,
                        "reminder",
                        reg::Channel::Email,
                        "llyr@obrien.example",
                        "Dear Llŷr,\nthe check is due.",
                        minutesAgo(ago),
                        ""};
        valueOf(store->save(one));
        return one;
    }
    reg::Booking booking(calendar::Date date, const char* from) {
        reg::Booking one{{store->newId()},
                         sample.premises.id,
                         std::nullopt,
                         std::nullopt,
                         date,
                         from,
                         "",
                         reg::BookingState::Booked,
                         "",
                         0};
        valueOf(store->save(one));
        return one;
    }
    reg::Situation situation(int ago) {
        reg::Situation one;
        one.id = {store->newId()};
        one.premises = sample.premises.id;
        one.foundAt = minutesAgo(ago);
        one.danger = reg::Danger::ImmediatelyDangerous;
        one.what = "gas escape at the meter";
        valueOf(store->save(one));
        return one;
    }
};

TEST_F(Doings, attemptsAreListedNewestFirst) {
    const auto attempt = [&](int ago) {
        reg::AccessAttempt one;
        one.id = {store->newId()};
        one.premises = sample.premises.id;
        one.at = minutesAgo(ago);
        one.who = "Tamsin Ember";
        one.channel = reg::Channel::Visit;
        one.left = "a card";
        one.nextOn = day(2026, 12, 1);
        valueOf(store->save(one));
        return one;
    };
    const auto first = attempt(90);
    auto second = attempt(10);
    EXPECT_THAT(valueOf(store->accessAttempts(sample.premises.id)), ElementsAre(second, first));
    second.response = "rang back";
    valueOf(store->save(second));
    reopen();
    EXPECT_THAT(valueOf(store->accessAttempts(sample.premises.id)), ElementsAre(second, first));
    EXPECT_THAT(valueOf(store->accessAttempts({store->newId()})), IsEmpty());
}

TEST_F(Doings, lettersAreListedByPremisesAndByParty) {
    const auto first = letter(90);
    const auto second = letter(10);
    reopen();
    EXPECT_THAT(valueOf(store->letters(sample.premises.id)), ElementsAre(second, first));
    EXPECT_THAT(valueOf(store->letters(sample.customer.id)), ElementsAre(second, first));
}

TEST_F(Doings, bookingsOfADayComeInTheOrderOfTheCalendar) {
    const auto late = booking(day(2026, 12, 3), "14:00");
    const auto early = booking(day(2026, 12, 3), "09:30");
    const auto before = booking(day(2026, 12, 1), "");
    static_cast<void>(booking(day(2026, 12, 9), ""));
    EXPECT_THAT(valueOf(store->bookings(day(2026, 12, 1), day(2026, 12, 3))),
                ElementsAre(before, early, late));
    EXPECT_EQ(valueOf(store->bookings(sample.premises.id)).size(), 4U);
    EXPECT_EQ(valueOf(store->bookings(sample.premises.id)).back(), before);
}

TEST_F(Doings, aSituationHasACourseThatIsOnlyAddedTo) {
    auto found = situation(30);
    const auto older = situation(300);
    EXPECT_THAT(valueOf(store->openSituations()), ElementsAre(older, found));
    reg::SituationEvent told{{store->newId()}, found.id,     minutesAgo(20),
                             "told",           "the tenant", "Tamsin Ember"};
    reg::SituationEvent safe{{store->newId()}, found.id, minutesAgo(25),
                             "made_safe",      "capped", "Tamsin Ember"};
    valueOf(store->add(told));
    valueOf(store->add(safe));
    EXPECT_THAT(valueOf(store->eventsOf(found.id)), ElementsAre(safe, told));
    told.text = "nobody";
    EXPECT_EQ(errorOf(store->add(told)), ErrorCode::EventStays);
    EXPECT_EQ(valueOf(store->eventsOf(found.id)).back().text, "the tenant");
    found.closedAt = clock.now();
    valueOf(store->save(found));
    EXPECT_THAT(valueOf(store->openSituations()), ElementsAre(older));
    EXPECT_THAT(valueOf(store->situations(sample.premises.id)), ElementsAre(found, older));
}

TEST_F(Doings, anEventOfNoSituationIsRefused) {
    EXPECT_FALSE(
        store->add(reg::SituationEvent{{store->newId()}, {store->newId()}, clock.now(), "told", "", ""}));
}

TEST_F(Doings, thereIsOneEmergencyContactForEachCountryAndGas) {
    reg::EmergencyContact contact{
        {store->newId()}, reg::Country::Scotland, rulebook::Gas::Propane, "supplier", "1"};
    valueOf(store->save(contact));
    contact.id = {store->newId()};
    contact.number = "2";
    valueOf(store->save(contact));
    const auto contacts = valueOf(store->emergencyContacts());
    ASSERT_EQ(contacts.size(), 1U);
    EXPECT_EQ(contacts.front().number, "2");
    valueOf(store->removeEmergencyContact(contacts.front().id));
    EXPECT_THAT(valueOf(store->emergencyContacts()), IsEmpty());
}

}  // namespace
}  // namespace hearth::store

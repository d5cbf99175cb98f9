// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/deadlines.h"
#include "tests/core/store/faults/fault_actions.h"
#include "tests/core/store/faults/in_memory.h"

#include <gmock/gmock.h>
#include <set>

// The clocks of Great Britain change at 01:00 UTC on the last Sundays of March and October: Summer Time Act
// 1972 as amended by the Summer Time Order 2002. In 2026 these are 29 March and 25 October.

namespace hearth::store {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

Instant at(const char* utc) {
    Instant instant{};
    EXPECT_TRUE(parseInstant(utc, instant)) << utc;
    return instant;
}

class ClockAstray : public InMemory, public SpoiltStore {
  protected:
    void SetUp() override {
        SpoiltStore::SetUp();
        store = valueOf(Store::open(path(), Access::Write, clock));
    }
    void type(const std::string& text) {
        valueOf(store->saveEntry(testEntry(valueOf(store->visitFile(visit)), reg::Item::TightEnd, text,
                                           quantity::UnitCode::Millibar)));
    }
    [[nodiscard]] std::vector<std::string> typedInOrder() const {
        std::vector<std::string> texts;
        for (const auto& change : valueOf(store->changesOfVisit(visit))) {
            if (change.field == "test.tight_end") {
                texts.push_back(change.after.value_or(""));
            }
        }
        return texts;
    }
};

TEST_F(ClockAstray, idsAreUniqueAndOrderedWithinEachStretch) {
    std::set<UuidBytes> ids;
    UuidBytes last{};
    constexpr int kStretches = 50;
    constexpr int kEach = 200;
    for (int stretch = 0; stretch < kStretches; ++stretch) {
        clock.advance(stretch % 2 == 0 ? -hours(3) : hours(2));  // and over the same milliseconds again
        last = store->newId();
        ids.insert(last);
        for (int i = 1; i < kEach; ++i) {
            clock.advance(std::chrono::milliseconds(i % 3 == 0 ? 1 : 0));
            const auto id = store->newId();
            EXPECT_LT(last, id);
            ids.insert(id);
            last = id;
        }
    }
    EXPECT_EQ(ids.size(), static_cast<std::size_t>(kStretches * kEach));
}

TEST_F(ClockAstray, theChangeLogKeepsTheOrderInWhichThingsWereDone) {
    type("1");
    clock.advance(-hours(24 * 400));
    type("2");
    clock.advance(hours(24 * 800));
    type("3");
    clock.advance(-hours(1));
    type("4");
    EXPECT_THAT(typedInOrder(), ::testing::ElementsAre("1", "2", "3", "4"));
    EXPECT_TRUE(valueOf(store->undo()));  // what was typed last, not what the clock calls last
    const auto file = valueOf(store->visitFile(visit));
    EXPECT_EQ(file.find(reg::subject(file.tests.front().id), reg::Item::TightEnd)->text, "3");
    valueOf(store->verify());
    store.reset();
    EXPECT_EQ(askSql(path(), "SELECT count(*) - max(position) FROM changes"), "0");
    EXPECT_EQ(problemsOf(path()), "");
}

TEST_F(ClockAstray, aRecordIssuedBeforeTheOneAheadOfItIsTold) {
    static_cast<void>(issueOne(visit));
    EXPECT_THAT(valueOf(Store::inspect(path())).outOfTime, ::testing::IsEmpty());
    clock.advance(-minutes(90));
    const auto odd = issueOne(visit);
    clock.advance(hours(2));
    static_cast<void>(issueOne(visit));
    const auto health = valueOf(Store::inspect(path()));
    EXPECT_THAT(health.outOfTime, ::testing::ElementsAre(valueOf(store->record(odd)).line.header.record));
    EXPECT_TRUE(health.chain) << "its number, not its time, is its place";
    reopen();
    static_cast<void>(issueOne(visit));
    valueOf(store->verify());
}

TEST_F(ClockAstray, theHourThatComesTwiceIsNoOddity) {
    clock.set(at("2026-10-25T00:50:00.000Z"));  // 01:50 in summer time
    const auto first = issueOne(visit);         // the fixture's own record is one of November
    type("summer");
    clock.set(at("2026-10-25T01:10:00.000Z"));  // 01:10 again
    static_cast<void>(issueOne(visit));
    type("winter");
    EXPECT_THAT(typedInOrder(), ::testing::ElementsAre("summer", "winter"));
    EXPECT_THAT(valueOf(Store::inspect(path())).outOfTime,
                ::testing::ElementsAre(valueOf(store->record(first)).line.header.record));
}

TEST_F(ClockAstray, whoHoldsARoleTodayFollowsTheDayInLondon) {
    const auto file = valueOf(store->visitFile(visit));
    const auto day = [](unsigned month, unsigned d) {
        return calendar::Date{std::chrono::year(2026), std::chrono::month(month), std::chrono::day(d)};
    };
    reg::Role tenancy{
        {store->newId()}, file.premises.id, file.people.front().party.id, reg::RoleKind::Tenant};
    tenancy.since = day(3, 29);
    tenancy.until = day(10, 24);
    valueOf(store->save(tenancy));
    const auto isTenantAt = [&](const char* utc) {
        clock.set(at(utc));
        const auto holders = valueOf(store->holders(file.premises.id));
        return std::any_of(holders.begin(), holders.end(),
                           [](const auto& holder) { return holder.role == reg::RoleKind::Tenant; });
    };
    EXPECT_FALSE(isTenantAt("2026-03-28T23:59:59.000Z"));
    EXPECT_TRUE(isTenantAt("2026-03-29T00:00:00.000Z"));  // still winter: midnight is UTC's
    EXPECT_TRUE(isTenantAt("2026-03-29T22:59:59.000Z"));
    EXPECT_TRUE(isTenantAt("2026-10-24T22:59:59.000Z"));
    EXPECT_FALSE(isTenantAt("2026-10-24T23:00:00.000Z"));  // midnight in summer time
    EXPECT_FALSE(isTenantAt("2026-10-25T23:30:00.000Z"));
}

struct Midnight {
    const char* before;
    const char* after;
    unsigned month;
    unsigned day;  // that begins
};
// Each midnight around the two changes; the days themselves are 23 and 25 hours long.
constexpr Midnight kMidnights[] = {
    {"2026-03-28T23:59:59.999Z", "2026-03-29T00:00:00.000Z", 3, 29},
    {"2026-03-29T22:59:59.999Z", "2026-03-29T23:00:00.000Z", 3, 30},
    {"2026-10-24T22:59:59.999Z", "2026-10-24T23:00:00.000Z", 10, 25},
    {"2026-10-25T23:59:59.999Z", "2026-10-26T00:00:00.000Z", 10, 26},
};

TEST(TodayAtTheChangeOfTheClocks, beginsAtMidnightInLondon) {
    for (const auto& midnight : kMidnights) {
        const auto begins = calendar::Date{std::chrono::year(2026), std::chrono::month(midnight.month),
                                           std::chrono::day(midnight.day)};
        FixedClock clock(at(midnight.before));
        EXPECT_EQ(calendar::daysBetween(clock.today("Europe/London"), begins), 1) << midnight.before;
        clock.set(at(midnight.after));
        EXPECT_EQ(clock.today("Europe/London"), begins) << midnight.after;
        EXPECT_EQ(wallTimeText(clock.now()), "00:00");
    }
}

}  // namespace
}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>
#include <set>

namespace hearth::store {
namespace {

class ChangesOf : public KeptTest {
  protected:
    [[nodiscard]] std::vector<Change> all(reg::PremisesId id, int pageSize = 200) const {
        std::vector<Change> lines;
        std::optional<ChangeId> next;
        do {
            auto page = valueOf(store->changesOfPremises(id, pageSize, next));
            EXPECT_LE(page.lines.size(), static_cast<std::size_t>(pageSize));
            lines.insert(lines.end(), page.lines.begin(), page.lines.end());
            next = page.next;
        } while (next);
        return lines;
    }
};

TEST_F(ChangesOf, aPremisesTellsOfEverythingThatBelongsToIt) {
    for (const auto& action : keptActions()) {
        if (action.prepare) {
            valueOf(action.prepare(*store, sample));
        }
        valueOf(action.run(*store, sample));
    }
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    valueOf(store->saveEntry(testEntry(valueOf(store->visitFile(visit)), reg::Item::TightStart, "20.71",
                                       quantity::UnitCode::Millibar)));
    reg::PipeSection pipe;
    pipe.id = {store->newId()};
    pipe.installation = sample.installation.id;
    valueOf(store->savePipes(sample.installation.id, {pipe}));
    valueOf(store->savePipes(sample.installation.id, {}));  // and is gone
    static_cast<void>(
        valueOf(store->attach({"visits", visit.bytes, "a.png", "image/png", "b", "", false, ""})));
    std::set<std::string> tables;
    for (const auto& line : all(sample.premises.id)) {
        tables.insert(line.table);
    }
    EXPECT_EQ(tables,
              (std::set<std::string>{"premises", "roles", "installations", "pipe_sections", "appliances",
                                     "visits", "tests", "entries", "access_attempts", "letters", "bookings",
                                     "situations", "situation_events", "attachments", "check_plans",
                                     "earlier_checks", "check_extensions", "bin"}));
    for (const auto& line : all(sample.premises.id)) {
        EXPECT_NE(line.table, "engineers");
    }
}

TEST_F(ChangesOf, pagesAreNewestFirstWithoutAGap) {
    for (int i = 0; i < 7; ++i) {
        auto premises = sample.premises;
        premises.address.line1 = std::to_string(i) + " Kiln Lane";
        valueOf(store->save(premises));
    }
    const auto whole = all(sample.premises.id);
    EXPECT_EQ(whole.front().after, std::optional<std::string>("6 Kiln Lane"));
    for (const int size : {1, 2, 3, 5}) {
        std::vector<std::string> ids;
        for (const auto& line : all(sample.premises.id, size)) {
            ids.push_back(line.id.text());
        }
        std::vector<std::string> expected;
        for (const auto& line : whole) {
            expected.push_back(line.id.text());
        }
        EXPECT_EQ(ids, expected) << size;
    }
}

TEST_F(ChangesOf, aRecordTellsOfItsVisitAndOfThePremisesUntilItWasIssued) {
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    const auto other = valueOf(store->startVisit(sampleVisit(sample)));
    const auto type = [&](reg::VisitId where, const char* text) {
        valueOf(store->saveEntry(testEntry(valueOf(store->visitFile(where)), reg::Item::TightStart, text,
                                           quantity::UnitCode::Millibar)));
    };
    type(visit, "20.71");
    type(other, "19.00");
    const auto record = issueOne(visit);
    clock.advance(std::chrono::minutes(5));
    type(visit, "20.72");
    auto premises = sample.premises;
    premises.address.line1 = "9 Ford End";
    valueOf(store->save(premises));
    std::set<std::string> told;
    for (const auto& line : valueOf(store->changesOfRecord(record)).lines) {
        told.insert(line.after.value_or(""));
    }
    EXPECT_EQ(told.count("20.71"), 1U);
    EXPECT_EQ(told.count("20.72"), 1U);
    EXPECT_EQ(told.count("12 Highcroft Rise"), 1U);
    EXPECT_EQ(told.count("19.00"), 0U);
    EXPECT_EQ(told.count("9 Ford End"), 0U);
    EXPECT_EQ(errorOf(store->changesOfRecord({store->newId()})), ErrorCode::NotFound);
    valueOf(store->noteEvent(record, "printed", "two copies"));
    const auto events = valueOf(store->recordEvents(record));
    ASSERT_EQ(events.size(), 1U);
    EXPECT_EQ(events.front().event + " " + events.front().detail, "printed two copies");
    EXPECT_EQ(events.front().at, clock.now());
}

}  // namespace
}  // namespace hearth::store

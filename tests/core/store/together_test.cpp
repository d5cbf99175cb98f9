// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

class Together : public StoreTest {
  protected:
    [[nodiscard]] Result<void> addParty(const std::string& name) {
        reg::Party party;
        party.id = {store->newId()};
        party.name = name;
        return store->save(party);
    }
    [[nodiscard]] std::size_t parties() const { return valueOf(store->parties("")).size(); }
};

TEST_F(Together, keepsAllOfIt) {
    valueOf(store->together([&]() -> Result<void> {
        valueOf(addParty("Anna"));
        return addParty("Bela");
    }));
    reopen();
    EXPECT_EQ(parties(), 2U);
}

TEST_F(Together, keepsNothingWhenItEndsInAnError) {
    valueOf(addParty("before"));
    const auto refused = store->together([&]() -> Result<void> {
        valueOf(addParty("Anna"));
        return fail(ErrorCode::NotFound, {"party", "Bela"});
    });
    EXPECT_EQ(errorOf(refused), ErrorCode::NotFound);
    EXPECT_EQ(parties(), 1U);
    const auto undone = valueOf(store->undo());
    ASSERT_TRUE(undone) << "the change before is still there to be taken back";
    EXPECT_EQ(parties(), 0U);
}

/// A merge into what was there, new rows that hang on each other, and a visit with an entry: all gone by one
/// undo.
TEST_F(Together, isOneStepForUndoWhenAsked) {
    const Sample sample = putSample(*store);
    const auto before = valueOf(store->registerRows());
    valueOf(addParty("before"));
    valueOf(store->together(
        [&]() -> Result<void> {
            valueOf(addParty("Anna"));
            auto premises = sample.premises;
            premises.uprn = "77";
            valueOf(store->save(premises));
            reg::Appliance appliance;
            appliance.id = reg::ApplianceId{store->newId()};
            appliance.installation = sample.installation.id;
            appliance.make = "Invented";
            valueOf(store->save(appliance));
            const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
            reg::Entry entry;
            entry.visit = visit;
            entry.subject = reg::subject(visit);
            entry.item = reg::Item::VisitRemarks;
            entry.text = "taken over";
            return store->saveEntry(entry);
        },
        Store::Steps::One));
    EXPECT_EQ(valueOf(store->registerRows()).visits.size(), 1U);
    ASSERT_TRUE(valueOf(store->undo()));
    const auto after = valueOf(store->registerRows());
    EXPECT_EQ(after.premises, before.premises);
    EXPECT_EQ(after.appliances, before.appliances);
    EXPECT_TRUE(after.visits.empty());
    EXPECT_EQ(after.parties.size(), before.parties.size() + 1) << "the step before stays";
    ASSERT_TRUE(valueOf(store->undo()));
    EXPECT_EQ(valueOf(store->registerRows()).parties, before.parties);
    valueOf(addParty("later"));
    ASSERT_TRUE(valueOf(store->undo())) << "steps are single again";
    EXPECT_EQ(valueOf(store->registerRows()).parties, before.parties);
}

TEST_F(Together, aRefusedPartLeavesTheOthers) {
    const Sample sample = putSample(*store);
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    valueOf(store->together([&]() -> Result<void> {
        valueOf(addParty("Anna"));
        const auto refused =
            store->issue(requestFor(*store, visit),
                         [](const record::Document&, const std::string&) -> Result<std::string> {
                             return fail(ErrorCode::LetterMissingInFont, {"x"});
                         });
        EXPECT_EQ(errorOf(refused), ErrorCode::LetterMissingInFont);
        return addParty("Bela");
    }));
    EXPECT_EQ(parties(), 3U) << "the sample's, and these two";
    EXPECT_TRUE(valueOf(store->records("")).empty());
    const auto issued = valueOf(store->issue(requestFor(*store, visit), pdfOf));
    EXPECT_EQ(withoutSeries(valueOf(store->record(issued)).line.header.record), "-000001")
        << "no number was lost";
    valueOf(store->verify());
}

TEST_F(Together, recordsIssuedInItHangInOneChain) {
    const Sample sample = putSample(*store);
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    valueOf(store->together([&]() -> Result<void> {
        valueOf(store->issue(requestFor(*store, visit), pdfOf));
        valueOf(store->issue(requestFor(*store, visit), pdfOf));
        return {};
    }));
    reopen();
    EXPECT_EQ(valueOf(store->records("")).size(), 2U);
    valueOf(store->verify());
}

}  // namespace
}  // namespace hearth::store

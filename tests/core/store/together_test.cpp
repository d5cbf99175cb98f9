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

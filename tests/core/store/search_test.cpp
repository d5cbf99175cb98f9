// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/search.h"

#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

TEST(SearchWords, areSmallWithoutAccents) {
    EXPECT_THAT(searchWords("Llŷr WIŚNIEWSKI"), ElementsAre("llyr", "wisniewski"));
    EXPECT_THAT(searchWords("Łódź Ærø Þing Straße"), ElementsAre("aero", "lodz", "strasse", "thing"));
    EXPECT_THAT(searchWords("O'Brien"), ElementsAre("brien", "o", "obrien"));
    EXPECT_THAT(searchWords(" -,; "), IsEmpty());
    EXPECT_THAT(searchWords("e\u0301te\u0301"), ElementsAre("ete"));  // accents as letters of their own
}

struct Found {
    const char* search;
    bool found;
};

class SearchPremises : public StoreTest {};

TEST_F(SearchPremises, byWordsOfAddressPostcodeAndHolders) {
    static_cast<void>(putSample(*store));  // Llŷr O'Brien, Flat 3, 12 Highcroft Rise, Ashwick, QA2 3BC
    const Found cases[] = {
        {"", true},
        {"llyr", true},
        {"LLŶR", true},
        {"llŷr o'brien", true},
        {"obrien", true},
        {"brien", true},
        {"o’brien", true},
        {"highc", true},
        {"rise 12", true},
        {"qa2 3bc", true},
        {"qa23bc", true},
        {"QA2", true},
        {"flat 3 ashw", true},
        {"croft", false},
        {"llyr jones", false},
        {"13 highcroft", false},
        {"%", true},
        {"high%", true},
        {"_", true},
        {"qa3", false},
    };
    for (const auto& [search, found] : cases) {
        EXPECT_EQ(valueOf(store->premises(search)).size(), found ? 1U : 0U) << search;
        EXPECT_EQ(valueOf(store->visits(search)).size(), 0U) << search;
    }
}

TEST_F(SearchPremises, followsEveryChangeOfWhatItIsMadeFrom) {
    Sample sample = putSample(*store);
    const auto finds = [&](const char* search) { return valueOf(store->premises(search)).size() == 1U; };
    sample.customer.name = "Marta Zielona";
    valueOf(store->save(sample.customer));
    EXPECT_TRUE(finds("zielona"));
    EXPECT_FALSE(finds("llyr"));
    sample.premises.address.line1 = "9 Ford End";
    valueOf(store->save(sample.premises));
    EXPECT_TRUE(finds("ford"));
    EXPECT_FALSE(finds("highcroft"));
    valueOf(store->removeRole(sample.premises.id, reg::RoleKind::Customer));
    EXPECT_FALSE(finds("zielona"));
    EXPECT_EQ(valueOf(store->parties("marta ziel")).size(), 1U);
    static_cast<void>(valueOf(store->undo()));
    EXPECT_TRUE(finds("zielona"));
}

TEST_F(SearchPremises, findsVisitsAndRecordsToo) {
    const Sample sample = putSample(*store);
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    const auto id = issueOne(visit);
    const std::string number = valueOf(store->record(id)).line.header.record;
    EXPECT_EQ(valueOf(store->visits("llyr")).size(), 1U);
    EXPECT_EQ(valueOf(store->visits("nobody")).size(), 0U);
    for (const std::string& search :
         {number, std::string("1"), std::string("000001"), std::string("qa23bc"), std::string("llyr")}) {
        EXPECT_EQ(valueOf(store->records(search)).size(), 1U) << search;
    }
    EXPECT_EQ(valueOf(store->records("nobody")).size(), 0U);
}

}  // namespace
}  // namespace hearth::store

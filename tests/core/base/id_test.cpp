// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/id.h"

#include <gtest/gtest.h>
#include <set>
#include <thread>
#include <type_traits>
#include <unordered_set>
#include <vector>

namespace hearth {
namespace {

using PartyId = Id<struct PartyTag>;
using PremisesId = Id<struct PremisesTag>;

// Ids of different kinds do not mix.
static_assert(!std::is_convertible_v<PartyId, PremisesId> && !std::is_assignable_v<PartyId&, PremisesId>);
static_assert(!std::is_invocable_v<std::equal_to<>, PartyId, PremisesId>);
static_assert(std::is_invocable_v<std::equal_to<>, PartyId, PartyId>);

// RFC 9562 appendix A.6: the example of a version 7 UUID, made on 22 February 2022 19:22:22 UTC.
constexpr std::string_view kRfcExample = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f";
constexpr std::int64_t kRfcMilliseconds = 0x017F22E279B0;

TEST(Uuid7, hasTheLayoutOfTheRfc) {
    for (int i = 0; i < 1000; ++i) {
        const std::string text = uuidText(makeUuid7(kRfcMilliseconds));
        EXPECT_EQ(text.substr(0, 15), kRfcExample.substr(0, 15)) << text;  // the time, then the version
        EXPECT_NE(std::string("89ab").find(text[19]), std::string::npos) << text;
    }
}

TEST(Uuid7, tellsWhenItWasMade) {
    for (const std::int64_t made : {std::int64_t{0}, std::int64_t{1}, std::int64_t{1'790'000'000'123}}) {
        EXPECT_EQ(uuid7Milliseconds(makeUuid7(made)), made);
    }
    // The example of RFC 9562, appendix A.6: 017F22E2-79B0-7CC3-98C4-DC0C0C07398F, of 2022-02-22 14:22:22
    // -05:00.
    EXPECT_EQ(uuid7Milliseconds(*uuidFromText("017f22e2-79b0-7cc3-98c4-dc0c0c07398f")), 1645557742000);
    // Appendix A.3: a version 4.
    EXPECT_EQ(uuid7Milliseconds(*uuidFromText("919108f7-52d1-4320-9bac-f847db4148a8")), std::nullopt);
}

TEST(Uuid7, madeInOneMillisecondSortsInTheOrderOfMaking) {
    std::vector<UuidBytes> made;
    for (int i = 0; i < 100'000; ++i) {
        made.push_back(makeUuid7(kRfcMilliseconds));
        (void)makeUuid7(kRfcMilliseconds - 1);  // ids of other milliseconds between them change nothing
    }
    for (std::size_t i = 1; i < made.size(); ++i) {
        ASSERT_LT(made[i - 1], made[i]);
    }
}

TEST(Uuid7, aLaterMillisecondSortsLater) {
    for (std::int64_t ms : {std::int64_t{0}, std::int64_t{255}, std::int64_t{65535}, kRfcMilliseconds}) {
        EXPECT_LT(makeUuid7(ms), makeUuid7(ms + 1));
    }
}

TEST(Uuid7, isUniqueAcrossThreads) {
    constexpr std::size_t kEach = 20'000;
    std::vector<std::vector<UuidBytes>> made(4);
    std::vector<std::thread> threads;
    threads.reserve(made.size());
    for (auto& mine : made) {
        threads.emplace_back([&mine] {
            for (std::size_t i = 0; i < kEach; ++i) {
                mine.push_back(makeUuid7(kRfcMilliseconds));
            }
        });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    std::set<UuidBytes> all;
    for (const auto& mine : made) {
        all.insert(mine.begin(), mine.end());
    }
    EXPECT_EQ(all.size(), made.size() * kEach);
}

TEST(UuidText, roundTrips) {
    EXPECT_EQ(uuidText(uuidFromText(kRfcExample).value()), kRfcExample);
    for (int i = 0; i < 1000; ++i) {
        const auto bytes = makeUuid7(kRfcMilliseconds + i);
        EXPECT_EQ(uuidFromText(uuidText(bytes)), bytes);
    }
}

TEST(UuidText, anythingElseIsNothing) {
    for (const std::string_view text : {
             "",
             "017f22e2-79b0-7cc3-98c4-dc0c0c07398",    // short
             "017f22e2-79b0-7cc3-98c4-dc0c0c07398f0",  // long
             "017F22E2-79B0-7CC3-98C4-DC0C0C07398F",   // capitals: files hold one form only
             "017f22e279b0-7cc3-98c4-dc0c0c07398f-",   // hyphens elsewhere
             "017f22e2_79b0_7cc3_98c4_dc0c0c07398f",   // no hyphens
             "017f22e2-79b0-7cc3-98c4-dc0c0c07398g",   // not a digit
             "{17f22e2-79b0-7cc3-98c4-dc0c0c07398}",
         }) {
        EXPECT_FALSE(uuidFromText(text)) << text;
    }
}

TEST(Id, nullIsOnlyTheEmptyOne) {
    EXPECT_TRUE(PartyId{}.isNull());
    const PartyId id{makeUuid7(kRfcMilliseconds)};
    EXPECT_FALSE(id.isNull());
    EXPECT_EQ(id.text(), uuidText(id.bytes));
    EXPECT_NE(id, PartyId{});
}

TEST(Id, canBeAKeyOfAHashTable) {
    std::unordered_set<PartyId> ids;
    for (int i = 0; i < 1000; ++i) {
        ids.insert(PartyId{makeUuid7(kRfcMilliseconds)});
    }
    EXPECT_EQ(ids.size(), 1000U);
}

}  // namespace
}  // namespace hearth

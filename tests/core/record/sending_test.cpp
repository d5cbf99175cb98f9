// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/sending.h"

#include <gmock/gmock.h>

namespace hearth::record {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

Instant hour(int n) {
    return Instant(std::chrono::hours(n));
}
Sending sending(SentBy how, const std::string& to, int at) {
    return {how, to, {}, "R. Ashdown", hour(at)};
}

TEST(SentBy, codesAreTheirOwn) {
    for (const auto by : {SentBy::File, SentBy::Mail, SentBy::Printed, SentBy::PrintedCopy, SentBy::Shown,
                          SentBy::TextMessage}) {
        EXPECT_EQ(sentByFromCode(sentByCode(by)), by);
    }
    EXPECT_EQ(sentByFromCode("saved as PDF"), SentBy::File);
    EXPECT_EQ(sentByFromCode("void"), std::nullopt);
    EXPECT_EQ(sentByFromCode(""), std::nullopt);
}

TEST(Holders, areThoseWhoWereGivenACopy) {
    const std::vector<Sending> earlier{
        sending(SentBy::Mail, "m@harrow.example", 1), sending(SentBy::Printed, "", 2),
        sending(SentBy::Printed, "T. Nant", 3),       sending(SentBy::TextMessage, "01632 960001", 4),
        sending(SentBy::Shown, "P. Lyle", 5),         sending(SentBy::File, "M@Harrow.example", 6)};
    EXPECT_THAT(holdersToTell(earlier, {}), ElementsAre(CopyHolder{"m@harrow.example", SentBy::File, hour(6)},
                                                        CopyHolder{"T. Nant", SentBy::Printed, hour(3)}));
    EXPECT_THAT(holdersToTell(earlier, {sending(SentBy::Mail, "M@HARROW.example", 9)}),
                ElementsAre(CopyHolder{"T. Nant", SentBy::Printed, hour(3)}));
    EXPECT_THAT(holdersToTell(earlier, {sending(SentBy::TextMessage, "T. Nant", 9)}).size(), 2U)
        << "a message is no copy";
    EXPECT_THAT(holdersToTell({}, earlier), IsEmpty());
}

}  // namespace
}  // namespace hearth::record

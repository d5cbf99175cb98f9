// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/model.h"

#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace hearth::reg {
namespace {

struct Good {
    Item item;
    std::string typed;
    std::string canonical;
};

TEST(CanonicalOf, ReadsWhatPeopleType) {
    const std::vector<Good> cases{
        {Item::TightStart, "20,70", "20.70"},
        {Item::TightStart, " 20.7 ", "20.7"},
        {Item::TightEnd, "-0.04", "-0.04"},
        {Item::PurgeVolumePassed, ".01", "0.01"},
        {Item::SmellOnArrival, "yes", "yes"},
        {Item::TestSmell, "no", "no"},
        {Item::TestEdition, "ed4", "ed4"},
        {Item::PurgeDone, "not_needed", "not_needed"},
        {Item::DisturbedJointsProved, "none_disturbed", "none_disturbed"},
        {Item::TightStartedAt, "09:46", "09:46"},
        {Item::TightStartedAt, "9:46", "09:46"},
        {Item::TightStartedAt, "9.46", "09:46"},
        {Item::TightStartedAt, "0946", "09:46"},
        {Item::TightStartedAt, "946", "09:46"},
        {Item::TightEndedAt, " 23:59:59 ", "23:59:59"},
        {Item::TestGauge, "01890a5d-ac96-774b-bcce-b302099a8057", "01890a5d-ac96-774b-bcce-b302099a8057"},
        {Item::VisitRemarks, "  all \u0175ell ", "all \u0175ell"},
        {Item::VisitPresent, "", ""},
    };
    for (const auto& c : cases) {
        const auto got = canonicalOf(c.item, c.typed);
        ASSERT_TRUE(got.has_value()) << infoOf(c.item).code << " [" << c.typed << "]";
        EXPECT_EQ(*got, c.canonical) << infoOf(c.item).code << " [" << c.typed << "]";
    }
}

struct Bad {
    Item item;
    std::string typed;
    ErrorCode code;
};

TEST(CanonicalOf, SaysWhyItCannotRead) {
    const std::vector<Bad> cases{
        {Item::TightStart, "", ErrorCode::NumberMissing},
        {Item::TightStart, "about twenty", ErrorCode::NumberUnreadable},
        {Item::TightStart, "1,020.5", ErrorCode::NumberAmbiguous},
        {Item::SmellOnArrival, "perhaps", ErrorCode::ChoiceUnknown},
        {Item::SmellOnArrival, "Yes",
         ErrorCode::ChoiceUnknown},  // an entry holds the code, not the word shown
        {Item::TestSmell, "not_needed", ErrorCode::ChoiceUnknown},  // a code, but not one of this item
        {Item::TestEdition, "", ErrorCode::ChoiceUnknown},
        {Item::TightStartedAt, "", ErrorCode::TimeUnreadable},
        {Item::TightStartedAt, "24:00", ErrorCode::TimeUnreadable},
        {Item::TightStartedAt, "09:60", ErrorCode::TimeUnreadable},
        {Item::TightStartedAt, "9", ErrorCode::TimeUnreadable},
        {Item::TightStartedAt, "9:5", ErrorCode::TimeUnreadable},
        {Item::TightStartedAt, "9:", ErrorCode::TimeUnreadable},
        {Item::TightStartedAt, "12:30:00:00", ErrorCode::TimeUnreadable},
        {Item::TightStartedAt, "quarter past", ErrorCode::TimeUnreadable},
        {Item::TestGauge, "gauge no. 2", ErrorCode::ChoiceUnknown},
    };
    for (const auto& c : cases) {
        const auto got = canonicalOf(c.item, c.typed);
        ASSERT_FALSE(got.has_value()) << infoOf(c.item).code << " [" << c.typed << "] gave " << *got;
        EXPECT_EQ(got.error().code, c.code) << infoOf(c.item).code << " [" << c.typed << "]";
    }
}

TEST(CanonicalOf, IsItsOwnCanonicalForm) {
    for (const auto& info : itemCatalogue()) {
        for (const char* typed :
             {"8,62", "09:05", "yes", "ed3", "x", "01890a5d-ac96-774b-bcce-b302099a8057"}) {
            const auto once = canonicalOf(info.item, typed);
            if (once) {
                EXPECT_EQ(canonicalOf(info.item, *once), once) << info.code << " " << typed;
            }
        }
    }
}

}  // namespace
}  // namespace hearth::reg

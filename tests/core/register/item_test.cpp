// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/item.h"

#include "core/register/visit_items.h"

#include <cstddef>
#include <gmock/gmock.h>
#include <map>
#include <set>
#include <string>

namespace hearth::reg {
namespace {

TEST(ItemCatalogue, StandsInTheOrderOfTheEnumeration) {
    const auto catalogue = itemCatalogue();
    for (std::size_t i = 0; i < catalogue.size(); ++i) {
        EXPECT_EQ(static_cast<std::size_t>(catalogue[i].item), i) << catalogue[i].code;
    }
    EXPECT_EQ(sheetItems().back().item, Item::ReceivedBy);
    EXPECT_EQ(catalogue.back().item, Item::CappedLabel) << "the catalogue must end with the last item";
}

TEST(ItemCatalogue, GivesEachItemBackByItsCode) {
    std::set<std::string_view> codes;
    for (const auto& info : itemCatalogue()) {
        EXPECT_TRUE(codes.insert(info.code).second) << info.code << " is used twice";
        EXPECT_EQ(itemFromCode(info.code), info.item);
        EXPECT_EQ(infoOf(info.item).code, info.code);
    }
    EXPECT_EQ(itemFromCode("test.no_such_item"), std::nullopt);
    EXPECT_EQ(itemFromCode(""), std::nullopt);
}

TEST(ItemCatalogue, NamesTheSubjectInTheCode) {
    for (const auto& info : sheetItems()) {
        const std::string_view prefix = info.subject == SubjectKind::Visit ? "visit." : "test.";
        EXPECT_THAT(std::string(info.code), testing::StartsWith(std::string(prefix)));
    }
}

TEST(ItemCatalogue, NamesTheSubjectOfWhatAVisitAsksBeyondThePipework) {
    const std::map<SubjectKind, std::set<std::string>> prefixes{
        {SubjectKind::Visit, {"visit"}},
        {SubjectKind::Appliance, {"appliance", "commissioning", "service"}},
        {SubjectKind::Room, {"room"}},
        {SubjectKind::Situation, {"situation"}}};
    for (const auto& info : visitItems()) {
        const std::string prefix(info.code.substr(0, info.code.find('.')));
        EXPECT_EQ(prefixes.at(info.subject).count(prefix), 1U) << info.code;
    }
}

TEST(ItemCatalogue, HasChoicesExactlyWhereOneIsChosen) {
    for (const auto& info : itemCatalogue()) {
        const bool chosen = info.kind == ItemKind::Choice || info.kind == ItemKind::YesNo;
        EXPECT_EQ(info.choices.empty(), !chosen) << info.code;
        std::set<std::string_view> codes;
        for (const auto& choice : info.choices) {
            EXPECT_TRUE(codes.insert(choice.code).second) << info.code << " " << choice.code;
        }
    }
}

TEST(ItemCatalogue, HasUnitsExactlyForNumbers) {
    for (const auto& info : itemCatalogue()) {
        // A bare number (a count, a ratio) has none.
        EXPECT_TRUE(info.units == quantity::UnitFamily::None || info.kind == ItemKind::Number) << info.code;
    }
}

// Files hold these; they never change. Written out here by hand, so that a renamed code is noticed.
TEST(ItemCatalogue, KeepsItsCodes) {
    EXPECT_EQ(infoOf(Item::SmellOnArrival).code, "visit.smell_on_arrival");
    EXPECT_EQ(infoOf(Item::TightStart).code, "test.tight_start");
    EXPECT_EQ(infoOf(Item::TightEnd).code, "test.tight_end");
    EXPECT_EQ(infoOf(Item::LetByStart).code, "test.let_by_start");
    EXPECT_EQ(infoOf(Item::RetestEnd).code, "test.retest_end");
    EXPECT_EQ(infoOf(Item::TestGauge).code, "test.gauge");
    EXPECT_EQ(infoOf(Item::TestPipesShut).code, "test.pipes_shut");
    EXPECT_EQ(infoOf(Item::TestVolumeOff).code, "test.volume_off");
    EXPECT_EQ(infoOf(Item::PurgeVolumePassed).code, "test.purge_volume_passed");
    EXPECT_EQ(sheetItems().size(), 53U);
    EXPECT_EQ(infoOf(Item::SafeToUse).code, "appliance.safe_to_use");
    EXPECT_EQ(infoOf(Item::CheckCovered).code, "appliance.check_covered");
    EXPECT_EQ(infoOf(Item::RoomCoAlarm).code, "room.co_alarm");
    EXPECT_EQ(infoOf(Item::SituationPermission).code, "situation.permission");
}

}  // namespace
}  // namespace hearth::reg

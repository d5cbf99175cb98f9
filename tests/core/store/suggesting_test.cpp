// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/suggesting.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

class Suggesting : public KeptTest {
  protected:
    reg::ApplianceId used(const std::string& make, const std::string& model, const std::string& place = "") {
        reg::Appliance appliance;
        appliance.id = {store->newId()};
        appliance.installation = sample.installation.id;
        appliance.make = make;
        appliance.model = model;
        appliance.place = place;
        valueOf(store->save(appliance));
        return appliance.id;
    }
    [[nodiscard]] std::vector<std::string> makes(const std::string& typed) const {
        return valueOf(store->suggestions(Suggest::Make, typed));
    }
};

TEST_F(Suggesting, whatWasUsedOftenComesFirst) {
    used("Ashgrove", "A");
    used("Emberline", "B");
    used("Emberline", "C");
    EXPECT_THAT(makes(""), ElementsAre("Emberline", "Ashgrove"));
    EXPECT_THAT(makes("a"), ElementsAre("Ashgrove"));
    EXPECT_THAT(makes("EMB"), ElementsAre("Emberline"));
    EXPECT_THAT(makes("mber"), IsEmpty());
    EXPECT_EQ(valueOf(store->suggestions(Suggest::Make, "", "", 1)).size(), 1U);
}

TEST_F(Suggesting, whatWasUsedLatelyOvertakesWhatWasUsedOftenLongAgo) {
    used("Ashgrove", "A");
    used("Ashgrove", "B");
    used("Ashgrove", "C");
    clock.advance(std::chrono::hours(24 * 365 * 3));
    used("Emberline", "D");
    EXPECT_THAT(makes(""), ElementsAre("Emberline", "Ashgrove"));
}

// The worth halves with each year: by hand.
TEST_F(Suggesting, aYearHalvesTheWorth) {
    EXPECT_DOUBLE_EQ(suggestionWorth(3, 0), 3);
    EXPECT_DOUBLE_EQ(suggestionWorth(3, 365.25), 1.5);
    EXPECT_DOUBLE_EQ(suggestionWorth(8, 3 * 365.25), 1);
    EXPECT_DOUBLE_EQ(suggestionWorth(3, -5), 3);  // a clock that was set back
}

TEST_F(Suggesting, modelsAreThoseOfTheMake) {
    used("Ashgrove", "Alder 24");
    used("Emberline", "Alder 30");
    EXPECT_THAT(valueOf(store->suggestions(Suggest::Model, "al", "ashgrove")), ElementsAre("Alder 24"));
    EXPECT_EQ(valueOf(store->suggestions(Suggest::Model, "al")).size(), 2U);
}

TEST_F(Suggesting, placesTubesAndTownsComeFromWhatIsKept) {
    used("", "", "kitchen");
    used("", "", "Kitchen");
    used("", "", "loft");
    EXPECT_EQ(valueOf(store->suggestions(Suggest::Place, "k")).size(), 1U);
    reg::PipeSection pipe;
    pipe.id = {store->newId()};
    pipe.installation = sample.installation.id;
    pipe.tubeCode = "copper_22";
    valueOf(store->savePipes(sample.installation.id, {pipe}));
    EXPECT_THAT(valueOf(store->suggestions(Suggest::TubeCode, "")), ElementsAre("copper_22"));
    EXPECT_THAT(valueOf(store->suggestions(Suggest::Town, "ash")), ElementsAre("Ashwick"));
}

TEST_F(Suggesting, nothingComesFromTheBin) {
    const auto binned = used("Ashgrove", "A", "cellar");
    valueOf(store->putIntoBin("appliances", binned.bytes, "A"));
    EXPECT_THAT(makes("a"), IsEmpty());
    EXPECT_THAT(makes(""), IsEmpty());
    EXPECT_THAT(valueOf(store->suggestions(Suggest::Place, "c")), IsEmpty());
}

TEST_F(Suggesting, theLastAppliancesAreThoseWithReadingsAtTheNewestVisit) {
    const auto last = [&] {
        std::vector<reg::ApplianceId> ids;
        for (const auto& appliance : valueOf(store->lastAppliances(sample.premises.id))) {
            ids.push_back(appliance.id);
        }
        return ids;
    };
    const auto boiler = used("Ashgrove", "A");
    const auto hob = used("Emberline", "B");
    EXPECT_THAT(last(), ElementsAre(boiler, hob));
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    valueOf(store->saveEntry(applianceEntry(visit, hob, "40")));
    EXPECT_THAT(last(), ElementsAre(hob));
    auto removed = valueOf(store->appliance(hob));
    removed.removedOn = day(2026, 11, 25);
    valueOf(store->save(removed));
    EXPECT_THAT(last(), IsEmpty());
}

}  // namespace
}  // namespace hearth::store

// SPDX-License-Identifier: GPL-3.0-or-later
// Leaks by hand: Q = V dp / 1013.25 mbar / t (Boyle's law, textbook); the readings are invented.
#include "core/judging/leak_hunt.h"

#include "tests/core/judging/scenario.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using quantity::kLitre;
using quantity::kLitrePerHour;
using reg::Item;
using tightness::LeakPlacesSay;
using Kind = HuntPlace::Kind;

/// Two branches from the meter, 22 mm to the boiler and 15 mm to the hob, and as many tests as are added. A
/// gauge of 0.01 mbar; the gas is taken to keep its temperature, so that small falls can be told.
class LeakHuntTest : public ::testing::Test {
  protected:
    LeakHuntTest() {
        file.pipes[0].leadsTo = "Boiler";
        file.pipes[1].leadsTo = "hob";
    }
    reg::TestId addTest(const char* start, const char* end, const char* shut, const char* appliances) {
        reg::Test test;
        test.id.bytes.fill(static_cast<std::uint8_t>(0x40 + file.tests.size()));
        test.visit = file.visit.id;
        file.tests.push_back(test);
        enterOf(test.id, Item::TestGauge, file.instruments.front().id.text());
        enterOf(test.id, Item::TestExtent, "whole");
        enterOf(test.id, Item::TestAppliances, appliances);
        enterOf(test.id, Item::AssumedTemperatureChange, "0");
        enterOf(test.id, Item::TightStart, start);
        enterOf(test.id, Item::TightEnd, end);
        enterOf(test.id, Item::TightStartedAt, "10:00:00");
        enterOf(test.id, Item::TightEndedAt, "10:02:00");
        enterOf(test.id, Item::TestPipesShut, shut);
        return test.id;
    }
    void enterOf(reg::TestId test, Item item, std::string_view text) {
        reg::Entry entry;
        entry.visit = file.visit.id;
        entry.subject = reg::subject(test);
        entry.item = item;
        entry.text = text;
        const auto family = reg::infoOf(item).units;
        entry.unit = family == quantity::UnitFamily::None ? quantity::UnitCode::None
                                                          : quantity::unitsOf(family).front();
        entry.canonical = reg::canonicalOf(item, entry.text).value_or("");
        file.entries.push_back(entry);
    }
    [[nodiscard]] LeakHunt hunt() const { return huntLeak(file, book, {}); }
    /// Those places whose group surely leaks.
    [[nodiscard]] static std::vector<HuntPlace> leaking(const LeakHunt& hunt) {
        std::vector<HuntPlace> places;
        for (const auto& group : hunt.told.groups) {
            for (const auto place : group.places) {
                if (group.surelyLeaks()) {
                    places.push_back(hunt.places[place]);
                }
            }
        }
        return places;
    }

    reg::VisitFile file = scenario::commonPractice("2026-11-25", "ed_4");
    rulebook::RuleBook book = scenario::confirmedBook();
};

TEST_F(LeakHuntTest, OneTestIsNoComparison) {
    EXPECT_FALSE(hunt().isOne());
    EXPECT_EQ(hunt().tests.size(), 1U);
}

TEST_F(LeakHuntTest, FindsTheBranchThatWasShut) {
    file.tests.clear();
    addTest("20.50", "19.50", "", "isolated");
    addTest("20.50", "20.50", "2", "isolated");
    const auto found = hunt();
    ASSERT_TRUE(found.isOne());
    EXPECT_EQ(found.told.says, LeakPlacesSay::OneLeaks);
    EXPECT_EQ(leaking(found), (std::vector<HuntPlace>{{Kind::Pipe, 1}}));
    // The first reached more by the 15 mm pipe: its volume is in the leak, Q = V * 1.00 / 1013.25 / 2 min.
    ASSERT_TRUE(found.tests[0].leak && found.tests[0].volume && found.tests[1].volume);
    EXPECT_GT(*found.tests[0].volume, *found.tests[1].volume);
    EXPECT_NEAR(found.tests[0].leak->best.in(kLitrePerHour),
                found.tests[0].volume->in(kLitre)*1.00 / 1013.25 * 30.0, 1e-6);
    EXPECT_NEAR(found.tests[1].leak->best.in(kLitrePerHour), 0.0, 1e-9);
}

TEST_F(LeakHuntTest, KnowsAPipeByWhatItLeadsTo) {
    file.tests.clear();
    addTest("20.50", "19.50", "", "isolated");
    addTest("20.50", "19.50", " BOILER ", "isolated");
    const auto found = hunt();
    EXPECT_EQ(found.tests[1].shut, std::vector<std::size_t>{0});
    EXPECT_TRUE(found.isOne());
}

// How far a volume may be off, and the gauge's drift, are in each test's interval where they are said; by
// hand as leak_rate.h adds them: 1 mbar of fall, a quarter of it for the volume, 0.1 mbar for the drift of
// two minutes.
TEST_F(LeakHuntTest, TakesInHowFarAVolumeMayBeOffAndTheGaugesDrift) {
    file.tests.clear();
    addTest("20.50", "19.50", "", "isolated");
    addTest("20.50", "20.50", "2", "isolated");
    const auto exact = hunt();
    EXPECT_TRUE(exact.tests[0].isVolumeExact);
    enterOf(file.tests[0].id, Item::TestVolumeOff, "25");
    for (auto& instrument : file.instruments) {
        instrument.drift = {"0.05", quantity::UnitCode::Millibar};
    }
    const auto loose = hunt();
    EXPECT_FALSE(loose.tests[0].isVolumeExact);
    EXPECT_TRUE(loose.tests[1].isVolumeExact);
    EXPECT_EQ(loose.tests[0].leak->best, exact.tests[0].leak->best);
    const auto half = [](const HuntedTest& test) {
        return (test.leak->most - test.leak->best).in(kLitrePerHour);
    };
    const double perMillibar = loose.tests[0].volume->in(kLitre) / 1013.25 * 30.0;
    const double more = 4.0 * (0.25 * 0.25 + 0.1 * 0.1) / 3.0;
    EXPECT_NEAR(half(loose.tests[0]),
                std::sqrt(half(exact.tests[0]) * half(exact.tests[0]) + perMillibar * perMillibar * more),
                1e-6);
}

TEST_F(LeakHuntTest, TellsAnApplianceFromItsPipe) {
    file.tests.clear();
    addTest("20.50", "19.50", "", "connected");
    addTest("20.50", "20.50", "", "isolated");
    addTest("20.50", "20.50", "1", "connected");  // all but the boiler's branch: still
    const auto found = hunt();
    EXPECT_EQ(found.told.says, LeakPlacesSay::OneLeaks);
    EXPECT_EQ(leaking(found), (std::vector<HuntPlace>{{Kind::Appliance, 0}}));
}

TEST_F(LeakHuntTest, TakesTheRepeatWithAppliancesIsolatedAsATest) {
    file.tests.clear();
    const auto test = addTest("20.50", "19.50", "", "connected");
    enterOf(test, Item::RetestStart, "20.50");
    enterOf(test, Item::RetestEnd, "20.50");
    enterOf(test, Item::RetestStartedAt, "10:10:00");
    enterOf(test, Item::RetestEndedAt, "10:12:00");
    const auto found = hunt();
    ASSERT_EQ(found.tests.size(), 2U);
    EXPECT_TRUE(found.tests[1].isRetest);
    EXPECT_EQ(found.told.says, LeakPlacesSay::OneLeaks);
    EXPECT_EQ(leaking(found), (std::vector<HuntPlace>{{Kind::Appliance, 0}, {Kind::Appliance, 1}}));
}

TEST_F(LeakHuntTest, ShutsOffWhatFollows) {
    file.tests.clear();
    file.pipes[1].after = file.pipes[0].id;
    addTest("20.50", "19.50", "", "isolated");
    addTest("20.50", "20.50", "1", "isolated");
    EXPECT_EQ(leaking(hunt()), (std::vector<HuntPlace>{{Kind::Pipe, 0}, {Kind::Pipe, 1}}));
}

/// What was found stays found when it is mended and tested again; a search after that is one of its own.
TEST_F(LeakHuntTest, EndsAComparisonWhereSomethingWasMended) {
    file.tests.clear();
    addTest("20.50", "19.50", "", "isolated");
    addTest("20.50", "20.50", "2", "isolated");
    addTest("20.50", "20.50", "", "isolated");
    const auto found = hunt();
    EXPECT_EQ(leaking(found), (std::vector<HuntPlace>{{Kind::Pipe, 1}}));
    EXPECT_EQ(found.tests[1].lacks, HuntLacks::Nothing);
    EXPECT_EQ(found.tests[2].lacks, HuntLacks::Changed);
    addTest("20.50", "20.50", "2", "isolated");
    EXPECT_EQ(hunt().told.says, LeakPlacesSay::NoneShown);
    EXPECT_EQ(hunt().tests[0].lacks, HuntLacks::Changed);
}

/// More was reached, and less leaked: no leaks make both. The later test begins a comparison of its own.
TEST_F(LeakHuntTest, BeginsAnewWhereMoreWasReachedAndLessLeaked) {
    file.tests.clear();
    addTest("20.50", "19.50", "2", "isolated");
    addTest("20.50", "20.50", "", "isolated");
    EXPECT_EQ(hunt().told.says, LeakPlacesSay::Disagree) << "there is nothing else to compare them with";
    EXPECT_EQ(hunt().tests[0].lacks, HuntLacks::Nothing);
    addTest("20.50", "20.50", "2", "isolated");
    const auto found = hunt();
    EXPECT_EQ(found.told.says, LeakPlacesSay::NoneShown);
    EXPECT_EQ(found.tests[0].lacks, HuntLacks::Changed);
    EXPECT_EQ(found.tests[1].lacks, HuntLacks::Nothing);
}

/// What is not known is said, and is not compared: each of these alone.
TEST_F(LeakHuntTest, SaysWhyATestCantBeCompared) {
    const auto lacks = [this](const auto& change) {
        file.tests.clear();
        file.entries.clear();
        const auto test = addTest("20.50", "19.50", "", "isolated");
        change(test);
        return hunt().tests.front();
    };
    EXPECT_EQ(lacks([](auto) {}).lacks, HuntLacks::Nothing);
    const auto typo = lacks([this](auto test) { enterOf(test, Item::TestPipesShut, "1; kitchen"); });
    EXPECT_EQ(typo.lacks, HuntLacks::Nothing) << "the first entry counts, which is empty";
    const auto remove = [this](Item item) {
        return [this, item](auto) {
            file.entries.erase(std::remove_if(file.entries.begin(), file.entries.end(),
                                              [item](const auto& entry) { return entry.item == item; }),
                               file.entries.end());
        };
    };
    EXPECT_EQ(lacks(remove(Item::TestAppliances)).lacks, HuntLacks::Appliances);
    EXPECT_EQ(lacks(remove(Item::TightEnd)).lacks, HuntLacks::Readings);
    EXPECT_EQ(lacks(remove(Item::TestGauge)).lacks, HuntLacks::Gauge);
    const auto shut = lacks([&](auto test) {
        remove(Item::TestPipesShut)(test);
        enterOf(test, Item::TestPipesShut, "1; kitchen");
    });
    EXPECT_EQ(shut.lacks, HuntLacks::PipesShut);
    EXPECT_EQ(shut.unread, "kitchen");
    const auto order = lacks([&](auto test) {
        remove(Item::TestPipesShut)(test);
        enterOf(test, Item::TestPipesShut, "1");
        file.pipes[1].after = file.pipes[1].id;
    });
    EXPECT_EQ(order.lacks, HuntLacks::PipeOrder);
    file.pipes[1].after.reset();
    file.pipes[0].length = {"long", quantity::UnitCode::Metre};
    EXPECT_EQ(lacks([](auto) {}).lacks, HuntLacks::Volume);
}

/// The trace's leak counts before the readings', for the volume that the test reached.
TEST_F(LeakHuntTest, GoesByTheTraceWhereThereIsOne) {
    file.tests.clear();
    addTest("20.50", "20.50", "", "isolated");
    const auto test = addTest("20.50", "20.50", "2", "isolated");
    TraceSeen seen;
    seen.test = test;
    seen.asked.volume = quantity::Volume(20.0, kLitre);
    tightness::TraceFit fit;
    const auto flow = [](double litres) { return quantity::Flow(litres, kLitrePerHour); };
    fit.leak = {flow(2.0), flow(1.8), flow(2.2)};
    fit.isIdentified = true;
    tightness::FitComponent curve;
    curve.weight = 1.0;
    curve.mean = {20.5, 0.0, 0.0};
    fit.components = {curve};
    seen.told.test = fit;
    seen.told.says = tightness::TraceSays::Leak;
    const auto found = huntLeak(file, book, std::vector{seen});
    ASSERT_TRUE(found.tests[1].isByTrace);
    const double share = found.tests[1].volume->in(kLitre) / 20.0;
    EXPECT_NEAR(found.tests[1].leak->best.in(kLitrePerHour), 2.0 * share, 1e-3);
    EXPECT_GT(found.tests[1].leak->least, quantity::Flow{});
    auto lesser = seen;
    lesser.told.says = tightness::TraceSays::Still;
    EXPECT_LE(huntLeak(file, book, std::vector{lesser}).tests[1].leak->least, quantity::Flow{})
        << "what the trace does not call a leak is none here";
    auto newer = seen;
    newer.told.says = tightness::TraceSays::LetsBy;
    EXPECT_FALSE(huntLeak(file, book, std::vector{seen, newer}).tests[1].isByTrace) << "the newest counts";
    seen.told.test->isIdentified = false;
    EXPECT_FALSE(huntLeak(file, book, std::vector{seen}).tests[1].isByTrace);
}

}  // namespace
}  // namespace hearth::judging

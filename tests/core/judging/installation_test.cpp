// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/installation.h"

#include "core/quantity/units.h"
#include "tests/core/judging/scenario.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using namespace scenario;
using quantity::kCubicMetre;
using quantity::kMillibar;
using reg::Item;

const auto kBook = rulebook::RuleBook::shipped();

Volumes volumes(const reg::VisitFile& file) {
    return volumesOf(file, Readings(file, reg::subject(file.tests.front().id)), kBook);
}

// 0.008 + (6 x 0.00032 + 9 x 0.00014) x 1.1: certification body's pocket guide Gas 2 for meter, 15 mm and the
// rule.
constexpr double kWhole = 0.011498;

TEST(Volumes, WholeCountsEverySectionWhateverItsMark) {
    auto file = commonPractice("2026-11-10", "ed4");
    file.pipes.front().underTest = false;
    EXPECT_NEAR(volumes(file).tested.total->in(kCubicMetre), kWhole, 1e-9);
}

TEST(Volumes, PartCountsTheMarkedSectionsAndTheScopeTheWhole) {
    auto file = commonPractice("2026-11-10", "ed4");
    enter(file, Item::TestExtent, "part");
    file.pipes.front().underTest = false;
    const auto report = volumes(file);
    EXPECT_NEAR(report.tested.total->in(kCubicMetre), 0.009386, 1e-9);
    EXPECT_NEAR(report.whole.total->in(kCubicMetre), kWhole, 1e-9);
    EXPECT_EQ(report.tested.largestNominal, 15);
    EXPECT_EQ(report.whole.largestNominal, 22);
    EXPECT_NEAR(volumeOf(file, kBook).total->in(kCubicMetre), 0.009386, 1e-9);
}

TEST(Volumes, TypedVolumeOfAPartIsNotTheWholes) {
    auto file = commonPractice("2026-11-10", "ed4");
    enter(file, Item::TestVolumeTyped, "0.012");
    EXPECT_NEAR(volumes(file).whole.total->in(kCubicMetre), 0.012, 1e-12);
    enter(file, Item::TestExtent, "part");
    EXPECT_NEAR(volumes(file).tested.total->in(kCubicMetre), 0.012, 1e-12);
    EXPECT_NEAR(volumes(file).whole.total->in(kCubicMetre), kWhole, 1e-9);
}

TEST(Volumes, WhatCannotBeReadIsNotReplacedSilently) {
    auto file = commonPractice("2026-11-10", "ed4");
    enter(file, Item::TestVolumeTyped, "about 0.012");
    EXPECT_FALSE(volumes(file).tested.total);
    auto meter = commonPractice("2026-11-10", "ed4");
    meter.installation.meterVolume.text = "eight litres";
    EXPECT_FALSE(volumes(meter).tested.total);
    auto section = commonPractice("2026-11-10", "ed4");
    section.pipes.front().volume.text = "x";
    EXPECT_FALSE(volumes(section).tested.total);
}

TEST(Volumes, FittingsShareIsTheRuleBooks) {
    auto book = rulebook::RuleBook::shipped();
    const quantity::Figure none{quantity::Decimal(0, 0), quantity::UnitCode::None};
    ASSERT_TRUE(book.lay(
        {{rulebook::Rule::FittingsShare}, none, "Ada Marlow", *calendar::fromIso("2026-10-02"), "x"}));
    const auto file = commonPractice("2026-11-10", "ed4");
    EXPECT_NEAR(volumeOf(file, book).total->in(kCubicMetre), 0.008 + 6 * 0.00032 + 9 * 0.00014, 1e-9);
}

TEST(GaugeFrom, InstrumentsThatReadPressure) {
    reg::Instrument instrument;
    instrument.resolution = {"0,01", quantity::UnitCode::Millibar};
    instrument.accuracy = {"20", quantity::UnitCode::Pascal};
    instrument.repeatability = {"0", quantity::UnitCode::Millibar};
    const auto gauge = gaugeFrom(instrument);
    ASSERT_TRUE(gauge);
    EXPECT_DOUBLE_EQ(gauge->resolution->in(kMillibar), 0.01);
    EXPECT_DOUBLE_EQ(gauge->accuracy->in(kMillibar), 0.2);
    EXPECT_FALSE(gauge->repeatability) << "nought says nothing";
    instrument.kind = reg::InstrumentKind::WaterGauge;
    EXPECT_EQ(gaugeFrom(instrument)->kind, tightness::GaugeKind::Water);
    for (const auto kind : {reg::InstrumentKind::LeakDetector, reg::InstrumentKind::VoltageIndicator,
                            reg::InstrumentKind::Other}) {
        instrument.kind = kind;
        EXPECT_FALSE(gaugeFrom(instrument));
    }
}

TEST(Conduct, IsWhatWasEntered) {
    auto file = commonPractice("2026-11-10", "ed4");
    const auto conduct = [&] { return conductOf(Readings(file, reg::subject(file.tests.front().id))); };
    EXPECT_EQ(conduct().work, tightness::Work::Existing);
    EXPECT_EQ(conduct().appliances, tightness::Appliances::Connected);
    EXPECT_EQ(conduct().pilots, tightness::Pilots::Out);
    EXPECT_EQ(conduct().smell, false);
    enter(file, Item::TestWork, "refurbished");  // a code that this program does not know
    EXPECT_FALSE(conduct().work);
}

}  // namespace
}  // namespace hearth::judging

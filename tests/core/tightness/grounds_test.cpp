// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/grounds.h"

#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Edition;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;

Change fallOf(double value) {
    return changeBetween(electronic(), reading(20.5), reading(20.5 - value));
}

const rulebook::RuleKey kBands{Rule::DropByVolume, Edition::Up1bEd4, Gas::NaturalGas};

std::string figureText(const rulebook::Sentence& sentence, std::size_t argument) {
    return std::get<quantity::Figure>(sentence.arguments.at(argument)).value.text();
}

TEST(Sentences, GiveFallThresholdAndUncertainty) {
    const auto book = allConfirmed();
    const Movement movement{fallOf(0.3), movementThreshold(electronic(), edition4(book))};
    const auto fall = fallSentence(Say::RetestMoved, movement);
    EXPECT_EQ(fall.say, Say::RetestMoved);
    EXPECT_EQ(figureText(fall, 0), "0.30");
    EXPECT_EQ(figureText(fall, 1), "0.2");
    const auto near = atLimitSentence(movement.change, *rulebook::figureOf(*movement.threshold));
    EXPECT_EQ(near.say, Say::AtLimit);
    EXPECT_EQ(figureText(near, 0), "0.30");
    EXPECT_EQ(figureText(near, 1), "0.2");
    EXPECT_EQ(figureText(near, 2), "0.018") << "2 sqrt(2/3) 0.01 sqrt(1/4 + 1) by GUM 4.3.7, from memory";
}

// Thresholds of perceptible movement: 0.2 mbar electronic, 0.25 mbar water (trainees' revision cards and an
// exam revision page, the stricter of their figures).
TEST(ByNoMovement, TheThresholdDecides) {
    const auto book = allConfirmed();
    const auto judgedBy = [&](const Gauge& gauge, const Change& change) {
        return byNoMovement({change, movementThreshold(gauge, edition4(book))}, Say::RetestMoved);
    };
    EXPECT_EQ(judgedBy(electronic(), fallOf(0.0)).outcome, Outcome::Pass);
    EXPECT_EQ(judgedBy(electronic(), fallOf(0.17)).why.say, Say::TightNoMovement);
    EXPECT_EQ(judgedBy(electronic(), fallOf(0.2)).outcome, Outcome::LookAgain) << "at it";
    EXPECT_EQ(judgedBy(electronic(), fallOf(0.19)).why.say, Say::AtLimit) << "within 0.018 of it";
    EXPECT_EQ(judgedBy(electronic(), fallOf(0.23)).outcome, Outcome::Fail);
    EXPECT_EQ(judgedBy(electronic(), fallOf(0.23)).why.say, Say::RetestMoved);
    const auto halfDivision = changeBetween(water(), reading(20.5, 0.25), reading(20.25, 0.25));
    EXPECT_EQ(judgedBy(water(), halfDivision).outcome, Outcome::LookAgain);
}

// Edition 3, natural gas, pipe to 28 mm: 4 mbar for a U6, 8 mbar for an ultrasonic meter (trainees' revision
// cards).
TEST(ByDropClass, TheDropOfTheClassDecides) {
    const auto book = allConfirmed();
    EXPECT_EQ(byDropClass(fallOf(3.9), part("u6_g4", 22), edition3(book)).outcome, Outcome::Pass);
    EXPECT_EQ(byDropClass(fallOf(4.0), part("u6_g4", 22), edition3(book)).outcome, Outcome::LookAgain);
    EXPECT_EQ(byDropClass(fallOf(4.1), part("u6_g4", 22), edition3(book)).why.say, Say::FallBeyondDrop);
    EXPECT_EQ(byDropClass(fallOf(4.1), part("e6", 22), edition3(book)).outcome, Outcome::Pass);
    EXPECT_EQ(byDropClass(fallOf(0.5), part("u25_g16", 22), edition3(book)).why.say, Say::DropClassUnknown);
    const auto unread = byDropClass(fallOf(0.5), part("u6_g4", 35), edition3(book));
    EXPECT_EQ(unread.outcome, Outcome::NoVerdict) << "that cell is empty";
    EXPECT_EQ(unread.why.say, Say::LimitMissing);
}

TEST(ByShortCut, HoldsBelowOneMillibarAndIsSilentBeyond) {
    const auto book = allConfirmed();
    EXPECT_EQ(byShortCut(fallOf(0.9), edition4(book))->outcome, Outcome::Pass);
    EXPECT_EQ(byShortCut(fallOf(1.0), edition4(book))->why.say, Say::AtLimit);
    EXPECT_FALSE(byShortCut(fallOf(1.1), edition4(book)));
    EXPECT_FALSE(byShortCut(fallOf(0.5), edition3(book))) << "Edition 3 has none";
    EXPECT_FALSE(byShortCut(fallOf(0.5), edition4(book, Gas::Propane))) << "natural gas only";
}

struct BandCase {
    double volume;
    double fall;
    Outcome outcome;
    Say why;
};

TEST(ByBands, TheBandOfTheVolumeDecides) {
    auto book = allConfirmed();
    layBands(book, kBands);  // to 0.01 m3: 4 mbar; to 0.035 m3: 2 mbar
    const BandCase cases[] = {
        {0.009, 3.0, Outcome::Pass, Say::TightWithinDrop}, {0.010, 3.0, Outcome::Pass, Say::TightWithinDrop},
        {0.0101, 3.0, Outcome::Fail, Say::FallBeyondDrop}, {0.009, 4.5, Outcome::Fail, Say::FallBeyondDrop},
        {0.035, 2.0, Outcome::LookAgain, Say::AtLimit},    {0.036, 0.5, Outcome::NoVerdict, Say::BeyondBands},
    };
    for (const auto& c : cases) {
        const auto finding = byBands(fallOf(c.fall), part("u6_g4", 22, c.volume), edition4(book));
        EXPECT_EQ(finding.outcome, c.outcome) << c.volume << ' ' << c.fall;
        EXPECT_EQ(finding.why.say, c.why) << c.volume << ' ' << c.fall;
    }
    auto unknown = part("u6_g4", 22);
    unknown.volume.reset();
    EXPECT_EQ(byBands(fallOf(2), unknown, edition4(book)).why.say, Say::VolumeUnknown);
}

// The withdrawn Edition 3's 4 mbar (G4, pipe to 28 mm; revision cards) is told for information and decides
// nothing.
TEST(ByBands, EmptyBandsSayWhatEdition3WouldHaveAllowed) {
    const auto book = allConfirmed();
    const auto finding = byBands(fallOf(2), part("u6_g4", 22), edition4(book));
    EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(finding.why.say, Say::BandsEmpty);
    ASSERT_EQ(finding.notes.size(), 1U);
    EXPECT_EQ(finding.notes.front().say, Say::Ed3WouldAllow);
    EXPECT_EQ(std::get<quantity::Figure>(finding.notes.front().arguments.front()).value.text(), "4");
    EXPECT_FALSE(says(byBands(fallOf(2), part("u6_g4", 35), edition4(book)), Say::Ed3WouldAllow))
        << "that cell is empty";
}

TEST(BandLookUp, NamesTheBand) {
    auto book = allConfirmed();
    EXPECT_EQ(bandLookUp(part("u6_g4", 22), edition4(book)).outcome, Outcome::NoVerdict);
    layBands(book, kBands);
    const auto found = bandLookUp(part("u6_g4", 22, 0.012), edition4(book));
    EXPECT_EQ(found.outcome, Outcome::Pass);
    EXPECT_EQ(found.limit->value.text(), "0.035");
    EXPECT_EQ(bandLookUp(part("u6_g4", 22, 0.05), edition4(book)).why.say, Say::BeyondBands);
}

TEST(ByRise, OnlyWhatIsPerceptible) {
    const auto book = allConfirmed();
    const auto* threshold = movementThreshold(electronic(), edition4(book));
    const auto rise = [&](double value) {
        return byRise(FindingKind::Tightness, {fallOf(-value), threshold});
    };
    EXPECT_FALSE(rise(0.04));
    EXPECT_EQ(rise(0.2)->why.say, Say::AtLimit);
    EXPECT_EQ(rise(0.5)->why.say, Say::RiseDuringTest);
    EXPECT_EQ(rise(0.5)->outcome, Outcome::LookAgain);
    EXPECT_FALSE(rise(-5));
}

TEST(Better, IsTheLessGraveAndTheFirstOfEquals) {
    const auto of = [](Outcome outcome, Say say) {
        return rulebook::plainFinding(FindingKind::Tightness, outcome, say);
    };
    EXPECT_EQ(better(of(Outcome::Fail, Say::RetestMoved), of(Outcome::Pass, Say::BandUsed)).why.say,
              Say::BandUsed);
    EXPECT_EQ(better(of(Outcome::Pass, Say::BandUsed), of(Outcome::Fail, Say::RetestMoved)).why.say,
              Say::BandUsed);
    EXPECT_EQ(better(of(Outcome::Pass, Say::BandUsed), of(Outcome::Pass, Say::RetestClear)).why.say,
              Say::BandUsed);
}

}  // namespace
}  // namespace hearth::tightness

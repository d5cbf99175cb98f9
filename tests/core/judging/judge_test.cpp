// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/judge.h"

#include "core/rulebook/conclude.h"
#include "tests/core/judging/scenario.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using namespace scenario;
using reg::Item;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Provenance;
using rulebook::RuleBook;
using rulebook::Say;

Finding finding(const reg::VisitFile& file, const RuleBook& book, FindingKind kind) {
    const auto judged = judge(file, book);
    const auto* found = findingOf(judged, kind);
    return found == nullptr ? rulebook::noVerdict(kind, {Say::ReadingMissing}) : found->finding;
}

reg::VisitFile withFall(std::string_view date, std::string_view edition, std::string_view end) {
    auto file = commonPractice(date, edition);
    enter(file, Item::TightEnd, end);
    return file;
}

RuleBook withEdition3DropsConfirmed() {
    auto book = confirmedBook();
    const auto shipped = book;
    for (const auto& entry : shipped.entries()) {
        const auto rule = entry.key.rule;
        if (rule >= rulebook::Rule::DropNoMeter28 && rule <= rulebook::Rule::DropDiaphragm16At35 &&
            entry.isKnown()) {
            EXPECT_TRUE(
                book.lay({entry.key, entry.value, "Ada Marlow", *calendar::fromIso("2026-03-02"), "copy"}));
        }
    }
    return book;
}

// The gas register's bulletin: Edition 3 to 30 September 2026, Edition 4 alone from 1 October. Edition 3's 4
// mbar for a G4 meter and pipe to 28 mm: trainees' revision cards.
TEST(SameDrop, IsJudgedByTheEditionOfItsDay) {
    const auto book = withEdition3DropsConfirmed();
    const auto before = finding(withFall("2026-09-30", "ed3", "18.03"), book, FindingKind::Tightness);
    EXPECT_EQ(before.outcome, Outcome::Pass);
    EXPECT_EQ(before.why.say, Say::TightWithinDrop);
    EXPECT_EQ(before.measured->value.text(), "2.50");
    EXPECT_EQ(before.limit->value.text(), "4");

    const auto after = finding(withFall("2026-10-01", "ed4", "18.03"), book, FindingKind::Tightness);
    EXPECT_EQ(after.outcome, Outcome::NoVerdict);
    EXPECT_EQ(after.why.say, Say::RetestNeeded);

    const auto withdrawn = finding(withFall("2026-10-01", "ed3", "18.03"), book, FindingKind::Tightness);
    EXPECT_EQ(withdrawn.outcome, Outcome::NoVerdict);
    EXPECT_EQ(withdrawn.why.say, Say::EditionNotAllowed);
}

TEST(SameDrop, Edition3WithoutTheFirmsWordIsLookedAtAgain) {
    const auto drop =
        finding(withFall("2026-09-30", "ed3", "18.03"), confirmedBook(), FindingKind::Tightness);
    EXPECT_EQ(drop.outcome, Outcome::LookAgain);
    EXPECT_EQ(drop.why.say, Say::LimitSecondary);
    EXPECT_EQ(drop.limits.front().provenance, Provenance::Secondary);
}

reg::VisitFile withRetest(std::string_view end, std::string_view retestEnd) {
    auto file = withFall("2026-11-10", "ed4", end);
    enter(file, Item::RetestStart, "20.50");
    enter(file, Item::RetestEnd, retestEnd);
    enter(file, Item::RetestStartedAt, "09:50:00");
    enter(file, Item::RetestEndedAt, "09:52:00");
    return file;
}

TEST(Edition4, ShortCutSettlesAFallBelowOneMillibarOnceThePipeworkIsClear) {
    const auto book = confirmedBook();
    const auto drop = finding(withRetest("19.83", "20.48"), book, FindingKind::Tightness);
    EXPECT_EQ(drop.outcome, Outcome::Pass);
    EXPECT_EQ(drop.why.say, Say::ShortCutHolds);
    EXPECT_EQ(outcomeOf(withRetest("19.83", "20.48"), book, FindingKind::IsolatedRetest), Outcome::Pass);
    EXPECT_EQ(overallOf(withRetest("19.83", "20.48"), book), Outcome::Pass);
    const auto shipped = finding(withRetest("19.83", "20.48"), RuleBook::shipped(), FindingKind::Tightness);
    EXPECT_EQ(shipped.outcome, Outcome::LookAgain);
}

TEST(Edition4, PipeworkThatMovesFailsHoweverSmallTheFall) {
    const auto book = confirmedBook();
    for (const char* end : {"19.83", "20.50"}) {
        const auto drop = finding(withRetest(end, "19.90"), book, FindingKind::Tightness);
        EXPECT_EQ(drop.outcome, Outcome::Fail) << end;
        EXPECT_EQ(drop.why.say, Say::RetestMoved) << end;
    }
}

TEST(Edition4, EmptyBandsGiveNoVerdictAndSayWhatIsMissing) {
    const auto judged = judge(withRetest("18.03", "20.48"), confirmedBook());
    const auto& drop = findingOf(judged, FindingKind::Tightness)->finding;
    EXPECT_EQ(drop.outcome, Outcome::NoVerdict);
    ASSERT_EQ(drop.why.say, Say::BandsEmpty);
    // 0.008 + (6 x 0.00032 + 9 x 0.00014) x 1.1
    EXPECT_EQ(std::get<quantity::Figure>(drop.why.arguments.front()).value.text(), "0.011498");
    ASSERT_TRUE(says(drop, Say::Ed3WouldAllow)) << "for information";
    EXPECT_EQ(drop.limits.front().key.rule, rulebook::Rule::DropByVolume) << "where to enter it";
    EXPECT_EQ(outcomeOf(judged, FindingKind::VolumeBands), Outcome::NoVerdict);
    EXPECT_EQ(overall(judged), Outcome::NoVerdict);
}

TEST(Edition4, BandsOfTheFirmDecide) {
    auto book = confirmedBook();
    const rulebook::RuleKey key{rulebook::Rule::DropByVolume, rulebook::Edition::Up1bEd4,
                                rulebook::Gas::NaturalGas};
    using quantity::Decimal;
    // Invented bands, of no standard.
    const std::vector<rulebook::Band> bands{{Decimal(1, 2), Decimal(4, 0)}, {Decimal(35, 3), Decimal(2, 0)}};
    ASSERT_TRUE(book.lay({key, bands, "Ada Marlow", *calendar::fromIso("2026-10-02"), "own copy"}));
    const auto judged = judge(withRetest("18.93", "20.48"), book);
    const auto& within = findingOf(judged, FindingKind::Tightness)->finding;
    EXPECT_EQ(within.outcome, Outcome::Pass);
    EXPECT_EQ(within.limit->value.text(), "2");
    EXPECT_EQ(outcomeOf(judged, FindingKind::VolumeBands), Outcome::Pass);
    const auto beyond = finding(withRetest("18.03", "20.48"), book, FindingKind::Tightness);
    EXPECT_EQ(beyond.outcome, Outcome::Fail);
    EXPECT_TRUE(says(beyond, Say::DoFailNoSmell));
}

TEST(Judge, SmellFailsWhateverElse) {
    const auto book = confirmedBook();
    auto file = commonPractice("2026-11-10", "ed4");
    enter(file, Item::TestSmell, "yes");
    EXPECT_EQ(finding(file, book, FindingKind::Tightness).why.say, Say::SmellFails);
    EXPECT_EQ(overallOf(file, book), Outcome::Fail);
    enter(file, Item::TestEdition, "ed3");  // not allowed any more: it still fails
    removeItem(file, Item::TightEnd);
    removeItem(file, Item::TestGauge);
    EXPECT_EQ(finding(file, book, FindingKind::Tightness).outcome, Outcome::Fail);
    EXPECT_EQ(overallOf(file, book), Outcome::Fail);
}

TEST(Judge, LetByLeavesNoTightnessVerdict) {
    const auto book = confirmedBook();
    auto file = commonPractice("2026-11-10", "ed4");
    enter(file, Item::LetByEnd, "9.65");
    EXPECT_EQ(finding(file, book, FindingKind::LetBy).why.say, Say::LetByFound);
    const auto tightness = finding(file, book, FindingKind::Tightness);
    EXPECT_EQ(tightness.outcome, Outcome::NoVerdict);
    EXPECT_EQ(tightness.why.say, Say::LetByFound);
    EXPECT_EQ(overallOf(file, book), Outcome::Fail);
}

TEST(Judge, EditionThatIsNotSaidIsTakenOnlyWhereThereIsNoChoice) {
    const auto book = confirmedBook();
    auto file = commonPractice("2026-11-10", "ed4");
    removeItem(file, Item::TestEdition);
    EXPECT_EQ(overallOf(file, book), Outcome::Pass);
    auto both = commonPractice("2026-09-15", "ed4");
    removeItem(both, Item::TestEdition);
    EXPECT_EQ(finding(both, book, FindingKind::EditionChoice).why.say, Say::EditionToChoose);
    for (const auto kind : {FindingKind::Scope, FindingKind::LetBy, FindingKind::TestPressure,
                            FindingKind::TestTime, FindingKind::Tightness, FindingKind::Purge}) {
        const auto open = finding(both, book, kind);
        EXPECT_EQ(open.outcome, Outcome::NoVerdict) << kindText(kind);
        EXPECT_EQ(open.why.say, Say::EditionToChoose) << kindText(kind);
    }
}

// A hall with a U16 meter and long 54 mm copper lies outside IGEM/UP/1B's scope (institution's own page on
// Edition 3).
TEST(Judge, OutsideTheScopeThereIsNoVerdictByIt) {
    auto file = commonPractice("2026-09-15", "ed3");
    file.installation.meterCode = "u16_g10";
    file.pipes.front().tubeCode = "copper_54";
    file.pipes.front().length.text = "18";
    const auto judged = judge(file, confirmedBook());
    const auto& scope = findingOf(judged, FindingKind::Scope)->finding;
    EXPECT_EQ(scope.outcome, Outcome::Fail);
    EXPECT_EQ(scope.why.say, Say::ScopeBeyondVolume);
    EXPECT_TRUE(says(scope, Say::ScopeUseUp1a));
    EXPECT_EQ(outcomeOf(judged, FindingKind::Tightness), Outcome::NoVerdict);
    EXPECT_NE(overall(judged), Outcome::Pass);
}

TEST(Judge, PropaneWaitsForItsTimes) {
    auto file = commonPractice("2026-11-10", "ed4");
    file.installation.gas = rulebook::Gas::Propane;
    file.installation.operatingPressure.text = "37";
    enter(file, Item::TightStart, "36.50");
    enter(file, Item::TightEnd, "36.48");
    const auto judged = judge(file, confirmedBook());
    EXPECT_EQ(outcomeOf(judged, FindingKind::TestPressure), Outcome::LookAgain) << "from memory";
    const auto& time = findingOf(judged, FindingKind::TestTime)->finding;
    EXPECT_EQ(time.outcome, Outcome::NoVerdict);
    EXPECT_EQ(time.why.say, Say::LimitMissing);
    EXPECT_EQ(outcomeOf(judged, FindingKind::Tightness), Outcome::NoVerdict);
}

TEST(Judge, WaterGaugeHasItsOwnThreshold) {
    auto file = commonPractice("2026-11-10", "ed4");
    auto& gauge = file.instruments.front();
    gauge.kind = reg::InstrumentKind::WaterGauge;
    gauge.resolution.text = "0.5";
    gauge.accuracy = {};
    gauge.calibrationDue.reset();
    for (const auto& [item, text] :
         {std::pair(Item::LetByStart, "9"), std::pair(Item::LetByEnd, "9"),
          std::pair(Item::SettleStart, "20.5"), std::pair(Item::SettleEnd, "20.5"),
          std::pair(Item::TightStart, "20.5"), std::pair(Item::TightEnd, "20.5")}) {
        enter(file, item, text);
    }
    removeItem(file, Item::SecondDisplayStart);
    removeItem(file, Item::SecondDisplayEnd);
    const auto book = confirmedBook();
    EXPECT_EQ(overallOf(file, book), Outcome::Pass);
    EXPECT_EQ(finding(file, book, FindingKind::Tightness).limit->value.text(), "0.25");
    enter(file, Item::TightEnd, "20.25");
    EXPECT_EQ(finding(file, book, FindingKind::Tightness).why.say, Say::AtLimit);
}

TEST(Judge, InstrumentThatReadsNoPressureIsNoGauge) {
    auto file = commonPractice("2026-11-10", "ed4");
    file.instruments.front().kind = reg::InstrumentKind::VoltageIndicator;
    EXPECT_EQ(finding(file, confirmedBook(), FindingKind::GaugeCalibration).why.say, Say::GaugeNotSuitable);
    EXPECT_EQ(outcomeOf(file, confirmedBook(), FindingKind::Tightness), Outcome::NoVerdict);
}

TEST(Judge, CalibrationIsHeldAgainstTheVisitsDate) {
    auto file = commonPractice("2026-11-10", "ed4");
    file.instruments.front().calibrationDue = calendar::fromIso("2026-11-09");
    const auto book = confirmedBook();
    EXPECT_EQ(outcomeOf(file, book, FindingKind::GaugeCalibration), Outcome::Fail);
    EXPECT_EQ(overallOf(file, book), Outcome::LookAgain);
}

TEST(Judge, PressuresAreJudgedOnceTheyAreRead) {
    auto file = commonPractice("2026-11-10", "ed4");
    removeItem(file, Item::StandingPressure);
    removeItem(file, Item::WorkingPressure);
    const auto judged = judge(file, confirmedBook());
    EXPECT_EQ(findingOf(judged, FindingKind::StandingPressure), nullptr);
    EXPECT_EQ(findingOf(judged, FindingKind::WorkingPressure), nullptr);
}

TEST(Judge, OneTestsFindingsAreThoseOfTheVisit) {
    const auto book = confirmedBook();
    const auto file = commonPractice("2026-11-10", "ed4");
    const auto all = judge(file, book);
    const auto ofTest = judgeTest(file, file.tests.front(), book);
    ASSERT_EQ(all.size(), ofTest.size() + 4) << "what was seen on arrival is the visit's";
    EXPECT_TRUE(std::equal(ofTest.begin(), ofTest.end(), all.begin() + 4));
}

TEST(Judge, EmptyVisitHasNoVerdictAnywhere) {
    auto file = commonPractice("2026-11-10", "ed4");
    file.entries.clear();
    file.pipes.clear();
    file.instruments.clear();
    file.installation = {};
    for (const auto& judged : judge(file, confirmedBook())) {
        if (judged.finding.kind != FindingKind::EditionChoice) {
            EXPECT_EQ(judged.finding.outcome, Outcome::NoVerdict) << kindText(judged.finding.kind);
        }
    }
}

}  // namespace
}  // namespace hearth::judging

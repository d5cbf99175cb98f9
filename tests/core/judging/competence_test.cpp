// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: the GB gas register and HSE's pages name HTR1, CENWAT and CMDDA1, and say that who checks
// must hold the category for every appliance and that an expired registration bars work. The other terms are
// common practice, no source. Dates are invented.
#include "core/judging/competence.h"

#include "tests/core/judging/scenario.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

calendar::Date on(const char* text) {
    return *calendar::fromIso(text);
}

struct CompetenceOfAVisit : ::testing::Test {
    reg::VisitFile file = scenario::commonPractice("2026-11-10", "ed4");
    std::vector<reg::Competence> held;

    void SetUp() override {
        reg::Engineer engineer;
        engineer.id.bytes[15] = 9;
        engineer.name = "R. Ashdown";
        engineer.cardExpires = on("2027-03-31");
        file.engineers = {engineer};
        file.visit.engineer = engineer.id;
        hold("CCN1", "2029-01-01");
    }
    void hold(const char* category, const char* until) {
        reg::Competence one;
        one.category = category;
        if (until != nullptr) {
            one.expires = on(until);
        }
        held.push_back(one);
    }
    reg::SubjectRef workOn(std::string_view kind) {
        reg::Appliance appliance;
        appliance.id.bytes[15] = static_cast<std::uint8_t>(70 + file.appliances.size());
        appliance.kind = std::string(kind);
        file.appliances.push_back(appliance);
        enter(reg::subject(appliance.id), Item::ApplianceInspected, "inspected");
        return reg::subject(appliance.id);
    }
    void enter(const reg::SubjectRef& subject, Item item, const std::string& text) {
        reg::Entry entry;
        entry.subject = subject;
        entry.item = item;
        entry.text = text;
        entry.canonical = text;
        file.entries.push_back(entry);
    }
    /// What is said of a subject with its outcome; nothing: no doubt.
    std::optional<std::pair<Say, Outcome>> doubt(const reg::SubjectRef& subject) const {
        for (const auto& judged : judgeCompetence(file, held)) {
            if (judged.subject == subject) {
                return std::pair(judged.finding.why.say, judged.finding.outcome);
            }
        }
        return std::nullopt;
    }
};

using Doubt = std::optional<std::pair<Say, Outcome>>;

TEST_F(CompetenceOfAVisit, NothingIsDoubtedOfWhatIsHeldAndRuns) {
    hold("CENWAT", "2027-01-01");
    workOn(reg::choice::kCondensingBoiler);
    EXPECT_TRUE(judgeCompetence(file, held).empty());
}

TEST_F(CompetenceOfAVisit, AnApplianceThatNoCategoryIsKnownToCoverIsLookedAtAgain) {
    const auto boiler = workOn(reg::choice::kCondensingBoiler);
    EXPECT_EQ(doubt(boiler), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    held.front().category = "boilers and everything";  // the firm's own words cover nothing here
    EXPECT_EQ(doubt(boiler), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    const auto dryer = workOn(reg::choice::kTumbleDryer);
    EXPECT_EQ(doubt(dryer), Doubt({Say::CategoryUnknown, Outcome::LookAgain}));
}

TEST_F(CompetenceOfAVisit, OneThatRanOutIsTold) {
    const auto fire = workOn(reg::choice::kGasFire);
    hold("HTR1", "2026-11-10");
    EXPECT_EQ(doubt(fire), std::nullopt) << "it runs on its last day";
    held.back().expires = on("2026-11-09");
    EXPECT_EQ(doubt(fire), Doubt({Say::CategoryRunOut, Outcome::Fail}));
    held.back().expires.reset();
    EXPECT_EQ(doubt(fire), Doubt({Say::CategoryDateUnknown, Outcome::LookAgain}));
    hold("HTR1", "2030-01-01");
    EXPECT_EQ(doubt(fire), std::nullopt) << "renewed";
}

TEST_F(CompetenceOfAVisit, ABookingIsJudgedByItsDayAndByWhateverStandsThere) {
    const auto fire = workOn(reg::choice::kGasFire);
    file.entries.clear();
    EXPECT_EQ(doubt(fire), std::nullopt) << "nothing was worked on";
    auto today = on("2026-11-10");
    const auto saysOf = [&](const reg::SubjectRef& subject) {
        for (const auto& judged : judgeBooked(file, held, today)) {
            if (judged.subject == subject) {
                return Doubt({judged.finding.why.say, judged.finding.outcome});
            }
        }
        return Doubt();
    };
    EXPECT_EQ(saysOf(fire), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    hold("HTR1", "2026-12-01");
    EXPECT_EQ(saysOf(fire), std::nullopt);
    file.visit.date = on("2026-12-02");
    EXPECT_EQ(saysOf(fire), Doubt({Say::CategoryWillRunOut, Outcome::Fail}));
    today = on("2026-12-01");
    EXPECT_EQ(saysOf(fire), Doubt({Say::CategoryWillRunOut, Outcome::Fail})) << "it runs on its last day";
    today = on("2026-12-02");
    EXPECT_EQ(saysOf(fire), Doubt({Say::CategoryRunOut, Outcome::Fail}));
    EXPECT_EQ(saysOf(reg::subject(file.visit.id)), std::nullopt);
    file.visit.date = on("2027-04-01");
    EXPECT_EQ(saysOf(reg::subject(file.visit.id)), Doubt({Say::CardWillRunOut, Outcome::Fail}));
    today = on("2027-04-01");
    EXPECT_EQ(saysOf(reg::subject(file.visit.id)), Doubt({Say::CardRunOut, Outcome::Fail}));
}

// COMCAT and CCLP1: common practice, no source.
TEST_F(CompetenceOfAVisit, KitchensBoatsAndVehiclesAskForTheirOwn) {
    const auto kitchen = workOn(reg::choice::kCatering);
    const auto boat = workOn(reg::choice::kBoat);
    const auto cylinder = workOn(reg::choice::kUnventedCylinder);
    EXPECT_EQ(doubt(kitchen), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    EXPECT_EQ(doubt(boat), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    EXPECT_EQ(doubt(cylinder), std::nullopt) << "no gas work";
    hold("COMCAT3 catering", "2029-01-01");
    hold("CCLP1 boats", "2029-01-01");
    EXPECT_EQ(doubt(kitchen), std::nullopt);
    EXPECT_EQ(doubt(boat), std::nullopt);
}

TEST_F(CompetenceOfAVisit, ABackBoilerWithItsFireAsksForBoth) {
    const auto both = workOn(reg::choice::kBackBoilerFire);
    hold("CENWAT", "2030-01-01");
    EXPECT_EQ(doubt(both), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    hold("HTR1", "2030-01-01");
    EXPECT_EQ(doubt(both), std::nullopt);
}

TEST_F(CompetenceOfAVisit, AnApplianceThatIsNotWorkedOnAsksForNothing) {
    workOn(reg::choice::kRangeCooker);
    file.entries.pop_back();
    EXPECT_TRUE(judgeCompetence(file, held).empty());
}

TEST_F(CompetenceOfAVisit, GasAndWorkAskForTheirOwn) {
    const auto visit = reg::subject(file.visit.id);
    held.front().category = "COCN1";
    EXPECT_EQ(doubt(visit), std::nullopt) << "the core of other than dwellings";
    held.front().category = "CCLP1 PD";
    EXPECT_EQ(doubt(visit), Doubt({Say::CategoryNotHeld, Outcome::LookAgain})) << "natural gas by LPG alone";
    held.front().category = "CCN1";
    EXPECT_EQ(doubt(visit), std::nullopt);
    file.installation.gas = rulebook::Gas::Propane;
    EXPECT_EQ(doubt(visit), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    hold("CCLP1 PD", "2030-01-01");
    EXPECT_EQ(doubt(visit), std::nullopt);
    enter(visit, Item::VisitRoomCo, "yes");
    EXPECT_EQ(doubt(visit), Doubt({Say::CategoryNotHeld, Outcome::LookAgain}));
    hold("CMDDA1", "2030-01-01");
    EXPECT_EQ(doubt(visit), std::nullopt);
}

TEST_F(CompetenceOfAVisit, TheCardIsHeldAgainstTheDay) {
    const auto visit = reg::subject(file.visit.id);
    file.engineers[0].cardExpires = on("2026-11-09");
    EXPECT_EQ(doubt(visit), Doubt({Say::CardRunOut, Outcome::Fail}));
    file.engineers[0].cardExpires.reset();
    EXPECT_EQ(doubt(visit), Doubt({Say::CardDateUnknown, Outcome::NoVerdict}));
    file.engineers[0].cardExpires = on("2026-11-10");
    EXPECT_EQ(doubt(visit), std::nullopt);
    held.clear();
    EXPECT_EQ(doubt(visit), Doubt({Say::CategoriesNotKept, Outcome::NoVerdict}));
}

TEST_F(CompetenceOfAVisit, AnAnalyserOutOfCalibrationIsTold) {
    reg::Instrument analyser;
    analyser.id.bytes[15] = 44;
    analyser.kind = reg::InstrumentKind::CombustionAnalyser;
    analyser.calibrationDue = on("2026-11-09");
    file.instruments.push_back(analyser);
    const auto visit = reg::subject(file.visit.id);
    enter(visit, Item::VisitAnalyser, analyser.id.text());
    EXPECT_EQ(doubt(visit), Doubt({Say::AnalyserRunOut, Outcome::Fail}));
    file.instruments.back().calibrationDue = on("2026-11-10");
    EXPECT_EQ(doubt(visit), std::nullopt);
    file.instruments.back().calibrationDue.reset();
    EXPECT_EQ(doubt(visit), Doubt({Say::AnalyserDateUnknown, Outcome::NoVerdict}));
}

TEST(NamesTerm, AsAWordOfItsOwn) {
    EXPECT_TRUE(namesTerm("CKR1", "CKR1"));
    EXPECT_TRUE(namesTerm("ckr1 cookers", "CKR1"));
    EXPECT_TRUE(namesTerm("CENWAT1", "CENWAT"));
    EXPECT_TRUE(namesTerm("HTR", "HTR1"));
    EXPECT_FALSE(namesTerm("HTR2", "HTR1"));
    EXPECT_FALSE(namesTerm("no CKR1A", "CKR1"));
    EXPECT_FALSE(namesTerm("cookers", "CKR1"));
    EXPECT_FALSE(namesTerm("", "CKR1"));
    EXPECT_FALSE(namesTerm("1", ""));
}

TEST(CategoriesFor, KnowsThePlainKinds) {
    EXPECT_EQ(categoriesFor(reg::choice::kCondensingBoiler), (std::vector<std::string_view>{"CENWAT"}));
    EXPECT_EQ(categoriesFor(reg::choice::kHotplate), (std::vector<std::string_view>{"CKR1"}));
    EXPECT_TRUE(categoriesFor(reg::choice::kWarmAirHeater).empty());
    EXPECT_TRUE(categoriesFor("").empty());
}

}  // namespace
}  // namespace hearth::judging

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/answer.h"
#include "core/rulebook/conclude.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using quantity::UnitCode;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
namespace choice = reg::choice;

const calendar::Date kAnswerDay{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

struct AnswerEntry {
    Item item;
    std::string text;
    UnitCode unit = UnitCode::None;
};

Answer burnerAnswer(Question question, const std::vector<AnswerEntry>& typed) {
    Worksheet sheet(question, kAnswerDay);
    for (const auto& [item, text, unit] : typed) {
        sheet.put(Group::Once, 0, item, text, unit);
    }
    return answer(sheet, rulebook::RuleBook::shipped());
}

const Worked* workedFigure(const Answer& answer, Derived what) {
    for (const auto& worked : answer.figures) {
        if (worked.what == what) {
            return &worked;
        }
    }
    return nullptr;
}

double workedValue(const Answer& answer, Derived what) {
    const auto* worked = workedFigure(answer, what);
    EXPECT_NE(worked, nullptr) << derivedText(what);
    return worked == nullptr ? std::nan("") : worked->figure.value.toDouble();
}

const rulebook::Finding* answeredFinding(const Answer& answer, FindingKind kind) {
    for (const auto& judged : answer.findings) {
        if (judged.finding.kind == kind) {
            return &judged.finding;
        }
    }
    return nullptr;
}

// Source: facts' example C by hand (US EPA's correction; training notes for the ratio): CO 80 ppm, O2 4.5 %,
// CO2 9.2 %.
TEST(CombustionAnswer, worksOutTheExample) {
    const auto got = burnerAnswer(Question::Combustion, {{Item::ApplianceKind, "condensing_boiler"},
                                                         {Item::FlueCoHigh, "80"},
                                                         {Item::FlueO2High, "4.5"},
                                                         {Item::FlueCo2High, "9.2"}});
    EXPECT_NEAR(workedValue(got, Derived::RatioHigh), 0.0009, 1e-9);
    EXPECT_NEAR(workedValue(got, Derived::CoAirFree), 102.0, 0.5);
    EXPECT_NEAR(workedValue(got, Derived::CoAtThreePercent), 87.0, 0.5);
    // One rate of two: a condensing boiler has no verdict yet.
    for (const auto& judged : got.findings) {
        if (judged.finding.kind == got.findings.front().finding.kind) {
            EXPECT_NE(judged.finding.outcome, Outcome::Pass);
        }
    }
}

// Source: a burner maker's start-up page: CO2 10.8 %, 195 and 22 degrees C, natural gas: 7.48 %.
TEST(CombustionAnswer, knowsEveryKindThatIsOffered) {
    const auto said = [](std::string_view kind) {
        const auto got = burnerAnswer(Question::Combustion, {{Item::ApplianceKind, std::string(kind)},
                                                             {Item::FlueCoHigh, "80", UnitCode::Ppm},
                                                             {Item::FlueCo2High, "9.2"},
                                                             {Item::FlueO2High, "4.5"}});
        bool unknown = false;
        for (const auto& judged : got.findings) {
            unknown = unknown || rulebook::says(judged.finding, rulebook::Say::CombustionKindUnknown);
        }
        return !unknown;
    };
    for (const auto& offered : reg::infoOf(Item::ApplianceKind).choices) {
        EXPECT_TRUE(said(offered.code)) << offered.code;
    }
    EXPECT_FALSE(said(""));
}

TEST(CombustionAnswer, givesTheFlueLossOfTheWorkedExample) {
    const auto got = burnerAnswer(
        Question::Combustion,
        {{Item::FlueCo2High, "10.8"}, {Item::FlueTemperature, "195"}, {Item::FlueAirTemperature, "22"}});
    EXPECT_NEAR(workedValue(got, Derived::SiegertLoss), 7.5, 1e-9);
    EXPECT_NEAR(workedValue(got, Derived::SiegertEfficiency), 92.5, 1e-9);
}

TEST(CombustionAnswer, looksAtTheAirInlet) {
    const auto got = burnerAnswer(
        Question::Combustion, {{Item::InletO2, "20.2"}, {Item::InletCo2, "0.4"}, {Item::FlueCo2High, "9.0"}});
    ASSERT_NE(answeredFinding(got, FindingKind::AirInletOxygen), nullptr);
    EXPECT_NE(answeredFinding(got, FindingKind::AirInletOxygen)->outcome, Outcome::Pass);
    EXPECT_NEAR(workedValue(got, Derived::Recirculation), 4.4, 1e-9);
}

// Source: consumer page on boiler flow rates: 9 l/min from 10 to 60 degrees C is 31.5 kW with 4.2;
// with 4.18 31.35.
TEST(HotWaterAnswer, isTheWorkedExample) {
    const auto got = burnerAnswer(Question::HotWater, {{Item::HotWaterFlow, "9", UnitCode::LitrePerMinute},
                                                       {Item::HotWaterCold, "10"},
                                                       {Item::HotWaterHot, "60"},
                                                       {Item::HotWaterNetInput, "33"}});
    EXPECT_NEAR(workedValue(got, Derived::HotWaterOutput), 31.35, 0.01);
    EXPECT_NEAR(workedValue(got, Derived::HeatBalance), 0.95, 0.001);
}

// Source: Gas Safety (Installation and Use) Regulations 1998, regulation 26(9).
TEST(Regulation26Answer, isSatisfiedByEachMatterAndNotByFewer) {
    const std::vector<AnswerEntry> all{{Item::ExaminedFlue, "good"},
                                       {Item::ExaminedAir, "good"},
                                       {Item::ExaminedPressure, "in_order"},
                                       {Item::ExaminedOperation, "good"}};
    const auto outcome = [](const std::vector<AnswerEntry>& typed) {
        return burnerAnswer(Question::Regulation26, typed).findings.front().finding.outcome;
    };
    EXPECT_EQ(outcome(all), Outcome::Pass);
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto fewer = all;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_NE(outcome(fewer), Outcome::Pass) << reg::infoOf(all[i].item).code;
    }
    // (ca): combustion alone needs the reason.
    std::vector<AnswerEntry> combustion{{Item::ExaminedFlue, "good"},
                                        {Item::ExaminedAir, "good"},
                                        {Item::ExaminedCombustion, "in_order"},
                                        {Item::ExaminedOperation, "good"}};
    EXPECT_NE(outcome(combustion), Outcome::Pass);
    combustion.push_back({Item::WhyNeither, "no_meter"});
    EXPECT_EQ(outcome(combustion), Outcome::Pass);
}

}  // namespace
}  // namespace hearth::judging

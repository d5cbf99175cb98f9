// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/cohb.h"

#include "core/rulebook/conclude.h"
#include "tests/core/air/air_samples.h"
#include "tests/support/agreement.h"
#include "tests/support/files.h"

#include <gtest/gtest.h>
#include <random>
#include <sstream>
#include <string>

namespace hearth::air {
namespace {

using quantity::kMinute;
using quantity::kPercent;
using quantity::kPpm;
using rulebook::Outcome;
using rulebook::Say;
using samples::airRules;
using samples::minutes;
using samples::ppm;

std::vector<CoReading> held(double level, double time) {
    return {{minutes(0), ppm(level)}, {minutes(time), ppm(level)}};
}

double cfk(double level, double time, const Breathing& breathing) {
    return cohbByCfk(held(level, time), breathing)->in(kPercent);
}

// cfk_check.tsv is cfk_check.py's, which hands the equation to a general integrator as it stands. Here each
// step of 6 s holds the oxygen in the blood: the most extreme row, 2000 ppm, differs by that.
TEST(Cohb, CfkAgreesWithAnIndependentIntegration) {
    testing::Agreement agreement("Carboxyhaemoglobin by the CFK equation, 20 exposures",
                                 "python3-scipy, solve_ivp (cfk_check.py)", "% COHb", 0.02);
    std::istringstream rows(testing::readFile(HEARTH_SOURCE_DIR "/tests/core/air/cfk_check.tsv"));
    std::string line;
    int read = 0;
    while (std::getline(rows, line)) {
        std::istringstream fields(line);
        std::string series;
        std::string name;
        double theirs = 0.0;
        if (line.starts_with('#') || !std::getline(fields, series, '\t') ||
            !std::getline(fields, name, '\t') || !(fields >> theirs)) {
            continue;
        }
        std::vector<CoReading> readings;
        std::istringstream pairs(series);
        double time = 0.0;
        double level = 0.0;
        for (char colon = 0; pairs >> time >> colon >> level;) {
            readings.push_back({minutes(time), ppm(level)});
        }
        const auto ours = cohbByCfk(readings, name == "rest" ? kAtRest : kLightWork);
        ASSERT_TRUE(ours.has_value()) << line;
        agreement.hold(series + " " + name, ours->in(kPercent), theirs);
        ++read;
    }
    EXPECT_EQ(read, 20);
}

TEST(Cohb, CfkAsTheTableOfItsConstants) {
    struct Row {
        double ppm, minutes, rest, light;
    };
    const Row rows[] = {
        {30, 60, 1.3, 1.7},  {30, 480, 3.4, 4.2}, {50, 90, 2.0, 3.1},  {87, 15, 1.2, 1.6},
        {100, 40, 2.0, 3.2}, {200, 60, 4.3, 7.7}, {300, 15, 2.2, 3.7},
    };
    testing::Agreement agreement("Carboxyhaemoglobin by the CFK equation, rest and light work",
                                 "an earlier table with the same constants, worked by itself", "% COHb",
                                 0.05);
    for (const auto& row : rows) {
        const auto what = std::to_string(row.ppm) + " ppm " + std::to_string(row.minutes) + " min";
        agreement.hold(what, cfk(row.ppm, row.minutes, kAtRest), row.rest);
        agreement.hold(what, cfk(row.ppm, row.minutes, kLightWork), row.light);
    }
}

TEST(Cohb, LinearLawByHand) {
    const auto rise = [](double level, double time, double breathed) {
        return cohbRiseLinear(ppm(level), minutes(time), breathed)->in(kPercent);
    };
    testing::Agreement tenths("Rise of carboxyhaemoglobin by the linear law",
                              "Stewart 1973 (toxicology page), worked by hand to a tenth", "% COHb", 0.05);
    tenths.hold("30, 60, 6", rise(30, 60, 6), 0.4);
    tenths.hold("30, 60, 10", rise(30, 60, 10), 0.7);
    tenths.hold("30, 60, 20", rise(30, 60, 20), 1.3);
    tenths.hold("100, 15, 6", rise(100, 15, 6), 0.35);
    tenths.hold("100, 15, 10", rise(100, 15, 10), 0.6);
    tenths.hold("100, 15, 20", rise(100, 15, 20), 1.2);
    tenths.hold("200, 60, 6", rise(200, 60, 6), 2.9);
    tenths.hold("200, 60, 10", rise(200, 60, 10), 4.8);
    tenths.hold("200, 60, 20", rise(200, 60, 20), 9.6);
}

TEST(Cohb, RegressionByHand) {
    const auto reached = [](double level, double time) {
        return cohbByRegression(ppm(level), minutes(time))->in(kPercent);
    };
    testing::Agreement tenths("Carboxyhaemoglobin by regression",
                              "Peterson and Stewart 1970 (from memory), worked by hand to a tenth", "% COHb",
                              0.05);
    tenths.hold("30 ppm, 60 min", reached(30, 60), 1.2);
    tenths.hold("30 ppm, 8 h", reached(30, 480), 4.6);
    tenths.hold("100 ppm, 15 min", reached(100, 15), 1.4);
    tenths.hold("200 ppm, 60 min", reached(200, 60), 6.3);
}

TEST(Cohb, OutsideTheirUseTheEstimatesGiveNoNumber) {
    EXPECT_FALSE(cohbByCfk({}, kAtRest));
    EXPECT_FALSE(cohbByCfk({{minutes(0), ppm(10)}}, kAtRest));
    EXPECT_FALSE(cohbByCfk(held(2001, 5), kAtRest));
    EXPECT_FALSE(cohbByCfk(held(-1, 5), kAtRest));
    EXPECT_FALSE(cohbByRegression(ppm(0.9), minutes(10)));
    EXPECT_FALSE(cohbByRegression(ppm(10), minutes(0.5)));
    EXPECT_FALSE(cohbByRegression(ppm(10), minutes(481)));
    // 10 ppm end in 1.53 %: half of it is passed by a rise of 0.77 %, in 12 h at 6 l/min (1.6 %).
    EXPECT_FALSE(cohbRiseLinear(ppm(10), minutes(720), 6));
    EXPECT_TRUE(cohbRiseLinear(ppm(10), minutes(60), 6));
    EXPECT_EQ(cohbRiseLinear(ppm(10), minutes(720), 6).error().code, ErrorCode::OutOfRange);
}

TEST(Cohb, TheWarningIsTheStrongestOfTheEstimates) {
    const quantity::Share limit(2.5, kPercent);
    EXPECT_EQ(cohbWarning({}, limit), CohbWarning::NoConclusion);
    EXPECT_EQ(cohbWarning(held(0, 60), limit), CohbWarning::NoConclusion);
    EXPECT_EQ(cohbWarning(held(10, 15), limit), CohbWarning::NoConclusion);
    // 30 ppm for an hour: 1.2, 1.7 and 0.8 + 1.3 %.
    EXPECT_EQ(cohbWarning(held(30, 60), limit), CohbWarning::NoConclusion);
    // For 8 h: 4.6 %.
    EXPECT_EQ(cohbWarning(held(30, 480), limit), CohbWarning::Dangerous);
    EXPECT_EQ(cohbWarning(held(100, 2), limit), CohbWarning::WithinAnHour);
    EXPECT_EQ(cohbWarning({{minutes(0), ppm(100)}}, limit), CohbWarning::WithinAnHour);
    EXPECT_EQ(cohbWarning(held(200, 60), limit), CohbWarning::Dangerous);
    EXPECT_EQ(cohbWarning({{minutes(0), ppm(5000)}}, limit), CohbWarning::Dangerous);
    // What had been there in between counts, though it has gone since.
    const std::vector<CoReading> past{
        {minutes(0), ppm(300)}, {minutes(30), ppm(300)}, {minutes(31), ppm(0)}, {minutes(900), ppm(0)}};
    EXPECT_LT(cohbByCfk(past, kAtRest)->in(kPercent), 2.5);
    EXPECT_EQ(cohbWarning(past, limit), CohbWarning::Dangerous);
}

TEST(Cohb, MoreIsNeverAMilderWarning) {
    const quantity::Share limit(2.5, kPercent);
    std::mt19937 random(20261110);
    std::uniform_real_distribution<double> level(0.0, 150.0);
    std::uniform_real_distribution<double> step(0.5, 40.0);
    std::uniform_real_distribution<double> more(0.0, 200.0);
    for (int run = 0; run < 60; ++run) {
        std::vector<CoReading> readings;
        double t = 0.0;
        for (int i = 0; i < 5; ++i) {
            readings.push_back({minutes(t), ppm(level(random))});
            t += step(random);
        }
        const auto before = cohbWarning(readings, limit);
        auto raised = readings;
        auto& one = raised[static_cast<std::size_t>(run) % raised.size()].level;
        one = one + ppm(more(random));
        EXPECT_GE(cohbWarning(raised, limit), before);
    }
    auto before = CohbWarning::NoConclusion;
    for (double parts = 0; parts < 3000; parts += 7) {
        const auto now = cohbWarning(held(parts, 20), limit);
        EXPECT_GE(now, before) << parts;
        before = now;
    }
}

TEST(Cohb, TheFindingNeverPasses) {
    const auto book = samples::confirmedBook();
    for (const double level : {0.0, 5.0, 50.0, 100.0, 1000.0}) {
        const auto finding = bloodWarning(held(level, 10), airRules(book));
        EXPECT_NE(finding.outcome, Outcome::Pass) << level;
        EXPECT_TRUE(rulebook::says(finding, Say::CohbSensitive));
    }
    EXPECT_EQ(bloodWarning(held(5, 10), airRules(book)).why.say, Say::CohbNotAnAllClear);
    EXPECT_EQ(bloodWarning(held(100, 2), airRules(book)).why.say, Say::CohbWithinAnHour);
    EXPECT_EQ(bloodWarning(held(1000, 30), airRules(book)).outcome, Outcome::Fail);
    EXPECT_EQ(bloodWarning({}, airRules(book)).outcome, Outcome::NoVerdict);
    const rulebook::RuleBook empty(std::vector<rulebook::Entry>{});
    EXPECT_EQ(bloodWarning(held(1000, 30), airRules(empty)).outcome, Outcome::NoVerdict);
}

}  // namespace
}  // namespace hearth::air

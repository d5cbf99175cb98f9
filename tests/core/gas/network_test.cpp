// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/network.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <vector>

namespace hearth::gas {
namespace {

using quantity::GrossHeatValue;
using quantity::kKilowattHourPerCubicMetre;
using quantity::kMegajoulePerCubicMetre;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RuleBook;
using rulebook::RulesInForce;
using rulebook::Say;

constexpr const char* kAfter = "2025-04-06";
constexpr const char* kBefore = "2025-04-05";

RulesInForce rulesOn(const RuleBook& book, const char* date, Gas gas = Gas::NaturalGas) {
    return {book, rulebook::Edition::General, gas, calendar::fromIso(date).value()};
}

/// The shipped book, each value that it knows taken as read in the firm's own copy.
RuleBook readByTheFirm() {
    const auto shipped = RuleBook::shipped();
    std::vector<rulebook::Entry> entries(shipped.entries().begin(), shipped.entries().end());
    for (auto& entry : entries) {
        if (entry.isKnown()) {
            entry.provenance = rulebook::Provenance::Firm;
        }
    }
    return RuleBook(std::move(entries));
}

RuleBook withoutRule(Rule rule) {
    const auto shipped = RuleBook::shipped();
    std::vector<rulebook::Entry> entries(shipped.entries().begin(), shipped.entries().end());
    entries.erase(std::remove_if(entries.begin(), entries.end(),
                                 [&](const rulebook::Entry& entry) { return entry.key.rule == rule; }),
                  entries.end());
    return RuleBook(std::move(entries));
}

Stated<GrossWobbe> index(double megajoules, double digit = 0.01) {
    return {{megajoules, kMegajoulePerCubicMetre}, {digit, kMegajoulePerCubicMetre}};
}

Stated<GrossHeatValue> heat(double megajoules, double digit = 0.01) {
    return {{megajoules, kMegajoulePerCubicMetre}, {digit, kMegajoulePerCubicMetre}};
}

Stated<double> density(double value, double digit = 0.001) {
    return {value, digit};
}

// Lower limit: the safety regulator's page (46.50 from 6 April 2025) and an industry magazine of 2016/17
// (47.20 before). Upper limit 51.41: Schedule 3, from memory. A hundredth read is within 0.006 (2 u) of the
// truth.
TEST(NetworkWobbe, HoldsTheLimitsOfTheDay) {
    const auto book = readByTheFirm();
    struct Row {
        const char* date;
        double wobbe;
        Outcome outcome;
        Say say;
    };
    const Row rows[] = {
        {kAfter, 46.49, Outcome::Fail, Say::NetworkWobbeLow},
        {kAfter, 46.50, Outcome::LookAgain, Say::NetworkAtLimit},
        {kAfter, 46.52, Outcome::Pass, Say::NetworkWobbeGood},
        {kAfter, 47.19, Outcome::Pass, Say::NetworkWobbeGood},
        {kBefore, 46.52, Outcome::Fail, Say::NetworkWobbeLow},
        {kBefore, 47.18, Outcome::Fail, Say::NetworkWobbeLow},
        {kBefore, 47.20, Outcome::LookAgain, Say::NetworkAtLimit},
        {kBefore, 47.22, Outcome::Pass, Say::NetworkWobbeGood},
        {"1999-01-01", 47.0, Outcome::Fail, Say::NetworkWobbeLow},
        {"2026-11-10", 50.72, Outcome::Pass, Say::NetworkWobbeGood},  // G20
        {kAfter, 51.39, Outcome::Pass, Say::NetworkWobbeGood},
        {kAfter, 51.41, Outcome::LookAgain, Say::NetworkAtLimit},
        {kAfter, 51.43, Outcome::Fail, Say::NetworkWobbeHigh},
        {kBefore, 51.43, Outcome::Fail, Say::NetworkWobbeHigh},
    };
    for (const auto& row : rows) {
        const auto found = networkWobbe(index(row.wobbe), rulesOn(book, row.date));
        EXPECT_EQ(found.outcome, row.outcome) << row.date << ' ' << row.wobbe;
        EXPECT_EQ(found.why.say, row.say) << row.date << ' ' << row.wobbe;
        EXPECT_EQ(found.limits.size(), 2u);
    }
}

TEST(NetworkWobbe, ShowsTheLimitThatDecided) {
    const auto book = readByTheFirm();
    const auto low = networkWobbe(index(46.0), rulesOn(book, kAfter));
    EXPECT_EQ(quantity::show(low.limit.value()), "46.50\u00a0MJ/m³");
    const auto before = networkWobbe(index(46.0), rulesOn(book, kBefore));
    EXPECT_EQ(quantity::show(before.limit.value()), "47.20\u00a0MJ/m³");
    const auto high = networkWobbe(index(52.0), rulesOn(book, kAfter));
    EXPECT_EQ(quantity::show(high.limit.value()), "51.41\u00a0MJ/m³");
    EXPECT_EQ(quantity::show(high.measured.value()), "52.00\u00a0MJ/m³");
    // A figure so coarse that it is near both ends tells nothing.
    EXPECT_EQ(networkWobbe(index(49.0, 10.0), rulesOn(book, kAfter)).why.say, Say::NetworkAtLimit);
}

// The upper limit is from memory: with it alone unconfirmed nothing passes, and too low still fails.
TEST(NetworkWobbe, ShippedUpperLimitPassesNothing) {
    const auto book = RuleBook::shipped();
    const auto good = networkWobbe(index(50.0), rulesOn(book, kAfter));
    EXPECT_EQ(good.outcome, Outcome::LookAgain);
    EXPECT_EQ(good.why.say, Say::LimitFromMemory);
    EXPECT_TRUE(rulebook::says(good, Say::NetworkWobbeGood));
    EXPECT_EQ(networkWobbe(index(46.0), rulesOn(book, kAfter)).outcome, Outcome::Fail);
    EXPECT_TRUE(rulebook::says(networkWobbe(index(52.0), rulesOn(book, kAfter)), Say::LimitFromMemory));
}

// The firm may hold a limit in kWh/m3: 46.50 MJ/m3 = 12.9167 kWh/m3.
TEST(NetworkWobbe, HoldsAnEntryInItsOwnUnit) {
    auto book = readByTheFirm();
    const rulebook::RuleKey key{Rule::NetworkWobbeLeast, rulebook::Edition::General, Gas::NaturalGas};
    ASSERT_TRUE(book.lay({key,
                          quantity::Figure{quantity::Decimal(1300, 2),
                                           quantity::UnitCode::KilowattHourPerCubicMetre},  // 46.80 MJ/m3
                          "A. Example", calendar::fromIso("2026-01-01").value(), "own copy"}));
    EXPECT_EQ(networkWobbe(index(46.70), rulesOn(book, kAfter)).outcome, Outcome::Fail);
    EXPECT_EQ(networkWobbe(index(46.90), rulesOn(book, kAfter)).outcome, Outcome::Pass);
}

TEST(NetworkWobbe, HasNoVerdictWithoutFigureLimitOrNaturalGas) {
    const auto book = readByTheFirm();
    const auto none = networkWobbe({}, rulesOn(book, kAfter));
    EXPECT_EQ(none.outcome, Outcome::NoVerdict);
    EXPECT_EQ(none.why.say, Say::ReadingMissing);
    EXPECT_EQ(networkWobbe(rulebook::Given<Stated<GrossWobbe>>::unusable(), rulesOn(book, kAfter)).why.say,
              Say::ReadingUnusable);
    for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        const auto other = networkWobbe(index(50.0), rulesOn(book, kAfter, gas));
        EXPECT_EQ(other.outcome, Outcome::NoVerdict);
        EXPECT_EQ(other.why.say, Say::NetworkOtherGas);
    }
    for (const auto rule : {Rule::NetworkWobbeLeast, Rule::NetworkWobbeMost}) {
        const auto without = withoutRule(rule);
        const auto found = networkWobbe(index(50.0), rulesOn(without, kAfter));
        EXPECT_EQ(found.outcome, Outcome::NoVerdict);
        EXPECT_EQ(found.why.say, Say::LimitMissing);
    }
}

// 0.700 from 6 April 2023: the safety regulator's page. No limit before.
TEST(NetworkDensity, IsLimitedFrom2023Only) {
    const auto book = RuleBook::shipped();
    struct Row {
        const char* date;
        double value;
        Outcome outcome;
        Say say;
    };
    const Row rows[] = {
        {"2023-04-06", 0.698, Outcome::Pass, Say::NetworkDensityGood},
        {"2023-04-06", 0.700, Outcome::LookAgain, Say::NetworkAtLimit},
        {"2026-11-10", 0.702, Outcome::Fail, Say::NetworkDensityHigh},
        {"2023-04-05", 0.702, Outcome::NoVerdict, Say::LimitMissing},
        {"2023-04-05", 0.555, Outcome::NoVerdict, Say::LimitMissing},
    };
    for (const auto& row : rows) {
        const auto found = networkDensity(density(row.value), rulesOn(book, row.date));
        EXPECT_EQ(found.outcome, row.outcome) << row.date << ' ' << row.value;
        EXPECT_EQ(found.why.say, row.say) << row.date << ' ' << row.value;
    }
    EXPECT_EQ(networkDensity(density(0.6), rulesOn(book, kAfter, Gas::Propane)).why.say,
              Say::NetworkOtherGas);
    EXPECT_EQ(networkDensity({}, rulesOn(book, kAfter)).why.say, Say::ReadingMissing);
    EXPECT_EQ(networkDensity(rulebook::Given<Stated<double>>::unusable(), rulesOn(book, kAfter)).outcome,
              Outcome::NoVerdict);
    // 0.7 with one decimal may be anything from 0.65 to 0.75.
    EXPECT_EQ(networkDensity(density(0.7, 0.1), rulesOn(book, kAfter)).outcome, Outcome::LookAgain);
}

// 37.5 to 43.0 MJ/m3: a transmission operator's text; an installer's note has the same as 10.42 to 11.94
// kWh/m3.
TEST(HeatValueSeen, IsInformationAndNeverFails) {
    for (const auto& book : {RuleBook::shipped(), readByTheFirm()}) {
        for (const double unusual : {10.76, 37.4, 43.1, 95.65}) {
            const auto found = heatValueSeen(heat(unusual), rulesOn(book, kAfter));
            EXPECT_EQ(found.outcome, Outcome::LookAgain) << unusual;
            EXPECT_EQ(found.why.say, Say::HeatValueUnusual) << unusual;
        }
    }
    const auto book = readByTheFirm();
    for (const double usual : {37.6, 38.76, 39.5, 42.9}) {
        EXPECT_EQ(heatValueSeen(heat(usual), rulesOn(book, kAfter)).outcome, Outcome::Pass) << usual;
    }
    const Stated<GrossHeatValue> inKilowattHours{{10.42, kKilowattHourPerCubicMetre},
                                                 {0.01, kKilowattHourPerCubicMetre}};
    EXPECT_EQ(heatValueSeen(inKilowattHours, rulesOn(book, kAfter)).why.say, Say::HeatValueUsual);
    const auto shipped = RuleBook::shipped();
    const auto second = heatValueSeen(heat(39.0), rulesOn(shipped, kAfter));
    EXPECT_EQ(second.outcome, Outcome::LookAgain);
    EXPECT_EQ(second.why.say, Say::LimitSecondary);
    EXPECT_TRUE(rulebook::says(second, Say::HeatValueUsual));
    EXPECT_EQ(heatValueSeen({}, rulesOn(book, kAfter)).outcome, Outcome::NoVerdict);
    EXPECT_EQ(
        heatValueSeen(rulebook::Given<Stated<GrossHeatValue>>::unusable(), rulesOn(book, kAfter)).why.say,
        Say::ReadingUnusable);
    EXPECT_EQ(heatValueSeen(heat(39.0), rulesOn(book, kAfter, Gas::LpgAir)).why.say, Say::NetworkOtherGas);
    const auto without = withoutRule(Rule::NetworkHeatValueSeen);
    EXPECT_EQ(heatValueSeen(heat(39.0), rulesOn(without, kAfter)).why.say, Say::LimitMissing);
}

}  // namespace
}  // namespace hearth::gas

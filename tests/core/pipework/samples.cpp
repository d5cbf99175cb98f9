// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/pipework/samples.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <gtest/gtest.h>
#include <utility>

namespace hearth::pipework::samples {

using quantity::Flow;
using quantity::kCubicMetrePerHour;

namespace {

constexpr calendar::Date kSampleDay{std::chrono::year(2026), std::chrono::November, std::chrono::day(10)};

}  // namespace

TreeSection fromMeter(std::string_view tube, double metres) {
    TreeSection section;
    section.tube = tubeByCode(tube);
    section.length = quantity::Length(metres, quantity::kMetre);
    return section;
}

TreeSection after(std::size_t feeder, std::string_view tube, double metres) {
    auto section = fromMeter(tube, metres);
    section.after = feeder;
    return section;
}

TreeSection drawing(TreeSection section, double design, std::optional<double> measured) {
    Demand demand;
    demand.design = Flow(design, kCubicMetrePerHour);
    if (measured) {
        demand.measured = Flow(*measured, kCubicMetrePerHour);
    }
    section.demand = demand;
    return section;
}

Tree treeOf(std::vector<TreeSection> sections) {
    return Tree::make(std::move(sections)).value();
}

const rulebook::RuleBook& shippedBook() {
    static const auto book = rulebook::RuleBook::shipped();
    return book;
}

rulebook::RuleBook confirmed(const std::vector<rulebook::RuleKey>& keys) {
    auto book = rulebook::RuleBook::shipped();
    for (const auto& key : keys) {
        const auto value = book.find(key)->value;
        EXPECT_TRUE(book.lay({key, value, "A. Fitter", kSampleDay, "own copy"}));
    }
    return book;
}

rulebook::RulesInForce rulesOf(const rulebook::RuleBook& book, rulebook::Gas gas) {
    return {book, rulebook::Edition::Up1bEd4, gas, kSampleDay};
}

std::vector<TreeSection> randomSections(std::mt19937& random, std::size_t count) {
    constexpr std::array kTubes{"copper_10", "copper_12", "copper_15", "copper_22", "copper_28"};
    std::uniform_int_distribution<std::size_t> tube(0, kTubes.size() - 1);
    std::uniform_real_distribution<double> metres(0.3, 12.0);
    std::uniform_real_distribution<double> flow(0.05, 2.5);
    std::vector<TreeSection> sections;
    std::vector<bool> feeds(count, false);
    for (std::size_t i = 0; i < count; ++i) {
        auto section = fromMeter(kTubes.at(tube(random)), metres(random));
        if (i > 0) {
            section.after = std::uniform_int_distribution<std::size_t>(0, i - 1)(random);
            feeds[*section.after] = true;
        }
        sections.push_back(section);
    }
    for (std::size_t i = 0; i < count; ++i) {
        if (!feeds[i]) {
            sections[i] = drawing(sections[i], flow(random));
        }
    }
    return sections;
}

}  // namespace hearth::pipework::samples

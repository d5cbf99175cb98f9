// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/drop_class.h"

#include "core/rulebook/rule_book.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Rule;

struct ClassCase {
    const char* meter;
    double nominal;
    std::optional<Rule> rule;
    const char* millibar;  // the drop; empty: not known
};

// Permissible drop in 2 minutes, existing installation, appliances connected: trainees' revision cards on
// IGEM/UP/1B Edition 3 (to 28 mm); the column above 28 to 35 mm from memory, one cell of it empty.
TEST(Edition3Drop, OfEachMeterAndPipeClass) {
    const auto book = rulebook::RuleBook::shipped();
    const ClassCase cases[] = {
        {"none", 22, Rule::DropNoMeter28, "8"},
        {"none", 35, Rule::DropNoMeter35, "4"},
        {"e6", 15, Rule::DropUltrasonic28, "8"},
        {"e6", 32, Rule::DropUltrasonic35, "4"},
        {"u6_g4", 28, Rule::DropDiaphragm6At28, "4"},
        {"u6_g4", 28.1, Rule::DropDiaphragm6At35, ""},
        {"u16_g10", 28, Rule::DropDiaphragm16At28, "1"},
        {"u16_g10", 35, Rule::DropDiaphragm16At35, "1"},
        {"u16_g10", 42, std::nullopt, ""},
        {"u25_g16", 28, std::nullopt, ""},
        {"other", 22, std::nullopt, ""},
        {"", 22, std::nullopt, ""},
    };
    for (const auto& c : cases) {
        const auto rule = edition3DropRule(part(c.meter, c.nominal));
        EXPECT_EQ(rule, c.rule) << c.meter << ' ' << c.nominal;
        if (!rule) {
            continue;
        }
        const auto* entry = book.find({*rule, rulebook::Edition::Up1bEd3, rulebook::Gas::NaturalGas});
        ASSERT_NE(entry, nullptr);
        const auto figure = rulebook::figureOf(*entry);
        EXPECT_EQ(figure ? figure->value.text() : "", c.millibar) << c.meter << ' ' << c.nominal;
    }
}

TEST(Edition3Drop, NeedsEveryPipesSize) {
    auto unknown = part("u6_g4", 22);
    unknown.nominalKnown = false;
    EXPECT_FALSE(edition3DropRule(unknown));
}

}  // namespace
}  // namespace hearth::tightness

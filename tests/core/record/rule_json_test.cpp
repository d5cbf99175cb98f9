// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/rule_json.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using quantity::Decimal;
using quantity::UnitCode;
using rulebook::Value;

TEST(RuleJson, holdsDecimalsAsText) {
    EXPECT_EQ(ruleValueJson(quantity::Figure{Decimal(20, 2), UnitCode::Millibar}),
              R"({"figure":{"unit":"mbar","value":"0.20"}})");
    EXPECT_EQ(ruleValueJson(rulebook::Range{Decimal(70, 1), Decimal(10, 0), UnitCode::Millibar}),
              R"({"range":{"least":"7.0","most":"10","unit":"mbar"}})");
    EXPECT_EQ(ruleValueJson(std::vector<rulebook::Band>{{Decimal(10, 3), Decimal(4, 0)}}),
              R"({"bands":[{"allowed":"4","up_to":"0.010"}]})");
    EXPECT_EQ(ruleValueJson(std::monostate{}), "null");
}

TEST(RuleJson, isReadBackAsItWas) {
    const Value values[] = {
        std::monostate{}, quantity::Figure{Decimal(-5, 3), UnitCode::Kelvin},
        rulebook::Range{Decimal(200, 1), Decimal(21, 0), UnitCode::Millibar},
        std::vector<rulebook::Band>{{Decimal(1, 2), Decimal(4, 0)}, {Decimal(2, 2), Decimal(2, 0)}},
        std::vector<rulebook::Band>{}};
    for (const auto& value : values) {
        EXPECT_EQ(ruleValueFromJson(ruleValueJson(value)), value) << ruleValueJson(value);
    }
    const auto figure =
        std::get<quantity::Figure>(*ruleValueFromJson(R"({"figure":{"unit":"mbar","value":"0.20"}})"));
    EXPECT_EQ(figure.value.text(), "0.20");  // the last zero too
}

TEST(RuleJson, thatIsNoneIsAnError) {
    for (const std::string json : {"", "{", "7", "\"x\"", R"({"figure":{"unit":"mbar","value":0.2}})",
                                   R"({"figure":{"unit":"furlong","value":"0.2"}})",
                                   R"({"figure":{"unit":"mbar","value":"a"}})", R"({"curve":[]})"}) {
        const auto value = ruleValueFromJson(json);
        ASSERT_FALSE(value) << json;
        EXPECT_EQ(value.error().code, ErrorCode::RuleValueUnusable);
    }
}

}  // namespace
}  // namespace hearth::record

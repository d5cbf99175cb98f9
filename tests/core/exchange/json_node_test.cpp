// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_node.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

std::string faultOf(const std::function<void()>& use) {
    try {
        use();
    } catch (const NodeFault& fault) {
        return fault.where + ' ' + fault.what;
    }
    return "no fault";
}

struct JsonNodeTest : ::testing::Test {
    nlohmann::json json = nlohmann::json::parse(R"({"a": {"list": [1, {"b": "x"}]}, "yes": true})");
    JsonNode root{json, {}};
};

TEST_F(JsonNodeTest, KnowsWhereItStands) {
    EXPECT_EQ(root.at("a").at("list").elements()[1].at("b").where(), "a.list[1].b");
    EXPECT_EQ(root.at("a").at("list").elements()[1].at("b").text(), "x");
    EXPECT_TRUE(root.at("yes").truth());
}

TEST_F(JsonNodeTest, NamesEachFault) {
    EXPECT_EQ(faultOf([&] { (void)root.at("a").at("gone"); }), "a.gone missing");
    EXPECT_EQ(faultOf([&] { (void)root.at("a").text(); }), "a wrong_type");
    EXPECT_EQ(faultOf([&] { (void)root.at("a").at("list").elements()[0].text(); }), "a.list[0] wrong_type");
    EXPECT_EQ(faultOf([&] { (void)root.at("yes").integer(); }), "yes wrong_type");
    EXPECT_EQ(faultOf([&] { (void)root.at("yes").elements(); }), "yes wrong_type");
    EXPECT_EQ(faultOf([&] { (void)root.at("yes").find("b"); }), "yes wrong_type");
    EXPECT_EQ(faultOf([&] { root.allowOnly({"a"}); }), "yes unknown");
}

TEST_F(JsonNodeTest, WhatMayBeAbsentIs) {
    EXPECT_FALSE(root.find("gone").has_value());
    EXPECT_TRUE(root.list("gone").empty());
    EXPECT_EQ(root.textOr("gone", "else"), "else");
}

}  // namespace
}  // namespace hearth::exchange

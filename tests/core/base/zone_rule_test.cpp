// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone_rule.h"

#include <gtest/gtest.h>
#include <string_view>

namespace hearth {
namespace {

using namespace std::chrono_literals;
using std::chrono::sys_days;

TEST(ZoneRule, readsOffsetsAndChanges) {
    const auto london = parseZoneRule("GMT0BST,M3.5.0/1,M10.5.0").value();
    EXPECT_EQ(london.standardOffset, 0s);
    EXPECT_EQ(london.summerOffset, 1h);
    EXPECT_EQ(london.toSummer->month, 3);
    EXPECT_EQ(london.toSummer->week, 5);
    EXPECT_EQ(london.toSummer->time, 1h);
    EXPECT_EQ(london.toStandard->time, 2h);  // POSIX: 02:00:00 when none is given

    EXPECT_EQ(parseZoneRule("IST-5:30").value().standardOffset, 5h + 30min);
    EXPECT_EQ(parseZoneRule("<-03>3<-02>,M3.5.0/-2,M10.5.0/-1").value().toSummer->time, -2h);
}

// POSIX.1-2017 section 8.3: J1 to J365 never count 29 February, 0 to 365 do. Day J60 is always 1 March.
TEST(ZoneRule, countsDaysOfTheYearBothWays) {
    const auto julian = parseZoneRule("AAA0BBB,J60/0,J300/0").value();
    const auto counted = parseZoneRule("AAA0BBB,59/0,300/0").value();
    for (const auto year : {2026y, 2028y}) {
        const sys_days firstOfMarch{year / std::chrono::March / 1};
        EXPECT_EQ(julian.offsetAt(firstOfMarch - 1s), 0s);
        EXPECT_EQ(julian.offsetAt(firstOfMarch), 1h);
    }
    EXPECT_EQ(counted.offsetAt(sys_days{2028y / std::chrono::February / 29}), 1h);
    EXPECT_EQ(counted.offsetAt(sys_days{2026y / std::chrono::February / 28} + 23h), 0s);
}

TEST(ZoneRule, summerMaySpanTheNewYear) {
    const auto south = parseZoneRule("AEST-10AEDT,M10.1.0,M4.1.0/3").value();
    EXPECT_EQ(south.offsetAt(sys_days{2026y / std::chrono::January / 1}), 11h);
    EXPECT_EQ(south.offsetAt(sys_days{2026y / std::chrono::July / 1}), 10h);
    EXPECT_EQ(south.offsetAt(sys_days{2026y / std::chrono::December / 31}), 11h);
}

TEST(ZoneRule, anythingElseIsNothing) {
    for (const std::string_view text :
         {"", "GMT", "GM0", "GMT0BST", "GMT0BST,M3.5.0/1", "GMT0BST,M3.5.0/1,M10.5.0,",
          "GMT0BST,M13.5.0,M10.5.0", "GMT0BST,M3.6.0,M10.5.0", "GMT0BST,M3.5.7,M10.5.0", "GMT0BST,J0,J365",
          "GMT0BST,M3.5.0/168,M10.5.0", "<GMT0", "GMT99999"}) {
        EXPECT_FALSE(parseZoneRule(text)) << text;
    }
}

}  // namespace
}  // namespace hearth

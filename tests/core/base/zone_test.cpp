// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone.h"

#include "tests/support/files.h"

#include <cstdlib>
#include <ctime>
#include <gtest/gtest.h>
#include <random>

namespace hearth {
namespace {

using std::chrono::seconds;
using std::chrono::sys_seconds;

/// The C library's opinion. It reads the same database by code of its own.
seconds offsetByTheCLibrary(const std::string& zone, std::time_t at) {
    setenv("TZ", zone.c_str(), 1);
    tzset();
    std::tm wall{};
    localtime_r(&at, &wall);
    unsetenv("TZ");
    tzset();
    return seconds{wall.tm_gmtoff};
}

constexpr std::int64_t kYear = 31'556'952;

std::int64_t yearsFrom1970(int years) {
    return years * kYear;
}

// Common ones, half and quarter hours, a southern one, two clocks changes that depend on Ramadan, a change of
// date line.
TEST(Zone, agreesWithTheCLibraryFrom1900To2200) {
    std::mt19937_64 random(1972);
    std::uniform_int_distribution<std::int64_t> instants(yearsFrom1970(-70), yearsFrom1970(230));
    for (const std::string name : {"Europe/London", "Europe/Dublin", "Europe/Amsterdam", "America/New_York",
                                   "Asia/Kolkata", "Asia/Kathmandu", "Australia/Lord_Howe", "America/Nuuk",
                                   "Africa/Casablanca", "Pacific/Apia", "Antarctica/Troll", "UTC"}) {
        const Zone* zone = zoneNamed(name);
        ASSERT_NE(zone, nullptr) << name << ": the time zone database (tzdata) must be there for this test";
        for (int i = 0; i < 500; ++i) {
            const std::int64_t at = instants(random);
            ASSERT_EQ(zone->offsetAt(sys_seconds{seconds{at}}), offsetByTheCLibrary(name, at))
                << name << ' ' << at;
        }
    }
}

// The rule stands for the database on a machine without one. It holds since the clocks went back on 27
// October 1996 (before, Great Britain went back on the fourth Sunday; Summer Time Order 1994 and 1997, from
// memory).
TEST(Zone, theRuleAgreesWithTheCLibraryFrom1997On) {
    std::mt19937_64 random(2002);
    std::uniform_int_distribution<std::int64_t> instants(yearsFrom1970(27), yearsFrom1970(230));
    for (const std::string name : {"Europe/London", "Europe/Belfast", "Europe/Jersey", "Europe/Guernsey",
                                   "Europe/Isle_of_Man", "Europe/Dublin", "UTC", "Etc/UTC"}) {
        const auto zone = zoneByRule(name);
        ASSERT_TRUE(zone) << name;
        for (int i = 0; i < 500; ++i) {
            const std::int64_t at = instants(random);
            ASSERT_EQ(zone->offsetAt(sys_seconds{seconds{at}}), offsetByTheCLibrary(name, at))
                << name << ' ' << at;
        }
    }
    EXPECT_FALSE(zoneByRule("America/New_York"));
}

TEST(Zone, everyInstantIsFoundAgainFromItsWallTime) {
    std::mt19937_64 random(1916);
    std::uniform_int_distribution<std::int64_t> instants(yearsFrom1970(-70), yearsFrom1970(130));
    for (const std::string name :
         {"Europe/London", "Australia/Lord_Howe", "Asia/Kathmandu", "America/New_York"}) {
        const Zone* zone = zoneNamed(name);
        ASSERT_NE(zone, nullptr);
        for (int i = 0; i < 2000; ++i) {
            const sys_seconds at{seconds{instants(random)}};
            const std::chrono::local_seconds wall{(at + zone->offsetAt(at)).time_since_epoch()};
            const auto found = zone->instantAt(wall);
            ASSERT_TRUE(found) << name << ' ' << at.time_since_epoch().count();
            // In the hour that comes twice it may be the earlier one, with the same wall time.
            ASSERT_LE(*found, at);
            ASSERT_EQ((*found + zone->offsetAt(*found)).time_since_epoch(), wall.time_since_epoch());
        }
    }
}

TEST(Zone, aNameThatNobodyKnowsIsNull) {
    for (const std::string name : {"", "Europe/Nowhere", "/etc/passwd", "../../../etc/passwd", "Europe",
                                   "Europe/London\n", "tzdata.zi"}) {
        EXPECT_EQ(zoneNamed(name), nullptr) << name;
    }
}

TEST(Tzif, aCutFileIsNotAZone) {
    const std::string whole = testing::readFile("/usr/share/zoneinfo/Europe/London");
    ASSERT_TRUE(Zone::fromTzif(whole));
    for (std::size_t length = 0; length < whole.size(); ++length) {
        ASSERT_FALSE(Zone::fromTzif(std::string_view(whole).substr(0, length))) << length;
    }
}

TEST(Tzif, aDamagedFileHarmsNobody) {
    const std::string whole = testing::readFile("/usr/share/zoneinfo/Europe/London");
    std::mt19937_64 random(9636);
    for (int i = 0; i < 20'000; ++i) {
        std::string damaged = whole;
        damaged[random() % damaged.size()] = static_cast<char>(random());
        if (random() % 4 == 0) {
            damaged[random() % 44] = static_cast<char>(random());
        }
        if (const auto zone = Zone::fromTzif(damaged)) {
            (void)zone->offsetAt(sys_seconds{seconds{yearsFrom1970(56)}});
            (void)zone->instantAt(std::chrono::local_seconds{seconds{yearsFrom1970(56)}});
        }
    }
}

/// The smallest file: version 1, no transitions, one type of local time.
TEST(Tzif, versionOneIsRead) {
    std::string bytes = "TZif";
    bytes += std::string(16, '\0');
    for (const char count : {'\0', '\0', '\0', '\0', '\1', '\4'}) {
        bytes.append(3, '\0').push_back(count);
    }
    bytes += std::string("\0\0\x0E\x10\0\0", 6) + std::string("XXX\0", 4);  // 3600 s east
    const auto zone = Zone::fromTzif(bytes);
    ASSERT_TRUE(zone);
    EXPECT_EQ(zone->offsetAt(sys_seconds{}), seconds{3600});
}

}  // namespace
}  // namespace hearth

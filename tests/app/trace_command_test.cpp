// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/trace_command.h"

#include "tests/app/program.h"

#include <cmath>
#include <gmock/gmock.h>
#include <random>
#include <regex>

namespace {

using hearth::testing::writeFile;
using ::testing::HasSubstr;
using ::testing::Not;

/// Tables of a pipe whose truth is known: 10 litres, four readings a second, shown to a hundredth of a
/// millibar with noise of as much.
class TraceCommand : public ::testing::Test {
  protected:
    /// `fall` mbar of settling with a time of 25 s, and `leak` mbar a minute at 20.5 mbar (laminar: it goes
    /// with the pressure; so little of it that the fall is straight).
    void watch(double fall, double leak, int seconds = 180) {
        std::mt19937 random(11);
        std::normal_distribution<double> noise(0.0, 0.01);
        std::string table = "elapsed (s),pressure (mbar)\r\n";
        for (int i = 0; i <= 4 * seconds; ++i) {
            const double at = i / 4.0;
            const double pressure =
                (20.5 - fall * (1.0 - std::exp(-at / 25.0))) * std::exp(-leak / 20.5 * at / 60.0);
            char line[48];
            std::snprintf(line, sizeof line, "%.2f,%.2f\r\n", at, pressure + noise(random));
            table += line;
        }
        writeFile(inHome("gauge.csv"), table);
    }
    [[nodiscard]] hearth::testing::Program::Run told(const std::string& more = "--volume 10") const {
        return program.run("trace " + inHome("gauge.csv") + " " + more);
    }
    [[nodiscard]] std::string inHome(const char* name) const { return (program.home() / name).string(); }

    hearth::testing::Program program;
};

TEST_F(TraceCommand, tellsATightPipeThatCoolsFromALeak) {
    watch(0.25, 0.0);
    const auto cools = told();
    EXPECT_EQ(cools.exitCode, 0) << cools.error;
    EXPECT_THAT(cools.out, HasSubstr("The fall is what cooling explains"));
    EXPECT_THAT(cools.out, HasSubstr("721 readings over 180.0"));
    EXPECT_THAT(cools.out, HasSubstr("The verdict of a test is by the standard's rule"));
    watch(0.0, 0.3);
    const auto leaks = told();
    EXPECT_EQ(leaks.exitCode, 0) << leaks.error;
    EXPECT_THAT(leaks.out, HasSubstr("look for a leak"));
    // 0.3 mbar a minute out of 10 l: 10 * 60 * 0.3 / 1013.25 l/h (Boyle's law, by hand).
    std::smatch found;
    ASSERT_TRUE(std::regex_search(leaks.out, found, std::regex("between ([0-9.]+).*l/h and ([0-9.]+)")));
    EXPECT_LT(std::stod(found[1]), 0.1776);
    EXPECT_GT(std::stod(found[2]), 0.1776);
    EXPECT_LT(std::stod(found[2]) - std::stod(found[1]), 0.05);
}

// The interval can't be narrower than what the drift alone makes of it: 0.1 mbar a minute either way out of
// 10 l is 10 * 60 * 0.1 / 1013.25 l/h (Boyle's law, by hand) to each side at the very ends; a half of that
// is asked for, since the interval is of 95 % and the drift is evenly spread.
TEST_F(TraceCommand, takesTheGaugesDriftIntoTheInterval) {
    watch(0.0, 0.3);
    const auto width = [](const std::string& said) {
        std::smatch found;
        EXPECT_TRUE(std::regex_search(said, found, std::regex("between (.?[0-9.]+).*l/h and ([0-9.]+)")))
            << said;
        return std::stod(found[2]) - std::stod(found[1]);
    };
    const auto without = told();
    EXPECT_THAT(without.out, HasSubstr("No drift of the gauge is in it"));
    const auto with = told("--volume 10 --drift 0.1");
    EXPECT_THAT(with.out, HasSubstr("A drift of the gauge of 0.100"));
    const double byDrift = 2.0 * 10.0 * 60.0 * 0.1 / 1013.25;
    EXPECT_GT(width(with.out), byDrift / 2.0);
    EXPECT_LT(width(without.out), byDrift / 2.0);
    for (const char* wrong : {"-1", "much", "1001"}) {
        EXPECT_EQ(told(std::string("--volume 10 --drift ") + wrong).exitCode, 2) << wrong;
    }
}

// A leak in a volume that may be off by half is told in a wider interval, and stays a leak.
TEST_F(TraceCommand, takesInHowFarTheVolumeMayBeOff) {
    watch(0.0, 0.15);
    const auto exact = told();
    EXPECT_THAT(exact.out, HasSubstr("The volume is taken as exact."));
    const auto loose = told("--volume 10 --volume-off 50");
    EXPECT_THAT(loose.out, HasSubstr("That the volume may be off by 50.0"));
    EXPECT_EQ(exact.out.substr(0, exact.out.find("Leak at")), loose.out.substr(0, loose.out.find("Leak at")));
    std::smatch of;
    std::smatch ofLoose;
    const std::regex most("and ([0-9.]+).*l/h, 95 times");
    ASSERT_TRUE(std::regex_search(exact.out, of, most) && std::regex_search(loose.out, ofLoose, most));
    EXPECT_GT(std::stod(ofLoose[1]), 1.3 * std::stod(of[1]));
    for (const char* wrong : {"-1", "much", "100"}) {
        EXPECT_EQ(told(std::string("--volume 10 --volume-off ") + wrong).exitCode, 2) << wrong;
    }
}

TEST_F(TraceCommand, tellsALeakThatWarmingHides) {
    watch(-0.3, 0.15);  // after two minutes the gauge reads as high as at first
    const auto hidden = told();
    EXPECT_EQ(hidden.exitCode, 0) << hidden.error;
    EXPECT_THAT(hidden.out, HasSubstr("look for a leak"));
}

TEST_F(TraceCommand, callsNothingTightThatItCantTell) {
    watch(0.1, 0.1, 21);
    const auto unsure = told();
    EXPECT_EQ(unsure.exitCode, 1);
    EXPECT_THAT(unsure.out, HasSubstr("Can't tell: wait longer"));
    EXPECT_THAT(unsure.out, Not(HasSubstr("Leak at")));
    watch(0.0, 0.0, 10);
    const auto little = told();
    EXPECT_EQ(little.exitCode, 1);
    EXPECT_THAT(little.error, HasSubstr("Nothing was worked out"));
    EXPECT_EQ(little.out, "");
}

TEST_F(TraceCommand, takesAStretch) {
    watch(0.0, 0.3);
    EXPECT_THAT(told("--volume 10 --stretch 60:120").out, HasSubstr("241 readings over 60.0"));
    EXPECT_EQ(told("--volume 10 --stretch 170:180").exitCode, 1);
    for (const char* wrong : {"120:60", "60", "a:b", "-5:60"}) {
        EXPECT_EQ(told(std::string("--volume 10 --stretch ") + wrong).exitCode, 2) << wrong;
    }
}

TEST_F(TraceCommand, wantsWhatItCantKnow) {
    watch(0.0, 0.0);
    EXPECT_EQ(told("").exitCode, 2);
    EXPECT_THAT(told("").error, HasSubstr("--volume LITRES"));
    EXPECT_EQ(told("--volume 0").exitCode, 2);
    EXPECT_EQ(told("--volume ten").exitCode, 2);
    EXPECT_EQ(told("--volume 10 --unit furlong").exitCode, 2);
    writeFile(inHome("gauge.csv"), "0,20.50\n1,20.49\n");
    const auto unsaid = told();
    EXPECT_EQ(unsaid.exitCode, 3);
    EXPECT_THAT(unsaid.error, HasSubstr("say --unit mbar"));
    EXPECT_EQ(program.run("trace " + inHome("none.csv") + " --volume 10").exitCode, 3);
}

}  // namespace

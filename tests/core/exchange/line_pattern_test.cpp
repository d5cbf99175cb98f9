// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/line_pattern.h"

#include "core/exchange/line_splitter.h"

#include <gtest/gtest.h>
#include <random>
#include <string>

namespace hearth::exchange {
namespace {

using quantity::DecimalMark;
using quantity::UnitCode;
using quantity::UnitFamily;

std::string told(const tl::expected<LineReading, LineRefusal>& result) {
    if (!result) {
        static constexpr const char* kFaults[] = {"text differs", "no number", "number unreadable",
                                                  "no time",      "no unit",   "unit unknown",
                                                  "more text"};
        const auto& refusal = result.error();
        return std::string(kFaults[static_cast<int>(refusal.fault)]) + " at " + std::to_string(refusal.at) +
               (refusal.what.empty() ? "" : ": " + refusal.what);
    }
    std::string text = result->value.text() + ' ' + std::string(quantity::unitText(result->unit));
    if (result->second) {
        text += " & " + result->second->text() + ' ' + std::string(quantity::unitText(result->secondUnit));
    }
    return text;
}

struct LineCase {
    const char* name;
    const char* pattern;
    const char* line;
    const char* expected;
    DecimalMark mark = DecimalMark::Point;
    std::optional<UnitCode> unit = std::nullopt;
    std::optional<UnitCode> secondUnit = std::nullopt;
};
std::ostream& operator<<(std::ostream& out, const LineCase& one) {
    return out << one.name;
}

class LinePatternReads : public ::testing::TestWithParam<LineCase> {};

TEST_P(LinePatternReads, theReadingOrTheReason) {
    const auto& one = GetParam();
    LinePattern pattern{one.pattern,   one.mark, UnitFamily::Pressure, one.unit, UnitFamily::Temperature,
                        one.secondUnit};
    const auto matcher = LineMatcher::of(pattern);
    ASSERT_TRUE(matcher);
    EXPECT_EQ(told(matcher->read(one.line)), one.expected);
}

constexpr auto kComma = DecimalMark::Comma;
constexpr auto kPoint = DecimalMark::Point;

INSTANTIATE_TEST_SUITE_P(
    Readings, LinePatternReads,
    ::testing::Values(LineCase{"plain", "{value} {unit}", "20.51 mbar", "20.51 mbar"},
                      LineCase{"lastZeroStays", "{value} {unit}", "20.50 mbar", "20.50 mbar"},
                      LineCase{"noBlank", "{value} {unit}", "20.51mbar", "20.51 mbar"},
                      LineCase{"blanksAround", "{value} {unit}", "  20.51 \t mbar  ", "20.51 mbar"},
                      LineCase{"largeLetters", "{value} {unit}", "20.51 MBAR", "20.51 mbar"},
                      LineCase{"hectopascal", "{value} {unit}", "20.51 hPa", "20.51 mbar"},
                      LineCase{"twoWords", "{value} {unit}", "8.2 in H2O", "8.2 inwg"},
                      LineCase{"minus", "{value} {unit}", "-0.02 mbar", "-0.02 mbar"},
                      LineCase{"realMinus", "{value} {unit}", "\u22120.02 mbar", "-0.02 mbar"},
                      LineCase{"signApart", "{value} {unit}", "-   0.02 mbar", "-0.02 mbar"},
                      LineCase{"plusApart", "{value} {unit}", "+  20.51 mbar", "20.51 mbar"},
                      LineCase{"comma", "{value} {unit}", "20,51 mbar", "20.51 mbar", kComma},
                      LineCase{"unitBeside", "{value}", "20.51", "20.51 Pa", kPoint, UnitCode::Pascal},
                      LineCase{"textAround", "P={value} {unit};", "P= 20.51 mbar;", "20.51 mbar"},
                      LineCase{"secondChannel", "{value} {unit} {second} {second unit}", "20.51 mbar 18.4 °C",
                               "20.51 mbar & 18.4 degC"},
                      LineCase{"oldDegree", "{value} {unit} {second} {second unit}",
                               "20.51 mbar 18.4 \xB0"
                               "C",
                               "20.51 mbar & 18.4 degC"},
                      LineCase{"commasBetween", "{value},{second}", "20.51,18.4", "20.51 mbar & 18.4 degC",
                               kPoint, UnitCode::Millibar, UnitCode::Celsius},
                      LineCase{"semicolonsBetween", "{value};{second}", "20,51;18,4",
                               "20.51 mbar & 18.4 degC", kComma, UnitCode::Millibar, UnitCode::Celsius},
                      LineCase{"clock", "{time} {value} {unit}", "09:40:12.5 20.51 mbar", "20.51 mbar"},
                      LineCase{"dated", "{time},{value} {unit}", "2026-11-25T09:40:12Z,20.51 mbar",
                               "20.51 mbar"},
                      LineCase{"skipped", "{skip} {value} {unit}", "ST, GS, + 20.51 mbar", "20.51 mbar"},
                      LineCase{"skippedMinus", "{skip} {value} {unit}", "ST, GS, - 0.02 mbar", "-0.02 mbar"},
                      LineCase{"skippedBehind", "{value} {unit} {skip}", "20.51 mbar ok 97 %", "20.51 mbar"},
                      LineCase{"skippedNumbers", "{skip} {value} {unit} {skip}",
                               "7 26/11/2026 20.51 mbar 97 %", "20.51 mbar"},
                      LineCase{"skippedTwice", "{skip}A{skip}B{value} {unit}", "AxBAAB1 mbar", "1 mbar"}),
    [](const auto& one) { return std::string(one.param.name); });

INSTANTIATE_TEST_SUITE_P(
    Refusals, LinePatternReads,
    ::testing::Values(
        LineCase{"empty", "{value} {unit}", "", "no number at 0"},
        LineCase{"over", "{value} {unit}", "OVER", "no number at 0"},
        LineCase{"dashes", "{value} {unit}", "--.-- mbar", "no number at 0"},
        LineCase{"otherUnit", "{value} {unit}", "20.51 psi", "unit unknown at 6: psi"},
        LineCase{"unitOfOtherKind", "{value} {unit}", "20.51 °C", "unit unknown at 6: °C"},
        LineCase{"rate", "{value} {unit}", "20.51 mbar/s", "unit unknown at 6: mbar/s"},
        LineCase{"noUnit", "{value} {unit}", "20.51", "no unit at 5"},
        LineCase{"goesOn", "{value} {unit}", "20.51 mbar LOW", "more text at 11"},
        // A number is taken whole or not at all.
        LineCase{"otherMark", "{value} {skip}", "20,51 mbar", "number unreadable at 0: 20,51", kPoint,
                 UnitCode::Millibar},
        LineCase{"otherMarkSkipped", "{skip} {value} {unit}", "P 20,51 mbar",
                 "number unreadable at 2: 20,51"},
        LineCase{"thousands", "{skip} {value} {unit}", "1,020.51 mbar", "number unreadable at 0: 1,020.51"},
        LineCase{"exponent", "{value} {skip}", "2.05E1 mbar", "number unreadable at 0: 2.05E1", kPoint,
                 UnitCode::Millibar},
        LineCase{"exponentForUnit", "{value} {unit}", "2.05E1 mbar", "unit unknown at 4: E1"},
        LineCase{"version", "{value} {skip}", "1.2.3", "number unreadable at 0: 1.2.3", kPoint,
                 UnitCode::Millibar},
        LineCase{"tailOfAWord", "{skip}{value}", "x20", "no number at 0", kPoint, UnitCode::Millibar},
        LineCase{"tailOfANumber", "{skip}{value}", "20.51x", "more text at 5", kPoint, UnitCode::Millibar},
        LineCase{"tooLong", "{value} {unit}", "20.512345678901234567 mbar",
                 "number unreadable at 0: 20.512345678901234567"},
        LineCase{"otherText", "P={value} {unit}", "Q=20.51 mbar", "text differs at 0: P="},
        LineCase{"noTime", "{time} {value} {unit}", "x 20.51 mbar", "no time at 0"},
        LineCase{"blankNeeded", "{value} {second}", "20.51-18.4", "text differs at 5:  ", kPoint,
                 UnitCode::Millibar, UnitCode::Celsius},
        LineCase{"secondMissing", "{value} {unit} {second} {second unit}", "20.51 mbar",
                 "text differs at 10:  "}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(LinePattern, SaysWhereTheReadingStands) {
    const auto matcher = LineMatcher::of({"{skip} {value} {unit}", kPoint, UnitFamily::Pressure, {}});
    const auto reading = matcher->read("ST, - 0.02 mbar");
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->valueAt, (Stretch{4, 6}));
    EXPECT_FALSE(reading->secondAt);
}

TEST(LinePattern, RefusesWhatTellsNothing) {
    struct Refused {
        const char* text;
        PatternFault fault;
        std::size_t at;
    };
    for (const auto& [text, fault, at] : {
             Refused{"", PatternFault::Empty, 0},
             Refused{"  ", PatternFault::Empty, 0},
             Refused{"{value", PatternFault::BraceOpen, 0},
             Refused{"{value} }", PatternFault::BraceOpen, 8},
             Refused{"{value {unit}", PatternFault::BraceOpen, 0},
             Refused{"{pressure} {unit}", PatternFault::FieldUnknown, 0},
             Refused{"{value} {unit} {value}", PatternFault::FieldTwice, 15},
             Refused{"{value}{second} {unit}", PatternFault::FieldsTouch, 7},
             Refused{"{skip} {skip} {value}", PatternFault::FieldsTouch, 7},
             Refused{"{skip} mbar", PatternFault::NoValue, 0},
             Refused{"{value}", PatternFault::NoUnit, 0},
             Refused{"{value} {unit} {second unit}", PatternFault::SecondMissing, 0},
             Refused{"{value} {unit} {second}", PatternFault::NoSecondUnit, 0},
         }) {
        const auto matcher = LineMatcher::of({text, kPoint, UnitFamily::Pressure, {}});
        ASSERT_FALSE(matcher) << text;
        EXPECT_EQ(matcher.error().fault, fault) << text;
        EXPECT_EQ(matcher.error().at, at) << text;
    }
    EXPECT_EQ(LineMatcher::of({std::string(201, 'x'), kPoint}).error().fault, PatternFault::TooLong);
}

struct GuessCase {
    const char* name;
    std::vector<std::string> lines;
    const char* expected;  // "" where nothing is guessed
    DecimalMark mark = DecimalMark::Point;
    UnitFamily family = UnitFamily::Pressure;
};
std::ostream& operator<<(std::ostream& out, const GuessCase& one) {
    return out << one.name;
}

class LinePatternGuesses : public ::testing::TestWithParam<GuessCase> {};

TEST_P(LinePatternGuesses, theStrictestThatMostLinesFit) {
    const auto& one = GetParam();
    const auto guess = guessPattern(one.lines, one.family);
    EXPECT_EQ(guess ? guess->text : "", one.expected);
    if (guess) {
        EXPECT_EQ(guess->mark, one.mark);
        EXPECT_FALSE(guess->unit) << "a unit that no line names is not guessed";
    }
}

INSTANTIATE_TEST_SUITE_P(
    Samples, LinePatternGuesses,
    ::testing::Values(
        GuessCase{"plain", {"20.51 mbar", "20.50 mbar"}, "{value} {unit}"},
        GuessCase{"comma", {"20 mbar", "20,50 mbar"}, "{value} {unit}", DecimalMark::Comma},
        GuessCase{"clock", {"09:40:12 20.51 mbar", "09:40:13 20.50 mbar"}, "{time} {value} {unit}"},
        GuessCase{"dated", {"25/11/2026 09:40:12 20.51 mbar"}, "{time} {time} {value} {unit}"},
        GuessCase{"temperature", {"20.51 mbar 18.4 °C"}, "{value} {unit} {second} {second unit}"},
        GuessCase{"barometer", {"20.51 mbar, 1013.2 hPa"}, "{value} {unit}, {second} {second unit}"},
        GuessCase{"status", {"ST,GS,+ 20.51 mbar"}, "{skip} {value} {unit}"},
        GuessCase{"battery", {"20.51 mbar 97 %"}, "{value} {unit} {skip}"},
        GuessCase{"bare", {"20.51", "20.50", "OL"}, "{value}"},
        GuessCase{"carbonMonoxide",
                  {"CO 4 ppm", "CO 5 ppm"},
                  "{skip} {value} {unit}",
                  DecimalMark::Point,
                  UnitFamily::Trace},
        GuessCase{"halfALineFirst", {"51 mb", "20.51 mbar", "20.50 mbar", "garbage"}, "{value} {unit}"},
        GuessCase{"twoPlainFigures", {"20.51 18.4", "20.50 18.4"}, ""},
        GuessCase{"wrongFamily", {"18.4 °C", "18.5 °C"}, ""}, GuessCase{"nothing", {}, ""}),
    [](const auto& one) { return std::string(one.param.name); });

/// Lines of what gauges send, broken in every way: none crashes, and what is read is what stands there.
TEST(LinePattern, NoLineHoweverBrokenGivesAFigureThatIsNotInIt) {
    static constexpr const char* kParts[] = {"20.51", "mbar", " ",    "{value}", "-",     "+",     "\u2212",
                                             ",",     ".",    "0",    "9",       "\xB0",  "\xE2",  "°C",
                                             "in",    "H2O",  "OVER", "\t",      "1e5",   ";",     "09:40:1",
                                             "hPa",   "\x01", "P=",   "{skip",   "12345", "67890", "99999"};
    std::mt19937 random(1);
    std::uniform_int_distribution<std::size_t> which(0, std::size(kParts) - 1);
    std::uniform_int_distribution<int> length(0, 40);
    int read = 0;
    int patterns = 0;
    for (int round = 0; round < 400; ++round) {
        static constexpr const char* kPatterns[] = {
            "{skip} {value} {unit} {skip}",  "{value} {unit}", "{value},{second}", "{skip},{value}{skip}",
            "{time} {value} {unit} {skip}",  "{value}",        "P={value}{skip}",  "{skip}{value}",
            "{skip}mbar{value}{skip}{unit}", "{value} {skip}"};
        LinePattern pattern;
        pattern.text = kPatterns[static_cast<std::size_t>(round) % std::size(kPatterns)];
        pattern.mark = round % 3 == 0 ? DecimalMark::Comma : DecimalMark::Point;
        pattern.unit = UnitCode::Millibar;
        pattern.secondUnit = UnitCode::Celsius;
        const auto matcher = LineMatcher::of(pattern);
        patterns += matcher ? 1 : 0;
        for (int i = 0; matcher && i < 200; ++i) {
            std::string line;
            for (int parts = length(random); parts > 0; --parts) {
                line += kParts[which(random)];
            }
            const auto reading = matcher->read(line);
            if (!reading) {
                EXPECT_LE(reading.error().at, line.size());
                continue;
            }
            ++read;
            ASSERT_LE(reading->valueAt.from + reading->valueAt.length, line.size());
            std::string figures;
            for (const char c : line.substr(reading->valueAt.from, reading->valueAt.length)) {
                if (c >= '0' && c <= '9') {
                    figures += c;
                }
            }
            std::string value;
            for (const char c : reading->value.text()) {
                if (c >= '0' && c <= '9') {
                    value += c;
                }
            }
            const auto bare = [](const std::string& text) {
                return text.substr(std::min(text.find_first_not_of('0'), text.size()));
            };
            EXPECT_EQ(bare(value), bare(figures)) << line;
        }
    }
    EXPECT_GT(read, 500);
    EXPECT_EQ(patterns, 400);
}

TEST(LinePattern, TheLongestLineIsReadSoonWithManySkips) {
    const auto matcher =
        LineMatcher::of({"{skip}1{skip}1{skip}1{skip}1{skip}1{skip} {value} {unit}", kPoint});
    ASSERT_TRUE(matcher);
    const std::string line(LineSplitter::kLongestLine, '1');
    for (int i = 0; i < 100; ++i) {
        EXPECT_FALSE(matcher->read(line));
    }
}

}  // namespace
}  // namespace hearth::exchange

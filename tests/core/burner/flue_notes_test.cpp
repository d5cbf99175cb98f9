// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/flue_notes.h"

#include "tests/core/burner/flue_samples.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using rulebook::Say;

std::string figureText(const rulebook::Sentence& note, std::size_t argument) {
    return std::get<quantity::Figure>(note.arguments.at(argument)).value.text();
}

// Worked example by hand, methane: CO 80 ppm, O2 4.5 %: 102 ppm free of air, 87 at 3 % O2, 109 mg/kWh net
// (1.074 x 102), 99 gross (0.967 x 102); lambda 1 + 0.895 x 4.5/16.45 = 1.245, simple 20.9/16.4 = 1.274.
TEST(FlueGasNotes, AreThoseOfTheWorkedExample) {
    const auto notes =
        flueGasNotes(flue::read(80, 9.2, 4.5), flue::burning("g20"), gas::properties(flue::named("g20")));
    ASSERT_EQ(notes.size(), 3u);
    EXPECT_EQ(notes[0].say, Say::FlueGasExcessAir);
    EXPECT_EQ(figureText(notes[0], 0), "24");
    EXPECT_EQ(figureText(notes[0], 1), "27");
    EXPECT_EQ(notes[1].say, Say::FlueGasAirFree);
    EXPECT_EQ(figureText(notes[1], 0), "102");
    EXPECT_EQ(figureText(notes[1], 1), "87");
    EXPECT_EQ(notes[2].say, Say::FlueGasEmission);
    EXPECT_EQ(figureText(notes[2], 0), "109");
    EXPECT_EQ(figureText(notes[2], 1), "99");
}

TEST(FlueGasNotes, SayNothingOfWhatWasNotReadOrCannotBe) {
    const auto burning = flue::burning("g20");
    const auto properties = gas::properties(flue::named("g20"));
    FlueReadings readings = flue::read(80, 9.2, 4.5);
    readings.carbonMonoxide = {};
    EXPECT_EQ(flueGasNotes(readings, burning, properties).size(), 1u);
    readings.oxygen = {};
    EXPECT_TRUE(flueGasNotes(readings, burning, properties).empty());
    EXPECT_TRUE(flueGasNotes(flue::read(80, 0, 20.9), burning, properties).empty()) << "fresh air";
}

}  // namespace
}  // namespace hearth::burner

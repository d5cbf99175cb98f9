// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/margin_layout.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace hearth::ui::input {
namespace {

TEST(MarginLayout, ANoteWithRoomStandsAtItsReading) {
    EXPECT_EQ(placeNotes({{10, 40}, {100, 40}}, 0, 8), (std::vector<int>{10, 100}));
}

TEST(MarginLayout, ANoteThatWouldMeetAnotherIsPushedDown) {
    EXPECT_EQ(placeNotes({{10, 40}, {20, 40}, {30, 10}}, 0, 8), (std::vector<int>{10, 58, 106}));
}

TEST(MarginLayout, NothingBeginsAboveTheTop) {
    EXPECT_EQ(placeNotes({{-30, 40}}, 5, 8), (std::vector<int>{5}));
}

TEST(MarginLayout, NoNotesNoPlaces) {
    EXPECT_TRUE(placeNotes({}, 0, 8).empty());
}

/// Law: no two meet, none stands above its reading, the order is kept.
TEST(MarginLayout, NotesNeverMeetWhateverTheirHeights) {
    std::mt19937 random(20261001);  // any: the law holds for all
    std::uniform_int_distribution<int> anchor(0, 2000);
    std::uniform_int_distribution<int> height(1, 300);
    for (int round = 0; round < 200; ++round) {
        std::vector<NoteBox> notes(12);
        for (NoteBox& note : notes) {
            note = {anchor(random), height(random)};
        }
        std::sort(notes.begin(), notes.end(),
                  [](const NoteBox& a, const NoteBox& b) { return a.anchor < b.anchor; });
        const auto tops = placeNotes(notes, 0, 8);
        ASSERT_EQ(tops.size(), notes.size());
        for (std::size_t index = 0; index < notes.size(); ++index) {
            EXPECT_GE(tops[index], notes[index].anchor);
            if (index > 0) {
                EXPECT_GE(tops[index], tops[index - 1] + notes[index - 1].height + 8);
            }
        }
    }
}

}  // namespace
}  // namespace hearth::ui::input

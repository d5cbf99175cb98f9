// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/margin_layout.h"

#include <algorithm>

namespace hearth::ui::input {

std::vector<int> placeNotes(const std::vector<NoteBox>& notes, int top, int gap) {
    std::vector<int> tops;
    tops.reserve(notes.size());
    int free = top;
    for (const NoteBox& note : notes) {
        tops.push_back(std::max(note.anchor, free));
        free = tops.back() + note.height + gap;
    }
    return tops;
}

}  // namespace hearth::ui::input

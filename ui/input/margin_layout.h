// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace hearth::ui::input {

/// A note that wants to stand at the height of the reading that it judges. Logical pixels.
struct NoteBox {
    int anchor = 0;  // top of the reading
    int height = 0;
};

/// Tops of the notes: each at its anchor or below it, in the order given, pushed down so that at least `gap`
/// stays between two of them and none begins above `top`. Notes are to be handed over in the order of their
/// anchors.
[[nodiscard]] std::vector<int> placeNotes(const std::vector<NoteBox>& notes, int top, int gap);

}  // namespace hearth::ui::input

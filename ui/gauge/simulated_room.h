// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>

/// What an instrument for carbon monoxide in a room would show, for practice: no reading of anything.
namespace hearth::ui::gauge {

enum class PracticeRoom {
    Clear,  // nothing but what the display trembles by
    Rises,  // an appliance spills: the level rises until people must leave
};

inline constexpr std::array kPracticeRooms{PracticeRoom::Clear, PracticeRoom::Rises};

/// The level in the room, in ppm: nought until half a minute has passed, then towards 60 ppm as the room's
/// air is changed once in three minutes: 60 (1 - exp(-t / 180 s)).
/// Source: textbook (one well-mixed room, a steady source). Not rounded. Checked: simulated_room_test.cpp.
[[nodiscard]] double practiceLevel(PracticeRoom room, double seconds);

/// As an instrument that shows whole ppm, with a noise of half a step. `count` numbers the readings, so that
/// the same practice looks the same again.
[[nodiscard]] int practicePpm(PracticeRoom room, double seconds, std::uint32_t count);

}  // namespace hearth::ui::gauge

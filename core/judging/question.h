// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/item.h"

#include <optional>
#include <span>
#include <string_view>

/// What can be worked out without a visit: questions, each with the items that it asks for. A question's
/// fields are items of the catalogue, and its answer comes from the same adapters as a visit's findings.
namespace hearth::judging {

enum class Question {
    GasRate,       // what does this gas rate mean: heat input against the plate
    Pressures,     // are these pressures in order
    Combustion,    // is this ratio in order, and what else the analyser says
    HotWater,      // is the hot water what the heat input would give
    Regulation26,  // is what regulation 26(9) asks satisfied
    Ventilation,   // what vent does this room need
    RoomCo,        // what does this series of CO readings in a room mean
    Pipes,         // will this pipe do
    Purge,         // how much and how long must be purged
    Larger,        // which standard, what test, of an installation beyond the small domestic
    Gas,           // what is this gas
    CheckDue,      // when is the next safety check due
};

/// Items that are asked once, or again and again: a row for each section of pipe, each appliance of a room,
/// each vent, each reading.
enum class Group { Once, Section, Appliance, Vent, Reading };

struct AskedGroup {
    Group group = Group::Once;
    std::span<const reg::Item> items;
    int most = 1;  // rows
};

struct QuestionInfo {
    Question question;
    std::string_view code;  // "gas_rate"; never changes
    std::span<const AskedGroup> groups;
};

/// In the order in which they are offered.
[[nodiscard]] std::span<const QuestionInfo> questions();
[[nodiscard]] const QuestionInfo& infoOf(Question question);
[[nodiscard]] std::optional<Question> questionFromCode(std::string_view code);

}  // namespace hearth::judging

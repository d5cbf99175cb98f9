// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/quantity/typed.h"
#include "core/rulebook/say.h"
#include "core/rulebook/standard.h"

#include <string>
#include <variant>
#include <vector>

namespace hearth::rulebook {

using Argument = std::variant<quantity::Figure, calendar::Date, Edition, Gas, std::string>;

/// What a finding says, with what fills its places.
struct Sentence {
    Say say = Say::ReadingMissing;
    std::vector<Argument> arguments = {};
    bool operator==(const Sentence&) const = default;
};

}  // namespace hearth::rulebook

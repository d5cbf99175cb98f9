// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"

#include <string>
#include <string_view>
#include <vector>

/// Whom to ring when gas escapes. A number that the firm enters comes beside the one that is known here, and
/// never in its place: the national service of natural gas stays the first, and a cylinder's or tank's own
/// number is always named too.
namespace hearth::reg {

/// The gas emergency service of the network; empty where none is known: nothing is invented. Source: Great
/// Britain, natural gas: the gas register's pages and appliance warning labels (published). Northern Ireland:
/// none read. LPG has its supplier's (gas register's pages on unsafe situations, published). Checked:
/// emergency_test.cpp.
[[nodiscard]] std::string_view networkNumber(Country country, rulebook::Gas gas);

[[nodiscard]] bool isLpg(rulebook::Gas gas);

/// Whether a text can be dialled as it stands: 3 to 15 digits, beside them blanks, brackets, hyphens and a
/// leading + only, and at most 20 signs in all, so that the caution of a record stays short. Source: ITU-T
/// E.164 (at most 15 digits); the rest: common practice, no source. Checked: emergency_test.cpp.
[[nodiscard]] bool canBeDialled(std::string_view number);

struct EmergencyLine {
    std::string number;
    std::string name;        // whose it is; empty for the network's and where the firm gave none
    bool ofNetwork = false;  // the gas emergency service's, known here
    bool operator==(const EmergencyLine&) const = default;
};

/// The numbers to ring for that country and gas, in the order to ring them: the network's, then the firm's
/// own. One that can't be dialled is left out, and so is the network's number entered once more. Source:
/// common practice, no source. Checked: emergency_test.cpp.
[[nodiscard]] std::vector<EmergencyLine> linesToRing(const std::vector<EmergencyContact>& contacts,
                                                     Country country, rulebook::Gas gas);

}  // namespace hearth::reg

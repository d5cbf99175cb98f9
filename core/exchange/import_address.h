// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"

#include <optional>
#include <string>
#include <string_view>

/// Addresses as spreadsheets hold them.
namespace hearth::exchange {

struct SplitAddress {
    reg::Address address;
    std::optional<reg::Country> country;  // where the text names it
};

/// Whether the town is to be looked for in the address or stands in a cell of its own.
enum class TownStands { Within, Elsewhere };

/// Splits an address that stands in one cell, at commas and line ends: the postcode wherever it stands; a
/// country and a county at the end are left out; the last part is the town; a number or flat alone goes with
/// what follows it. Without commas all but the postcode is line 1: a town can't be told from a street. Common
/// practice, no source. Checked: import_address_test.cpp.
[[nodiscard]] SplitAddress splitAddress(std::string_view cell, TownStands town = TownStands::Within);

/// "England", "Lloegr", "Anglia", "NI" …; nothing for what is none of the four.
[[nodiscard]] std::optional<reg::Country> countryCalled(std::string_view text);

/// What two addresses of the same premises share: the postcode with the numbers of the first line, in order
/// ("LS1 4AB 2 14a" for "Flat 2, 14A High Street"), or with the line's words where there is none. A postcode
/// of no known form counts as it stands; empty where there is none.
[[nodiscard]] std::string premisesKey(const reg::Address& address);

}  // namespace hearth::exchange

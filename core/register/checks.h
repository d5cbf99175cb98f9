// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/standard.h"

#include <optional>
#include <string>
#include <string_view>

/// What can be doubted of a number or code as it was typed. Every rule here has exceptions in the world, so a
/// doubt warns and never blocks, and what was typed is kept.
namespace hearth::reg {

enum class Doubt {
    MprnForm,         // something else than digits
    MprnLength,       // fewer than 6 digits, or more than 11
    MprnCheckDigits,  // its last two digits are not those that the others ask for
    MprnOfLpg,        // a supply of LPG has none
    PostcodeForm,     // of no form that the United Kingdom has
    TelephoneForm,    // can't be a number to ring
    GcNumberForm,     // not seven digits
    UprnForm,         // not 1 to 12 digits
};

/// Nothing for an empty text and for one that there is no ground to doubt; blanks are overlooked, here and
/// below. Confirmed on numbers of ten digits only, and one guide says that there is no checksum. Source: as
/// isMprn() in forms.h; that a supply of LPG has none: common practice, no source. Checked: checks_test.cpp.
[[nodiscard]] std::optional<Doubt> doubtOfMprn(std::string_view typed, rulebook::Gas gas);

/// Forces' post ("BFPO 57") stands outside the scheme and is not doubted. Source: as postcodeIn() in forms.h.
/// Checked: checks_test.cpp.
[[nodiscard]] std::optional<Doubt> doubtOfPostcode(std::string_view typed);

/// As it is written at home: "01632 960000", "020 7946 0000", "0113 496 0000", "07700 900123"; of other
/// countries the E.164 form. Source: "Number format" (area codes of 2, 3, 4 and 5 digits); which area codes
/// have five digits, and the groups of numbers that are not geographic: from memory. Checked:
/// checks_test.cpp.
[[nodiscard]] std::string telephoneNational(std::string_view e164);
/// Source: as telephoneE164() in forms.h. Checked: checks_test.cpp.
[[nodiscard]] std::optional<Doubt> doubtOfTelephone(std::string_view typed);

/// An appliance's number in the list of gas appliances, written "11-222-33"; nothing for something else than
/// seven digits. Source: common practice, no source. Checked: checks_test.cpp.
[[nodiscard]] std::optional<std::string> gcNumberOf(std::string_view typed);
/// Source: as gcNumberOf(). Checked: checks_test.cpp.
[[nodiscard]] std::optional<Doubt> doubtOfGcNumber(std::string_view typed);

/// A unique property reference number has up to twelve digits and no check digit. Source: "Unique Property
/// Reference Number" (public encyclopaedia's page). Checked: checks_test.cpp.
[[nodiscard]] std::optional<Doubt> doubtOfUprn(std::string_view typed);

}  // namespace hearth::reg

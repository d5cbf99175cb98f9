// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"

#include <string>
#include <vector>

namespace hearth::exchange {

/// One person or organisation as a vCard 4.0: KIND, UID, FN, N or ORG, ADR, TEL, EMAIL, LANG. CRLF, folded at
/// 75 octets without parting a letter, with backslash, comma, semicolon and line end escaped. The last word
/// of a person's name is taken for the family name. Notes and consents stay out. Source: RFC 6350,
/// sections 3.2 (folding), 3.4 (escaping), 6.1 to 6.7. Checked: vcard_test.cpp.
[[nodiscard]] std::string vCardOf(const reg::Party& party);
/// One after the other.
[[nodiscard]] std::string vCardsOf(const std::vector<reg::Party>& parties);

}  // namespace hearth::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/vcard.h"

#include "core/register/forms.h"

#include <string_view>

namespace hearth::exchange {
namespace {

/// A text value (RFC 6350, section 3.4).
std::string vCardText(std::string_view text) {
    std::string escaped;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char letter = text[at];
        if (letter == '\r') {
            escaped += text.substr(at + 1, 1) == "\n" ? "" : "\\n";
        } else if (letter == '\n') {
            escaped += "\\n";
        } else if (letter == '\\' || letter == ',' || letter == ';') {
            escaped += '\\';
            escaped += letter;
        } else if (static_cast<unsigned char>(letter) >= ' ' || letter == '\t') {
            escaped += letter;
        }
    }
    return escaped;
}

/// One line with its CRLF, folded (section 3.2): a line that goes on begins with a blank, which counts.
std::string vCardLine(std::string_view line) {
    constexpr std::size_t kMost = 75;
    std::string folded;
    std::size_t room = kMost;
    while (line.size() > room) {
        std::size_t cut = room;
        while (cut > 0 && (static_cast<unsigned char>(line[cut]) & 0xC0U) == 0x80U) {
            --cut;  // not within a letter
        }
        cut = cut == 0 ? room : cut;  // no letter is that long
        folded.append(line.substr(0, cut)).append("\r\n ");
        line.remove_prefix(cut);
        room = kMost - 1;
    }
    return folded.append(line).append("\r\n");
}

std::string vCardName(const reg::Party& party) {
    if (party.kind == reg::PartyKind::Organisation) {
        return vCardLine("ORG:" + vCardText(party.name));
    }
    const std::size_t blank = party.name.rfind(' ');
    const bool parts = blank != std::string::npos;
    return vCardLine("N:" + vCardText(parts ? party.name.substr(blank + 1) : party.name) + ';' +
                     vCardText(parts ? party.name.substr(0, blank) : std::string()) + ";;;");
}

/// Post-office box, extended address, street, locality, region, code, country (section 6.3.1).
std::string vCardAddress(const reg::Address& address) {
    if (address == reg::Address{}) {
        return {};
    }
    const std::string street = address.line1 + (address.line2.empty() ? "" : "\n" + address.line2);
    return vCardLine("ADR:;;" + vCardText(street) + ';' + vCardText(address.town) + ";;" +
                     vCardText(address.postcode) + ';');
}

std::string vCardTelephone(const std::string& typed) {
    if (typed.empty()) {
        return {};
    }
    const auto number = reg::telephoneE164(typed);
    return vCardLine(number ? "TEL;VALUE=uri:tel:" + *number : "TEL;VALUE=text:" + vCardText(typed));
}

}  // namespace

std::string vCardOf(const reg::Party& party) {
    std::string card = vCardLine("BEGIN:VCARD") + vCardLine("VERSION:4.0");
    card += vCardLine(party.kind == reg::PartyKind::Organisation ? "KIND:org" : "KIND:individual");
    card += vCardLine("UID:urn:uuid:" + party.id.text());
    card += vCardLine("FN:" + vCardText(party.name)) + vCardName(party);
    card += vCardAddress(party.address) + vCardTelephone(party.telephone);
    card += party.email.empty() ? std::string() : vCardLine("EMAIL:" + vCardText(party.email));
    card += party.language.empty() ? std::string() : vCardLine("LANG:" + vCardText(party.language));
    return card + vCardLine("END:VCARD");
}

std::string vCardsOf(const std::vector<reg::Party>& parties) {
    std::string cards;
    for (const auto& party : parties) {
        cards += vCardOf(party);
    }
    return cards;
}

}  // namespace hearth::exchange

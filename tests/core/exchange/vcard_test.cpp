// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: RFC 6350. What is written is read back by python3-vobject, which is not ours.
#include "core/exchange/vcard.h"

#include "tests/core/exchange/counting_ids.h"
#include "tests/support/files.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

using hearth::testing::runCommand;
using hearth::testing::TempDir;
using hearth::testing::writeFile;

reg::Party person() {
    reg::Party party;
    party.id = reg::PartyId{testing::countingIds()()};
    party.name = "Siân Gwenllian Ŵyn-Łodź";
    party.address = {"Tŷ Gwyn, Flat 2; rear", "Lôn Fawr", "Pen\\Bont", "LL1 1AA"};
    party.telephone = "0113 496 0000";
    party.email = "sian@example.org";
    party.language = "cy";
    party.notes = "secret";
    return party;
}

TEST(VCard, holdsTheLinesThatTheStandardNames) {
    reg::Party party = person();
    party.address.line1 = "1 Lôn";
    EXPECT_EQ(vCardOf(party),
              "BEGIN:VCARD\r\nVERSION:4.0\r\nKIND:individual\r\nUID:urn:uuid:00000000-0000-7000-8000-"
              "000000000001\r\n"
              "FN:Siân Gwenllian Ŵyn-Łodź\r\nN:Ŵyn-Łodź;Siân Gwenllian;;;\r\n"
              "ADR:;;1 Lôn\\nLôn Fawr;Pen\\\\Bont;;LL1 1AA;\r\nTEL;VALUE=uri:tel:+441134960000\r\n"
              "EMAIL:sian@example.org\r\nLANG:cy\r\nEND:VCARD\r\n");
    reg::Party firm;
    firm.kind = reg::PartyKind::Organisation;
    firm.name = "Ash, Elm & Co";
    firm.telephone = "ask the office";
    EXPECT_EQ(
        vCardOf(firm),
        "BEGIN:VCARD\r\nVERSION:4.0\r\nKIND:org\r\nUID:urn:uuid:00000000-0000-0000-0000-000000000000\r\n"
        "FN:Ash\\, Elm & Co\r\nORG:Ash\\, Elm & Co\r\nTEL;VALUE=text:ask the office\r\nEND:VCARD\r\n");
}

/// Section 3.2: no line above 75 octets without its line end, and no letter parted.
TEST(VCard, foldsBetweenLetters) {
    for (std::size_t length = 60; length < 90; ++length) {
        reg::Party party;
        party.name = std::string(length, 'x') + "ŵŷłŵŷłŵŷł😀😀" + std::string(200, 'y');
        const std::string card = vCardOf(party);
        std::size_t at = 0;
        while (at < card.size()) {
            const std::size_t end = card.find("\r\n", at);
            ASSERT_NE(end, std::string::npos);
            EXPECT_LE(end - at, 75U);
            const std::size_t first = at + (card[at] == ' ' ? 1 : 0);
            EXPECT_NE(static_cast<unsigned char>(card[first]) & 0xC0U, 0x80U) << "a letter is parted";
            at = end + 2;
        }
    }
}

TEST(VCard, isReadByAnotherReader) {
    const TempDir folder;
    reg::Party other;
    other.kind = reg::PartyKind::Organisation;
    other.name = std::string(100, 'a') + " ŵŷ\\;, end";
    writeFile(folder / "people.vcf", vCardsOf({person(), other}));
    writeFile(folder / "read.py",
              "import vobject\n"
              "for c in vobject.readComponents(open('" +
                  (folder / "people.vcf").string() +
                  "', encoding='utf-8', newline='')):\n"
                  "    print(c.version.value, c.kind.value, c.fn.value)\n"
                  "    if hasattr(c, 'adr'):\n"
                  "        print([c.adr.value.street, c.adr.value.city, c.adr.value.code], c.n.value.family, "
                  "c.tel.value, c.email.value)\n");
    const auto answer =
        runCommand("LC_ALL=C.UTF-8 /usr/bin/python3 '" + (folder / "read.py").string() + "' 2>&1");
    EXPECT_EQ(answer.text,
              "4.0 individual Siân Gwenllian Ŵyn-Łodź\n"
              "['Tŷ Gwyn, Flat 2; rear\\nLôn Fawr', 'Pen\\\\Bont', 'LL1 1AA'] Ŵyn-Łodź tel:+441134960000 "
              "sian@example.org\n"
              "4.0 org " +
                  std::string(100, 'a') + " ŵŷ\\;, end\n");
}

}  // namespace
}  // namespace hearth::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/snapshot.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::record {
namespace {

using rulebook::Outcome;

/// Every field filled, every block there.
Document fullDocument() {
    Document document;
    document.kind = "kind";
    document.language = "cy";
    document.title = "Cofnod tyndra nwy";
    document.subtitle = "IGEM/UP/1B";
    document.firm = "Ember & Sons";
    document.number = "KTR-000017";
    document.revision = 3;
    document.issued = "25 November 2026";
    document.banner = "Draft";
    document.caution = "caution \"quoted\" \\ / \n\t\x01";
    document.pageWord = "page %1 of %2";
    document.revisionWord = "revision %1";
    document.digestWord = "digest";
    document.supersedes = "replaces KTR-000016";
    document.blocks = {
        Headline{Outcome::LookAgain, "Look again", {"one", "two"}},
        FieldGrid{
            "Where", 2, {{"Address", {"12 Highcroft", "Ashwick"}, false}, {"Card", {"not said"}, true}}},
        Table{"Pipes",
              {{"Size", Align::Left, 1.0}, {"Volume", Align::Right, 0.1}},
              {{"15 mm", "0.001"}},
              {"all", "0.009386"},
              "n"},
        FindingList{"Findings",
                    {{Outcome::Fail, "Tightness: fail", "0.31 mbar", "why", {"note"}, {"source"}}}},
        Paragraph{"Remarks", "Llŷr ap Tŵm\nWiśniewski 🔥", true},
        Signatures{{{"Tested by", "Tamsin", "card 1"}}},
        Statements{"Boiler",
                   {{"Defects", "none found", std::nullopt, {}},
                    {"Safe to use", "no", Outcome::Fail, {"declared", "by Tamsin"}}}},
        Alert{Outcome::Fail, "DANGER", "At Risk", "what that is", {"this", "that"}},
        LetterHead{{"Firm", "1 Yard"}, {"C. Holder", "2 Row"}, "25 November 2026", "Your check"},
        WriteIn{"Readings", {{"Start", {}, 1, true}, {"Smell", {"yes", "no"}, 0}, {"Remarks", {}, 4}}},
        Signatures{{{"Tested by", "Tamsin", "card 1", "1.0,2.0;3.0,4.0"}}},
        Pictures{"Photographs", {{"boiler", "the flue", "digest", "image/jpeg", {}}}},
        Table{"To fill", {{"CO", Align::Right, 1.0}}, {}, {}, "", 6},
    };
    return document;
}

TEST(DocumentJson, isReadBackAsItWas) {
    const Document document = fullDocument();
    EXPECT_EQ(documentFromJson("{\"document\":" + documentJson(document) + "}"), document);
    EXPECT_EQ(documentFromJson("{\"document\":" + documentJson(Document{}) + "}"), Document{});
}

TEST(DocumentJson, saysOnlyThatThePaperIsNotA4) {
    Document document;
    EXPECT_EQ(documentJson(document).find("paper"), std::string::npos);
    document.paper = Paper::Letter;
    const std::string letter = documentJson(document);
    EXPECT_EQ(documentFromJson("{\"document\":" + letter + "}")->paper, Paper::Letter);
    std::string other = letter;
    other.replace(other.find("\"letter\""), 8, "\"folio\"");
    EXPECT_FALSE(documentFromJson("{\"document\":" + other + "}"))
        << "a paper that this program doesn't know";
}

// The bytes lie in the store, once; a document without a logo is what it was before there were logos.
TEST(DocumentJson, namesALogoByItsDigestAlone) {
    Document document = fullDocument();
    const std::string without = documentJson(document);
    EXPECT_EQ(without.find("logo"), std::string::npos);
    document.logo = Logo{sha256("picture"), "image/png", "picture"};
    const std::string with = documentJson(document);
    EXPECT_NE(with.find(sha256("picture")), std::string::npos);
    EXPECT_EQ(with.find("\"picture\""), std::string::npos);
    const auto read = documentFromJson("{\"document\":" + with + "}");
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->logo, (Logo{sha256("picture"), "image/png", ""}));
    EXPECT_FALSE(documentFromJson("{\"document\":" + without + "}")->logo.has_value());
}

// A record that a typed name signs is what it was before there were pads.
TEST(DocumentJson, namesStrokesOnlyWhereThereAreAny) {
    Document document;
    document.blocks = {Signatures{{{"Tested by", "Tamsin", "card 1"}}}};
    EXPECT_EQ(documentJson(document).find("strokes"), std::string::npos);
}

TEST(DocumentJson, namesAPictureByItsDigestAlone) {
    Document document;
    document.blocks = {Pictures{"Photographs",
                                {{"boiler", "flue", sha256("b"), "image/jpeg", "bytes of b"},
                                 {"boiler", "flue", sha256("a"), "image/png", "bytes of a"},
                                 {"hob", "again", sha256("b"), "image/jpeg", "bytes of b"}}}};
    EXPECT_EQ(documentJson(document).find("bytes of"), std::string::npos);
    std::vector<std::string> each{sha256("a"), sha256("b")};
    std::sort(each.begin(), each.end());
    EXPECT_EQ(pictureDigests(document), each);
}

TEST(DocumentJson, keepsAWeightToTheLastBit) {
    for (const double weight : {0.1, 1.0 / 3.0, 1e-300, 12345678.9}) {
        Document document;
        document.blocks = {Table{"", {{"", Align::Left, weight}}, {}, {}, ""}};
        EXPECT_EQ(documentFromJson("{\"document\":" + documentJson(document) + "}"), document);
    }
}

TEST(DocumentJson, thatIsNoneIsAnError) {
    std::string unknown = documentJson(fullDocument());
    unknown.replace(unknown.find("\"headline\""), 10, "\"hologram\"");
    for (const std::string& json :
         {std::string(), std::string("{"), std::string("[]"), std::string("{\"document\":{}}"),
          std::string("\xff"), "{\"document\":" + unknown + "}"}) {
        const auto document = documentFromJson(json);
        ASSERT_FALSE(document) << json;
        EXPECT_EQ(document.error().code, ErrorCode::RecordAltered);
    }
}

TEST(DocumentJson, ofWhatIsNotUtf8IsStillWritten) {
    Document document;
    document.title = "a\xff";
    EXPECT_EQ(documentFromJson("{\"document\":" + documentJson(document) + "}")->title, "a\uFFFD");
}

}  // namespace
}  // namespace hearth::record

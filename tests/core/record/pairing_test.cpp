// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/pairing.h"

#include "core/record/difference.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

const std::string kBoth = "one\x1Ftwo";

TEST(PairedText, IsBothOrOnceWhereTheyAreTheSame) {
    EXPECT_EQ(pairedText("one", "two"), kBoth);
    EXPECT_EQ(pairedText("0.04 mbar", "0.04 mbar"), "0.04 mbar");
    EXPECT_EQ(pairedText("one", ""), "one");
    EXPECT_EQ(pairedText("", "two"), "two");
}

TEST(PairedText, HasADateAloneOnce) {
    EXPECT_EQ(pairedText("25 November 2026", "25 listopada 2026"), "25 November 2026");
    EXPECT_EQ(pairedText("5 May 2026", "5 Mai 2026"), "5 May 2026");
    EXPECT_EQ(pairedText("due 25 November 2026", "termin 25 listopada 2026"),
              "due 25 November 2026\x1Ftermin 25 listopada 2026");
}

TEST(PairedText, HasATermOfTheLawOnceInEnglish) {
    EXPECT_EQ(pairedText("At Risk", "At Risk (mewn perygl)"), "At Risk\x1Fmewn perygl");
    EXPECT_EQ(pairedText("Act, section 1(2)", "Act, section 1(2) (adran 1(2))"),
              "Act, section 1(2)\x1F"
              "adran 1(2)");
    // the bracket is not the whole of the rest
    EXPECT_EQ(pairedText("At Risk", "At Risk (mewn) perygl (x)"),
              "At Risk\x1F"
              "At Risk (mewn) perygl (x)");
    EXPECT_EQ(pairedText("NOT safe", "NOT safe (NIE"), "NOT safe\x1FNOT safe (NIE");
}

TEST(PairedText, HasOfALineInPartsOnlyThoseThatDiffer) {
    EXPECT_EQ(pairedText("Firm · registration 4 · 01632", "Firm · rejestracja 4 · 01632"),
              "Firm · registration 4 · 01632\x1Frejestracja 4");
    EXPECT_EQ(pairedText("one · two", "jeden"), "one · two\x1Fjeden");
    EXPECT_EQ(pairedText("one · At Risk", "jeden · At Risk (ryzyko)"), "one · At Risk\x1Fjeden · ryzyko");
}

TEST(PairedText, ComesApartAgain) {
    EXPECT_EQ(parted(kBoth).first, "one");
    EXPECT_EQ(parted(kBoth).beside, "two");
    EXPECT_EQ(parted("one").first, "one");
    EXPECT_EQ(parted("one").beside, "");
    EXPECT_EQ(inOneLine(kBoth), "one / two");
    EXPECT_EQ(inOneLine("one"), "one");
}

/// One of each kind of block; `word` is what differs between languages.
Document sample(const std::string& language, const std::string& word) {
    Document document;
    document.language = language;
    document.title = word;
    document.number = "QKD-000017";
    document.issued = "25 November 2026";
    Plot plot;
    plot.title = word;
    plot.x = {word, {{quantity::Decimal(0, 0), word}}, false};
    plot.y.title = word;
    plot.series = {{word, PlotShape::Disc, true, true, {{quantity::Decimal(0, 0), {}, {}, "12"}}}};
    plot.limits = {{quantity::Decimal(1, 0), word, true}};
    plot.bands = {{quantity::Decimal(1, 0), quantity::Decimal(2, 0), word}};
    plot.marks = {{quantity::Decimal(1, 0), word}};
    document.blocks = {Headline{rulebook::Outcome::Pass, word, {word, "same"}},
                       FieldGrid{word, 3, {{word, {"12 mbar"}, false}}},
                       Table{word, {{word}, {"m³"}}, {{word, "1"}, {"same", "2"}}, {word, "3"}, word},
                       FindingList{word, {{rulebook::Outcome::Fail, word, "1 mbar", word, {word}, {word}}}},
                       Paragraph{word, word, false},
                       Signatures{{{word, "A. Name", word}}},
                       Statements{word, {{word, word, std::nullopt, {word}}}},
                       Alert{rulebook::Outcome::Fail, word, word, word, {word}},
                       LetterHead{{"Firm"}, {"A. Name"}, word, word},
                       WriteIn{word, {{word, {word}, 1, false}}},
                       Plots{word, {plot}, word},
                       Pictures{word, {{word, word, "digest", "image/png", "bytes"}}}};
    return document;
}

TEST(PairedDocument, HasEveryTextInBothAndValuesOnce) {
    const auto paired = pairedDocument(sample("en", "one"), sample("cy", "two"));
    auto expected = sample("en", kBoth);
    expected.language = "en+cy";
    EXPECT_EQ(paired, expected);
}

TEST(PairedDocument, LosesNothingOfWhatDoesNotAnswer) {
    auto beside = sample("cy", "two");
    std::get<FieldGrid>(beside.blocks[1]).fields.push_back({"more", {"4"}, false});
    beside.blocks.emplace_back(Paragraph{"", "last", false});
    const auto paired = pairedDocument(sample("en", "one"), beside);
    ASSERT_EQ(paired.blocks.size(), sample("en", "one").blocks.size() + 2);
    EXPECT_EQ(paired.blocks[1], sample("en", "one").blocks[1]);
    EXPECT_EQ(paired.blocks[2], beside.blocks[1]);
    EXPECT_EQ(paired.blocks.back(), beside.blocks.back());
}

TEST(PairedDocument, TellsItsDifferencesInPlainLines) {
    const auto before = pairedDocument(sample("en", "one"), sample("cy", "two"));
    auto after = before;
    std::get<FieldGrid>(after.blocks[1]).fields[0].lines = {"13 mbar"};
    const auto differences = differencesOf(before, after);
    ASSERT_EQ(differences.size(), 1U);
    EXPECT_EQ(differences[0].caption, "one / two");
    EXPECT_EQ(differences[0].after, "13 mbar");
}

}  // namespace
}  // namespace hearth::record

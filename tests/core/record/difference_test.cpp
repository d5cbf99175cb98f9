// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/difference.h"

#include <gmock/gmock.h>

namespace hearth::record {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

Document sampleOf() {
    Document document;
    document.title = "Gas record";
    document.number = "BCD-000017";
    document.issued = "25 November 2026";
    document.blocks = {
        Headline{rulebook::Outcome::Pass, "Tight", {"all of it"}},
        FieldGrid{"Meter", 3, {{"Serial", {"E0001"}, false}, {"Place", {"hall", "cupboard"}, false}}},
        Table{"Pipes",
              {{"Pipe"}, {"Length"}, {"Volume"}},
              {{"1", "3 m", "1 l"}, {"2", "4 m", "2 l"}},
              {"Total", "7 m", "3 l"},
              "as measured"},
        FindingList{"Findings", {{rulebook::Outcome::Pass, "Tightness", "0.1 mbar", "within", {}, {"IGEM"}}}},
        Paragraph{"Work", "None.", false},
        Signatures{{{"Tested by", "R. Ashdown", "card 1"}}},
        Statements{"Safety", {{"Safe to use", "yes", std::nullopt, {"as left"}}}}};
    return document;
}

TEST(Differences, noneInTheSameOrInWhatDiffersByNature) {
    Document later = sampleOf();
    later.number = "other";
    later.revision = 2;
    later.issued = "26 November 2026";
    later.supersedes = "Replaces revision 1";
    EXPECT_THAT(differencesOf(sampleOf(), later), IsEmpty());
}

TEST(Differences, eachBlockSaysWhatChanged) {
    Document later = sampleOf();
    std::get<Headline>(later.blocks[0]).sentence = "Not tight";
    std::get<FieldGrid>(later.blocks[1]).fields[0].lines = {"E0002"};
    std::get<Table>(later.blocks[2]).rows[1][1] = "5 m";
    std::get<Table>(later.blocks[2]).total[1] = "8 m";
    std::get<FindingList>(later.blocks[3]).findings[0].measured = "0.3 mbar";
    std::get<Paragraph>(later.blocks[4]).text = "A joint made.";
    std::get<Signatures>(later.blocks[5]).signatures[0].name = "T. Nant";
    std::get<Statements>(later.blocks[6]).statements[0].text = "no";
    EXPECT_THAT(
        differencesOf(sampleOf(), later),
        ElementsAre(Difference{"", "", "Tight\nall of it", "Not tight\nall of it"},
                    Difference{"Meter", "Serial", "E0001", "E0002"},
                    Difference{"Pipes", "2, Length", "4 m", "5 m"},
                    Difference{"Pipes", "Total, Length", "7 m", "8 m"},
                    Difference{"Findings", "Tightness", "0.1 mbar\nwithin\nIGEM", "0.3 mbar\nwithin\nIGEM"},
                    Difference{"Work", "", "None.", "A joint made."},
                    Difference{"", "Tested by", "R. Ashdown\ncard 1", "T. Nant\ncard 1"},
                    Difference{"Safety", "Safe to use", "yes\nas left", "no\nas left"}));
}

TEST(Differences, aNoticeAndALetterSayWhatChanged) {
    Document one;
    one.blocks = {Alert{rulebook::Outcome::Fail, "Danger", "At Risk", "Do not use it.", {}},
                  LetterHead{{"A firm"}, {"B. Fell", "2 Low Row"}, "26 November 2026", "A check is due"},
                  WriteIn{"Notes", {{"Remarks", {}, 3, true}}}};
    Document other = one;
    std::get<Alert>(other.blocks[0]).grade = "Immediately Dangerous";
    std::get<LetterHead>(other.blocks[1]).recipient[1] = "3 Low Row";
    std::get<LetterHead>(other.blocks[1]).date = "27 November 2026";  // differs by nature
    std::get<WriteIn>(other.blocks[2]).fields[0].lines = 5;
    EXPECT_THAT(differencesOf(one, other),
                ElementsAre(Difference{"", "Danger", "At Risk\nDo not use it.",
                                       "Immediately Dangerous\nDo not use it."},
                            Difference{"", "", "B. Fell\n2 Low Row", "B. Fell\n3 Low Row"}));
}

TEST(Differences, whatCameAndWhatWentIsSaid) {
    Document later = sampleOf();
    auto& pipes = std::get<Table>(later.blocks[2]);
    pipes.rows.push_back({"3", "1 m", "0.1 l"});
    std::get<FieldGrid>(later.blocks[1]).fields.pop_back();
    EXPECT_THAT(differencesOf(sampleOf(), later),
                ElementsAre(Difference{"Pipes", "3, Length", "", "1 m"},
                            Difference{"Pipes", "3, Volume", "", "0.1 l"},
                            Difference{"Meter", "Place", "hall\ncupboard", ""}));
    EXPECT_THAT(differencesOf(Document{}, Document{}), IsEmpty());
}

TEST(Differences, twoOfOneNameAreTakenInOrder) {
    Document one;
    one.blocks = {FieldGrid{"Test", 1, {{"Start", {"20"}, false}}},
                  FieldGrid{"Test", 1, {{"Start", {"21"}, false}}}};
    Document other = one;
    std::get<FieldGrid>(other.blocks[1]).fields[0].lines = {"22"};
    EXPECT_THAT(differencesOf(one, other), ElementsAre(Difference{"Test", "Start", "21", "22"}));
}

}  // namespace
}  // namespace hearth::record

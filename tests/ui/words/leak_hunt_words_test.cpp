// SPDX-License-Identifier: GPL-3.0-or-later
// Invented figures: what is tested is that each is told, with what it is between.
#include "ui/words/leak_hunt_words.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>

namespace hearth::ui::words {
namespace {

using judging::HuntedTest;
using judging::HuntLacks;
using judging::HuntPlace;
using quantity::Flow;
using quantity::kLitrePerHour;
using tightness::LeakPlacesSay;

Flow huntFlow(double litres) {
    return {litres, kLitrePerHour};
}

/// Two pipes and the meter; the second test shut pipe 2.
class LeakHuntWords : public ::testing::Test {
  protected:
    LeakHuntWords() {
        file.pipes.resize(2);
        file.pipes[1].leadsTo = "hob";
        file.tests.resize(2);
        file.tests[0].id.bytes.fill(1);
        file.tests[1].id.bytes.fill(2);
        file.tests[1].label = "hob shut";
        hunt.places = {{HuntPlace::Kind::Meter, {}}, {HuntPlace::Kind::Pipe, 0}, {HuntPlace::Kind::Pipe, 1}};
        for (const auto& test : file.tests) {
            HuntedTest hunted;
            hunted.test = test.id;
            hunted.volume = quantity::Volume(0.0125, quantity::kCubicMetre);
            hunted.leak = {huntFlow(1.0), huntFlow(0.9), huntFlow(1.1)};
            hunt.tests.push_back(hunted);
        }
        hunt.tests[1].shut = {1};
        hunt.told.says = LeakPlacesSay::OneLeaks;
        hunt.told.groups = {{{0, 1}, huntFlow(0.0), huntFlow(0.05)}, {{2}, huntFlow(0.85), huntFlow(1.1)}};
    }
    /// Figure and unit stand together: the space between them is made a plain one here.
    [[nodiscard]] static QString plain(QString text) { return text.replace(QChar(0xA0), QChar(u' ')); }
    [[nodiscard]] std::vector<std::string> row(std::size_t at) const {
        auto cells = leakHuntTable(hunt, file, words).rows.at(at);
        for (auto& cell : cells) {
            cell = plain(QString::fromStdString(cell)).toStdString();
        }
        return cells;
    }

    const Words words;
    reg::VisitFile file;
    judging::LeakHunt hunt;
};

TEST_F(LeakHuntWords, SayWhereTheLeakMustBe) {
    EXPECT_EQ(leakHuntMeaning(hunt, file, words), QStringLiteral("There must be a leak here: pipe 2 (hob)."));
    EXPECT_EQ(
        plain(leakHuntPlaces(hunt, file, words).join(u'|')),
        (QStringList{QStringLiteral("the meter and its joints, pipe 1: no leak shown, 0.05 l/h at most"),
                     QStringLiteral("pipe 2 (hob): 0.85 l/h to 1.10 l/h")})
            .join(u'|'));
}

TEST_F(LeakHuntWords, NameEachTestAndWhatItShut) {
    EXPECT_EQ(row(0), (std::vector<std::string>{"test 1", "appliances", "0.012500 m³",
                                                "1.00 l/h (0.90 l/h to 1.10 l/h)"}));
    EXPECT_EQ(row(1)[0], "hob shut");
    EXPECT_EQ(row(1)[1], "2 (hob), appliances");
    hunt.tests[1].isByTrace = true;
    EXPECT_EQ(row(1)[3], "1.00 l/h (0.90 l/h to 1.10 l/h), by its trace");
    EXPECT_NE(leakHuntTable(hunt, file, words).note.find("verdict is by the standard's rule"),
              std::string::npos);
}

TEST_F(LeakHuntWords, SayThatAVolumeIsTakenAsExactUnlessItIsSaid) {
    const auto isSaid = [&] {
        return leakHuntTable(hunt, file, words).note.find("it is taken as exact") != std::string::npos;
    };
    EXPECT_TRUE(isSaid());
    for (auto& test : hunt.tests) {
        test.isVolumeExact = false;
    }
    EXPECT_FALSE(isSaid());
    hunt.tests[1].isVolumeExact = true;
    EXPECT_TRUE(isSaid());
}

TEST_F(LeakHuntWords, SayWhyATestIsNotCompared) {
    hunt.tests[0].leak.reset();
    hunt.tests[0].volume.reset();
    for (const auto& [lacks, said] : std::vector<std::pair<HuntLacks, const char*>>{
             {HuntLacks::Appliances, "whether appliances were connected"},
             {HuntLacks::PipesShut, "no pipe “attic”"},
             {HuntLacks::PipeOrder, "what each pipe follows"},
             {HuntLacks::Volume, "volume is not known"},
             {HuntLacks::Readings, "readings or times are missing"},
             {HuntLacks::Changed, "something was changed"},
             {HuntLacks::Gauge, "no gauge is chosen"}}) {
        hunt.tests[0].lacks = lacks;
        hunt.tests[0].unread = "attic";
        EXPECT_NE(row(0)[3].find(said), std::string::npos) << row(0)[3];
        EXPECT_EQ(row(0)[2], "—");
    }
}

/// No two say the same, and only one of them says where a leak is.
TEST_F(LeakHuntWords, HaveASentenceForEachMeaning) {
    QStringList sentences;
    for (const auto says : {LeakPlacesSay::NothingToCompare, LeakPlacesSay::Disagree, LeakPlacesSay::OneLeaks,
                            LeakPlacesSay::SeveralLeak, LeakPlacesSay::Somewhere, LeakPlacesSay::NoneShown}) {
        hunt.told.says = says;
        sentences << leakHuntMeaning(hunt, file, words);
    }
    EXPECT_EQ(sentences.removeDuplicates(), 0);
    EXPECT_EQ(sentences.filter(QStringLiteral("tight")).size(), 0) << "none calls anything tight";
}

TEST_F(LeakHuntWords, StandInARecordOnlyWherePipesWereShut) {
    EXPECT_TRUE(wasLeakHunted(hunt));
    hunt.tests[1].shut.clear();
    EXPECT_FALSE(wasLeakHunted(hunt));
}

}  // namespace
}  // namespace hearth::ui::words

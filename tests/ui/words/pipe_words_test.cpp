// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/pipe_words.h"

#include "tests/core/record/sample_kinds.h"
#include "tests/ui/words/document_of_kind.h"
#include "tests/ui/words/document_text.h"

#include <gtest/gtest.h>

namespace hearth::ui::words {
namespace {

using quantity::UnitCode;

class PipeWords : public ::testing::Test {
  protected:
    void SetUp() override {
        reg::Appliance boiler;
        boiler.id = reg::ApplianceId{testing::sampleBytes(70)};
        boiler.installation = file.installation.id;
        boiler.kind = "combination_boiler";
        boiler.place = "kitchen";
        boiler.grossInput = {"24", UnitCode::Kilowatt};
        auto hob = boiler;
        hob.id = reg::ApplianceId{testing::sampleBytes(71)};
        hob.kind = "hob";
        hob.place.clear();
        hob.grossInput = {"8", UnitCode::Kilowatt};
        file.appliances = {boiler, hob};
        file.pipes = {pipe(60, "copper_22", "4", {}, "tee"), pipe(61, "copper_15", "3", 60, ""),
                      pipe(62, "copper_15", "2", 60, "")};
        file.pipes[1].appliance = boiler.id;
        file.pipes[2].appliance = hob.id;
    }
    [[nodiscard]] reg::PipeSection pipe(std::uint8_t id, const char* tube, const char* metres,
                                        std::optional<std::uint8_t> after, const char* leadsTo) const {
        reg::PipeSection section;
        section.id = {testing::sampleBytes(id)};
        section.installation = file.installation.id;
        if (after) {
            section.after = reg::PipeSectionId{testing::sampleBytes(*after)};
        }
        section.tubeCode = tube;
        section.length = {metres, UnitCode::Metre};
        section.leadsTo = leadsTo;
        section.fittings = "none";
        return section;
    }
    [[nodiscard]] record::Diagram sketch(bool withDrops = true) const {
        const auto book = rulebook::RuleBook::shipped();
        const auto volume = judging::volumeOf(file, book);
        const auto pipes = judging::visitPipes(file, book);
        const Words words;
        return pipeDiagram({file, volume, withDrops ? &pipes : nullptr, words});
    }

    reg::VisitFile file = testing::sampleVisit();
};

TEST_F(PipeWords, saySizeLengthVolumeAndWhatHangsAtTheEnd) {
    const auto diagram = sketch();
    ASSERT_EQ(diagram.sections.size(), 3U);
    EXPECT_NE(diagram.sections[0].above.find("22"), std::string::npos);
    EXPECT_NE(diagram.sections[0].above.find("4\u00A0m"), std::string::npos) << diagram.sections[0].above;
    EXPECT_EQ(diagram.sections[0].below.rfind("tee", 0), 0U);
    EXPECT_NE(diagram.sections[0].below.find("m\u00B3"), std::string::npos);
    EXPECT_TRUE(diagram.sections[0].end.empty());
    ASSERT_EQ(diagram.sections[1].end.size(), 2U);
    EXPECT_NE(diagram.sections[1].end[0].find("(kitchen)"), std::string::npos);
    EXPECT_NE(diagram.sections[1].end[1].find("mbar lost at full load"), std::string::npos);
    EXPECT_EQ(diagram.sections[2].row, 1);
}

TEST_F(PipeWords, markTheRouteThatLosesMostInWords) {
    const auto diagram = sketch();
    EXPECT_NE(diagram.sections[1].end.back().find("the most"), std::string::npos);
    EXPECT_EQ(diagram.sections[2].end.back().find("the most"), std::string::npos);
    EXPECT_TRUE(diagram.sections[0].isOnWorst && diagram.sections[1].isOnWorst);
    EXPECT_FALSE(diagram.sections[2].isOnWorst);
    // The largest of those that happen to be known says nothing.
    file.pipes[2].length.text = "long";
    for (const auto& section : sketch().sections) {
        EXPECT_FALSE(section.isOnWorst);
    }
    EXPECT_EQ(sketch().sections[2].end.back(), "drop not known");
}

TEST_F(PipeWords, callADropWithoutFittingsALeast) {
    file.pipes[1].fittings.clear();
    EXPECT_EQ(sketch().sections[1].end[1].rfind("at least", 0), 0U) << sketch().sections[1].end[1];
    EXPECT_NE(sketch().sections[2].end[1].rfind("at least", 0), 0U);
}

TEST_F(PipeWords, sayNothingOfDropsWhereNobodyAskedForThem) {
    for (const auto& section : sketch(false).sections) {
        for (const auto& text : section.end) {
            EXPECT_EQ(text.find("lost"), std::string::npos);
        }
    }
    EXPECT_TRUE(sketch(false).notes.empty());
    file.pipes[1].appliance.reset();
    file.pipes[2].appliance.reset();
    file.pipes[1].capped = true;
    EXPECT_EQ(sketch().sections[1].end, std::vector<std::string>{"capped"});
    EXPECT_TRUE(sketch().sections[2].end.empty());
    file.pipes.clear();
    EXPECT_TRUE(sketch().sections.empty());
}

TEST_F(PipeWords, areHeardLineByLine) {
    const QString heard = diagramInWords(sketch());
    EXPECT_TRUE(heard.contains(QStringLiteral("\n2: "))) << qPrintable(heard);
    EXPECT_TRUE(heard.contains(QStringLiteral("lost at full load"))) << qPrintable(heard);
}

TEST_F(PipeWords, standInTheRecordsWherePipeworkBelongs) {
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    const auto pipes = judging::visitPipes(file, book);
    const Words words;
    using record::RecordKind;
    for (const auto& [kind, has] : {std::pair(RecordKind::TightnessAndPurge, true),
                                    {RecordKind::LandlordSafety, true},
                                    {RecordKind::Commissioning, true},
                                    {RecordKind::LargerPipework, true},
                                    {RecordKind::Service, false}}) {
        const auto document =
            documentFor({kind, file, findings, volume, file.visit.date, {}, {}, &pipes}, words);
        const auto sketches = testing::blocksOf<record::Diagram>(document);
        EXPECT_EQ(sketches.size(), has ? 1U : 0U) << record::kindCode(kind);
        EXPECT_EQ(testing::shows(document, "lost at full load"), has) << record::kindCode(kind);
        EXPECT_EQ(testing::shows(document, "Pressure drop at the largest flow"), has)
            << record::kindCode(kind);
    }
    file.pipes.resize(1);
    const auto document =
        documentFor({RecordKind::TightnessAndPurge, file, findings, volume, file.visit.date}, words);
    EXPECT_TRUE(testing::blocksOf<record::Diagram>(document).empty()) << "one pipe is no tree";
}

}  // namespace
}  // namespace hearth::ui::words

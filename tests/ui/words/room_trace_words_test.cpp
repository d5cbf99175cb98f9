// SPDX-License-Identifier: GPL-3.0-or-later
// The levels are invented.
#include "ui/words/room_trace_words.h"

#include "core/quantity/units.h"
#include "tests/core/record/sample_kinds.h"
#include "tests/ui/words/document_text.h"
#include "tests/ui/words/languages.h"
#include "ui/words/document_words.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace hearth::ui::words {
namespace {

using quantity::Decimal;
using quantity::Duration;
using quantity::kPpm;
using quantity::kSecond;
using quantity::Share;

/// A reading a second, 3 ppm throughout but for one second.
record::RoomTrace quietRoom(int seconds, int peakAt = -1) {
    record::RoomTrace trace;
    trace.source.name = "Room monitor";
    trace.source.resolution = {"0.5", quantity::UnitCode::Ppm};
    for (int i = 0; i < seconds; ++i) {
        trace.readings.push_back({Duration(i, kSecond), Share(i == peakAt ? 41.5 : 3.0, kPpm)});
    }
    return trace;
}

const record::PlotSeries& lineIn(const record::Plots& plots) {
    return plots.plots.at(0).series.at(0);
}

TEST(RoomTraceWords, LoseNoPeakOfADayToThePainting) {
    const Words words;
    const auto plots = roomTracePlots(quietRoom(86400, 54321), {}, {{Decimal(20, 0), "Danger", true}}, words);
    const auto& points = lineIn(plots).points;
    EXPECT_LT(points.size(), 500U);
    const auto peak = std::find_if(points.begin(), points.end(),
                                   [](const auto& point) { return point.y == Decimal(415, 1); });
    ASSERT_NE(peak, points.end());
    EXPECT_NEAR(peak->x.toDouble(), 54321.0 / 60.0, 1e-3);
    EXPECT_TRUE(
        std::is_sorted(points.begin(), points.end(), [](const auto& a, const auto& b) { return a.x < b.x; }));
    ASSERT_EQ(plots.plots[0].limits.size(), 1U);
    EXPECT_EQ(plots.plots[0].limits[0].name, "Danger");
    EXPECT_TRUE(roomTracePlots({}, {}, {}, words).plots.empty());
}

TEST(RoomTraceWords, LeaveAGapWhereNothingWasHeard) {
    const Words words;
    auto trace = quietRoom(20);
    for (std::size_t i = 10; i < trace.readings.size(); ++i) {
        trace.readings[i].at = trace.readings[i].at + Duration(60, kSecond);
    }
    const auto gaps = [&](const std::vector<tightness::Span>& lost) {
        const auto plots = roomTracePlots(trace, lost, {}, words);
        const auto& points = lineIn(plots).points;
        return std::count_if(points.begin(), points.end(), [](const auto& point) { return !point.y; });
    };
    EXPECT_EQ(gaps({}), 1);
    EXPECT_EQ(gaps({{Duration(3.5, kSecond), Duration(4, kSecond)}}), 2) << "and a short loss";
}

TEST(RoomTraceWords, SayWhatItIs) {
    const Words words;
    EXPECT_EQ(roomTraceSource(quietRoom(601, 5), words),
              QStringLiteral("Room monitor: 601 readings over 10.0\u00A0min, the highest 41.5\u00A0ppm."));
    EXPECT_TRUE(roomTraceBesideFindings(words).contains(QStringLiteral("decides nothing")));
}

TEST(RoomTraceWords, StandInTheRecordOfAnInvestigation) {
    const auto file = testing::sampleVisit();
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    DocumentInput input{record::RecordKind::RoomInvestigation, file, findings, volume, file.visit.date};
    const auto isSaid = [](const record::Block& block) {
        const auto* text = std::get_if<record::Paragraph>(&block);
        return text != nullptr && text->title.rfind("Room monitor: 601 readings", 0) == 0 &&
               text->text.find("decides nothing") != std::string::npos;
    };
    const auto isDrawn = [](const record::Block& block) {
        const auto* plots = std::get_if<record::Plots>(&block);
        return plots != nullptr && !plots->plots.empty() &&
               plots->plots[0].title == "Carbon monoxide as it was watched";
    };
    const auto without = documentFor(input, Words());
    EXPECT_EQ(std::count_if(without.blocks.begin(), without.blocks.end(), isSaid), 0);
    input.roomTraces = {quietRoom(601)};
    const auto with = documentFor(input, Words());
    EXPECT_EQ(std::count_if(with.blocks.begin(), with.blocks.end(), isSaid), 1);
    EXPECT_EQ(std::count_if(with.blocks.begin(), with.blocks.end(), isDrawn), 1);
}

}  // namespace
}  // namespace hearth::ui::words

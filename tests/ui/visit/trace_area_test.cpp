// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/trace_area.h"

#include "core/exchange/scenario.h"
#include "core/store/record_traces.h"
#include "tests/support/files.h"
#include "tests/ui/visit/trace_bench.h"
#include "ui/shell/line_list.h"
#include "ui/shell/plot_view.h"
#include "ui/words/document_words.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

namespace hearth::ui::visit {
namespace {

using reg::Item;
using testing::TraceBench;
using testing::watched;

class TraceAreaTest : public ::testing::Test {
  protected:
    [[nodiscard]] const record::Plots& plots() const {
        return m_bench.sheet()
            .tightnessPart()
            ->findChild<shell::PlotView*>(QStringLiteral("tracePlots"))
            ->plots();
    }
    TraceBench m_bench;
};

TEST_F(TraceAreaTest, showsNothingWithoutATrace) {
    EXPECT_FALSE(m_bench.area().seen());
    EXPECT_FALSE(m_bench.button("confirmReading0")->isVisible());
}

TEST_F(TraceAreaTest, saysWhatTheTraceMeansAndThatTheVerdictIsByTheRule) {
    m_bench.take(watched(0.0004));
    EXPECT_EQ(m_bench.area().meaning(),
              QStringLiteral("A steady fall that cooling does not explain: look for a leak."));
    EXPECT_TRUE(m_bench.label("traceGrounds").startsWith(QStringLiteral("Leak at 20.6")));
    EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("stood at zero")));
    EXPECT_TRUE(m_bench.label("traceBesideVerdict").contains(QStringLiteral("by the standard's rule")));
    ASSERT_EQ(plots().plots.size(), 2U);
    EXPECT_EQ(plots().plots[0].stretches.size(), 3U);
    // A trace is no reading: the rule has nothing to go by yet.
    EXPECT_EQ(m_bench.outcome(rulebook::FindingKind::Tightness), rulebook::Outcome::NoVerdict);
    m_bench.take(watched(0.0, 0.8));
    EXPECT_TRUE(m_bench.area().meaning().startsWith(QStringLiteral("The fall is what cooling explains")));
    EXPECT_EQ(m_bench.file().traces.size(), 1U) << "taken in again, it takes the place of the one before";
}

TEST_F(TraceAreaTest, entersEachReadingByOneKeyAndNoneByItself) {
    m_bench.take(watched(0.0004));
    EXPECT_EQ(m_bench.entered(Item::LetByStart), QString());
    auto* first = m_bench.button("confirmReading0");
    EXPECT_EQ(first->text(), QStringLiteral("Let-by, start: 8.50\u00A0mbar"));
    first->setFocus();
    TraceBench::press(Qt::Key_Return);
    EXPECT_EQ(m_bench.entered(Item::LetByStart), QString()) << "Enter goes past";
    first->setFocus();
    const std::vector<Item> items{Item::LetByStart, Item::LetByEnd,   Item::SettleStart,
                                  Item::SettleEnd,  Item::TightStart, Item::TightEnd};
    for (std::size_t i = 0; i < items.size(); ++i) {
        TraceBench::press(Qt::Key_Space);
        EXPECT_NE(m_bench.entered(items[i]), QString()) << i;
        if (i + 1 < items.size()) {
            EXPECT_EQ(m_bench.entered(items[i + 1]), QString()) << i;
        }
    }
    EXPECT_EQ(m_bench.entered(Item::LetByEnd), QStringLiteral("8.50"));
    EXPECT_EQ(m_bench.editor(Item::LetByEnd).text(), QStringLiteral("8.50"));
    EXPECT_TRUE(first->text().contains(QStringLiteral("entered")));
    EXPECT_FALSE(first->isEnabled());
    // 20.6 exp(-0.0004 180) = 19.17 mbar three minutes after it was raised
    EXPECT_NEAR(m_bench.entered(Item::TightEnd).toDouble(), 19.17, 0.03);
}

TEST_F(TraceAreaTest, saysWhatAReadingWouldTakeThePlaceOf) {
    m_bench.enter(Item::LetByStart, "9.02");
    m_bench.take(watched());
    EXPECT_TRUE(m_bench.button("confirmReading0")->text().contains(QStringLiteral("in place of 9.02")));
}

TEST_F(TraceAreaTest, marksWhatHappenedAndMovesTheStages) {
    m_bench.take(watched());
    auto* event = m_bench.sheet().tightnessPart()->findChild<input::Editor*>(QStringLiteral("traceEvent"));
    auto* at = m_bench.sheet().tightnessPart()->findChild<input::Editor*>(QStringLiteral("traceEventAt"));
    event->setText(QStringLiteral("door_opened"));
    at->setText(QStringLiteral("100"));
    m_bench.button("addTraceMark")->click();
    TraceBench::settle();
    EXPECT_NE(m_bench.file().traces[0].marks.find("door_opened@100"), std::string::npos);
    event->setText(QStringLiteral("timing"));
    at->setText(QStringLiteral("145"));
    m_bench.button("addTraceMark")->click();
    TraceBench::settle();
    EXPECT_NEAR(m_bench.area().seen()->stages.timing->from.in(quantity::kSecond), 145.0, 1e-9);
    EXPECT_EQ(plots().plots[0].marks.size(), 1U);

    at->setText(QStringLiteral("999"));
    const auto before = m_bench.file().traces[0].marks;
    m_bench.button("addTraceMark")->click();
    EXPECT_EQ(m_bench.file().traces[0].marks, before);

    auto* list = m_bench.sheet().tightnessPart()->findChild<shell::LineList*>(QStringLiteral("traceMarks"));
    list->setCurrentKey(QStringLiteral("door_opened@100000"));
    m_bench.button("removeTraceMark")->click();
    EXPECT_EQ(m_bench.file().traces[0].marks.find("door_opened"), std::string::npos);
}

TEST_F(TraceAreaTest, isTakenAwayAndBroughtBack) {
    m_bench.take(watched());
    m_bench.button("removeTrace")->click();
    TraceBench::settle();
    EXPECT_TRUE(m_bench.file().traces.empty());
    EXPECT_FALSE(m_bench.area().seen());
    need(m_bench.firm.store->undo());
    need(m_bench.model().reload());
    TraceBench::settle();
    ASSERT_TRUE(m_bench.area().seen());
    EXPECT_EQ(m_bench.area().seen()->given.trace.size(), 541U);
}

TEST_F(TraceAreaTest, growsWhileItIsHandedOverAndIsKeptWhenSaid) {
    m_bench.area().setTrace(watched(0, 0, 100.0), TraceBench::source("meter box"));
    EXPECT_TRUE(m_bench.area().isUnkept());
    EXPECT_TRUE(m_bench.button("keepTrace")->isVisible());
    EXPECT_FALSE(m_bench.area().seen()->stages.timing);
    m_bench.area().setTrace(watched(0, 0, 110.0), TraceBench::source("meter box"));
    EXPECT_EQ(m_bench.area().seen()->given.trace.size(), 221U);
    EXPECT_TRUE(m_bench.file().traces.empty());
    m_bench.button("keepTrace")->click();
    TraceBench::settle();
    EXPECT_FALSE(m_bench.area().isUnkept());
    ASSERT_EQ(m_bench.file().traces.size(), 1U);
    m_bench.open();
    EXPECT_EQ(m_bench.area().seen()->given.trace.size(), 221U);
}

// What a record shows stays; what was kept since, and stands in none, is replaced.
TEST_F(TraceAreaTest, replacesWhatNoRecordShows) {
    m_bench.take(watched());
    store::IssueRequest request;
    request.snapshot.file = m_bench.file();
    const auto shown = m_bench.file().traces[0].id;
    static_cast<void>(need(m_bench.firm.store->issue(
        request, [](const record::Document&, const std::string&) { return std::string("%PDF"); })));
    m_bench.take(watched(0.0004));
    ASSERT_EQ(m_bench.file().traces.size(), 2U);
    EXPECT_EQ(m_bench.file().traces[0].id, shown);
    m_bench.take(watched(0.0008));
    ASSERT_EQ(m_bench.file().traces.size(), 2U) << "the newer one stands in no record";
    EXPECT_EQ(m_bench.file().traces[0].id, shown);
}

// The issued one stays to the byte whatever comes after it; the sheet says which of the traces is used.
TEST_F(TraceAreaTest, saysWhichTraceIsUsedAndWhatBecomesOfIt) {
    m_bench.take(watched());
    auto* older = m_bench.sheet().tightnessPart()->findChild<input::Editor*>(QStringLiteral("traceOlder"));
    EXPECT_TRUE(older->isVisible());
    EXPECT_EQ(m_bench.label("traceUsed"), QString());
    store::IssueRequest request;
    request.snapshot.file = m_bench.file();
    const auto record = need(m_bench.firm.store->issue(
        request, [](const record::Document&, const std::string&) { return std::string("%PDF"); }));
    const auto number = words::qstring(need(m_bench.firm.store->record(record)).line.header.record);
    const auto issued = m_bench.file().traces[0];
    m_bench.open();
    older = m_bench.sheet().tightnessPart()->findChild<input::Editor*>(QStringLiteral("traceOlder"));
    EXPECT_FALSE(older->isVisible());
    EXPECT_TRUE(m_bench.label("traceUsed").contains(QStringLiteral("Record %1 shows it").arg(number)))
        << m_bench.label("traceUsed").toStdString();

    m_bench.firm.clock.advance(std::chrono::minutes(1));
    m_bench.take(watched(0.0004), "second.csv");
    EXPECT_TRUE(older->isVisible());
    EXPECT_TRUE(
        m_bench.label("traceUsed")
            .startsWith(QStringLiteral("The newest trace of this test is used: second.csv, kept at ")));
    EXPECT_TRUE(m_bench.label("traceUsed").contains(QStringLiteral("(in record %1)").arg(number)));
    older->setText(QStringLiteral("kept"));
    m_bench.firm.clock.advance(std::chrono::minutes(1));
    m_bench.take(watched(0.0008), "third.csv");
    ASSERT_EQ(m_bench.file().traces.size(), 3U) << "kept, as it was chosen";
    EXPECT_TRUE(m_bench.label("traceUsed").contains(QStringLiteral("is used: third.csv")));
    EXPECT_TRUE(m_bench.label("traceUsed").contains(QStringLiteral("second.csv")));
    EXPECT_TRUE(m_bench.area().seen()->given.source.name == "third.csv");
    older->setText(QStringLiteral("replaced"));
    m_bench.firm.clock.advance(std::chrono::minutes(1));
    m_bench.take(watched(0.0002), "fourth.csv");
    ASSERT_EQ(m_bench.file().traces.size(), 3U);
    EXPECT_FALSE(m_bench.label("traceUsed").contains(QStringLiteral("third.csv")));
    const auto& traces = m_bench.file().traces;
    EXPECT_NE(std::find(traces.begin(), traces.end(), issued), traces.end()) << "to the byte";
    m_bench.button("removeTrace")->click();
    TraceBench::settle();
    EXPECT_TRUE(m_bench.label("traceUsed").contains(QStringLiteral("is used: second.csv")))
        << "the next older one is used then";
    EXPECT_EQ(m_bench.area().seen()->given.source.name, "second.csv");
}

TEST_F(TraceAreaTest, keepsAndShowsWhatASecondGaugeSaw) {
    auto source = TraceBench::source("Blue gauge");
    source.resolution = {"0.01", quantity::UnitCode::Millibar};
    source.zero = {{"0.00", quantity::UnitCode::Millibar},
                   {"0.01", quantity::UnitCode::Millibar},
                   m_bench.firm.clock.now(),
                   true};
    auto second = judging::SecondGauge{source, watched()};
    second.source.name = "Red gauge";
    second.source.zero = {};
    m_bench.area().setTrace(watched(), source, second);
    need(m_bench.area().keep());
    TraceBench::settle();
    ASSERT_EQ(m_bench.file().traces.size(), 2U);
    m_bench.open();
    ASSERT_TRUE(m_bench.area().seen());
    EXPECT_EQ(m_bench.area().seen()->given.source, source);
    ASSERT_TRUE(m_bench.area().seen()->given.second);
    EXPECT_EQ(m_bench.area().seen()->given.second->source.name, "Red gauge");
    EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("Zero check at ")));
    EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("Watched beside it: Red gauge")));
    EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("the two gauges agree")));
    EXPECT_EQ(plots().plots.at(0).series.size(), 2U);
    EXPECT_EQ(m_bench.label("traceUsed"), QString()) << "a second gauge is no second trace";
    m_bench.button("removeTrace")->click();
    TraceBench::settle();
    EXPECT_TRUE(m_bench.file().traces.empty());
}

// The field comes with the first trace; what stands in it widens what is said of the leak.
TEST_F(TraceAreaTest, asksHowFarTheVolumeMayBeOffWhereLeaksAreTold) {
    EXPECT_FALSE(m_bench.editor(Item::TestVolumeOff).isVisible());
    m_bench.take(watched(0.0004));
    EXPECT_TRUE(m_bench.editor(Item::TestVolumeOff).isVisible());
    EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("The volume is taken as exact.")));
    const auto exact = m_bench.area().seen()->told.test->leak;
    m_bench.enter(Item::TestVolumeOff, "15");
    EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("the volume may be off by 15.0")));
    EXPECT_GT(m_bench.area().seen()->told.test->leak.most, exact.most);
    EXPECT_FALSE(m_bench.label("traceGrounds").contains(QStringLiteral("counts for nothing")));
    for (const char* none : {"100", "-3", "much"}) {
        m_bench.enter(Item::TestVolumeOff, none);
        EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("counts for nothing"))) << none;
        EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("The volume is taken as exact.")));
        EXPECT_EQ(m_bench.area().seen()->told.test->leak.most, exact.most) << none;
    }
}

TEST_F(TraceAreaTest, offersNoReadingOfASimulationAndSaysThatItIsOne) {
    auto source = TraceBench::source("practice");
    source.origin = reg::TraceOrigin::Simulator;
    source.isSimulated = true;
    m_bench.area().setTrace(watched(), source);
    need(m_bench.area().keep());
    EXPECT_TRUE(m_bench.label("traceSource").startsWith(QStringLiteral("SIMULATION")));
    EXPECT_FALSE(m_bench.button("confirmReading0")->isVisible());
}

TEST_F(TraceAreaTest, asksForTheVolumeWhereThereIsNone) {
    m_bench.take(watched(0.0004));
    m_bench.enter(Item::TestVolumeTyped, "");
    EXPECT_TRUE(m_bench.area().meaning().contains(QStringLiteral("without the volume")))
        << m_bench.area().meaning().toStdString();
    m_bench.enter(Item::TestVolumeTyped, "0.01");
    EXPECT_TRUE(m_bench.area().meaning().startsWith(QStringLiteral("A steady fall")));
}

TEST_F(TraceAreaTest, changesNothingOnAClosedVisit) {
    m_bench.take(watched());
    auto closed = m_bench.file().visit;
    closed.closed = true;
    need(m_bench.model().save(closed));
    m_bench.open();
    EXPECT_FALSE(m_bench.button("takeLoggersFile")->isEnabled());
    EXPECT_FALSE(m_bench.button("removeTrace")->isEnabled());
    EXPECT_FALSE(m_bench.button("confirmReading0")->isEnabled());
}

// What each pipe is, is in resources/demo/make_traces.py; each is told on the sheet and in the record.
TEST_F(TraceAreaTest, tellsTheDemonstrationsTracesApartOnTheSheetAndInTheRecord) {
    const auto scenario =
        need(exchange::parseScenario(testing::readFile(HEARTH_SOURCE_DIR "/resources/demo/scenario.json"),
                                     [this] { return m_bench.firm.store->newId(); }));
    const std::map<std::string, std::string> meanings{
        {"It cools", "The fall is what cooling explains"},
        {"A small leak under warming", "A leak that warming hides"},
        {"Let-by", "Rising while the valve was shut for let-by"},
        {"A stuck gauge", "A stuck gauge: it stands still"}};
    m_bench.enter(Item::TestVolumeTyped, "0.009386");
    std::size_t told = 0;
    for (const auto& planned : scenario.visits) {
        for (const auto& test : planned.tests) {
            if (!test.trace) {
                continue;
            }
            ++told;
            m_bench.area().setTrace(test.trace->trace, test.trace->source);
            need(m_bench.area().keep());
            need(m_bench.model().markTrace(m_bench.file().traces.front().id, test.trace->marks));
            TraceBench::settle();
            const auto& meaning = meanings.at(test.test.label);
            EXPECT_EQ(m_bench.area().meaning().toStdString().substr(0, meaning.size()), meaning);
            const auto traces =
                need(store::tracesOf(*m_bench.firm.store, m_bench.file(), m_bench.model().book()));
            const auto document = words::documentFor({record::RecordKind::TightnessAndPurge,
                                                      m_bench.file(),
                                                      m_bench.model().findings(),
                                                      m_bench.model().volume(),
                                                      m_bench.file().visit.date,
                                                      {},
                                                      {},
                                                      nullptr,
                                                      {},
                                                      traces},
                                                     QStringLiteral("en"));
            const auto isSaid = [&](const record::Block& block) {
                const auto* text = std::get_if<record::Paragraph>(&block);
                return text != nullptr && text->text.rfind(meaning, 0) == 0;
            };
            EXPECT_EQ(std::count_if(document.blocks.begin(), document.blocks.end(), isSaid), 1) << meaning;
        }
    }
    EXPECT_EQ(told, meanings.size());
}

}  // namespace
}  // namespace hearth::ui::visit

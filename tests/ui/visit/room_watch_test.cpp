// SPDX-License-Identifier: GPL-3.0-or-later
// The levels are invented; from 20 ppm on everybody leaves by the shipped rule book (HSE EH40/2005).
#include "ui/visit/room_watch.h"

#include "tests/ui/visit/sheet_bench.h"
#include "ui/gauge/live_figure.h"
#include "ui/shell/plot_view.h"
#include "ui/visit/room_trace_area.h"
#include "ui/visit/what_first.h"

#include <QLabel>
#include <QPushButton>
#include <QTcpServer>
#include <QTcpSocket>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using namespace std::chrono_literals;
using hearth::testing::need;
using hearth::testing::SheetBench;
using reg::Item;

constexpr int kWatchWait = 20000;

class RoomWatchTest : public ::testing::Test {
  protected:
    RoomWatchTest() {
        need(m_bench.model().enter(reg::subject(m_bench.file().visit.id), Item::VisitRoomCo,
                                   QStringLiteral("yes")));
        SheetBench::settle();
        m_server.listen(QHostAddress::LocalHost);
        gauge::GaugeProfile profile;
        profile.name = "Room monitor";
        profile.kind = gauge::SourceKind::Network;
        profile.host = "127.0.0.1";
        profile.networkPort = m_server.serverPort();
        profile.pattern.family = quantity::UnitFamily::Trace;
        need(m_bench.firm.store->saveSetting(gauge::kProfilesSetting, gauge::profilesText({profile})));
    }
    [[nodiscard]] RoomWatch& live() const { return *m_bench.sheet().findChild<RoomWatch*>(); }
    [[nodiscard]] RoomTraceArea& area() const { return *m_bench.sheet().findChild<RoomTraceArea*>(); }
    [[nodiscard]] gauge::AirPanel& panel() const { return *live().panel(); }
    void press(const char* name) const {
        auto* button = m_bench.sheet().findChild<QPushButton*>(QLatin1String(name));
        ASSERT_NE(button, nullptr) << name;
        button->click();
        SheetBench::settle();
    }
    void open(int profile, const char* place) {
        press("watchRoomButton");
        auto* where = panel().findChild<input::Editor*>(QStringLiteral("airPlace"));
        where->setText(QLatin1String(place));
        Q_EMIT where->committed(QLatin1String(place));
        panel().choose(profile);
    }
    void connectIt(const char* place = "room") {
        open(0, place);
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_server.hasPendingConnections(); }, kWatchWait));
        m_peer = m_server.nextPendingConnection();
        m_peer->write("\n");
    }
    /// Time passes, then it comes.
    void sends(const char* ppm, std::chrono::milliseconds after = 1s) {
        m_bench.firm.clock.advance(after);
        m_peer->write(QByteArray(ppm) + " ppm\n");
        const auto now = m_bench.firm.clock.elapsed();
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return panel().watch().last() && panel().watch().last()->at == now; }, kWatchWait))
            << ppm;
        SheetBench::settle();
    }
    struct Row {
        std::string place;
        std::string minutes;
        std::string ppm;
        bool operator==(const Row&) const = default;
    };
    [[nodiscard]] std::vector<Row> series() const {
        std::vector<Row> rows;
        for (const auto& row : m_bench.file().roomReadings()) {
            const auto text = [&](Item item) { return m_bench.model().textOf(row, item).toStdString(); };
            rows.push_back({text(Item::RoomCoPlace), text(Item::RoomCoAt), text(Item::RoomCo)});
        }
        return rows;
    }

    SheetBench m_bench;
    QTcpServer m_server;
    QTcpSocket* m_peer = nullptr;
};

TEST_F(RoomWatchTest, AReadingIsPutIntoTheSeriesAtAChosenMoment) {
    connectIt("outdoors");
    sends("1");
    press("airTakeButton");
    EXPECT_EQ(series(), (std::vector<Row>{{"outdoors", "0.0", "1"}}));
    auto* where = panel().findChild<input::Editor*>(QStringLiteral("airPlace"));
    where->setText(QStringLiteral("room"));
    Q_EMIT where->committed(QStringLiteral("room"));
    sends("6", 90s);
    EXPECT_EQ(series().size(), 1U) << "nothing goes there by itself";
    press("airTakeButton");
    EXPECT_EQ(series(), (std::vector<Row>{{"outdoors", "0.0", "1"}, {"room", "1.5", "6"}}));
    ASSERT_NE(m_bench.finding(rulebook::FindingKind::RoomCoLevel), nullptr);
    EXPECT_EQ(m_bench.finding(rulebook::FindingKind::RoomCoLevel)->finding.measured->value.toDouble(), 6.0);
}

TEST_F(RoomWatchTest, WhatWasWatchedIsKeptAndItsReadingsAreOffered) {
    connectIt();
    panel().toggle();
    for (const char* level : {"2", "3", "9", "4", "5"}) {
        sends(level, 30s);
    }
    EXPECT_TRUE(area().isHidden());
    panel().takeFocus();
    SheetBench::press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(m_bench.file().traces.size(), 1U);
    const auto& kept = m_bench.file().traces[0];
    EXPECT_EQ(kept.source.name, "Room monitor");
    EXPECT_FALSE(kept.test);
    EXPECT_EQ(kept.points, 5);
    EXPECT_TRUE(series().empty()) << "offered, not entered";
    // At 0.5, 1.0, 1.5, 2.0 and 2.5 minutes of the watch: one a minute from the first on, and the highest.
    ASSERT_EQ(area().offers().size(), 3U);
    EXPECT_EQ(area().offers()[0].reading.ppm, QStringLiteral("2"));
    EXPECT_EQ(area().offers()[1].reading.ppm, QStringLiteral("9"));
    EXPECT_TRUE(area().offers()[1].isHighest);
    EXPECT_EQ(area().offers()[2].reading.ppm, QStringLiteral("5"));
    press("confirmRoomReading1");
    EXPECT_EQ(series(), (std::vector<Row>{{"room", "1.5", "9"}}));
    EXPECT_TRUE(area().offers()[1].isEntered);
    EXPECT_FALSE(m_bench.sheet().findChild<QPushButton*>(QStringLiteral("confirmRoomReading1"))->isEnabled());
    press("roomTraceAll");
    EXPECT_EQ(series(), (std::vector<Row>{{"room", "1.5", "9"}, {"room", "0.5", "2"}, {"room", "2.5", "5"}}));
    press("roomTraceAll");
    EXPECT_EQ(series().size(), 3U) << "none twice";
    const auto* plot = area().findChild<shell::PlotView*>(QStringLiteral("roomTracePlot"));
    ASSERT_FALSE(plot->plots().plots.empty());
    EXPECT_FALSE(plot->plots().plots[0].limits.empty());
    m_bench.open();
    EXPECT_EQ(area().offers().size(), 3U) << "after another start too";
    EXPECT_TRUE(area().offers()[0].isEntered);
}

TEST_F(RoomWatchTest, NoVerdictReadsWhatWasWatched) {
    connectIt();
    panel().toggle();
    sends("45");
    sends("46");
    panel().toggle();
    SheetBench::settle();
    EXPECT_EQ(m_bench.finding(rulebook::FindingKind::RoomCoLevel), nullptr);
}

TEST_F(RoomWatchTest, DangerPutsWhatToDoFirstAboveIt) {
    connectIt();
    sends("19");
    EXPECT_TRUE(live().whatFirst()->isHidden());
    sends("20");
    EXPECT_FALSE(live().whatFirst()->isHidden());
    EXPECT_LT(live().whatFirst()->y(), panel().y()) << "above the panel";
    sends("3");
    EXPECT_FALSE(live().whatFirst()->isHidden()) << "it stays";
    EXPECT_TRUE(panel().findChild<QLabel*>(QStringLiteral("airDanger"))->isVisible());
}

TEST_F(RoomWatchTest, AVisitWithPracticeReadingsIssuesNothing) {
    open(1, "room");  // behind the firm's one: a room that stays clear
    ASSERT_TRUE(QTest::qWaitFor([&] { return panel().watch().last().has_value(); }, kWatchWait));
    press("airTakeButton");
    ASSERT_EQ(series().size(), 1U);
    ASSERT_EQ(m_bench.file().traces.size(), 1U) << "from the first reading on, not from the watch's end";
    EXPECT_TRUE(m_bench.file().traces[0].source.isSimulated);
    store::IssueRequest request;
    request.snapshot.file = m_bench.file();
    const auto issued = m_bench.firm.store->issue(
        request, [](const record::Document&, const std::string&) { return std::string("%PDF"); });
    ASSERT_FALSE(issued);
    EXPECT_EQ(issued.error().code, ErrorCode::TraceSimulated);
    // It can't be taken away while the readings that came from it stand in the series.
    press("removeRoomTrace");
    EXPECT_EQ(m_bench.file().traces.size(), 1U);
    EXPECT_TRUE(area().findChild<QLabel*>(QStringLiteral("roomTraceRefused"))->isVisible());
    const auto row = m_bench.file().roomReadings().front();
    for (const Item item : {Item::RoomCo, Item::RoomCoAt, Item::RoomCoPlace}) {
        need(m_bench.model().enter(row, item, {}));
    }
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return panel().watch().recorder().taken().air.size() >= 2; }, kWatchWait));
    panel().toggle();
    EXPECT_EQ(m_bench.file().traces.size(), 1U) << "the whole watch takes the place of its beginning";
    EXPECT_GE(m_bench.file().traces[0].points, 2);
    press("removeRoomTrace");
    EXPECT_TRUE(m_bench.file().traces.empty());
}

TEST_F(RoomWatchTest, ASeriesWithoutAKnownBeginningGetsNoGuessedMinutes) {
    const reg::SubjectRef row{reg::SubjectKind::Room, m_bench.firm.store->newId()};
    need(m_bench.model().enter(row, Item::RoomCo, QStringLiteral("2")));
    need(m_bench.model().enter(row, Item::RoomCoAt, QStringLiteral("7"), quantity::UnitCode::Minute));
    SheetBench::settle();
    connectIt();
    sends("4");
    press("airTakeButton");
    ASSERT_EQ(series().size(), 2U);
    EXPECT_EQ(series()[1], (Row{"room", "", "4"}));
    panel().toggle();
    EXPECT_TRUE(area().offers().empty() || !area().offers()[0].isTimed);
}

TEST_F(RoomWatchTest, AnInstrumentIsSetUpOnTheSheetInPpmAlone) {
    press("setUpRoomButton");
    auto* set = m_bench.sheet().findChild<QWidget*>(QStringLiteral("airProfilesPanel"));
    ASSERT_NE(set, nullptr);
    const auto type = [&](const char* name, const QString& text) {
        auto* field = set->findChild<input::Editor*>(QLatin1String(name));
        field->setText(text);
        Q_EMIT field->committed(text);
    };
    type("profileName", QStringLiteral("Hall monitor"));
    type("profileKind", QStringLiteral("network"));
    type("profileHost", QStringLiteral("127.0.0.1"));
    type("profileNetworkPort", QStringLiteral("4001"));
    type("profilePattern", QStringLiteral("CO {value}"));
    press("saveProfileButton");
    auto kept = gauge::profilesFromText(need(m_bench.firm.store->setting(gauge::kProfilesSetting)));
    EXPECT_EQ(kept.size(), 1U) << "the lines name no unit, and none was said";
    type("profileUnit", QStringLiteral("ppm"));
    press("saveProfileButton");
    kept = gauge::profilesFromText(need(m_bench.firm.store->setting(gauge::kProfilesSetting)));
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept[1].pattern.family, quantity::UnitFamily::Trace);
    EXPECT_EQ(kept[1].pattern.unit, quantity::UnitCode::Ppm);
}

}  // namespace
}  // namespace hearth::ui::visit

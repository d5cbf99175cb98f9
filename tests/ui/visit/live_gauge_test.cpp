// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/live_gauge.h"

#include "tests/ui/visit/trace_bench.h"
#include "ui/gauge/live_panel.h"
#include "ui/input/editor.h"

#include <QTcpServer>
#include <QTcpSocket>

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using namespace std::chrono_literals;

constexpr int kLiveWait = 20000;

TEST(LiveGauge, BothSetsOfCodesAreTheSame) {
    std::vector<gauge::GaugeMark> all;
    for (const auto event : gauge::kGaugeEvents) {
        EXPECT_TRUE(reg::traceEventFromCode(gauge::codeOf(event))) << gauge::codeOf(event);
        all.push_back({event, 1500ms});
    }
    EXPECT_EQ(traceMarksOf(all).size(), std::size(gauge::kGaugeEvents));
}

class LiveGaugeTest : public ::testing::Test {
  protected:
    LiveGaugeTest() {
        m_server.listen(QHostAddress::LocalHost);
        gauge::GaugeProfile profile;
        profile.name = "Blue gauge";
        profile.kind = gauge::SourceKind::Network;
        profile.host = "127.0.0.1";
        profile.networkPort = m_server.serverPort();
        auto room = profile;
        room.name = "Room";
        room.pattern.family = quantity::UnitFamily::Trace;
        testing::need(
            m_bench.firm.store->saveSetting(gauge::kProfilesSetting, gauge::profilesText({room, profile})));
    }
    [[nodiscard]] LiveGauge& live() const { return *m_bench.sheet().tightnessPart()->live(); }

    testing::TraceBench m_bench;
    QTcpServer m_server;
};

TEST_F(LiveGaugeTest, FromTheWireToTheVisit) {
    m_bench.button("watchGaugeButton")->click();
    auto* panel = live().panel();
    ASSERT_NE(panel, nullptr);
    EXPECT_EQ(panel->profiles().front().name, "Blue gauge")
        << "one that reads carbon monoxide is not offered";
    panel->choose(0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_server.hasPendingConnections(); }, kLiveWait));
    auto* peer = m_server.nextPendingConnection();
    peer->write("\n0.00 mbar\n");
    const auto hears = [&](double value) {
        return QTest::qWaitFor(
            [&] {
                const auto& last = panel->watch().last();
                return last && std::abs(last->line.value.toDouble() - value) < 1e-9;
            },
            kLiveWait);
    };
    ASSERT_TRUE(hears(0.0));
    panel->takeFocus();
    testing::TraceBench::press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(panel->watch().recorder().isRecording())
        << "Ctrl+Enter is the panel's while it has the keyboard";
    for (int i = 1; i <= 40; ++i) {
        m_bench.firm.clock.advance(500ms);
        const double value = 20.5 - i * 0.01;
        peer->write(QByteArray::number(value, 'f', 2) + " mbar\r\n");
        ASSERT_TRUE(hears(value)) << i;
        if (i == 20) {
            panel->findChild<QPushButton*>(QStringLiteral("mark_timing"))->click();
        }
    }
    testing::TraceBench::press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(panel->watch().recorder().isRecording());
    const auto& traces = m_bench.file().traces;
    ASSERT_EQ(traces.size(), 1U);
    EXPECT_EQ(traces[0].source.name, "Blue gauge");
    EXPECT_EQ(traces[0].source.origin, reg::TraceOrigin::Network);
    EXPECT_FALSE(traces[0].source.isSimulated);
    EXPECT_EQ(traces[0].points, 40);
    EXPECT_EQ(traces[0].marks, "timing@10");
    EXPECT_TRUE(m_bench.area().seen());
    EXPECT_EQ(m_bench.outcome(rulebook::FindingKind::Tightness), rulebook::Outcome::NoVerdict)
        << "a trace is no reading";
}

// Both gauges, and what each read open to the air, go to the visit in one step.
TEST_F(LiveGaugeTest, TwoGaugesGoToTheVisitTogether) {
    QTcpServer other;
    other.listen(QHostAddress::LocalHost);
    auto profiles =
        gauge::profilesFromText(testing::need(m_bench.firm.store->setting(gauge::kProfilesSetting)));
    profiles.push_back(profiles.back());
    profiles.back().name = "Red gauge";
    profiles.back().networkPort = other.serverPort();
    testing::need(m_bench.firm.store->saveSetting(gauge::kProfilesSetting, gauge::profilesText(profiles)));
    m_bench.button("watchGaugeButton")->click();
    auto* panel = live().panel();
    panel->choose(0);
    panel->compareWith(1);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return m_server.hasPendingConnections() && other.hasPendingConnections(); }, kLiveWait));
    auto* blue = m_server.nextPendingConnection();
    auto* red = other.nextPendingConnection();
    const auto hear = [&](double one, double two) {
        blue->write(QByteArray::number(one, 'f', 2) + " mbar\n");
        red->write(QByteArray::number(two, 'f', 2) + " mbar\n");
        const auto has = [](const gauge::Watch& watch, double value) {
            return watch.last() && std::abs(watch.last()->line.value.toDouble() - value) < 1e-9;
        };
        return QTest::qWaitFor([&] { return has(panel->watch(), one) && has(panel->secondWatch(), two); },
                               kLiveWait);
    };
    blue->write("\n");
    red->write("\n");
    ASSERT_TRUE(hear(0.0, 0.01));
    panel->findChild<QPushButton*>(QStringLiteral("zeroButton"))->click();
    panel->toggle();
    for (int i = 1; i <= 40; ++i) {
        m_bench.firm.clock.advance(500ms);
        ASSERT_TRUE(hear(20.5 - i * 0.01, 20.48 - i * 0.01)) << i;
    }
    panel->toggle();
    ASSERT_EQ(m_bench.file().traces.size(), 2U);
    const auto* used = m_bench.file().traceOf(m_bench.file().tests.front().id);
    ASSERT_NE(used, nullptr);
    EXPECT_EQ(used->source.name, "Blue gauge");
    EXPECT_TRUE(used->source.zero.isThere() && used->source.zero.isZero);
    const auto* beside = m_bench.file().traceBeside(used->id);
    ASSERT_NE(beside, nullptr);
    EXPECT_EQ(beside->source.name, "Red gauge");
    EXPECT_EQ(beside->points, 40);
    EXPECT_TRUE(beside->source.zero.isThere());
    ASSERT_TRUE(m_bench.area().seen()->compared);
    EXPECT_NEAR(m_bench.area().seen()->compared->greatest.in(quantity::kMillibar), 0.02, 1e-6);
    EXPECT_TRUE(m_bench.label("traceGrounds").contains(QStringLiteral("the two gauges do not agree")))
        << m_bench.label("traceGrounds").toStdString();
}

// Set up beside the open panel: it offers the new one, and the gauge in the room is still there.
TEST_F(LiveGaugeTest, AGaugeIsSetUpOnTheSheetAndThenWatched) {
    m_bench.button("watchGaugeButton")->click();
    m_bench.button("setUpGaugeButton")->click();
    const auto type = [&](const char* name, const QString& text) {
        auto* field = live().findChild<input::Editor*>(QLatin1String(name));
        field->setText(text);
        Q_EMIT field->committed(text);
    };
    type("profileName", QStringLiteral("Green gauge"));
    type("profileKind", QStringLiteral("network"));
    type("profileHost", QStringLiteral("127.0.0.1"));
    type("profileNetworkPort", QString::number(m_server.serverPort()));
    type("profilePattern", QStringLiteral("now {value} {unit}"));
    m_bench.button("saveProfileButton")->click();
    const auto kept =
        gauge::profilesFromText(testing::need(m_bench.firm.store->setting(gauge::kProfilesSetting)));
    ASSERT_EQ(kept.size(), 3U);
    EXPECT_EQ(kept[1].name, "Green gauge");
    EXPECT_EQ(kept[2].name, "Room");
    auto* panel = live().panel();
    ASSERT_EQ(panel->profiles()[1].name, "Green gauge");
    panel->choose(1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_server.hasPendingConnections(); }, kLiveWait));
    m_server.nextPendingConnection()->write("\nnow 19.84 mbar\n");
    EXPECT_TRUE(QTest::qWaitFor([&] { return panel->watch().last().has_value(); }, kLiveWait));
}

TEST_F(LiveGaugeTest, PracticeIsKeptAsPractice) {
    m_bench.button("watchGaugeButton")->click();
    auto* panel = live().panel();
    panel->choose(1);
    panel->toggle();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return panel->watch().recorder().taken().trace.size() > 3; }, kLiveWait));
    panel->toggle();
    ASSERT_EQ(m_bench.file().traces.size(), 1U);
    EXPECT_TRUE(m_bench.file().traces[0].source.isSimulated);
}

}  // namespace
}  // namespace hearth::ui::visit

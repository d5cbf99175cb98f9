// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/live_panel.h"

#include "tests/support/files.h"
#include "tests/ui/gauge/source_bench.h"
#include "ui/gauge/gauge_words.h"
#include "ui/gauge/journal.h"
#include "ui/gauge/live_figure.h"
#include "ui/shell/plot_view.h"

#include <QLabel>
#include <QPushButton>
#include <QTcpServer>
#include <QTcpSocket>

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

constexpr int kPanelWait = 20000;

GaugeProfile networkProfile(const char* name, quint16 port) {
    GaugeProfile profile;
    profile.name = name;
    profile.kind = SourceKind::Network;
    profile.host = "127.0.0.1";
    profile.networkPort = port;
    return profile;
}

/// Two gauges on this machine's own network, and the panel that watches them.
class LivePanelTest : public ::testing::Test {
  protected:
    LivePanelTest() {
        m_one.listen(QHostAddress::LocalHost);
        m_two.listen(QHostAddress::LocalHost);
        m_panel = makePanel();
    }
    std::unique_ptr<LivePanel> makePanel() {
        auto panel = std::make_unique<LivePanel>(std::vector{networkProfile("Blue gauge", m_one.serverPort()),
                                                             networkProfile("Red gauge", m_two.serverPort())},
                                                 folder(), m_clock, m_words, nullptr);
        QObject::connect(panel.get(), &LivePanel::traceTaken, panel.get(),
                         [this](const TakenTrace& taken) { m_taken.push_back(taken); });
        panel->show();
        return panel;
    }
    [[nodiscard]] QString folder() const { return QString::fromStdString((m_folder / "journals").string()); }
    QTcpSocket* peerOf(QTcpServer& server) {
        EXPECT_TRUE(QTest::qWaitFor([&] { return server.hasPendingConnections(); }, kPanelWait));
        return server.nextPendingConnection();
    }
    [[nodiscard]] QString said(const char* name) const {
        const auto* label = m_panel->findChild<QLabel*>(QLatin1String(name));
        return label == nullptr || label->isHidden() ? QString() : label->text();
    }
    [[nodiscard]] const LiveFigure* figure() const {
        return m_panel->findChild<LiveFigure*>(QStringLiteral("liveFigure"));
    }
    /// The view has no meta object of its own, so that findChild() would give any widget.
    [[nodiscard]] record::Plots plots() const {
        for (auto* child : m_panel->findChildren<QWidget*>()) {
            if (const auto* view = dynamic_cast<shell::PlotView*>(child)) {
                return view->plots();
            }
        }
        return {};
    }
    void press(const char* name) {
        auto* button = m_panel->findChild<QPushButton*>(QLatin1String(name));
        ASSERT_NE(button, nullptr) << name;
        ASSERT_TRUE(button->isEnabled()) << name;
        button->click();
    }
    bool shows(const QString& value) {
        return QTest::qWaitFor([&] { return figure()->shown().figure == value; }, kPanelWait);
    }

    testing::TempDir m_folder;
    const SystemClock m_clock;
    const words::Words m_words;
    QTcpServer m_one;
    QTcpServer m_two;
    std::unique_ptr<LivePanel> m_panel;
    std::vector<TakenTrace> m_taken;
};

TEST_F(LivePanelTest, ShowsTheFigureWithItsUnitAndAge) {
    EXPECT_EQ(said("gaugeState"), QStringLiteral("Choose a gauge to watch."));
    m_panel->choose(0);
    auto* peer = peerOf(m_one);
    peer->write("\n20.50 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.50")));
    EXPECT_TRUE(figure()->accessibleName().startsWith(QStringLiteral("Blue gauge: 20.50 mbar, 0.")))
        << figure()->accessibleName().toStdString();
    EXPECT_TRUE(said("gaugeState").startsWith(QStringLiteral("Connected to 127.0.0.1, port")));
    EXPECT_FALSE(figure()->shown().isStale);
    ASSERT_TRUE(QTest::qWaitFor([&] { return figure()->shown().isStale; }, kPanelWait));
    EXPECT_TRUE(figure()->accessibleName().contains(QStringLiteral("stale: 2.")));
    peer->write("20,49 mbar\n");
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return said("gaugeState").contains(QStringLiteral("20,49")); }, kPanelWait));
    EXPECT_EQ(figure()->shown().figure, QStringLiteral("20.50")) << "no figure is made of it";
}

TEST_F(LivePanelTest, RecordsByOneKeyAndHandsTheTraceOver) {
    m_panel->toggle();
    EXPECT_FALSE(m_panel->watch().recorder().isRecording()) << "there is nothing to record";
    m_panel->choose(0);
    auto* peer = peerOf(m_one);
    peer->write("\n20.50 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.50")));
    QTest::keyClick(m_panel.get(), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_panel->watch().recorder().isRecording());
    for (const char* value : {"20.49", "20.48", "20.47"}) {
        peer->write(QByteArray(value) + " mbar\n");
        ASSERT_TRUE(shows(QString::fromLatin1(value)));
    }
    press("mark_timing");
    peer->disconnectFromHost();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return said("gaugeState").contains(QStringLiteral("was lost")); }, kPanelWait));
    peer = peerOf(m_one);
    peer->write("\n20.46 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.46")));
    QTest::keyClick(m_panel.get(), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(m_taken.size(), 1U);
    const auto& taken = m_taken.front();
    EXPECT_EQ(taken.trace.size(), 4U);
    EXPECT_EQ(taken.gaps.size(), 1U);
    ASSERT_EQ(taken.marks.size(), 1U);
    EXPECT_EQ(taken.marks[0].event, GaugeEvent::Timing);
    EXPECT_EQ(taken.origin.name, "Blue gauge");
    EXPECT_FALSE(taken.origin.isSimulated());
    m_panel->traceKept();
    m_panel.reset();
    EXPECT_TRUE(leftJournals(folder()).empty()) << "what is kept elsewhere is not offered again";
}

TEST_F(LivePanelTest, OffersWhatWasLeftTheNextTime) {
    m_panel->choose(0);
    auto* peer = peerOf(m_one);
    peer->write("\n20.50 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.50")));
    m_panel->toggle();
    peer->write("20.49 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.49")));
    m_panel.reset();  // the window closed in the middle of it
    ASSERT_EQ(leftJournals(folder()).size(), 1U);
    m_panel = makePanel();
    EXPECT_TRUE(said("leftRecording").startsWith(QStringLiteral("A recording was left: Blue gauge, begun ")));
    press("takeLeftButton");
    ASSERT_EQ(m_taken.size(), 1U);
    ASSERT_EQ(m_taken[0].trace.size(), 1U);
    EXPECT_NEAR(m_taken[0].trace[0].pressure.in(quantity::kMillibar), 20.49, 1e-9);
    EXPECT_EQ(leftJournals(folder()).size(), 1U) << "until it is said to be kept";
    m_panel->traceKept();
    EXPECT_TRUE(leftJournals(folder()).empty());
}

TEST_F(LivePanelTest, ThrowsAwayOnlyWhenAskedTwice) {
    Recorder recorder(m_clock);
    recorder.begin({"x"}, folder());
    GaugeReading reading;
    reading.line.value = quantity::Decimal(2050, 2);
    reading.line.unit = quantity::UnitCode::Millibar;
    reading.at = m_clock.elapsed();
    recorder.add(reading);
    recorder.end();
    recorder.begin({"x"});
    m_panel = makePanel();
    press("discardLeftButton");
    EXPECT_EQ(leftJournals(folder()).size(), 1U);
    press("discardLeftButton");
    EXPECT_TRUE(leftJournals(folder()).empty());
}

TEST_F(LivePanelTest, SaysWhetherItIsAtZero) {
    m_panel->choose(0);
    auto* peer = peerOf(m_one);
    press("zeroButton");
    EXPECT_EQ(said("zeroCheck"), QStringLiteral("Zero check: no reading in the last five seconds."));
    peer->write("\n0.01 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("0.01")));
    press("zeroButton");
    EXPECT_TRUE(said("zeroCheck").contains(QStringLiteral("which is nought")))
        << said("zeroCheck").toStdString();
    for (int i = 0; i < 3; ++i) {
        peer->write("0.09 mbar\n");
        QTest::qWait(80);
    }
    ASSERT_TRUE(shows(QStringLiteral("0.09")));
    press("zeroButton");
    EXPECT_TRUE(said("zeroCheck").contains(QStringLiteral("is not nought within its step of 0.01")))
        << said("zeroCheck").toStdString();
}

TEST_F(LivePanelTest, HoldsTwoGaugesAgainstEachOther) {
    m_panel->choose(0);
    auto* one = peerOf(m_one);
    m_panel->compareWith(1);
    auto* two = peerOf(m_two);
    one->write("\n20.50 mbar\n");
    two->write("\n20.50 mbar\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return said("gaugesCompared").contains(QStringLiteral("within")); },
                                kPanelWait));
    for (int i = 0; i < 5; ++i) {
        one->write("20.60 mbar\n");
        two->write("20.50 mbar\n");
        QTest::qWait(80);
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return said("gaugesCompared").contains(QStringLiteral("beyond")); },
                                kPanelWait));
}

// What is looked at before the gauge is connected is kept with what is recorded then, of either gauge.
TEST_F(LivePanelTest, RecordsBothGaugesWithTheirZeros) {
    m_panel->choose(0);
    auto* one = peerOf(m_one);
    m_panel->compareWith(1);
    auto* two = peerOf(m_two);
    const auto hear = [&](const Watch& watch, const char* value) {
        return QTest::qWaitFor([&] { return watch.last() && watch.last()->line.value.text() == value; },
                               kPanelWait);
    };
    one->write("\n0.00 mbar\n");
    two->write("\n0.3 mbar\n");
    ASSERT_TRUE(hear(m_panel->watch(), "0.00") && hear(m_panel->secondWatch(), "0.3"));
    press("zeroButton");
    EXPECT_TRUE(said("zeroCheck").contains(QStringLiteral("Blue gauge: Zero check")));
    EXPECT_TRUE(said("zeroCheck").contains(QStringLiteral("Red gauge: Zero check")));
    EXPECT_TRUE(said("zeroCheck").contains(QStringLiteral("not nought within its step of 0.1")));
    m_panel->toggle();
    one->write("20.50 mbar\n20.49 mbar\n");
    two->write("20.5 mbar\n");
    ASSERT_TRUE(hear(m_panel->watch(), "20.49") && hear(m_panel->secondWatch(), "20.5"));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            const auto drawn = plots().plots;
            return drawn.size() == 1 && drawn[0].series.size() == 2;
        },
        kPanelWait))
        << "both are drawn while they are recorded";
    m_panel->toggle();
    ASSERT_EQ(m_taken.size(), 1U);
    const auto& taken = m_taken[0];
    EXPECT_EQ(taken.trace.size(), 2U);
    EXPECT_EQ(taken.origin.zero.reads, (quantity::Typed{"0.000", quantity::UnitCode::Millibar}));
    EXPECT_EQ(taken.origin.zero.step, (quantity::Typed{"0.01", quantity::UnitCode::Millibar}));
    EXPECT_TRUE(taken.origin.zero.isZero);
    EXPECT_TRUE(taken.origin.zero.at.has_value());
    EXPECT_EQ(taken.origin.resolution.text, "0.01") << "one in its last digit";
    ASSERT_EQ(taken.beside.size(), 1U);
    EXPECT_EQ(taken.beside[0].origin.name, "Red gauge");
    EXPECT_EQ(taken.beside[0].trace.size(), 1U);
    EXPECT_TRUE(taken.beside[0].origin.zero.isThere());
    EXPECT_FALSE(taken.beside[0].origin.zero.isZero);
    EXPECT_EQ(taken.beside[0].origin.resolution.text, "0.1");
    m_panel->traceKept();
    m_panel.reset();
    EXPECT_TRUE(leftJournals(folder()).empty());
}

TEST_F(LivePanelTest, AnotherGaugeHasNoZeroYet) {
    m_panel->choose(0);
    peerOf(m_one)->write("\n0.00 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("0.00")));
    press("zeroButton");
    m_panel->choose(1);
    auto* two = peerOf(m_two);
    two->write("\n20.50 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.50")));
    m_panel->toggle();
    two->write("20.49 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.49")));
    m_panel->toggle();
    ASSERT_EQ(m_taken.size(), 1U);
    EXPECT_FALSE(m_taken[0].origin.zero.isThere());
    EXPECT_TRUE(m_taken[0].beside.empty());
}

// A second gauge may come while it is recorded; where the first says nothing, the second is what there is.
TEST_F(LivePanelTest, TakesUpASecondGaugeWhileItRecords) {
    m_panel->choose(0);
    auto* one = peerOf(m_one);
    one->write("\n20.50 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.50")));
    m_panel->toggle();
    m_panel->compareWith(1);
    auto* two = peerOf(m_two);
    two->write("\n20.47 mbar\n");
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return !m_panel->secondWatch().recorder().taken().isEmpty(); }, kPanelWait));
    m_panel->compareWith(-1);
    ASSERT_EQ(m_taken.size(), 1U) << "what was recorded of it is not lost";
    EXPECT_EQ(m_taken[0].origin.name, "Red gauge");
    EXPECT_TRUE(m_taken[0].beside.empty());
    EXPECT_FALSE(m_panel->watch().recorder().isRecording());
}

TEST_F(LivePanelTest, OffersBothGaugesOfWhatWasLeft) {
    m_panel->choose(0);
    auto* one = peerOf(m_one);
    m_panel->compareWith(1);
    auto* two = peerOf(m_two);
    one->write("\n20.50 mbar\n");
    two->write("\n20.40 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.50")));
    m_panel->toggle();
    one->write("20.49 mbar\n");
    two->write("20.39 mbar\n");
    ASSERT_TRUE(shows(QStringLiteral("20.49")));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return !m_panel->secondWatch().recorder().taken().isEmpty(); }, kPanelWait));
    m_panel.reset();
    m_panel = makePanel();
    EXPECT_TRUE(said("leftRecording").contains(QStringLiteral("Beside it Red gauge was recorded")));
    press("takeLeftButton");
    ASSERT_EQ(m_taken.size(), 1U);
    ASSERT_EQ(m_taken[0].beside.size(), 1U);
    m_panel->traceKept();
    EXPECT_TRUE(leftJournals(folder()).empty());
}

TEST_F(LivePanelTest, MarksPracticeWhereverItIsShown) {
    auto* band = m_panel->findChild<QWidget*>(QStringLiteral("simulatedBand"));
    EXPECT_TRUE(band->isHidden());
    m_panel->choose(2);  // behind the firm's two
    EXPECT_FALSE(band->isHidden());
    m_panel->toggle();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return m_panel->watch().recorder().taken().trace.size() > 3; }, kPanelWait));
    m_panel->toggle();
    ASSERT_EQ(m_taken.size(), 1U);
    EXPECT_TRUE(m_taken[0].origin.isSimulated());
    EXPECT_FALSE(plots().plots.empty());
}

TEST_F(LivePanelTest, SaysWhatIsWrongWithAPattern) {
    auto profile = networkProfile("Green gauge", 1);
    profile.pattern.text = "{value}";
    LivePanel panel({profile}, folder(), m_clock, m_words, nullptr);
    panel.choose(0);
    EXPECT_EQ(panel.watch().source(), nullptr);
    bool isSaid = false;
    for (const auto* label : panel.findChildren<QLabel*>()) {
        isSaid = isSaid || label->text().contains(QStringLiteral("The lines name no unit"));
    }
    EXPECT_TRUE(isSaid);
}

TEST_F(LivePanelTest, EveryControlHasItsNameAndIsReachedByKeys) {
    for (const auto* button : m_panel->findChildren<QPushButton*>()) {
        EXPECT_FALSE(button->accessibleName().isEmpty() && button->text().isEmpty());
        EXPECT_NE(button->focusPolicy() & Qt::TabFocus, 0);
    }
}

TEST(Profiles, AreKeptAsTextAndReadBack) {
    GaugeProfile serial;
    serial.name = "Blue \"gauge\"";
    serial.port = "/dev/ttyUSB0";
    serial.speed = 19200;
    serial.pattern = {"{skip} {value};{second}",         quantity::DecimalMark::Comma,
                      quantity::UnitFamily::Pressure,    quantity::UnitCode::Pascal,
                      quantity::UnitFamily::Temperature, quantity::UnitCode::Celsius};
    serial.resolution = {"0.1", quantity::UnitCode::Pascal};
    serial.ask = "READ?\\r\\n";
    serial.askEvery = 250;
    auto network = networkProfile("Room", 4001);
    network.pattern.family = quantity::UnitFamily::Trace;
    const std::vector<GaugeProfile> all{serial, network};
    EXPECT_EQ(profilesFromText(profilesText(all)), all);
    EXPECT_EQ(profilesFromText("[{\"name\": 5}, " + profilesText({network}).substr(1)), std::vector{network})
        << "one that can't be read costs the others nothing";
    for (const char* text : {"", "{", "{}", "[1,2]", "null", "[{\"name\":\"x\",\"kind\":\"pigeon\"}]"}) {
        EXPECT_TRUE(profilesFromText(text).empty()) << text;
    }
}

}  // namespace
}  // namespace hearth::ui::gauge

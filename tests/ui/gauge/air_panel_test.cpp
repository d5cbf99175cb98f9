// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/air_panel.h"

#include "tests/support/files.h"
#include "tests/ui/gauge/source_bench.h"
#include "ui/gauge/journal.h"
#include "ui/gauge/live_figure.h"
#include "ui/input/editor.h"
#include "ui/shell/plot_view.h"

#include <QLabel>
#include <QPushButton>
#include <QTcpServer>
#include <QTcpSocket>

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

using quantity::kPpm;
using quantity::Share;

constexpr int kAirWait = 20000;
constexpr double kDanger = 20.0;  // what the caller says; the panel has no number of its own

/// An instrument on this machine's own network, and the panel that watches it.
class AirPanelTest : public ::testing::Test {
  protected:
    AirPanelTest() {
        m_server.listen(QHostAddress::LocalHost);
        m_panel = makePanel();
    }
    std::unique_ptr<AirPanel> makePanel() {
        GaugeProfile profile;
        profile.name = "Room monitor";
        profile.kind = SourceKind::Network;
        profile.host = "127.0.0.1";
        profile.networkPort = m_server.serverPort();
        profile.pattern.family = quantity::UnitFamily::Trace;
        const AirLevels levels{Share(kDanger, kPpm), {{quantity::Decimal(20, 0), "Danger: 20 ppm", true}}};
        auto panel =
            std::make_unique<AirPanel>(std::vector{profile}, levels, folder(), m_clock, m_words, nullptr);
        QObject::connect(panel.get(), &AirPanel::taken, panel.get(),
                         [this](const AirTaken& reading) { m_taken.push_back(reading); });
        QObject::connect(panel.get(), &AirPanel::watched, panel.get(),
                         [this](const TakenTrace& trace) { m_watched.push_back(trace); });
        QObject::connect(panel.get(), &AirPanel::dangerChanged, panel.get(),
                         [this](bool isDanger) { m_dangers.push_back(isDanger); });
        panel->show();
        return panel;
    }
    [[nodiscard]] QString folder() const { return QString::fromStdString((m_folder / "journals").string()); }
    void connectIt() {
        m_panel->choose(0);
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_server.hasPendingConnections(); }, kAirWait));
        m_peer = m_server.nextPendingConnection();
        m_peer->write("\n");
    }
    void sends(const char* line) {
        const auto before = m_panel->watch().last();
        const auto refused = m_panel->watch().source()->refusals();
        m_peer->write(QByteArray(line) + "\n");
        ASSERT_TRUE(QTest::qWaitFor(
            [&] {
                const auto& last = m_panel->watch().last();
                return (last && (!before || last->at != before->at)) ||
                       m_panel->watch().source()->refusals() > refused;
            },
            kAirWait))
            << line;
        m_panel->tick();
    }
    void at(const char* place) {
        auto* editor = m_panel->findChild<input::Editor*>(QStringLiteral("airPlace"));
        editor->setText(QLatin1String(place));
        Q_EMIT editor->committed(QLatin1String(place));
    }
    [[nodiscard]] QString said(const char* name) const {
        const auto* label = m_panel->findChild<QLabel*>(QLatin1String(name));
        return label == nullptr || label->isHidden() ? QString() : label->text();
    }
    [[nodiscard]] const LiveFigure::Shown& figure() const {
        return m_panel->findChild<LiveFigure*>(QStringLiteral("airFigure"))->shown();
    }
    void take() { m_panel->findChild<QPushButton*>(QStringLiteral("airTakeButton"))->click(); }

    testing::TempDir m_folder;
    const SystemClock m_clock;
    const words::Words m_words;
    QTcpServer m_server;
    QTcpSocket* m_peer = nullptr;
    std::unique_ptr<AirPanel> m_panel;
    std::vector<AirTaken> m_taken;
    std::vector<TakenTrace> m_watched;
    std::vector<bool> m_dangers;
};

TEST_F(AirPanelTest, ShowsTheLevelWithItsAgeAndSaysWhenItIsStale) {
    EXPECT_EQ(said("airState"), QStringLiteral("Choose an instrument to watch."));
    connectIt();
    sends("3 ppm");
    EXPECT_EQ(figure().figure, QStringLiteral("3"));
    EXPECT_EQ(figure().unit, QStringLiteral("ppm"));
    EXPECT_FALSE(figure().isStale);
    EXPECT_TRUE(said("airDanger").isEmpty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return figure().isStale; }, kAirWait));
    EXPECT_TRUE(said("airState").contains(QStringLiteral("Do not go in to see why")));
    at("room");
    take();
    EXPECT_TRUE(m_taken.empty()) << "an old reading is none of now";
    EXPECT_TRUE(said("airSaid").contains(QStringLiteral("nothing was taken")));
}

TEST_F(AirPanelTest, TakesAReadingByOneKeyWithItsPlace) {
    connectIt();
    sends("3 ppm");
    take();
    EXPECT_TRUE(m_taken.empty()) << "where the probe is was not said";
    at("outdoors");
    sends("4 ppm");
    take();
    ASSERT_EQ(m_taken.size(), 1U);
    EXPECT_EQ(m_taken[0].ppm.text(), "4");
    EXPECT_EQ(m_taken[0].place, air::CoPlace::Outside);
    EXPECT_FALSE(m_taken[0].origin.isSimulated());
    ASSERT_TRUE(m_taken[0].origin.beganAt);
    EXPECT_GE(m_taken[0].at, *m_taken[0].origin.beganAt);
    EXPECT_TRUE(m_panel->watch().recorder().isRecording()) << "the first reading begins the watch";
    at("room");
    sends("5.5 ppm");
    QTest::keyClick(m_panel.get(), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(m_watched.size(), 1U);
    ASSERT_EQ(m_watched[0].air.size(), 1U);
    EXPECT_EQ(m_watched[0].air[0].place, air::CoPlace::Room);
    EXPECT_NEAR(m_watched[0].air[0].level.in(kPpm), 5.5, 1e-12);
    EXPECT_EQ(m_watched[0].decimals, 1);
    EXPECT_TRUE(m_watched[0].trace.empty());
}

TEST_F(AirPanelTest, SaysToLeaveAndGoesOnSayingIt) {
    connectIt();
    at("room");
    m_panel->toggle();
    sends("19 ppm");
    EXPECT_FALSE(m_panel->isDanger());
    sends("20 ppm");
    EXPECT_TRUE(m_panel->isDanger());
    EXPECT_TRUE(figure().isDanger);
    EXPECT_TRUE(m_panel->findChild<LiveFigure*>(QStringLiteral("airFigure"))
                    ->accessibleName()
                    .contains(QStringLiteral("danger, ")));
    sends("34 ppm");
    sends("2 ppm");
    EXPECT_TRUE(said("airDanger")
                    .startsWith(QStringLiteral("Leave; do not go in to read it. It was 34.0\u00A0ppm at the "
                                               "highest; from 20.0\u00A0ppm on")))
        << said("airDanger").toStdString();
    m_panel->toggle();
    EXPECT_TRUE(m_panel->isDanger()) << "the watch is over, the room is not known to be clear";
    EXPECT_EQ(m_dangers, std::vector<bool>{true});
    m_panel->toggle();
    EXPECT_FALSE(m_panel->isDanger()) << "another watch, begun at 2 ppm";
}

TEST_F(AirPanelTest, AnotherInstrumentWithoutALevelClearsNoDanger) {
    connectIt();
    at("room");
    sends("41 ppm");
    ASSERT_TRUE(m_panel->isDanger());
    m_panel->choose(-1);
    EXPECT_TRUE(m_panel->isDanger());
    connectIt();
    EXPECT_TRUE(m_panel->isDanger());
    m_panel->toggle();
    EXPECT_TRUE(m_panel->isDanger()) << "a watch, begun without knowing the level";
    m_panel->toggle();
    sends("3 ppm");
    m_panel->toggle();
    EXPECT_FALSE(m_panel->isDanger()) << "a watch, begun at 3 ppm";
}

TEST_F(AirPanelTest, PracticeTakesNothingBackThatWasSeenInARoom) {
    constexpr int kClearPractice = 1;  // behind the firm's one instrument
    connectIt();
    at("room");
    sends("41 ppm");
    ASSERT_TRUE(m_panel->isDanger());
    m_panel->choose(kClearPractice);
    EXPECT_TRUE(m_panel->isDanger());
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_panel->watch().last().has_value(); }, kAirWait));
    m_panel->toggle();
    EXPECT_TRUE(m_panel->isDanger()) << "a practice watch, begun at nought";
    m_panel->toggle();
    m_panel->choose(-1);
    EXPECT_TRUE(m_panel->isDanger()) << "practice was left";
    EXPECT_TRUE(said("airDanger").contains(QStringLiteral("41"))) << said("airDanger").toStdString();
    EXPECT_EQ(m_dangers, std::vector<bool>{true});
}

// What floods is thinned for the watch; each reading is looked at for danger all the same.
TEST_F(AirPanelTest, SeesADangerousReadingInAFlood) {
    connectIt();
    at("room");
    m_panel->toggle();
    QByteArray flood;
    for (int i = 0; i < 5000; ++i) {
        flood += i == 3217 ? "55 ppm\n" : "2 ppm\n";
    }
    m_peer->write(flood + "3 ppm\n");
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            const auto& last = m_panel->watch().last();
            return last && last->line.value.text() == "3";
        },
        kAirWait));
    m_panel->tick();
    EXPECT_TRUE(m_panel->isDanger());
    EXPECT_LT(m_panel->watch().recorder().taken().air.size(), 1000U);
    EXPECT_TRUE(said("airCounts").contains(QStringLiteral("were left out of the watch")))
        << said("airCounts").toStdString();
}

TEST_F(AirPanelTest, ConvertsNoOtherUnit) {
    connectIt();
    at("room");
    sends("25 mg/m3");
    EXPECT_TRUE(said("airState").contains(QStringLiteral("Carbon monoxide is taken in ppm alone")))
        << said("airState").toStdString();
    EXPECT_TRUE(figure().figure.isEmpty());
    EXPECT_FALSE(m_panel->isDanger());
    take();
    EXPECT_TRUE(m_taken.empty());
}

/// A profile that says another unit beside its pattern, whoever wrote it.
TEST_F(AirPanelTest, RefusesAProfileInAnotherUnit) {
    GaugeProfile profile;
    profile.name = "mass";
    profile.kind = SourceKind::Network;
    profile.host = "127.0.0.1";
    profile.networkPort = m_server.serverPort();
    profile.pattern.family = quantity::UnitFamily::Trace;
    profile.pattern.text = "{value}";
    profile.pattern.unit = quantity::UnitCode::MilligramPerCubicMetre;
    m_panel = std::make_unique<AirPanel>(std::vector{profile}, AirLevels{Share(kDanger, kPpm), {}}, folder(),
                                         m_clock, m_words, nullptr);
    connectIt();
    at("room");
    sends("25");
    EXPECT_TRUE(figure().figure.isEmpty()) << "no figure is made of it";
    EXPECT_TRUE(said("airState").isEmpty() || m_panel->findChild<QLabel*>(QStringLiteral("airState"))
                                                  ->text()
                                                  .contains(QStringLiteral("Set the instrument to ppm")));
    m_panel->toggle();
    sends("26");
    m_panel->toggle();
    EXPECT_TRUE(m_panel->watch().recorder().taken().isEmpty());
}

TEST_F(AirPanelTest, OffersWhatWasLeftTheNextTime) {
    connectIt();
    at("appliance");
    m_panel->toggle();
    sends("7 ppm");
    m_panel.reset();  // the window closed in the middle of it
    const auto left = leftJournals(folder());
    ASSERT_EQ(left.size(), 1U);
    const auto read = readJournal(left.front());
    ASSERT_TRUE(read);
    ASSERT_EQ(read->taken.air.size(), 1U);
    EXPECT_EQ(read->taken.air[0].place, air::CoPlace::AtAppliance);
    m_panel = makePanel();
    m_panel->findChild<QPushButton*>(QStringLiteral("takeLeftButton"))->click();
    ASSERT_EQ(m_watched.size(), 1U);
    m_panel->kept();
    EXPECT_TRUE(leftJournals(folder()).empty());
}

TEST_F(AirPanelTest, MarksPracticeWhereverItIsShown) {
    auto* band = m_panel->findChild<QWidget*>(QStringLiteral("simulatedBand"));
    EXPECT_TRUE(band->isHidden());
    m_panel->choose(2);  // behind the firm's one: the room where it rises
    EXPECT_FALSE(band->isHidden());
    at("room");
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_panel->watch().last().has_value(); }, kAirWait));
    take();
    ASSERT_EQ(m_taken.size(), 1U);
    EXPECT_TRUE(m_taken[0].origin.isSimulated());
}

TEST_F(AirPanelTest, DrawsTheLevelsOfTheRuleBook) {
    connectIt();
    sends("3 ppm");
    sends("4 ppm");
    const auto* plot = m_panel->findChild<shell::PlotView*>(QStringLiteral("airPlot"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !plot->plots().plots.empty(); }, kAirWait));
    ASSERT_EQ(plot->plots().plots[0].limits.size(), 1U);
    EXPECT_EQ(plot->plots().plots[0].limits[0].name, "Danger: 20 ppm");
}

}  // namespace
}  // namespace hearth::ui::gauge

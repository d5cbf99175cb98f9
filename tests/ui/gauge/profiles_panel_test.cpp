// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/profiles_panel.h"

#include "tests/support/fixed_clock.h"
#include "tests/ui/gauge/source_bench.h"
#include "ui/input/editor.h"

#include <QLabel>
#include <QPushButton>
#include <QTcpServer>
#include <QTcpSocket>

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

constexpr int kSetUpWait = 20000;

class ProfilesPanelTest : public ::testing::Test {
  protected:
    ProfilesPanelTest() {
        m_gauge.listen(QHostAddress::LocalHost);
        make({});
    }
    void make(const std::vector<GaugeProfile>& profiles) {
        m_panel = std::make_unique<ProfilesPanel>(profiles, quantity::UnitFamily::Pressure, m_clock, m_words,
                                                  nullptr);
        QObject::connect(m_panel.get(), &ProfilesPanel::profilesChanged, m_panel.get(),
                         [this](const std::vector<GaugeProfile>& all) { m_said.push_back(all); });
        m_panel->show();
    }
    [[nodiscard]] input::Editor* field(const char* name) const {
        return m_panel->findChild<input::Editor*>(QLatin1String(name));
    }
    void type(const char* name, const QString& text) {
        field(name)->setText(text);
        Q_EMIT field(name)->committed(text);
    }
    void press(const char* name) { m_panel->findChild<QPushButton*>(QLatin1String(name))->click(); }
    [[nodiscard]] QString heard() const {
        return m_panel->findChild<QLabel*>(QStringLiteral("heardLines"))->text();
    }
    /// Listens, and sends these lines once it is connected.
    void send(const QByteArray& lines) {
        press("listenButton");
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_gauge.hasPendingConnections(); }, kSetUpWait));
        QTcpSocket* peer = m_gauge.nextPendingConnection();
        peer->write("cut off\n" + lines);
        peer->flush();
        const auto last = QString::fromLatin1(lines.trimmed().split('\n').back());
        ASSERT_TRUE(QTest::qWaitFor([&] { return heard().contains(last); }, kSetUpWait))
            << heard().toStdString();
    }
    void describe() {
        type("profileName", QStringLiteral("Blue gauge"));
        type("profileKind", QStringLiteral("network"));
        type("profileHost", QStringLiteral("127.0.0.1"));
        type("profileNetworkPort", QString::number(m_gauge.serverPort()));
    }

    SystemClock m_clock;
    words::Words m_words;
    QTcpServer m_gauge;
    std::unique_ptr<ProfilesPanel> m_panel;
    std::vector<std::vector<GaugeProfile>> m_said;
};

TEST_F(ProfilesPanelTest, ShowsWhatThePatternFindsInEachLine) {
    describe();
    send("20.55 mbar\nP=20.56;mbar\n");
    EXPECT_TRUE(heard().contains(QStringLiteral("“20.55 mbar”: read as 20.55"))) << heard().toStdString();
    EXPECT_TRUE(heard().contains(QStringLiteral("“P=20.56;mbar”: not read."))) << heard().toStdString();
    // The pattern is tried as it stands, before anything is kept.
    type("profilePattern", QStringLiteral("P={value};{unit}"));
    EXPECT_TRUE(heard().contains(QStringLiteral("“20.55 mbar”: not read."))) << heard().toStdString();
    EXPECT_TRUE(heard().contains(QStringLiteral("“P=20.56;mbar”: read as 20.56"))) << heard().toStdString();
    EXPECT_TRUE(m_said.empty());
}

TEST_F(ProfilesPanelTest, GuessesThePatternAndKeepsTheGauge) {
    describe();
    send("P1 20,55 mbar\nP1 20,54 mbar\nP1 20,53 mbar\n");
    press("guessButton");
    EXPECT_EQ(field("profileMark")->text(), QStringLiteral("comma"));
    EXPECT_TRUE(heard().contains(QStringLiteral("“P1 20,53 mbar”: read as 20.53"))) << heard().toStdString();
    press("saveProfileButton");
    ASSERT_EQ(m_said.size(), 1U);
    ASSERT_EQ(m_said[0].size(), 1U);
    const GaugeProfile& kept = m_said[0][0];
    EXPECT_EQ(kept.name, "Blue gauge");
    EXPECT_EQ(kept.kind, SourceKind::Network);
    EXPECT_EQ(kept.networkPort, m_gauge.serverPort());
    EXPECT_EQ(kept.pattern.mark, quantity::DecimalMark::Comma);
    EXPECT_EQ(profilesFromText(profilesText(m_said[0])), m_said[0]);
}

TEST_F(ProfilesPanelTest, KeepsNothingThatCantBeUsedAndLosesNothingThatWasTyped) {
    press("saveProfileButton");
    EXPECT_TRUE(m_said.empty());
    describe();
    type("profileNetworkPort", QStringLiteral("70000"));
    press("saveProfileButton");
    EXPECT_TRUE(m_said.empty());
    EXPECT_EQ(field("profileNetworkPort")->text(), QStringLiteral("70000"));
    type("profileNetworkPort", QStringLiteral("7000"));
    type("profilePattern", QStringLiteral("{value"));
    press("saveProfileButton");
    EXPECT_TRUE(m_said.empty());
    type("profilePattern", QStringLiteral("{value}"));  // without a unit
    press("saveProfileButton");
    EXPECT_TRUE(m_said.empty());
    type("profileUnit", QStringLiteral("mbar"));
    press("saveProfileButton");
    ASSERT_EQ(m_said.size(), 1U);
    EXPECT_EQ(m_said[0][0].pattern.unit, quantity::UnitCode::Millibar);
}

TEST_F(ProfilesPanelTest, ChangesAndRemovesOne) {
    GaugeProfile one;
    one.name = "Grey gauge";
    one.port = "/dev/ttyUSB0";
    one.speed = 19200;
    one.pattern.secondUnit = quantity::UnitCode::Celsius;
    make({one});
    type("profileChoice", QStringLiteral("0"));
    EXPECT_EQ(field("profileSpeed")->text(), QStringLiteral("19200"));
    type("profileName", QStringLiteral("Grey gauge, van"));
    press("saveProfileButton");
    ASSERT_EQ(m_said.size(), 1U);
    one.name = "Grey gauge, van";
    one.resolution.unit = m_said[0][0].resolution.unit;
    EXPECT_EQ(m_said[0][0], one) << "what has no field stays as it was";
    press("removeProfileButton");
    ASSERT_EQ(m_said.size(), 2U);
    EXPECT_TRUE(m_said[1].empty());
}

// A gauge that answers only when it is asked: nothing is sent until a line is typed, and what is wrong with
// it is said before it is sent.
TEST_F(ProfilesPanelTest, SetsUpAGaugeThatIsAsked) {
    describe();
    EXPECT_EQ(field("profileAsk")->text(), QString());
    press("listenButton");
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_gauge.hasPendingConnections(); }, kSetUpWait));
    auto* quiet = m_gauge.nextPendingConnection();
    quiet->write("\n20.55 mbar\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard().contains(QStringLiteral("20.55")); }, kSetUpWait));
    EXPECT_EQ(quiet->bytesAvailable(), 0) << "nothing is sent by default";
    press("listenButton");

    type("profileAsk", QStringLiteral("READ\\q"));
    press("listenButton");
    EXPECT_FALSE(m_gauge.hasPendingConnections()) << "what can't be sent is said instead";
    type("profileAsk", QStringLiteral("READ?\\r\\n"));
    type("profileAskEvery", QStringLiteral("5"));
    press("saveProfileButton");
    EXPECT_TRUE(m_said.empty());
    type("profileAskEvery", QStringLiteral("60"));
    press("listenButton");
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_gauge.hasPendingConnections(); }, kSetUpWait));
    auto* peer = m_gauge.nextPendingConnection();
    ASSERT_TRUE(QTest::qWaitFor([&] { return peer->bytesAvailable() >= 14; }, kSetUpWait))
        << "again and again";
    EXPECT_EQ(peer->read(14), QByteArray("READ?\r\nREAD?\r\n"));
    const auto* state = m_panel->findChild<QLabel*>(QStringLiteral("listenState"));
    EXPECT_TRUE(state->text().contains(QStringLiteral("which is asked “READ?\\r\\n” every 60 ms")))
        << state->text().toStdString();
    press("saveProfileButton");
    ASSERT_EQ(m_said.size(), 1U);
    EXPECT_EQ(m_said[0].at(0).ask, "READ?\\r\\n");
    EXPECT_EQ(m_said[0].at(0).askEvery, 60);
    EXPECT_EQ(field("profileAsk")->text(), QStringLiteral("READ?\\r\\n"));
}

}  // namespace
}  // namespace hearth::ui::gauge

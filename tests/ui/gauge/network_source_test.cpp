// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/network_source.h"

#include "tests/ui/gauge/source_bench.h"

#include <QTcpServer>

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

using testing::Heard;
using Texts = std::vector<std::string>;

constexpr int kNetworkWait = 20000;

/// A gauge on the network of this machine alone.
class GaugeServer {
  public:
    explicit GaugeServer(quint16 port = 0) { m_server.listen(QHostAddress::LocalHost, port); }
    [[nodiscard]] quint16 port() const { return m_server.serverPort(); }
    [[nodiscard]] bool isConnected() {
        if (m_server.hasPendingConnections()) {
            m_peer = m_server.nextPendingConnection();
        }
        return m_peer != nullptr;
    }
    void write(const QByteArray& bytes) {
        m_peer->write(bytes);
        m_peer->flush();
    }
    void hangUp() {
        m_peer->disconnectFromHost();
        m_peer = nullptr;
    }
    void close() { m_server.close(); }

  private:
    QTcpServer m_server;
    QTcpSocket* m_peer = nullptr;
};

class NetworkSourceTest : public ::testing::Test {
  protected:
    void begin() {
        m_source.start();
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return m_server.isConnected() && m_source.state() == SourceState::Live; }, kNetworkWait));
    }
    bool hears(std::size_t values) {
        return QTest::qWaitFor([&] { return m_heard.values.size() == values; }, kNetworkWait);
    }

    const SystemClock m_clock;
    GaugeServer m_server;
    NetworkSource m_source{QStringLiteral("127.0.0.1"), m_server.port(), testing::matcherOf(), m_clock};
    Heard m_heard{m_source};
};

TEST_F(NetworkSourceTest, ReadsHalfLinesAndBursts) {
    begin();
    m_server.write("99 mbar\n20.5");
    QTest::qWait(20);
    m_server.write("0 mbar\r");
    QTest::qWait(20);
    QByteArray burst("\n");
    for (int i = 0; i < 5000; ++i) {
        burst += QByteArray::number(10.0 + i * 0.01, 'f', 2) + " mbar\r\n";
    }
    m_server.write(burst);
    ASSERT_TRUE(hears(5001));
    EXPECT_EQ(m_heard.values.front(), "20.50");
    EXPECT_EQ(m_heard.values[1], "10.00");
    EXPECT_EQ(m_heard.values.back(), "59.99");
}

TEST_F(NetworkSourceTest, TakesUpAConnectionThatWasClosed) {
    begin();
    m_server.write("\n20.50 mbar\n20.49 mbar\n");
    m_server.hangUp();
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_heard.losses == 1; }, kNetworkWait));
    EXPECT_EQ(m_heard.values, (Texts{"20.50", "20.49"})) << "what was sent before is still read";
    EXPECT_EQ(m_source.fault(), SourceFault::Closed);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return m_server.isConnected() && m_heard.resumes == 1; }, kNetworkWait));
    m_server.write("\n20.48 mbar\n");
    ASSERT_TRUE(hears(3));
}

TEST_F(NetworkSourceTest, TriesAgainWhileNobodyAnswers) {
    const auto port = m_server.port();
    m_server.close();
    m_source.start();
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_source.fault() == SourceFault::Refused; }, kNetworkWait));
    EXPECT_EQ(m_source.state(), SourceState::Opening);
    GaugeServer late(port);
    ASSERT_TRUE(QTest::qWaitFor([&] { return late.isConnected() && m_source.state() == SourceState::Live; },
                                kNetworkWait));
    late.write("\n20.48 mbar\n");
    ASSERT_TRUE(hears(1));
    EXPECT_EQ(m_heard.losses, 0);
}

TEST_F(NetworkSourceTest, StopsWithinALine) {
    begin();
    QObject::connect(&m_source, &Source::read, &m_source, [this] { m_source.stop(); });
    m_server.write("\n20.50 mbar\n20.49 mbar\n20.48 mbar\n");
    ASSERT_TRUE(hears(1));
    QTest::qWait(50);
    EXPECT_EQ(m_heard.values.size(), 1U);
    EXPECT_EQ(m_source.state(), SourceState::Stopped);
    EXPECT_EQ(m_heard.losses, 0) << "a source that was stopped is not lost";
}

}  // namespace
}  // namespace hearth::ui::gauge

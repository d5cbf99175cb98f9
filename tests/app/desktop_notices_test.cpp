// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: Desktop Notifications Specification 1.2, org.freedesktop.Notifications.Notify.
#include "app/desktop_notices.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusVirtualObject>
#include <QProcess>
#include <QTest>

#include <gtest/gtest.h>

namespace hearth::app {
namespace {

/// A desktop's side of it, which keeps what it was told.
class NoticeDesktop : public QDBusVirtualObject {
  public:
    QList<QDBusMessage> calls;
    [[nodiscard]] QString introspect(const QString&) const override { return {}; }
    bool handleMessage(const QDBusMessage& message, const QDBusConnection& bus) override {
        if (message.interface() != QLatin1String("org.freedesktop.Notifications")) {
            return false;
        }
        calls << message;
        return bus.send(message.createReply(1U));
    }
};

/// A bus of its own, which ends with the test.
class NoticesTest : public ::testing::Test {
  protected:
    void SetUp() override {
        m_daemon.start(
            QStringLiteral("dbus-daemon"),
            {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
        ASSERT_TRUE(m_daemon.waitForStarted()) << "dbus-daemon is not installed";
        ASSERT_TRUE(m_daemon.waitForReadyRead());
        address = QString::fromUtf8(m_daemon.readAllStandardOutput()).trimmed();
    }
    void TearDown() override {
        QDBusConnection::disconnectFromBus(QStringLiteral("desktop"));
        QDBusConnection::disconnectFromBus(QStringLiteral("program"));
        m_daemon.kill();
        m_daemon.waitForFinished();
    }
    QString address;

  private:
    QProcess m_daemon;
};

TEST_F(NoticesTest, theDesktopIsToldByTheSpecification) {
    NoticeDesktop desktop;
    auto theirs = QDBusConnection::connectToBus(address, QStringLiteral("desktop"));
    ASSERT_TRUE(theirs.registerVirtualObject(QStringLiteral("/org/freedesktop/Notifications"), &desktop));
    ASSERT_TRUE(theirs.registerService(QStringLiteral("org.freedesktop.Notifications")));
    DesktopNotices notices(QDBusConnection::connectToBus(address, QStringLiteral("program")));
    notices.notify(QStringLiteral("Gas safety checks"), QStringLiteral("3 checks turned overdue."));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !desktop.calls.isEmpty(); }, 20000));
    const auto& call = desktop.calls.first();
    EXPECT_EQ(call.member(), QStringLiteral("Notify"));
    EXPECT_EQ(call.signature(), QStringLiteral("susssasa{sv}i")) << "as the specification has it";
    const auto said = call.arguments();
    EXPECT_EQ(said[0].toString(), QStringLiteral("Hearthledger"));
    EXPECT_EQ(said[3].toString(), QStringLiteral("Gas safety checks"));
    EXPECT_EQ(said[4].toString(), QStringLiteral("3 checks turned overdue."));
}

TEST_F(NoticesTest, aDesktopWithoutNoticesIsNoTrouble) {
    DesktopNotices notices(QDBusConnection::connectToBus(address, QStringLiteral("program")));
    notices.notify(QStringLiteral("Gas safety checks"), QStringLiteral("3 checks turned overdue."));
    DesktopNotices none(QDBusConnection(QStringLiteral("no such bus")));
    none.notify(QStringLiteral("Gas safety checks"), QStringLiteral("3 checks turned overdue."));
}

}  // namespace
}  // namespace hearth::app
